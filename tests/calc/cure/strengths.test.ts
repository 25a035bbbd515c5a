import { CURING_SALT_STRENGTHS, nitriteOfAGramPerKg, STRENGTH_RANGE } from '@larderwright/calc/cure';
import { expect, it } from 'vitest';

it('a gram of the 6.25 % salt in a kilogram brings 62.5 mg/kg', () => {
  // derived: 1 g × 0.0625 = 62.5 mg, on 1 kg
  expect(nitriteOfAGramPerKg(6.25)).toBe(62.5);
});

it('only the strong concentrate lies above what a worksheet takes, and its name says so', () => {
  const refused = CURING_SALT_STRENGTHS.filter(({ nitritePercent }) =>
    nitritePercent.some(
      (percent) => percent / 100 < STRENGTH_RANGE.min || percent / 100 > STRENGTH_RANGE.max,
    ),
  );
  expect(refused.map(({ name }) => name)).toEqual([expect.stringContaining('no worksheet takes it')]);
});

it('strengths stand weakest first, since that is the danger to show', () => {
  const lows = CURING_SALT_STRENGTHS.map(({ nitritePercent: [low] }) => low);
  expect(lows).toEqual([...lows].sort((a, b) => a - b));
});

it('only one salt of the list holds nitrate, and the list says so', () => {
  // Trade descriptions of the numbered pink salts: the second has sodium nitrate, the first has none (from memory).
  expect(
    CURING_SALT_STRENGTHS.filter(({ nitratePercent }) => nitratePercent > 0).map(({ id }) => id),
  ).toEqual(['pink-two']);
});
