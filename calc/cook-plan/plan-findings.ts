import { exactC } from '../cooling/index.ts';
import type { Finding, Params, Severity } from '../findings/index.ts';
import { bathEquilibriumC } from '../heat/index.ts';
import { COME_UP } from '../lethality/index.ts';
import { baseMm } from './coat.ts';
import type { CookPlanFindingId } from './finding-ids.ts';
import { mediumField } from './read-plan.ts';
import type { CookPlanSlice } from './slice.ts';
import { MOST_COOK_MIN } from './stages.ts';
import type { CookPlanValues } from './values.ts';

type Tell = (
  id: CookPlanFindingId,
  severity: Severity,
  field: string,
  params?: Params,
  caution?: string,
) => void;

/** Water that stands lower than this share of the fill leaves its top to the air. Common practice, no source. */
const LEAST_WATER_SHARE = 0.5;
/** Water is filled to within this of the pan's rim, mm. Common practice, no source. */
const PAN_RIM_MM = 5;

/** What is worth telling about a plan, before and after it was computed. */
export function planFindings(slice: CookPlanSlice, values: CookPlanValues): Finding<CookPlanFindingId>[] {
  const found: Finding<CookPlanFindingId>[] = [];
  const tell: Tell = (id, severity, field, params = {}, caution) =>
    found.push({
      id,
      severity,
      stage: 'cook-plan',
      field: field.includes('.') ? field : `cookPlan.${field}`,
      params,
      ...(caution ? { caution } : {}),
    });
  if (values.ground.mixAssumed) tell('cook-plan.mix-assumed', 'note', 'water');
  if (slice.method === 'bath') waterFindings(values, tell);
  heatFindings(slice, values, tell);
  chillFindings(values, tell);
  return found;
}

function waterFindings({ ground, levelMm }: CookPlanValues, tell: Tell): void {
  const { body, reading, problem } = ground;
  if (body === null || reading.panHeightMm === null) return;
  if (levelMm === null) {
    const given = reading.bathWaterG !== null && reading.mouldsInPan !== null && reading.wallMm !== null;
    if (given) tell('cook-plan.pan-full', 'caution', 'mouldsInPan');
    return;
  }
  if (levelMm > reading.panHeightMm - PAN_RIM_MM)
    tell('cook-plan.water-over-pan', 'caution', 'bathWater', { levelMm, panMm: reading.panHeightMm });
  if (problem === null) return;
  const baseOfMix = baseMm(problem.coat);
  const rimMm = baseOfMix - body.liningMm + body.fillDepthMm + body.headspaceMm;
  if (!body.closed && levelMm > rimMm)
    tell('cook-plan.water-over-rim', 'caution', 'level', { levelMm, rimMm });
  const wet = Math.max(0, levelMm - baseOfMix + body.liningMm) / body.fillDepthMm;
  if (wet < LEAST_WATER_SHARE) tell('cook-plan.water-low', 'note', 'level', { levelMm, wetFraction: wet });
}

function heatFindings(slice: CookPlanSlice, { ground, outcome }: CookPlanValues, tell: Tell): void {
  const { problem, limit, targetC } = ground;
  if (problem === null || targetC === null) return;
  const cook = problem.stages[0]?.heat;
  const bath = cook?.water?.bath;
  const medium = mediumField(slice.method);
  if (cook && bath?.kind === 'oven' && typeof cook.air.tempC === 'number' && !bath.pan.covered) {
    const settlesC = bathEquilibriumC(bath.pan, cook.air.tempC);
    if (settlesC < targetC) tell('cook-plan.bath-below-target', 'caution', 'cover', { settlesC, targetC });
  }
  if (outcome === null) return;
  const { prediction } = outcome;
  if (prediction.targetMin === null) {
    tell('cook-plan.never-reaches', 'stop', medium, {
      targetC,
      peakC: prediction.peak.tempC,
      hours: MOST_COOK_MIN / 60,
    });
  } else if (limit !== null && prediction.hold?.state === 'beyond') {
    tell('cook-plan.hold-not-met', 'stop', 'target', {
      thresholdC: limit.thresholdC,
      holdMin: limit.hold.s / 60,
      heldMin: prediction.hold.heldMin,
      peakC: prediction.peak.tempC,
    });
  } else if (limit !== null && targetC < limit.thresholdC) {
    tell('cook-plan.counts-on-carry-over', 'caution', 'target', { targetC, thresholdC: limit.thresholdC });
  }
  const { comeUpMin } = prediction;
  if (comeUpMin !== null && comeUpMin > COME_UP.maxMin)
    tell('cook-plan.come-up-slow', 'caution', medium, { comeUpMin, mostMin: COME_UP.maxMin }, 'staph-toxin');
}

function chillFindings({ ground, outcome }: CookPlanValues, tell: Tell): void {
  const { coolSet, problem } = ground;
  if (outcome === null || coolSet === null || problem?.cool == null) return;
  const { cooling, chillStart } = outcome.prediction;
  const field = 'process.coolRuleSetId';
  for (const { legId, elapsedMin, state } of cooling?.legs ?? []) {
    const leg = coolSet.legs.find(({ id }) => id === legId);
    if (!leg) continue;
    const params = {
      ruleSet: coolSet.title,
      toC: exactC(leg.to),
      maxMin: leg.maxMin,
      ...(leg.from === null ? {} : { fromC: exactC(leg.from) }),
      ...(elapsedMin === null ? {} : { elapsedMin }),
    };
    if (state === 'beyond') tell('cook-plan.cools-too-slowly', 'stop', field, params, 'cooling-clock');
    else if (elapsedMin === null)
      tell('cook-plan.chill-ends-early', 'caution', field, { ...params, endC: outcome.prediction.endC });
  }
  if (!problem.cool.usable) tell('cook-plan.cure-not-shown', 'caution', field, { ruleSet: coolSet.title });
  if (chillStart?.state === 'beyond' && problem.cool.chillStartMaxMin !== null)
    tell('cook-plan.chill-starts-late', 'stop', field, {
      waitMin: chillStart.waitMin,
      maxMin: problem.cool.chillStartMaxMin,
    });
}
