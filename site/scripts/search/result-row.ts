import { readExcerpt } from './excerpt.ts';
import type { HitData } from './index-types.ts';
import { make } from './make.ts';

/** One result: what kind it is and how grave, its title as the link, and a line of it. */
export function resultRow(data: HitData): HTMLLIElement {
  const kind = data.filters.kind?.[0] ?? data.meta.kind ?? '';
  const section = bestSection(data);
  const level = data.meta.level ?? '';
  const tag = make('span', { className: 'search-kind' }, kind);
  if (level) {
    const word = make('strong', {}, level);
    word.dataset.level = data.meta.levelId ?? '';
    tag.append(' · ', word);
  }
  const title = section ? `${data.meta.title}: ${section.title}` : (data.meta.title ?? data.url);
  const link = make('a', { href: section?.url ?? data.url }, title);
  const line = make('p');
  if (data.meta.summary) line.append(data.meta.summary);
  else line.append(...readExcerpt(section?.excerpt ?? data.excerpt).map(stretch));
  return make('li', {}, tag, link, line);
}

function stretch({ text, matched }: { text: string; matched: boolean }): Node {
  return matched ? make('mark', {}, text) : document.createTextNode(text);
}

/** The section of a page that matched most, or null where the page is one piece. */
function bestSection({ sub_results: sections, url, filters }: HitData) {
  if (filters.kind?.includes('worksheet')) return null;
  const inside = sections.filter((section) => section.url !== url);
  if (inside.length === 0) return null;
  return inside.reduce((best, section) =>
    (section.locations?.length ?? 0) > (best.locations?.length ?? 0) ? section : best,
  );
}
