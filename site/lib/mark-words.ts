import type { Mark } from '@larderwright/calc/sources';

/** How a figure is known, as a reader sees it. */
export const MARK_WORDS: Readonly<Record<Mark, { word: string; meaning: string }>> = {
  confirmed: { word: 'confirmed', meaning: 'Read in the source or in a faithful copy of it.' },
  memory: {
    word: 'from memory',
    meaning: 'Written from memory and not checked against the text. Verify before use.',
  },
  derived: { word: 'worked out', meaning: 'Arithmetic on other figures.' },
  'common-practice': { word: 'common practice', meaning: 'A habit of the trade, with no published source.' },
};
