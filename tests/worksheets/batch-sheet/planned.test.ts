import {
  assess,
  type Batch,
  checksum,
  cookPlanContext,
  nextBatch,
  readBatch,
} from '@larderwright/calc/batch';
import { newCookPlanSlice, planGround, type ToldPlan } from '@larderwright/calc/cook-plan';
import { recordChecksum } from '@larderwright/calc/exchange';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { enteredEntry } from '@larderwright/calc/quantities';
import { beforeAll, describe, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';
import { loadCompute, type SheetComputed } from '../../../worksheets/batch-sheet/compute.ts';

const demo = demos['country-terrine'] as Batch;
let compute: (batch: Batch) => SheetComputed;
let kept: Batch;
const told: ToldPlan = {
  at: '2026-03-09T16:00:00+00:00',
  calcVersion: '0.1.0',
  ofPlan: '',
  targetC: 71,
  target: { low: 118, middle: 145, high: 179 },
  heatEnd: { low: 134, middle: 165, high: null },
  peak: { low: 73.2, middle: 76.4, high: 78.6 },
};

beforeAll(async () => {
  compute = await loadCompute();
  const cookPlan = newCookPlanSlice();
  const context = cookPlanContext({ ...demo, cookPlan }, await loadIngredients());
  const ofPlan = checksum(JSON.stringify(planGround(cookPlan, context).problem));
  kept = { ...structuredClone(demo), cookPlan: { ...cookPlan, told: { ...told, ofPlan } } };
});

const planned = (batch: Batch) =>
  compute(batch).model.cook.beside.find((line) => line.startsWith('As planned'));

describe('what a plan predicted, kept for the sheet', () => {
  it('prints beside the log as it stood, as a band, with what was read', () => {
    const line = planned(kept) ?? '';
    expect(line).toMatch(
      /^As planned, no proof: core at 71 °C \(160 °F\) after 2 h 25 min \(1 h 58 min to 2 h 59 min\); out after 2 h 45 min \(2 h 14 min at the soonest; some kitchens drawn never get there\); peak 76 °C .*; told 2026-03-09 16:00; first read at 71 °C/,
    );
    expect(line).not.toMatch(/NaN|Infinity|undefined|CHANGED/);
  });

  it('says so when the plan was changed since', () => {
    const { cookPlan } = kept;
    if (!cookPlan) throw new Error('no plan');
    const changed = { ...kept, cookPlan: { ...cookPlan, oven: enteredEntry('120', 'C') } };
    expect(planned(changed)).toContain('THE PLAN WAS CHANGED SINCE');
  });

  it('prints nothing where no plan was kept', () => {
    expect(planned(demo)).toBeUndefined();
  });

  it('is heard by no verdict and no finding, and makes another paper', async () => {
    const composition = await loadIngredients();
    const today = '2026-11-27';
    const told = assess(kept, { composition, today });
    const plain = assess(demo, { composition, today });
    expect([told.verdicts, told.findings]).toEqual([plain.verdicts, plain.findings]);
    expect(recordChecksum(kept)).not.toBe(recordChecksum(demo));
  });

  it('is read back from a record, and left behind by the next batch', () => {
    const read = readBatch(JSON.parse(JSON.stringify(kept)));
    expect(read).toMatchObject({
      ok: true,
      batch: { cookPlan: { told: { ...told, ofPlan: kept.cookPlan?.told?.ofPlan } } },
    });
    const { cookPlan } = kept;
    const odd = { ...kept, cookPlan: { ...cookPlan, told: { ...told, target: { low: 'soon' } } } };
    expect(readBatch(JSON.parse(JSON.stringify(odd))).ok).toBe(false);
    const next = nextBatch(kept, {
      id: 'b',
      at: '2026-11-27T10:00:00+00:00',
      zone: 'Europe/London',
      batchNo: 'B',
    });
    expect(next.cookPlan).toBeDefined();
    expect(next.cookPlan?.told).toBeUndefined();
  });
});
