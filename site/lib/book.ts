import { type CollectionEntry, getCollection } from 'astro:content';
import { describeDangling, findDangling, type Names } from '../../content/check-links.ts';
import { examples } from '../../content/examples/index.ts';
import { FIGURES } from '../../content/figures/index.ts';
import { ALL_SOURCES } from '../../content/sources.ts';
import type { Carried } from './page-cautions.ts';

export type Technique = CollectionEntry<'techniques'>;
export type Caution = CollectionEntry<'cautions'>;
type Defect = CollectionEntry<'defects'>;
type Table = CollectionEntry<'tables'>;
type Worksheet = CollectionEntry<'worksheets'>;
export type Term = CollectionEntry<'glossary'>;

/** All words of the site, sorted in reading order, with every name checked. */
export interface Book {
  readonly techniques: readonly Technique[];
  readonly cautions: readonly Caution[];
  readonly defects: readonly Defect[];
  readonly tables: readonly Table[];
  readonly worksheets: readonly Worksheet[];
  readonly glossary: readonly Term[];
}

let opened: Promise<Book> | undefined;

/**
 * Opens the book once a build.
 * @throws when an entry names something that is not there, with every such name in the message
 */
export function openBook(): Promise<Book> {
  opened ??= read();
  return opened;
}

async function read(): Promise<Book> {
  const [techniques, cautions, defects, tables, worksheets, glossary] = await Promise.all([
    getCollection('techniques'),
    getCollection('cautions'),
    getCollection('defects'),
    getCollection('tables'),
    getCollection('worksheets'),
    getCollection('glossary'),
  ]);
  const book: Book = {
    techniques: techniques.sort((a, b) => a.data.number - b.data.number),
    cautions: cautions.sort((a, b) => a.data.code.localeCompare(b.data.code)),
    defects: defects.sort((a, b) => a.data.number - b.data.number),
    tables: tables.sort((a, b) => a.data.order - b.data.order),
    worksheets: worksheets.sort((a, b) => a.data.order - b.data.order),
    glossary: glossary.sort((a, b) => a.data.term.localeCompare(b.data.term, 'en')),
  };
  checkNames(book);
  return book;
}

function checkNames(book: Book): void {
  const ids = (entries: readonly { id: string }[]) => new Set(entries.map((entry) => entry.id));
  const entries: Names[] = [
    ...book.techniques.map(({ id, data }) => ({
      place: `content/techniques/${id}.mdx`,
      uses: {
        technique: data.prerequisites,
        caution: data.cautions,
        defect: data.defects,
        worksheet: data.worksheets,
        example: [data.example],
        source: data.sources,
        figure: data.keyNumbers.map((row) => row.figure),
      },
    })),
    ...book.cautions.map(({ id, data }) => ({
      place: `content/cautions/${id}.yaml`,
      uses: { source: data.basis },
    })),
    ...book.defects.map(({ id, data }) => ({
      place: `content/defects/${id}.yaml`,
      uses: { caution: data.cautions },
    })),
    ...book.tables.map(({ id, data }) => ({
      place: `content/tables/${id}.yaml`,
      uses: { caution: data.cautions, source: data.sources },
    })),
    ...book.worksheets.map(({ id, data }) => ({
      place: `content/worksheets/${id}.yaml`,
      uses: { caution: data.cautions },
    })),
    ...book.glossary.map(({ id, data }) => ({
      place: `content/glossary.yaml, ${id}`,
      uses: seenFrom(data.see),
    })),
  ];
  const dangling = findDangling(entries, {
    technique: ids(book.techniques),
    caution: ids(book.cautions),
    defect: ids(book.defects),
    worksheet: ids(book.worksheets),
    table: ids(book.tables),
    example: new Set(Object.keys(examples)),
    source: new Set(Object.keys(ALL_SOURCES)),
    figure: new Set(Object.keys(FIGURES)),
  });
  if (dangling.length > 0) throw new Error(`Names that lead nowhere:\n${describeDangling(dangling)}`);
}

/** What a word of the glossary leads to, by kind: `technique/grinding` is a technique. */
function seenFrom(see: readonly string[]): Record<string, string[]> {
  const uses: Record<string, string[]> = {};
  for (const [kind = '', id = ''] of see.map((path) => path.split('/'))) {
    uses[kind] ??= [];
    uses[kind].push(id);
  }
  return uses;
}

/**
 * Finds one entry by id, for a component that was given a name in a page.
 * @throws when there is none
 */
export function find<Entry extends { id: string }>(
  entries: readonly Entry[],
  id: string,
  kind: string,
): Entry {
  const entry = entries.find((candidate) => candidate.id === id);
  if (!entry) throw new Error(`A page names ${kind} "${id}", and there is none. Look in content/.`);
  return entry;
}

/** What the worksheets of the book bring to a page that has them. */
export function carriedCautions(book: Book): Carried {
  return {
    ofWorksheet: (id) => find(book.worksheets, id, 'worksheet').data.cautions,
    severity: (slug) => find(book.cautions, slug, 'caution').data.severity,
  };
}
