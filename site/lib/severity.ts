import type { CautionSeverity } from '../../content/schemas.ts';

/** The word and the shape of each level. The colour only supports them. */
export const SEVERITY: Readonly<Record<CautionSeverity, { word: string; meaning: string; path: string }>> = {
  stop: {
    word: 'Stop',
    meaning: 'Can kill or do lasting harm. Do not go on until it is answered.',
    path: 'M6.2 1h7.6L19 6.2v7.6L13.8 19H6.2L1 13.8V6.2z',
  },
  high: {
    word: 'High risk',
    meaning: 'Likely illness or serious injury.',
    path: 'M10 1.5 19.5 18.5H.5z',
  },
  'take-care': {
    word: 'Take care',
    meaning: 'Injury or illness if you are careless.',
    path: 'M10 .8 19.2 10 10 19.2.8 10z',
  },
  legal: {
    word: 'Law',
    meaning: 'A duty set by law, or one of labelling.',
    path: 'M3 2h14v16H3z',
  },
};

/** Worst first. */
export const SEVERITY_ORDER: readonly CautionSeverity[] = ['stop', 'high', 'take-care', 'legal'];

export function bySeverity(
  a: { data: { severity: CautionSeverity; code: string } },
  b: { data: { severity: CautionSeverity; code: string } },
): number {
  return (
    SEVERITY_ORDER.indexOf(a.data.severity) - SEVERITY_ORDER.indexOf(b.data.severity) ||
    a.data.code.localeCompare(b.data.code)
  );
}
