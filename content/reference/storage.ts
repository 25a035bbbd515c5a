import { FOOD_CODE_DAYS, FOOD_CODE_STORE_C, SEALED_DAYS, SEALED_STORE_C } from '@larderwright/calc/label';
import type { Mark } from '@larderwright/calc/sources';
import { figurePlain } from '../figures/figure-text.ts';
import type { Figure } from '../figures/index.ts';

/** How long something keeps, as a source says it. A date of your own rests on your own plan. */
export interface KeepingTime {
  readonly id: string;
  readonly food: string;
  readonly chilled: string;
  readonly frozen: string;
  readonly note: string;
  readonly source: string;
  readonly mark: Mark;
}

export interface KeepingGroup {
  readonly id: string;
  readonly title: string;
  readonly notes: readonly string[];
  readonly sources: readonly string[];
  readonly times: readonly KeepingTime[];
}

/** A temperature of a rule on both scales. */
const at = (value: Figure['value'], bound?: 'at-most') =>
  figurePlain({ value, unit: 'C', mark: 'confirmed', ...(bound && { bound }) });

const chart = (id: string, food: string, chilled: string, frozen: string, note = ''): KeepingTime => ({
  id,
  food,
  chilled,
  frozen,
  note,
  source: 'us-cold-storage-chart',
  mark: 'confirmed',
});

/** Keeping times by whose rule or advice they are. They are never blended. */
export const KEEPING_GROUPS: readonly KeepingGroup[] = [
  {
    id: 'ready-to-eat-rules',
    title: 'Ready to eat, sold or served: what rules say',
    notes: [
      'Each row is one country’s rule, and each counts its days in its own way. Freezing stops the clock; it never starts it again.',
    ],
    sources: ['us-food-code-3-501-17', 'fr-arrete-2009', 'uk-vp-map-guidance', 'common-practice'],
    times: [
      {
        id: 'us-retail',
        food: 'United States, retail and restaurant: made or opened in the kitchen',
        chilled: `${FOOD_CODE_DAYS} days at ${at(FOOD_CODE_STORE_C, 'at-most')}`,
        frozen: 'stops the clock',
        note: 'The day of making or opening is day one. A mixture keeps the earliest date in it.',
        source: 'us-food-code-3-501-17',
        mark: 'confirmed',
      },
      {
        id: 'fr-catering',
        food: 'France, catering: dishes made ahead, without a study of their life',
        chilled: `3 days after the day of making, at ${at([0, 3])}`,
        frozen: '–',
        note: 'The day of making is not counted.',
        source: 'fr-arrete-2009',
        mark: 'confirmed',
      },
      {
        id: 'uk-pack',
        food: 'United Kingdom: packed without air, no further hurdle',
        chilled: `${SEALED_DAYS} days at ${at([SEALED_STORE_C.min, SEALED_STORE_C.max])}`,
        frozen: '–',
        note: 'A fat seal keeps air out as well: count it as a pack until somebody proves otherwise.',
        source: 'uk-vp-map-guidance',
        mark: 'confirmed',
      },
      {
        id: 'opened',
        food: 'Pâté or terrine once cut or opened, at home',
        chilled: '3–4 days',
        frozen: '–',
        note: 'Common advice. No authority’s text was found.',
        source: 'common-practice',
        mark: 'common-practice',
      },
    ],
  },
  {
    id: 'home-chart',
    title: 'At home, United States advice',
    notes: [
      'In a refrigerator at 4 °C (40 °F) or colder. Freezer times are for taste: food held at −18 °C (0 °F) stays safe.',
    ],
    sources: ['us-cold-storage-chart'],
    times: [
      chart('luncheon-unopened', 'Sliced cooked meat, pack unopened', '2 weeks', '1–2 months'),
      chart('luncheon-opened', 'Sliced cooked meat, opened or cut in the shop', '3–5 days', '1–2 months'),
      chart('cooked-sausage', 'Sausage, fully cooked', '1 week', '1–2 months'),
      chart('ham-whole', 'Cooked ham, whole, shop wrapped', '1 week', '1–2 months'),
      chart('ham-slices', 'Cooked ham, slices', '3–5 days', '1–2 months', 'An older edition says 3–4 days.'),
      chart('leftovers', 'Cooked meat, left over', '3–4 days', '2–6 months'),
      chart('raw-sausage', 'Raw sausage', '1–2 days', '1–2 months'),
      chart('hard-sausage', 'Hard or dry sausage', '2–3 weeks', '1–2 months', 'From an older edition.'),
      chart(
        'summer-sausage-unopened',
        'Semi-dry sausage marked “keep refrigerated”, unopened',
        '3 months',
        '1–2 months',
        'From an older edition.',
      ),
      chart('summer-sausage-opened', 'The same, opened', '3 weeks', '1–2 months', 'From an older edition.'),
      chart('raw-ham', 'Raw dried ham, cut', '2–3 months', '1 month'),
    ],
  },
];
