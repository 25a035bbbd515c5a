import { cookedHamName, keepsCookedSausageStandard, proteinFatFreePercent } from '@larderwright/calc/formula';
import { describe, expect, it } from 'vitest';

describe('a frankfurter-type sausage', () => {
  // 9 CFR 319.180(a): fat 30 % at most, fat and added water 40 % at most. Published limits, derived sum.
  it('breaks the standard with 28 % fat and 13 % added water: 41 % together', () => {
    expect(keepsCookedSausageStandard(0.28, 0.13)).toBe(false);
  });

  it.each([
    [0.28, 0.12, true],
    [0.3, 0.1, true],
    [0.31, 0.05, false],
    [Number.NaN, 0.1, null],
    [0.2, -0.1, null],
  ])('of %d fat and %d water: %j', (fat, water, keeps) => {
    expect(keepsCookedSausageStandard(fat, water)).toBe(keeps);
  });
});

describe('protein on a fat-free basis', () => {
  // 9 CFR 318.19(a)(5) and 319.104(a). Published formula and limits, derived result.
  it('of a cooked ham with 18.00 % protein and 5.00 % fat is 18.95, with natural juices', () => {
    const pff = proteinFatFreePercent(0.18, 0.05);
    expect(pff).toBeCloseTo(18.95, 2);
    expect(cookedHamName(pff ?? 0)).toBe('ham with natural juices');
  });

  it.each([
    [20.5, 'ham'],
    [20.49, 'ham with natural juices'],
    [17, 'ham, water added'],
    [16.9, null],
    [Number.NaN, null],
  ])('of %d gives the name %j', (pff, name) => {
    expect(cookedHamName(pff)).toBe(name);
  });

  it('is unknown for what is no fraction', () => {
    expect(proteinFatFreePercent(0.2, 1)).toBeNull();
    expect(proteinFatFreePercent(Number.NaN, 0)).toBeNull();
  });
});
