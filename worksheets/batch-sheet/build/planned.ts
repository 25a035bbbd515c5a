import { type Batch, checksum, cookPlanContext } from '@larderwright/calc/batch';
import { planGround, type ToldFigure, type ToldPlan } from '@larderwright/calc/cook-plan';
import type { CompositionTable } from '@larderwright/calc/ingredients';
import type { CookLogResult } from '@larderwright/calc/lethality';
import * as say from '#words/batch-sheet/planned.ts';
import { bandWords, degreesText, timeWords } from '../../cook-plan/text.ts';
import { wallOf } from '../../parts/clock-text.ts';

/** Whether a plan whose figures were kept has been changed since. */
export function planChanged(batch: Batch, composition: CompositionTable): boolean {
  const { cookPlan } = batch;
  if (cookPlan?.told === undefined) return false;
  const { problem } = planGround(cookPlan, cookPlanContext(batch, composition));
  return problem === null || checksum(JSON.stringify(problem)) !== cookPlan.told.ofPlan;
}

const never = (value: number | null) => value ?? Number.POSITIVE_INFINITY;
const bandText = ({ low, middle, high }: ToldFigure) =>
  bandWords({ low: never(low), middle: never(middle), high: never(high) });

/** First reading that counts at or above the target, min after it went in. */
function readMin(batch: Batch, { targetC }: ToldPlan, log: CookLogResult | undefined): number | null {
  const startedAt = batch.process.steps.find(({ kind }) => kind === 'cook')?.startedAt ?? null;
  const startMs = startedAt === null ? Number.NaN : Date.parse(startedAt);
  const first = log?.readings.find(
    ({ state, tempC, atMs }) => state === 'counts' && tempC !== null && tempC >= targetC && atMs >= startMs,
  );
  return first ? (first.atMs - startMs) / 60_000 : null;
}

/** What the plan predicted beside what was read: information, heard by no verdict. */
export function plannedLines(batch: Batch, log: CookLogResult | undefined, changed: boolean): string[] {
  const told = batch.cookPlan?.told;
  if (told === undefined) return [];
  const target = degreesText(told.targetC);
  const wall = wallOf(told.at);
  const reached = readMin(batch, told, log);
  const { middle: peakC, low: lowC, high: highC } = told.peak;
  const parts = [
    told.target.middle === null
      ? say.coreNever(target)
      : say.coreAt(target, timeWords(told.target.middle), bandText(told.target)),
    told.heatEnd.middle === null ? '' : say.outAfter(timeWords(told.heatEnd.middle), bandText(told.heatEnd)),
    peakC === null || lowC === null || highC === null
      ? ''
      : say.peakOf(degreesText(peakC, 'down'), degreesText(lowC, 'down'), degreesText(highC, 'up')),
    wall ? say.told(wall.date, wall.clock) : '',
    changed ? say.changedSince : '',
    reached === null ? say.notRead(target) : say.read(target, timeWords(reached)),
  ];
  return [say.planned(parts.filter(Boolean).join('; '))];
}
