import type { Batch } from '@larderwright/calc/batch';
import { type Unit, unitLabel } from '@larderwright/calc/quantities';
import * as say from '#words/parts/value-words.ts';
import { getAt, hasPath } from '../state/paths.ts';
import { wallOf } from './clock-text.ts';

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

/** What a row is called: its name, or the clock it was read at. */
function nameOf(row: unknown): string {
  if (!isObject(row) || Array.isArray(row)) return '';
  if (typeof row.name === 'string' && !('role' in row)) return row.name.trim();
  return typeof row.at === 'string' ? (wallOf(row.at)?.clock ?? '') : '';
}

/** The rows a path leads through, by their names: "Centre, 10:40". */
export function rowWords(batch: Batch, path: string): string {
  const keys = path.split('.');
  const names = keys.map((_, index) => {
    const here = keys.slice(0, index + 1).join('.');
    return hasPath(batch, here) ? nameOf(getAt(batch, here)) : '';
  });
  return names.filter(Boolean).join(', ');
}

/** A value of the record as a person reads it. */
export function valueWords(value: unknown): string {
  if (value === undefined) return say.takenAway;
  if (value === null || value === '') return say.blank;
  if (!isObject(value)) return String(value);
  if (typeof value.text === 'string' && 'unit' in value)
    return value.text === '' ? say.blank : `${value.text} ${unitLabel(value.unit as Unit)}`;
  if (typeof value.name === 'string') return value.name || say.aRow;
  return Array.isArray(value) ? say.rows(value.length) : say.changed;
}
