import type { CookLimit, CookRuleSet } from '../limit.ts';

/** °F, °C as printed, hold for 6.5-log and for 7-log Salmonella as printed. */
export const FSIS_MEAT_ROWS = [
  [130, 54.4, '112 min', '121 min'],
  [131, 55.0, '89 min', '97 min'],
  [132, 55.6, '71 min', '77 min'],
  [133, 56.1, '56 min', '62 min'],
  [134, 56.7, '45 min', '47 min'],
  [135, 57.2, '36 min', '37 min'],
  [136, 57.8, '28 min', '32 min'],
  [137, 58.4, '23 min', '24 min'],
  [138, 58.9, '18 min', '19 min'],
  [139, 59.5, '15 min', '15 min'],
  [140, 60.0, '12 min', '12 min'],
  [141, 60.6, '9 min', '10 min'],
  [142, 61.1, '8 min', '8 min'],
  [143, 61.7, '6 min', '6 min'],
  [144, 62.2, '5 min', '5 min'],
  [145, 62.8, '4 min', '4 min'],
  [146, 63.3, '169 s', '182 s'],
  [147, 63.9, '134 s', '144 s'],
  [148, 64.4, '107 s', '115 s'],
  [149, 65.0, '85 s', '91 s'],
  [150, 65.6, '67 s', '72 s'],
  [151, 66.1, '54 s', '58 s'],
  [152, 66.7, '43 s', '46 s'],
  [153, 67.2, '34 s', '37 s'],
  [154, 67.8, '27 s', '29 s'],
  [155, 68.3, '22 s', '23 s'],
  [156, 68.9, '17 s', '19 s'],
  [157, 69.4, '14 s', '15 s'],
  [158, 70.0, '0 s', '0 s'],
  [159, 70.6, '0 s', '0 s'],
  [160, 71.1, '0 s', '0 s'],
] as const satisfies readonly (readonly [number, number, string, string])[];

/** Seconds of a printed time: `112 min`, `169 s`, `<10 s` (reached at once). */
export function printedSeconds(printed: string): number {
  if (printed.startsWith('<')) return 0;
  const [figure = '', unit] = printed.split(' ');
  return Number(figure) * (unit === 'min' ? 60 : 1);
}

function limits(prefix: string, column: 2 | 3): CookLimit[] {
  return FSIS_MEAT_ROWS.map((row) => ({
    id: `${prefix}-${row[0]}F`,
    stated: { value: row[0], unit: 'F' },
    printedC: row[1],
    hold: { s: printedSeconds(row[column]), printed: row[column] },
    serves: 'no-poultry',
    form: 'any',
    source: 'fsis-cooking-meat',
    mark: 'confirmed',
  }));
}

const shared = {
  jurisdiction: 'United States, federal plants',
  edition: 'Appendix A, 1999; carried into the edition of December 2021',
  reviewed: '2026-11-25',
  sources: ['fsis-cooking-meat', 'fsis-cooking-conditions'],
  mark: 'confirmed',
  conditions: ['come-up', 'humidity', 'salmonella-only'],
} as const satisfies Partial<CookRuleSet>;

/** Meat without any poultry, 6.5-log Salmonella. Look rows up: the column is not a formula. */
export const FSIS_MEAT_6_5: CookRuleSet = {
  ...shared,
  id: 'us-fsis-meat-6.5',
  title: 'Meat without poultry, 6.5-log Salmonella',
  limits: limits('fsis', 2),
};

/** Meat without any poultry, 7-log Salmonella. Not for poultry, which has tables of its own. */
export const FSIS_MEAT_7_0: CookRuleSet = {
  ...shared,
  id: 'us-fsis-meat-7.0',
  title: 'Meat without poultry, 7-log Salmonella',
  limits: limits('fsis7', 3),
};
