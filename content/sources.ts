import { SOURCES, type Source } from '@larderwright/calc/sources';

/**
 * Sources the words lean on and no computation does: hygiene law, advice, workplace practice.
 * Those behind a computed figure stand in calc/sources. An id is given once in the two together.
 */
export const WORD_SOURCES = {
  'common-practice': {
    title: 'Common practice of the trade',
    issuer: 'no published source',
    edition: 'undated',
    reviewed: '2026-11-25',
    mark: 'common-practice',
  },
} as const satisfies Record<string, Source>;

/** Every source by id: calc's and the words'. */
export const ALL_SOURCES: Readonly<Record<string, Source>> = { ...SOURCES, ...WORD_SOURCES };
