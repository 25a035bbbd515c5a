import { BLOCKS } from '../../content/blocks.ts';
import { type Book, openBook, type Technique } from './book.ts';
import { urls } from './urls.ts';

export interface Link {
  readonly href: string;
  readonly label: string;
}

/** A heading of the contents at the foot of every page, with what stands under it. */
export interface ContentsGroup {
  readonly title: string;
  readonly links: readonly Link[];
}

export type SectionId = 'techniques' | 'worksheets' | 'tables' | 'cautions' | 'defects';

/** The sections named in the head of every page. */
export const SECTIONS: readonly (Link & { id: SectionId })[] = [
  { id: 'techniques', href: urls.techniques, label: 'Techniques' },
  { id: 'worksheets', href: urls.worksheets, label: 'Worksheets' },
  { id: 'tables', href: urls.tables, label: 'Tables' },
  { id: 'cautions', href: urls.cautions, label: 'Cautions' },
  { id: 'defects', href: urls.defects, label: 'Defects' },
];

/** The whole book as groups of links, in reading order. */
export async function contents(): Promise<ContentsGroup[]> {
  const book = await openBook();
  const groups: ContentsGroup[] = [
    ...techniqueGroups(book),
    {
      title: 'Worksheets',
      links: [
        { href: urls.batches, label: 'Batches' },
        { href: urls.compare, label: 'Compare and learn' },
        { href: urls.recordsDesk, label: 'Records in and out' },
        { href: urls.forms, label: 'Printed forms' },
        { href: urls.clocks, label: 'Clocks' },
        { href: urls.settings, label: 'Settings' },
        ...book.worksheets.map(({ id, data }) => ({ href: urls.worksheet(id), label: data.title })),
      ],
    },
    {
      title: 'Tables',
      links: book.tables.map(({ id, data }) => ({ href: urls.table(id), label: data.title })),
    },
    {
      title: 'When it matters',
      links: [
        { href: urls.cautions, label: `All ${book.cautions.length} cautions` },
        { href: urls.defects, label: `All ${book.defects.length} defects` },
        { href: urls.glossary, label: `Glossary, ${book.glossary.length} words` },
        { href: urls.learn, label: 'Learning path' },
        { href: urls.demos, label: 'Example batches' },
        { href: urls.sources, label: 'Sources' },
        { href: urls.howWeKnow, label: 'How we know' },
        { href: urls.unknown, label: 'What we do not know' },
        { href: urls.search, label: 'Search' },
      ],
    },
  ];
  return groups.filter((group) => group.links.length > 0);
}

function techniqueGroups(book: Book): ContentsGroup[] {
  return BLOCKS.map(({ id, title }) => ({
    title,
    links: book.techniques.filter((t) => t.data.block === id).map(techniqueLink),
  }));
}

export function techniqueLink({ id, data }: Technique): Link {
  return { href: urls.technique(id), label: data.short };
}

/** The pages before and after one in a list of entries. */
export function neighbours<Entry extends { id: string }>(
  entries: readonly Entry[],
  id: string,
  link: (entry: Entry) => Link,
): { previous: Link | null; next: Link | null } {
  const at = entries.findIndex((entry) => entry.id === id);
  const before = entries[at - 1];
  const after = entries[at + 1];
  return { previous: before ? link(before) : null, next: after ? link(after) : null };
}
