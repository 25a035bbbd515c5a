import { readdirSync, readFileSync } from 'node:fs';
import { basename, extname, join } from 'node:path';
import { parse } from 'yaml';

const CONTENT = join(import.meta.dirname, '../../content');

export interface Entry {
  /** File name without its ending: the id other entries use. */
  readonly id: string;
  /** Path from the root of the project, for messages. */
  readonly place: string;
  readonly data: Record<string, unknown>;
  /** The text under the frontmatter; empty for a data file. */
  readonly body: string;
}

/** Every entry of one collection, as the site's loaders would see it. */
export function readCollection(name: string): Entry[] {
  return readdirSync(join(CONTENT, name))
    .filter((file) => /\.(yaml|mdx)$/.test(file))
    .map((file) => {
      const source = readFileSync(join(CONTENT, name, file), 'utf8');
      const { front, body } = split(source, extname(file));
      return {
        id: basename(file, extname(file)),
        place: `content/${name}/${file}`,
        data: parse(front),
        body,
      };
    });
}

function split(source: string, ending: string): { front: string; body: string } {
  if (ending === '.yaml') return { front: source, body: '' };
  const [, front = '', body = ''] = /^---\n(.*?)\n---\n(.*)$/s.exec(source) ?? [];
  return { front, body };
}

/** Every text inside a value, however deep. */
export function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) return value.flatMap(textsIn);
  if (value && typeof value === 'object' && !(value instanceof Date))
    return Object.values(value).flatMap(textsIn);
  return [];
}

/** Sentences of prose: tags and figures count as one word each, list signs and headings are dropped. */
export function sentencesIn(prose: string): string[] {
  return prose
    .replace(/<(?:Fig|Limit)\b[^>]*\/>/g, 'FIGURE')
    .replace(/<[^>]+>/g, '')
    .replace(/\{[a-z0-9-]+\}/g, 'FIGURE')
    .split('\n')
    .filter((line) => !/^#/.test(line.trim()))
    .join('\n')
    .split(/(?<=[.!?])["”]?\s+|\n\s*\n|\n\s*(?:-|\d+\.)\s+/)
    .map((sentence) => sentence.replace(/^\s*(?:-|\d+\.)\s+/, '').trim())
    .filter((sentence) => /[a-z]/i.test(sentence));
}

export function wordCount(sentence: string): number {
  return sentence.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}
