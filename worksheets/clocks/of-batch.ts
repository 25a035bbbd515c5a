import { type Batch, stateOf } from '@larderwright/calc/batch';
import type { CoolDeadline } from '@larderwright/calc/cooling';
import { instantMs, phasesOf } from '@larderwright/calc/process';
import { limitLabel, STAGE_NAMES } from '../words/clocks.ts';
import type { Clock } from './clock.ts';

/** What to call a batch beside its clock. */
export const nameOf = ({ product }: Batch): string =>
  [product.name.trim(), product.batchNo.trim()].filter(Boolean).join(', ');

/** An invented example has no clock, nor has a batch about which everything is decided. */
function hasClocksOfItsOwn(batch: Batch): boolean {
  const { state } = stateOf(batch);
  return !batch.demo && state !== 'released' && state !== 'discarded';
}

type Counted = Pick<Clock, 'kind' | 'label' | 'startedMs' | 'endsMs' | 'maybe'>;

const clockOf = (batch: Batch, id: string, counted: Counted): Clock => ({
  id: `${batch.id}:${id}`,
  batchId: batch.id,
  batch: nameOf(batch),
  zone: batch.zone,
  told: [],
  ...counted,
});

/** The stages of a batch that were begun and not ended. */
export function stageClocks(batch: Batch): Clock[] {
  if (!hasClocksOfItsOwn(batch)) return [];
  const { process, press } = batch;
  const running = (id: string, label: string, startedMs: number) =>
    clockOf(batch, id, { kind: 'stage', label, startedMs, endsMs: null, maybe: false });
  const steps = process.steps.flatMap(({ id, kind, startedAt, endedAt }) => {
    const startedMs = instantMs(startedAt);
    return startedMs === null || endedAt !== null
      ? []
      : [running(`step:${id}`, STAGE_NAMES[kind], startedMs)];
  });
  const pressedMs = instantMs(press.startedAt);
  const put = phasesOf(process.steps).some(({ chillEndMs }) => chillEndMs !== null);
  return pressedMs === null || put ? steps : [...steps, running('press', STAGE_NAMES.press, pressedMs)];
}

/** Whether the clocks of the cooling rule may run: a rule is chosen, the heat is over or a chill begun, nothing put away. */
export function isCooling(batch: Batch): boolean {
  if (!hasClocksOfItsOwn(batch) || batch.process.coolRuleSetId === null) return false;
  const last = phasesOf(batch.process.steps).at(-1);
  return last?.heatOver === true && last.chillEndMs === null;
}

/** Whether a cook is on: its hold may have to be called. */
export function isCooking(batch: Batch): boolean {
  return (
    hasClocksOfItsOwn(batch) &&
    batch.process.steps.some(
      ({ kind, startedAt, endedAt }) => kind !== 'chill' && startedAt !== null && endedAt === null,
    )
  );
}

/** The clocks of the cooling rule, each leg once: the probe whose time ends first rules. */
export function limitClocks(batch: Batch, deadlines: readonly CoolDeadline[]): Clock[] {
  const firsts = new Map<string, CoolDeadline>();
  for (const deadline of deadlines) {
    const key = `${deadline.cooling}:${deadline.leg?.id ?? 'start'}`;
    const known = firsts.get(key);
    if (!known || deadline.latestMs < known.latestMs) firsts.set(key, deadline);
  }
  return [...firsts].map(([key, deadline]) =>
    clockOf(batch, `limit:${key}`, {
      kind: 'limit',
      label: limitLabel(deadline),
      startedMs: deadline.startMs,
      endsMs: deadline.latestMs,
      maybe: deadline.state === 'may-run',
    }),
  );
}

/** The hold of the cook, as the readings stand: until when it must last at least. */
export function holdClocks(batch: Batch, label: string, lastMs: number, untilMs: number): Clock[] {
  return [clockOf(batch, 'hold', { kind: 'hold', label, startedMs: lastMs, endsMs: untilMs, maybe: false })];
}
