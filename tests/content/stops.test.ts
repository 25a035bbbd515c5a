import { expect, it } from 'vitest';
import { readCollection } from './read-content.ts';

const names = (value: unknown) => (Array.isArray(value) ? value.map(String) : []);

/**
 * Where each stop stands: common practice, no source. The numbers are those of the technique pages;
 * a page nobody has written yet is left out.
 */
const STOPS: Readonly<Record<string, readonly number[]>> = {
  'weigh-curing-salt': [7, 29, 30, 31, 32],
  'pink-salt-mix-ups': [7],
  'no-pure-nitrite': [7],
  'lock-up-curing-salt': [7],
  'no-spoons-for-curing-salt': [7],
  'sealed-without-air': [25, 26, 27, 34],
  'poultry-cooked-through': [14, 18, 19, 23, 28],
  'trichinella-wild': [2, 20, 32],
  'game-shot-and-sick-animals': [2, 20],
  'listeria-in-pate': [16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 34],
  'cooling-clock': [15, 16, 17, 18, 19, 20, 21, 22, 23, 25, 26, 27, 29, 31, 36],
  'grinder-hands': [11, 28],
  'slicer-blade': [33],
  'wild-fungi': [10, 21],
};

const techniques = readCollection('techniques');
const worksheets = new Map(readCollection('worksheets').map(({ id, data }) => [id, names(data.cautions)]));
const stops = readCollection('cautions').filter(({ data }) => data.severity === 'stop');

it('every stop has its pages', () => {
  expect(stops.map(({ id }) => id).sort()).toEqual(Object.keys(STOPS).sort());
});

it.each(techniques)('$place carries its stops, and no other than its worksheets bring', ({ data }) => {
  const number = Number(data.number);
  const own = Object.keys(STOPS).filter((slug) => STOPS[slug]?.includes(number));
  const brought = names(data.worksheets).flatMap((id) => worksheets.get(id) ?? []);
  const carried = names(data.cautions).filter((slug) => slug in STOPS);
  expect(own.filter((slug) => !carried.includes(slug))).toEqual([]);
  expect(carried.filter((slug) => ![...own, ...brought].includes(slug))).toEqual([]);
});
