import { urls } from '../../lib/urls.ts';
import type { Hit, SearchIndex, SearchScript } from './index-types.ts';
import { KINDS, type Kind } from './kinds.ts';
import { corrected } from './nearest.ts';
import { readQuery, variantsOf, withoutFiller, withoutOne } from './query.ts';
import { cautionsFirst, mergeHits, rowsApart } from './rank.ts';
import { readWordList } from './word-list.ts';

/** Ids of the index by what they are, so that a result need not be fetched to know its kind. */
interface Shelves {
  readonly kinds: Readonly<Record<Kind, ReadonlySet<string>>>;
  readonly stops: ReadonlySet<string>;
  readonly rows: ReadonlySet<string>;
  readonly conversions: ReadonlySet<string>;
  readonly limits: ReadonlySet<string>;
}

/** What a query found. */
interface Answer {
  readonly hits: readonly Hit[];
  readonly counts: Readonly<Record<Kind, number>>;
  /** The query that was answered instead, where the one typed found nothing. */
  readonly instead: string | null;
}

let index: Promise<{ opened: SearchIndex; shelves: Shelves }> | undefined;
let words: Promise<readonly string[]> | undefined;

/** Opens the index once. A failure may be tried again. */
export function openIndex(): Promise<{ opened: SearchIndex; shelves: Shelves }> {
  index ??= load();
  index.catch(() => {
    index = undefined;
  });
  return index;
}

async function load() {
  // Written after the build, so no bundler may look for it.
  const path = urls.searchScript;
  const { createInstance }: SearchScript = await import(/* @vite-ignore */ path);
  // This is a worker already.
  const opened = createInstance({ basePath: urls.searchIndex, noWorker: true });
  await opened.init();
  await opened.filters();
  const shelf = async (filters: Record<string, string>) => {
    const { results } = await opened.search(null, { filters });
    return new Set(results.map(({ id }) => id));
  };
  const [stops, rows, conversions, limits, ...kinds] = await Promise.all([
    shelf({ level: 'stop' }),
    shelf({ place: 'row' }),
    shelf({ place: 'conversion' }),
    shelf({ place: 'limit' }),
    ...KINDS.map((kind) => shelf({ kind })),
  ]);
  const byKind = Object.fromEntries(KINDS.map((kind, at) => [kind, kinds[at] ?? new Set()]));
  return {
    opened,
    shelves: { kinds: byKind as Record<Kind, Set<string>>, stops, rows, conversions, limits },
  };
}

/** The words of the index, the commonest first. Without them nothing counts as mistyped. */
function wordList(): Promise<readonly string[]> {
  words ??= fetch(urls.searchWords)
    .then((answer) => (answer.ok ? answer.text() : ''))
    .then(readWordList)
    .catch(() => []);
  return words;
}

/**
 * Looks a query up with its synonyms. Slips of the finger are put right first: the index would answer any letters
 * with something. Where nothing has all the words, those that only ask are left out, then one word at a time.
 * @param kind show only these; null for all
 */
export async function look(typed: string, kind: Kind | null): Promise<Answer> {
  const [{ opened, shelves }, known] = await Promise.all([openIndex(), wordList()]);
  const find = async (query: string): Promise<Hit[]> => {
    const lists = await Promise.all(variantsOf(query).map((variant) => opened.search(variant)));
    return mergeHits(lists.map(({ results }) => results.map((hit) => weighed(hit, shelves))));
  };
  const query = readQuery(typed);
  const meant = known.length === 0 ? query : corrected(query, known);
  const plain = withoutFiller(meant);
  let answered = meant;
  let hits: Hit[] = [];
  for (const attempt of [meant, plain, ...withoutOne(plain)]) {
    if (attempt === '') continue;
    answered = attempt;
    hits = await find(attempt);
    if (hits.length > 0) break;
  }
  return {
    hits: order(hits, kind, shelves),
    counts: countsOf(hits, shelves),
    instead: hits.length === 0 || answered === query || answered === withoutFiller(query) ? null : answered,
  };
}

/** How much a result of a kind counts: short records score high by themselves, whole pages low. */
const SHARES: Readonly<Record<Kind, number>> = {
  technique: 2,
  caution: 1,
  table: 1,
  defect: 1,
  glossary: 0.4,
  worksheet: 1,
};
const ROW_SHARE = 0.5;
const LIMIT_SHARE = 0.9;
const CONVERSION_SHARE = 0.15;

function weighed(hit: Hit, { kinds, rows, conversions, limits }: Shelves): Hit {
  const kind = KINDS.find((one) => kinds[one].has(hit.id));
  const plain = rows.has(hit.id) ? ROW_SHARE : kind ? SHARES[kind] : 1;
  const share = conversions.has(hit.id) ? CONVERSION_SHARE : limits.has(hit.id) ? LIMIT_SHARE : plain;
  return { ...hit, score: hit.score * share };
}

function order(hits: readonly Hit[], kind: Kind | null, { kinds, stops, rows }: Shelves): Hit[] {
  if (kind !== null) return hits.filter(({ id }) => kinds[kind].has(id));
  return cautionsFirst(rowsApart(hits, rows), kinds.caution, stops);
}

function countsOf(hits: readonly Hit[], { kinds }: Shelves): Record<Kind, number> {
  const counts = KINDS.map((kind) => [kind, hits.filter(({ id }) => kinds[kind].has(id)).length]);
  return Object.fromEntries(counts) as Record<Kind, number>;
}
