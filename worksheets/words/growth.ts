import type {
  ByFoodCode,
  GrowthDoubt,
  GrowthSet,
  ListeriaByProduct,
  ListeriaGrowth,
} from '@larderwright/calc/growth';
import { fixedText } from '@larderwright/calc/quantities';

/** Why growth cannot be told, in words that go on after "Cannot tell: ". */
export const GROWTH_DOUBT_WORDS: Readonly<Record<GrowthDoubt, string>> = {
  cured: 'it is cured, and no complete set for cured meat is published. Its time rules stand alone.',
  'cure-unknown': 'whether it is cured is not known.',
  salty: 'it is saltier than the lightly salted meat of the published sets (over 2 %).',
  'salt-unknown': 'its salt is not known, and the published sets are for lightly salted meat.',
  'no-readings': 'no reading that counts.',
  'unit-suspect': 'the log may be in the other unit.',
  'offset-unknown': 'the probe’s offset is not entered.',
  'error-unknown': 'the probe’s error is not entered.',
  'start-not-shown': 'no reading shows the core above 53.4 °C (128.1 °F), where growth ends.',
  'doubtful-reading':
    'a reading cannot be, or cannot be read. Until a person excludes it with reason and initials, the core may have been anything there.',
  gap: 'a gap over 60 min lies where it may grow.',
};

export const LISTERIA_DOUBT_WORDS: Readonly<Record<NonNullable<ListeriaGrowth['doubt']>, string>> = {
  'no-group': 'no kind of food is chosen.',
  'no-stay': 'a temperature or a time is not filled in.',
  'outside-range': 'a stay is outside 0 to 12 °C (32 to 53.6 °F), for which the rate is published.',
};

export const BY_PRODUCT_DOUBT_WORDS: Readonly<Record<NonNullable<ListeriaByProduct['doubt']>, string>> = {
  'no-ph': 'no pH is filled in.',
  'no-water-activity': 'no water activity is filled in.',
  'no-stay': LISTERIA_DOUBT_WORDS['no-stay'],
  'outside-range':
    'outside what the model was made for: 2 to 25 °C (35.6 to 77 °F), pH 5.6 to 7.7, water activity 0.95 to 1.',
};

export const BY_PRODUCT_WORDS = {
  begin: 'Reckon Listeria by pH and water activity too',
  ph: 'pH of the product',
  phHint: 'Of the finished product, by a meter.',
  waterActivity: 'Water activity of the product',
  waterActivityHint: 'By a meter. From salt alone it is only guessed: see Brine.',
  answer: 'Listeria monocytogenes by pH and water activity, tenfolds',
  careful:
    'Constants from memory; in one published trial it came out below what was measured. Nitrite and acids are counted as none. Look at the larger of the two ways.',
} as const;

/** What the Food Code's tables say of pH and water activity. Never more than what a table says. */
const FOOD_CODE_WORDS: Readonly<Record<ByFoodCode, string>> = {
  cleared: 'the table asks for no time and temperature control; your own rules may',
  assess: 'keep it cold, or have it assessed',
};

export const foodCodeLine = (a: ByFoodCode, b: ByFoodCode) =>
  `United States Food Code, 1-201.10(B). Cooked, then packed (table A): ${FOOD_CODE_WORDS[a]}. Otherwise (table B): ${FOOD_CODE_WORDS[b]}.`;

/** "2.1 without lag, 0.8 with". */
export function withAndWithoutLag(withoutLag: number, withLag: number): string {
  return `${logsText(withoutLag)} without lag, ${logsText(withLag)} with`;
}

export const GROWTH_FOOD_WORDS: Readonly<Record<GrowthSet['id'], string>> = {
  'roasted-chicken': 'Roasted chicken, uncured',
  'braised-beef': 'Braised beef, uncured',
};

export const LISTERIA_GROUP_NAMES = [
  { value: 'pate', label: 'Pâté and meat spreads' },
  { value: 'deli-meat', label: 'Sliced cooked meats' },
  { value: 'frankfurter', label: 'Scalded sausages' },
  { value: 'smoked-seafood', label: 'Smoked fish' },
];

/** Tenfolds to the tenth, never shown smaller than they are. */
export function logsText(log10: number): string {
  return fixedText(log10, 1, 'up');
}

/** How growth is worked out. */
export const growthWorkings = {
  perfringens:
    'Growth rate at every moment by the cardinal temperature model (Rosso 1993) with the figures of a paper on cooling roasted chicken and braised beef, added up along straight lines between readings; then Baranyi and Roberts 1994. Lag: 8.068 generations, Juneja 2001. Models, lag and where the figures belong are from memory. At most: with the probe’s error put on or taken off, whichever is more.',
  listeria:
    'Tenfolds a day at 5 °C by kind of food, United States risk assessment of 2003 (from memory), brought to each temperature by ((T + 1.18) ÷ 6.18)². Each stay is counted at its own temperature. For what got on after the cook.',
  byProduct:
    'Rate at 25 °C of 0.419 an hour, brought down by temperature ((T + 2.83) ÷ 27.83)², water activity (aw − 0.923) ÷ 0.077 and pH 1 − 10^(4.97 − pH), and once more where several of them press at a time; every stay at its own temperature, then Baranyi and Roberts 1994 from one cell a gram up to 10^8. Lag: 4.5 generations. Mejlholm and Dalgaard 2009, all from memory. For what got on after the cook.',
} as const;
