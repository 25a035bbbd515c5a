import { describe, expect, it } from 'vitest';
import type { CautionSeverity } from '../../content/schemas.ts';
import { besideWorksheet, topCautions } from '../../site/lib/page-cautions.ts';
import { readCollection } from './read-content.ts';

const names = (value: unknown) => (Array.isArray(value) ? value.map(String) : []);

/** The technique pages each caution stands on by itself, by number: common practice, no source. */
const CAUTIONS: Readonly<Record<string, readonly number[]>> = {
  'weigh-curing-salt': [7, 29, 30, 31, 32],
  'pink-salt-mix-ups': [7],
  'no-pure-nitrite': [7],
  'lock-up-curing-salt': [7],
  'no-spoons-for-curing-salt': [7],
  'nitrite-ceiling-and-floor': [7, 30, 31],
  'no-nitrate-in-bacon': [30],
  'sealed-without-air': [25, 26, 27, 34],
  'vacuum-life-needs-a-hurdle': [34],
  'raw-aromatics-in-oil-or-fat': [10, 25, 26],
  'poultry-cooked-through': [14, 18, 19, 23, 28],
  'pork-liver-hepatitis-e': [4, 17, 20],
  'trichinella-wild': [2, 20, 32],
  'trichinella-pork-dried': [28, 32],
  toxoplasma: [32],
  'game-shot-and-sick-animals': [2, 20],
  'count-out-count-in': [20, 22, 23],
  'listeria-in-pate': [16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 34],
  'liver-and-vitamin-a': [17, 18],
  'after-the-cook': [15, 24, 33, 34],
  'cooling-clock': [15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 29, 31, 33, 34, 35, 36],
  'chill-depth': [13, 15],
  'press-slows-cooling': [15],
  'raw-and-cooked-apart': [1, 2, 3, 5, 8, 11, 12, 13, 16, 17, 18, 19, 20, 22, 23, 28, 29, 30, 31, 32],
  'grinder-hands': [11, 28],
  'slicer-blade': [33],
  'knife-hand': [3, 23],
  'chopper-lid': [12, 19],
  'stuffer-and-needles': [28, 31],
  'hot-bath-scald': [14],
  'hot-fat': [25, 26],
  flambe: [8, 18],
  'dry-ice': [11],
  'smoke-and-gas': [29, 30],
  'allergens-listed': [2, 3, 4, 5, 6, 8, 9, 10, 11, 12, 16, 17, 19, 20, 21, 25, 27, 28, 29, 35],
  'may-contain': [35],
  'hidden-allergens': [6, 10, 35],
  'wild-fungi': [10, 21],
  'wild-plants': [10, 21],
  'stones-and-raw-beans': [10],
  'one-vacuum-machine': [34],
  'hot-filled-jars': [26, 34],
  'reused-brine-and-marinade': [8, 31],
  'curing-room-cold': [30, 32],
  'staph-toxin': [1, 27, 33],
  'sick-worker': [1],
  'raw-egg-and-flour': [9, 22],
  'test-poach-first': [5, 12],
  'thermometer-check': [14, 36],
  'sulphites-in-sausage': [28],
  'nitrite-not-for-infants': [7, 35],
  'selling-needs-approval': [35],
  'use-by-not-best-before': [34, 35, 36],
  'reserved-names': [35],
  'home-keeping': [34],
  sanitiser: [1],
  'lifting-and-cold-rooms': [1],
  'salt-and-portion': [35],
};

/** What a page tells at its top beyond that, because its own method works with it. Common practice, no source. */
const BESIDES: Readonly<Record<number, readonly string[]>> = {
  3: ['count-out-count-in'],
  5: ['nitrite-ceiling-and-floor'],
  10: ['count-out-count-in'],
  11: ['count-out-count-in'],
  16: ['pork-liver-hepatitis-e'],
  18: ['allergens-listed', 'raw-egg-and-flour'],
  20: ['selling-needs-approval'],
  22: ['allergens-listed'],
  23: ['allergens-listed', 'hot-bath-scald'],
  25: ['staph-toxin'],
  27: ['hot-bath-scald'],
  29: ['chopper-lid', 'stuffer-and-needles', 'nitrite-ceiling-and-floor'],
  32: ['nitrite-ceiling-and-floor', 'selling-needs-approval'],
  33: ['allergens-listed'],
};

/** The defects each technique page must show, by number: common practice, no source. */
const DEFECTS: Readonly<Record<number, readonly number[]>> = {
  11: [5, 44],
  12: [1, 2, 3],
  13: [10, 12, 30],
  14: [2, 6, 8, 9, 34],
  15: [1, 12, 29],
  16: [1, 2, 4, 6, 7, 28],
  17: [4, 7, 23, 24],
  18: [9, 34, 35],
  19: [3, 34],
  20: [23, 44],
  21: [12, 29],
  22: [13, 31, 32, 33],
  23: [10, 30],
  24: [13, 14, 15, 16],
  25: [41],
  26: [42],
  27: [14, 15, 17],
  28: [5, 37],
  29: [36, 37, 43],
  30: [18, 39],
  31: [38, 39, 40, 45],
  32: [19, 21, 40],
  33: [1, 22, 30],
  34: [11, 17, 20, 21, 26],
};

const techniques = readCollection('techniques');
const worksheets = new Map(readCollection('worksheets').map(({ id, data }) => [id, names(data.cautions)]));
const cautions = readCollection('cautions');
const defects = new Map(readCollection('defects').map(({ id, data }) => [id, data]));
const severities = new Map(cautions.map(({ id, data }) => [id, data.severity as CautionSeverity]));
const carried = {
  ofWorksheet: (id: string) => worksheets.get(id) ?? [],
  severity: (slug: string) => severities.get(slug) ?? 'stop',
};

it('every caution has its pages', () => {
  expect(cautions.map(({ id }) => id).sort()).toEqual(Object.keys(CAUTIONS).sort());
});

describe.each(techniques)('$place', ({ data }) => {
  const number = Number(data.number);
  const own = Object.keys(CAUTIONS).filter((slug) => CAUTIONS[slug]?.includes(number));
  const page = { cautions: names(data.cautions), worksheets: names(data.worksheets) };
  const brought = page.worksheets.flatMap(carried.ofWorksheet);

  it('carries its cautions', () => {
    expect(own.filter((slug) => !page.cautions.includes(slug))).toEqual([]);
  });

  it('carries no stop but its own and what its worksheets bring, and nothing else of other work', () => {
    const isStop = (slug: string) => severities.get(slug) === 'stop';
    const others = page.cautions.filter((slug) => ![...own, ...(BESIDES[number] ?? [])].includes(slug));
    expect(others.filter((slug) => !isStop(slug))).toEqual([]);
    expect(others.filter((slug) => isStop(slug) && !brought.includes(slug))).toEqual([]);
  });

  it('tells every caution of its worksheets once, the stops at its top', () => {
    const top = topCautions(page, carried);
    const told = [...top, ...page.worksheets.flatMap((id) => besideWorksheet(page, id, carried))];
    expect(brought.filter((slug) => !told.includes(slug))).toEqual([]);
    expect(new Set(told).size).toBe(told.length);
    expect(brought.filter((slug) => severities.get(slug) === 'stop' && !top.includes(slug))).toEqual([]);
  });

  it('shows the defects of its work', () => {
    const shown = names(data.defects).map((id) => Number(defects.get(id)?.number));
    expect((DEFECTS[number] ?? []).filter((one) => !shown.includes(one))).toEqual([]);
  });
});

it('the page on records shows the defects that are a safety matter', () => {
  const review = techniques.find(({ data }) => data.number === 36);
  const safety = [...defects].filter(([, data]) => data.safety === 'S').map(([id]) => id);
  expect(safety.filter((id) => !names(review?.data.defects).includes(id))).toEqual([]);
});
