import { plainWords } from '../../content/words.ts';
import { type Book, openBook } from './book.ts';
import { SAFETY_WORDS } from './safety-words.ts';
import { SEVERITY } from './severity.ts';
import { TABLE_PARTS } from './tables.ts';
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
  return [...cautionRecords(book), ...defectRecords(book), ...tableRecords(book)];
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

function tableRecords({ tables }: Book): SearchRecord[] {
  return tables.flatMap(({ id, data }) => [
    {
      url: urls.table(id),
      kind: 'table' as const,
      title: data.title,
      summary: data.summary,
      level: '',
      levelId: '',
      content: text(data.title, data.summary, data.searchWords.join('. ')),
    },
    ...(TABLE_PARTS[id] ?? []).map((part) => ({
      url: `${urls.table(id)}#${part.id}`,
      kind: 'table' as const,
      title: `${data.title}: ${part.label}`,
      summary: part.words.slice(0, 3).join('; '),
      level: '',
      levelId: '',
      content: text(part.label, data.title, ...part.words),
    })),
  ]);
}

function text(...parts: string[]): string {
  return parts.map(plainWords).join('. ');
}
