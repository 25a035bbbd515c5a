import { describe, expect, it } from 'vitest';
import { windowSteps } from '../../../worksheets/charts/window-shape.ts';

const HOUR = 3_600_000;

describe('windowSteps', () => {
  it('steps down at the deadline of each leg, legs from one start', () => {
    // FDA Food Code 2022, 3-501.14(A): 57 °C to 21 °C within 2 h and to 5 °C within 6 h in all.
    const steps = windowSteps(
      [
        { fromMs: 0, byMs: 6 * HOUR, fromC: 57, toC: 5, label: '5 °C' },
        { fromMs: 0, byMs: 2 * HOUR, fromC: 57, toC: 21, label: '21 °C' },
      ],
      8 * HOUR,
    );
    expect(steps).toEqual([
      { fromMs: 0, toMs: 2 * HOUR, topC: 57, label: '21 °C' },
      { fromMs: 2 * HOUR, toMs: 6 * HOUR, topC: 21, label: '5 °C' },
      { fromMs: 6 * HOUR, toMs: 8 * HOUR, topC: 5, label: '' },
    ]);
  });

  it('sets no upper edge before the first deadline when the clock starts at the end of the cook', () => {
    const steps = windowSteps([{ fromMs: 0, byMs: 2.5 * HOUR, fromC: null, toC: 50, label: '' }], 3 * HOUR);
    expect(steps.map((step) => step.topC)).toEqual([null, 50]);
  });

  it('never rises again', () => {
    const steps = windowSteps(
      [
        { fromMs: 0, byMs: HOUR, fromC: 60, toC: 21, label: '' },
        { fromMs: HOUR, byMs: 5 * HOUR, fromC: 21, toC: 25, label: '' },
      ],
      6 * HOUR,
    );
    const tops = steps.map((step) => step.topC ?? Number.POSITIVE_INFINITY);
    expect(tops).toEqual([...tops].sort((a, b) => b - a));
  });

  it('draws nothing for a leg whose clock has not started', () => {
    expect(windowSteps([{ fromMs: Number.NaN, byMs: Number.NaN, fromC: 57, toC: 21, label: '' }], 1)).toEqual(
      [],
    );
    expect(windowSteps([], 1)).toEqual([]);
  });
});
