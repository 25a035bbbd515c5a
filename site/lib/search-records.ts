import { plainWords } from '../../content/words.ts';
import { type Book, openBook } from './book.ts';
import { termNames } from './glossary.ts';
import { SAFETY_WORDS } from './safety-words.ts';
import { SEVERITY } from './severity.ts';
import { tableAnchors } from './tables.ts';
import { urls } from './urls.ts';

/** What is searched besides the pages themselves: a caution, a defect, a word, a part or a row of a table. */
export interface SearchRecord {
  readonly url: string;
  readonly kind: 'caution' | 'defect' | 'table' | 'glossary';
  readonly title: string;
  /** The line under the title of a result. */
  readonly summary: string;
  /** Severity or safety word, shown with the kind. */
  readonly level: string;
  /** Key of the level, for its shape. */
  readonly levelId: string;
  /** One row of a table. */
  readonly isRow: boolean;
  /** Everything that may be searched for, hidden words included. */
  readonly content: string;
}

/** All records, in reading order. */
export async function searchRecords(): Promise<SearchRecord[]> {
  const book = await openBook();
  return [
    ...cautionRecords(book),
    ...defectRecords(book),
    ...(await tableRecords(book)),
    ...glossaryRecords(book),
  ];
}

function cautionRecords({ cautions }: Book): SearchRecord[] {
  return cautions.map(({ id, data }) => ({
    url: urls.caution(id),
    kind: 'caution',
    title: data.title,
    summary: plainWords(data.rule),
    level: SEVERITY[data.severity].word,
    levelId: data.severity,
    isRow: false,
    content: text(
      data.title,
      data.code,
      data.searchWords.join('. '),
      data.rule,
      data.protectsAgainst,
      ...data.do,
      ...data.doNot,
    ),
  }));
}

function defectRecords({ defects }: Book): SearchRecord[] {
  return defects.map(({ id, data }) => ({
    url: urls.defect(id),
    kind: 'defect',
    title: data.title,
    summary: plainWords(data.looks.join(' ')),
    level: SAFETY_WORDS[data.safety].word,
    levelId: data.safety,
    isRow: false,
    content: text(data.title, data.searchWords.join('. '), ...data.looks, ...data.causes, data.remedyNow),
  }));
}

async function tableRecords(book: Book): Promise<SearchRecord[]> {
  const records = await Promise.all(
    book.tables.map(async ({ id, data }): Promise<SearchRecord[]> => {
      const table = { kind: 'table' as const, level: '', levelId: '', isRow: false };
      // The rows of defects would only repeat the defects themselves.
      const anchors = (await tableAnchors(id, book)).filter(
        ({ isRow }) => !isRow || id !== 'defects-by-sign',
      );
      return [
        {
          ...table,
          url: urls.table(id),
          title: data.title,
          summary: data.summary,
          content: text(data.title, data.summary, data.searchWords.join('. ')),
        },
        ...anchors.map(({ id: place, label, words, isRow }) => ({
          ...table,
          isRow,
          url: `${urls.table(id)}#${place}`,
          title: `${data.title}: ${label}`,
          summary: words.slice(0, 4).join('; '),
          content: text(label, data.title, ...words),
        })),
      ];
    }),
  );
  return records.flat();
}

function glossaryRecords({ glossary }: Book): SearchRecord[] {
  return glossary.map((term) => ({
    url: urls.term(term.id),
    kind: 'glossary',
    title: term.data.term,
    summary: term.data.means,
    level: '',
    levelId: '',
    isRow: false,
    // Named more than once, so that a word stands before those that only hold it.
    content: text(
      ...Array(3).fill(term.data.term),
      ...termNames(term),
      ...termNames(term),
      ...term.data.searchWords,
      term.data.means,
    ),
  }));
}

function text(...parts: string[]): string {
  return parts.map(plainWords).join('. ');
}
