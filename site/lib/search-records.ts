import { plainWords } from '../../content/words.ts';
import { type Book, openBook } from './book.ts';
import { SAFETY_WORDS } from './safety-words.ts';
import { SEVERITY } from './severity.ts';
import { tableAnchors } from './tables.ts';
import { urls } from './urls.ts';

/** What is searched besides the pages themselves: one record a caution, a defect, a part of a table. */
export interface SearchRecord {
  readonly url: string;
  readonly kind: 'caution' | 'defect' | 'table';
  readonly title: string;
  /** The line under the title of a result. */
  readonly summary: string;
  /** Severity or safety word, shown with the kind. */
  readonly level: string;
  /** Key of the level, for its shape. */
  readonly levelId: string;
  /** Everything that may be searched for, hidden words included. */
  readonly content: string;
}

/** All records, in reading order. */
export async function searchRecords(): Promise<SearchRecord[]> {
  const book = await openBook();
  return [...cautionRecords(book), ...defectRecords(book), ...(await tableRecords(book))];
}

function cautionRecords({ cautions }: Book): SearchRecord[] {
  return cautions.map(({ id, data }) => ({
    url: urls.caution(id),
    kind: 'caution',
    title: data.title,
    summary: plainWords(data.rule),
    level: SEVERITY[data.severity].word,
    levelId: data.severity,
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
    content: text(data.title, data.searchWords.join('. '), ...data.looks, ...data.causes, data.remedyNow),
  }));
}

async function tableRecords(book: Book): Promise<SearchRecord[]> {
  const records = await Promise.all(
    book.tables.map(async ({ id, data }): Promise<SearchRecord[]> => {
      const table = { kind: 'table' as const, level: '', levelId: '' };
      const anchors = await tableAnchors(id, book);
      return [
        {
          ...table,
          url: urls.table(id),
          title: data.title,
          summary: data.summary,
          content: text(data.title, data.summary, data.searchWords.join('. ')),
        },
        ...anchors.map(({ id: place, label, words }) => ({
          ...table,
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

function text(...parts: string[]): string {
  return parts.map(plainWords).join('. ');
}
