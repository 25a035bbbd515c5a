import { blankEntry, type Entry } from '@larderwright/calc/quantities';

/** The links as weighed with one of them replaced; boxes before it stay blank, which is unknown. */
export function withLink(links: readonly Entry[], index: number, entry: Entry): Entry[] {
  const before = Array.from({ length: index }, (_, place) => links[place] ?? blankEntry('g'));
  return [...before, entry, ...links.slice(index + 1)];
}
