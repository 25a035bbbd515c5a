import { type Batch, newBatch } from '@larderwright/calc/batch';
import {
  newDryingSlice,
  newFermentationStep,
  RATIO_CLASSES,
  WATER_ACTIVITY_LIMITS,
} from '@larderwright/calc/drying';
import { enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { computeDrying } from '../../../worksheets/drying/compute.ts';
import { RATIO_CLASS_NAMES, WATER_ACTIVITY_NAMES } from '../../../worksheets/words/drying-names.ts';

function batch(changes: Partial<NonNullable<Batch['drying']>> = {}): Batch {
  const blank = newBatch({ id: 'b1', at: '2026-03-10T07:30:00+00:00', zone: 'UTC' });
  return { ...blank, drying: { ...newDryingSlice(), kind: 'fermented-sausage', ...changes } };
}

const stretch = (degreesF: string, hours: string) => ({
  ...newFermentationStep('s'),
  temp: enteredEntry(degreesF, 'F'),
  hours: enteredEntry(hours, 'h'),
});

describe('the drying page', () => {
  test('stops for an accepted plan whatever else is written', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), fc.string(), (plan, activity, hours) => {
        const { stops, verdicts } = computeDrying(
          batch({ approvedPlan: plan, waterActivity: activity, steps: [stretch('80', hours)] }),
        );
        expect(stops.join(' ')).toMatch(/accepted plan/);
        expect(verdicts.find(({ id }) => id === 'drying.plan')?.state).toBe('cannot-tell');
      }),
    );
  });

  // (80 − 60) °F × 55 h; the limit of 1200 below 90 °F is from memory.
  test('prints the stretches in the unit they were read in, and the count so far', () => {
    const { lot } = computeDrying(batch({ degreeHourRule: 'us-fahrenheit', steps: [stretch('80', '55')] }));
    expect(lot.steps).toEqual([
      [
        { text: '80\u00a0°F', flag: 'E' },
        { text: '55\u00a0h', flag: 'E' },
      ],
    ]);
    expect(lot.degreeHours).toBe('1100 of 1200 °F h');
  });

  test('prints no count of a stretch half written', () => {
    const { lot } = computeDrying(batch({ degreeHourRule: 'us-fahrenheit', steps: [stretch('80', '')] }));
    expect(lot.degreeHours).toBeNull();
  });

  test('has a name for every class of dryness and every water activity it compares with', () => {
    expect(RATIO_CLASSES.filter(({ id }) => !(id in RATIO_CLASS_NAMES))).toEqual([]);
    expect(WATER_ACTIVITY_LIMITS.filter(({ id }) => !(id in WATER_ACTIVITY_NAMES))).toEqual([]);
  });
});
