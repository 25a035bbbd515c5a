import { type Book, find, type Term } from './book.ts';
import type { Link } from './navigation.ts';
import { urls } from './urls.ts';

/** The letter a word stands under, accents aside. */
export function termLetter({ data }: Term): string {
  return data.term.normalize('NFD').charAt(0).toUpperCase();
}

/** The other names of a word, each said to be what it is. */
export function termNames({ data: { french, everyday, also } }: Term): string[] {
  return [
    ...(everyday ? [everyday] : []),
    ...(french ? [`French ${french}`] : []),
    ...(also.length > 0 ? [`also ${also.join(', ')}`] : []),
  ];
}

/** Where a word leads first, if anywhere: the page has room for one link a word. */
export function seeLink({ data }: Term, book: Book): Link[] {
  return data.see.slice(0, 1).map((path) => {
    const [kind = '', id = ''] = path.split('/');
    switch (kind) {
      case 'technique':
        return { href: urls.technique(id), label: find(book.techniques, id, kind).data.short };
      case 'caution':
        return { href: urls.caution(id), label: `caution ${find(book.cautions, id, kind).data.code}` };
      case 'defect':
        return { href: urls.defect(id), label: find(book.defects, id, kind).data.title };
      case 'table':
        return { href: urls.table(id), label: find(book.tables, id, kind).data.title };
      default:
        throw new Error(`content/glossary.yaml names "${path}", and "${kind}" is no kind of page.`);
    }
  });
}
