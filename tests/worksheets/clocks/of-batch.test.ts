import { type Batch, newBatch, newStep, nextBatch } from '@larderwright/calc/batch';
import type { CoolDeadline } from '@larderwright/calc/cooling';
import { describe, expect, it } from 'vitest';
import { isCooking, isCooling, limitClocks, stageClocks } from '../../../worksheets/clocks/of-batch.ts';

const at = (clock: string) => `2026-11-27T${clock}:00+01:00`;
const ms = (clock: string) => Date.parse(at(clock));

/** A terrine in the oven since ten. Invented. */
function cooking(): Batch {
  const batch = newBatch({ id: 'b', at: at('09:00'), zone: 'Europe/Paris' });
  batch.product.name = 'Hare terrine';
  batch.process.coolRuleSetId = 'us-food-code';
  batch.process.steps = [{ ...newStep('oven', 'cook'), startedAt: at('10:00') }];
  return batch;
}
function chilling(): Batch {
  const batch = cooking();
  batch.process.steps = [
    { ...newStep('oven', 'cook'), startedAt: at('10:00'), endedAt: at('12:00') },
    { ...newStep('ice', 'chill'), startedAt: at('12:10') },
  ];
  batch.press.startedAt = at('12:20');
  return batch;
}

describe('the clocks of a batch', () => {
  it('are the stages begun and not ended, by their instants', () => {
    expect(stageClocks(cooking())).toMatchObject([
      { id: 'b:step:oven', label: 'Cook', startedMs: ms('10:00'), endsMs: null, batch: 'Hare terrine' },
    ]);
    expect(stageClocks(chilling()).map(({ label }) => label)).toEqual(['Chill', 'Under the press']);
  });

  it('stop when it is put away, discarded, or was an example from the beginning', () => {
    const away = chilling();
    away.process.steps[1] = { ...newStep('ice', 'chill'), startedAt: at('12:10'), endedAt: at('15:00') };
    expect(stageClocks(away)).toEqual([]);
    expect(isCooling(away)).toBe(false);
    const gone = cooking();
    gone.lifecycle = [{ id: 'x', state: 'discarded', at: at('11:00'), by: 'A', second: '', why: 'fell' }];
    expect(stageClocks(gone)).toEqual([]);
    expect(stageClocks({ ...cooking(), demo: true })).toEqual([]);
  });

  it('are none in the next batch of the product', () => {
    const next = nextBatch(chilling(), { id: 'c', at: at('16:00'), zone: 'Europe/Paris', batchNo: '' });
    expect(stageClocks(next)).toEqual([]);
    expect(isCooking(next) || isCooling(next)).toBe(false);
  });

  it('count each leg of the rule once, by the probe whose time ends first', () => {
    const leg = {
      id: '135F-70F',
      from: null,
      to: { value: 70, unit: 'F', published: 21 },
      maxMin: 120,
      mark: 'confirmed',
    } as const;
    const deadline = (logId: string, clock: string): CoolDeadline => ({
      cooling: 1,
      leg,
      logId,
      startMs: ms('12:00'),
      latestMs: ms(clock),
      state: 'runs',
    });
    const clocks = limitClocks(chilling(), [deadline('p', '14:20'), deadline('q', '14:05')]);
    expect(clocks.map(({ endsMs }) => endsMs)).toEqual([ms('14:05')]);
  });
});
