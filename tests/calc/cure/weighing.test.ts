import { isWeighable, nearestStepG, stepBelowG, weighingErrorFraction } from '@larderwright/calc/cure';
import { describe, expect, test } from 'vitest';

describe('weighing a dose', () => {
  test('5 g on a scale that shows whole grams is ± 10 % (derived)', () => {
    expect(weighingErrorFraction(5, 1)).toBe(0.1);
  });

  test('needs 50 steps of the scale (common practice, no source)', () => {
    expect(isWeighable(0.9, 1)).toBe(false);
    expect(isWeighable(5, 1)).toBe(false);
    expect(isWeighable(4.9, 0.1)).toBe(false);
    expect(isWeighable(5, 0.1)).toBe(true);
    expect(isWeighable(50, 1)).toBe(true);
  });

  test('an unusable number cannot be weighed', () => {
    for (const bad of [Number.NaN, 0, -1, Number.POSITIVE_INFINITY]) {
      expect(isWeighable(bad, 0.1)).toBe(false);
      expect(isWeighable(5, bad)).toBe(false);
      expect(weighingErrorFraction(bad, 0.1)).toBeNull();
      expect(weighingErrorFraction(5, bad)).toBeNull();
    }
  });

  test('steps come out as the scale shows them', () => {
    expect(nearestStepG(5.376, 0.1)).toBe(5.4);
    expect(stepBelowG(5.376, 0.1)).toBe(5.3);
    expect(stepBelowG(0.3, 0.1)).toBe(0.3);
    expect(stepBelowG(7.0525, 0.01)).toBe(7.05);
  });
});
