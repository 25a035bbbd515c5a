import {
  altitudePath,
  type Batch,
  cookPlanContext,
  newBatch,
  placedThermometers,
} from '@larderwright/calc/batch';
import { newCookPlanSlice, planGround } from '@larderwright/calc/cook-plan';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { enteredEntry } from '@larderwright/calc/quantities';
import { newThermometerSlice, thermometerStage } from '@larderwright/calc/thermometer';
import { describe, expect, it } from 'vitest';

const empty = newBatch({ id: 'a', at: '2026-11-27T10:00:00Z', zone: 'Europe/London' });
const CHECK = 'thermometers.altitude';
const PLAN = 'cookPlan.altitude';

function placed(check: string | null, plan: string | null): Batch {
  const thermometers = newThermometerSlice();
  const cookPlan = newCookPlanSlice();
  return {
    ...empty,
    thermometers: check === null ? thermometers : { ...thermometers, altitude: enteredEntry(check, 'm') },
    cookPlan: plan === null ? cookPlan : { ...cookPlan, altitude: enteredEntry(plan, 'm') },
  };
}

async function plannedM(batch: Batch): Promise<number | null> {
  const { cookPlan } = batch;
  if (!cookPlan) throw new Error('no plan');
  return planGround(cookPlan, cookPlanContext(batch, await loadIngredients())).reading.altitudeM;
}

function boilC(batch: Batch): number | null {
  const slice = placedThermometers(batch);
  if (!slice) throw new Error('no check');
  return thermometerStage(slice, { today: '2026-11-27' }).values.boil?.tempC ?? null;
}

describe('the height of a kitchen is typed once', () => {
  it.each([
    ['typed in the check', '1500', null, CHECK],
    ['typed in the plan', null, '1500', PLAN],
    ['typed in both, the check rules', '1500', '300', CHECK],
  ] as const)('%s: plan and check count with it', async (_, check, plan, path) => {
    const batch = placed(check, plan);
    expect(altitudePath(batch, PLAN)).toBe(path);
    expect(altitudePath(batch, CHECK)).toBe(path);
    expect(await plannedM(batch)).toBe(1500);
    // ICAO standard atmosphere: 84.56 kPa at 1500 m; water boils there at 95.0 °C (Hyland and Wexler 1983).
    expect(boilC(batch)).toBeCloseTo(95, 0);
  });

  it('typed nowhere: the plan counts with the sea as its marked default, the check with nothing', async () => {
    const batch = placed(null, null);
    expect(altitudePath(batch, PLAN)).toBe(PLAN);
    expect(altitudePath(batch, CHECK)).toBe(CHECK);
    expect(await plannedM(batch)).toBe(0);
    expect(boilC(batch)).toBeNull();
  });

  it('in words: neither plan nor check takes it for a number', async () => {
    const batch = placed('high up', null);
    expect(await plannedM(batch)).toBeNull();
    expect(boilC(batch)).toBeNull();
  });
});
