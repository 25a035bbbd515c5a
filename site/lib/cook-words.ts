import type { CookCondition, CookLimit, FatColumn, HoldByFat } from '@larderwright/calc/lethality';
import { formatLimitTemp } from '@larderwright/calc/quantities';

/** What must also be true for a pair to count, as it stands under its table. */
export const CONDITION_WORDS: Readonly<Record<CookCondition, string>> = {
  'come-up':
    'The core must not dwell on the way up: more than 6 hours between 10 and 54.4 °C (50–130 °F) is outside the table.',
  humidity:
    'A product that is not in water or in a tight wrap also needs humid air, or its surface is not cooked by this table.',
  'roast-oven': 'The pairs for whole roasts go with the oven temperatures the code names beside them.',
  'wild-game':
    'Wild game takes the pair for poultry. Game raised and slaughtered under inspection may take the pair for minced meat.',
  'salmonella-only': 'The table is made for Salmonella. It says nothing of hepatitis E or of spores.',
  'chilled-life':
    'This is for a long chilled life in a pack without air. It is not a cook for a plain terrine, and no product is shelf-stable by it.',
  'advice-only':
    'Advice from published trials. It is not law, and it stands beside your rule set, not in its place.',
};

const SERVES_WORDS: Readonly<Record<CookLimit['serves'], string>> = {
  'no-poultry': 'no poultry in it',
  poultry: 'with poultry in it',
  any: 'any meat',
};

const FORM_WORDS: Readonly<Record<CookLimit['form'], string>> = {
  any: '',
  comminuted: 'minced or ground',
  intact: 'whole pieces',
  'whole-roast': 'whole roasts',
};

/** Who a limit serves, in a phrase. */
export function servesPhrase({ serves, form }: CookLimit): string {
  return [SERVES_WORDS[serves], FORM_WORDS[form]].filter((part) => part !== '').join(', ');
}

/** A printed hold as a reader says it. */
export function holdWords(printed: string): string {
  if (printed === '0 s') return 'when reached';
  return printed.startsWith('<') ? `less than ${printed.slice(1).trim()}` : printed;
}

/** A limit's temperature on both scales, rounded up, and what the table itself prints where that differs. */
export function limitTemps(limit: CookLimit): { celsius: string; fahrenheit: string; printed: string } {
  const { celsius, fahrenheit } = formatLimitTemp(limit.stated, 'minimum');
  const differs = limit.printedC !== undefined && Number.parseFloat(celsius) !== limit.printedC;
  const printed = differs ? `${limit.printedC?.toFixed(1)} °C` : '';
  return { celsius, fahrenheit, printed };
}

/** One bird's columns of a poultry table: the fat contents listed at any temperature, leanest first. */
export function fatColumns(limits: readonly CookLimit[], bird: keyof HoldByFat): number[] {
  const fats = limits.flatMap(({ hold }) => ('turkey' in hold ? hold[bird].map((c) => c.maxFatPercent) : []));
  return [...new Set(fats)].sort((a, b) => a - b);
}

/** The hold for a fat content, or null where the source gives none at that temperature. */
export function atFat(
  hold: CookLimit['hold'],
  bird: keyof HoldByFat,
  maxFatPercent: number,
): FatColumn | null {
  if (!('turkey' in hold)) return null;
  return hold[bird].find((column) => column.maxFatPercent === maxFatPercent) ?? null;
}
