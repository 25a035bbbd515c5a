import { COOL_RULE_SETS } from '@larderwright/calc/cooling';
import { CURE_RULE_SETS } from '@larderwright/calc/cure';
import { COOK_RULE_SETS } from '@larderwright/calc/lethality';
import type { Mark, RuleSet } from '@larderwright/calc/sources';
import { ALL_SOURCES } from '../../content/sources.ts';
import { urls } from './urls.ts';

/** A rule set of which something was not compared with the text. */
interface UnreadSet {
  readonly href: string;
  readonly title: string;
  /** Rows known from memory, of how many. */
  readonly unread: number;
  readonly rows: number;
}

type Marked = { readonly mark?: Mark | undefined };

function unreadOf(set: RuleSet, rows: readonly Marked[], table: string): UnreadSet[] {
  const unread = rows.filter(({ mark }) => (mark ?? set.mark) === 'memory').length;
  if (set.mark !== 'memory' && unread === 0) return [];
  const title = `${set.jurisdiction}: ${set.title}`;
  return [{ href: `${urls.table(table)}#${set.id}`, title, unread, rows: rows.length }];
}

/** Rule sets with rows from memory, read off the marks of the tables themselves. */
export const UNREAD_SETS: readonly UnreadSet[] = [
  ...CURE_RULE_SETS.flatMap((set) => unreadOf(set, set.limits, 'nitrite-limits')),
  ...COOK_RULE_SETS.flatMap((set) => unreadOf(set, set.limits, 'cooking-lethality')),
  ...COOL_RULE_SETS.flatMap((set) => unreadOf(set, set.legs, 'cooling-windows')),
];

const sources = Object.entries(ALL_SOURCES)
  .map(([id, source]) => ({ id, ...source }))
  .sort((a, b) => a.title.localeCompare(b.title));

/** Sources named from memory alone. */
export const UNREAD_SOURCES = sources.filter(({ mark }) => mark === 'memory');

/** Sources that were read, but for a part that their note names. */
export const PARTLY_READ = sources.filter(
  ({ mark, note }) =>
    mark === 'confirmed' && /memory|not (?:read|compared|certain|checked)/i.test(note ?? ''),
);
