import { massAfterLoss, saltAfterLoss } from '../dry-cure/index.ts';
import type { MissingInput, Params, Severity, StageResult, Verdict } from '../findings/index.ts';
import { convert, entryValue } from '../quantities/index.ts';
import { afterDrying } from './after-drying.ts';
import { degreeHours, degreeHourTable, type FermentationStretch } from './degree-hours.ts';
import type { DryingFinding, DryingFindingId } from './finding-ids.ts';
import { lossForRatio, meetsClass, moistureProteinRatio, RATIO_CLASSES } from './moisture-protein.ts';
import type { DryingSlice, TrichinaSlice } from './slice.ts';
import { TRICHINA_SOURCE, trichinaDrying, trichinaSalt } from './trichina.ts';
import type { DryingValues } from './values.ts';
import { WATER_ACTIVITY_LIMITS, type WaterActivityLimit } from './water-activity-limits.ts';

/**
 * A fermented or dried product: figures for a specialist's plan. The stop that such a plan is needed
 * stands whatever the figures say, and nothing here ever says that a product is safe.
 *
 * @param slice null kind: nothing is dried, and nothing is said
 */
export function dryingStage(slice: DryingSlice): StageResult<DryingValues, DryingFindingId> {
  const values = dryingValues(slice);
  if (slice.kind === null) return { values, findings: [], verdicts: [], missing: [] };
  const verdicts = [planVerdict(slice), ...fermentationVerdicts(slice, values)];
  return {
    values,
    findings: dryingFindings(slice, values, verdicts),
    verdicts,
    missing: missingInputs(slice, values),
  };
}

function dryingValues(slice: DryingSlice): DryingValues {
  const fraction = (
    key: 'lossTarget' | 'startSalt' | 'startMoisture' | 'startProtein' | 'moisture' | 'protein',
  ) => entryValue('fraction', slice[key]);
  const startG = entryValue('mass', slice.start);
  const nowG = entryValue('mass', slice.now);
  const lossFraction = startG === null || nowG === null || startG <= 0 ? null : 1 - nowG / startG;
  const lossTarget = fraction('lossTarget');
  const targetMassG = startG === null || lossTarget === null ? null : massAfterLoss(startG, lossTarget);
  const salt = fraction('startSalt');
  const moisture = fraction('startMoisture');
  const protein = fraction('startProtein');
  const at = (loss: number | null) =>
    salt === null || moisture === null || loss === null ? null : afterDrying(salt, moisture, loss);
  const measured = { moisture: fraction('moisture'), protein: fraction('protein') };
  const measuredRatio =
    measured.moisture === null || measured.protein === null
      ? null
      : moistureProteinRatio(measured.moisture, measured.protein);
  const ph = readBare(slice.ph, PH_RANGE);
  const measuredWaterActivity = readBare(slice.waterActivity, WATER_ACTIVITY_RANGE);
  const stretches = readSteps(slice);
  const rule = slice.degreeHourRule;
  const mixSalt = readTrichinaSalt(slice.trichina);
  return {
    lossFraction,
    targetMassG,
    toLoseG: targetMassG === null || nowG === null ? null : Math.max(0, nowG - targetMassG),
    saltAtTargetFraction: salt === null || lossTarget === null ? null : saltAfterLoss(salt, lossTarget),
    now: at(lossFraction),
    atTarget: at(lossTarget),
    measuredWaterActivity,
    waterActivityRows: WATER_ACTIVITY_LIMITS.map((limit) => ({
      limit,
      isBelow: measuredWaterActivity === null ? null : isBelow(limit, measuredWaterActivity),
    })),
    measuredRatio,
    estimatedRatio:
      moisture === null || protein === null || lossFraction === null || lossFraction > moisture
        ? null
        : moistureProteinRatio(moisture - lossFraction, protein),
    ratioRows: RATIO_CLASSES.map((ratioClass) => ({
      ratioClass,
      meets: measuredRatio === null ? null : meetsClass(ratioClass, measuredRatio, ph),
      lossFraction:
        moisture === null || protein === null ? null : lossForRatio(moisture, protein, ratioClass.maxRatio),
    })),
    degreeHours: rule === null || stretches === null ? null : degreeHours(rule, stretches),
    degreeHourTable: rule === null ? null : degreeHourTable(rule),
    trichina: readTrichina(slice.trichina, mixSalt),
    trichinaSalt: mixSalt,
    ph,
  };
}

function isBelow(limit: WaterActivityLimit, measured: number): boolean {
  if (limit.group === 'growth') return limit.low !== null && measured < limit.low;
  return limit.high !== null && measured <= limit.high;
}

/** No food has a pH or a water activity outside these; 92 typed for 0.92 is not taken. */
const PH_RANGE = { min: 2, max: 9 };
const WATER_ACTIVITY_RANGE = { min: 0.5, max: 1 };

/** A number without a unit, within a range; null for anything else. */
function readBare(text: string, range: { readonly min: number; readonly max: number }): number | null {
  if (!/^\s*\d+(?:[.,]\d+)?\s*$/.test(text)) return null;
  const value = Number(text.trim().replace(',', '.'));
  return value >= range.min && value <= range.max ? value : null;
}

/** Null when there is none, or one of them cannot be read. */
function readSteps(slice: DryingSlice): FermentationStretch[] | null {
  const stretches = slice.steps.flatMap((step) => {
    const tempC = entryValue('temperature', step.temp);
    const minutes = entryValue('time', step.hours);
    return tempC === null || minutes === null ? [] : [{ tempC, hours: minutes / 60 }];
  });
  return stretches.length > 0 && stretches.length === slice.steps.length ? stretches : null;
}

function readTrichinaSalt(slice: TrichinaSlice) {
  const totalG = entryValue('mass', slice.total);
  const dryG = entryValue('mass', slice.dryIngredients);
  const saltG = entryValue('mass', slice.salt);
  return totalG === null || dryG === null || saltG === null ? null : trichinaSalt(totalG, dryG, saltG);
}

/** No days without the salt of the mix: too little of it makes them longer. */
function readTrichina(slice: TrichinaSlice, salt: ReturnType<typeof readTrichinaSalt>) {
  const casingMm = entryValue('length', slice.casing);
  if (casingMm === null || salt === null) return null;
  const holdC = entryValue('temperature', slice.holdTemp);
  const holdMin = entryValue('time', slice.holdHours);
  const hold =
    holdC === null || holdMin === null ? null : { hours: holdMin / 60, tempF: convert(holdC, 'C', 'F') };
  return trichinaDrying({ casingIn: convert(casingMm, 'mm', 'in'), hold, salt });
}

type DryingVerdict = Verdict<DryingFindingId>;

/** Never a pass: a worksheet does not accept a process. */
function planVerdict(slice: DryingSlice): DryingVerdict {
  const plan = slice.approvedPlan.trim();
  return {
    id: 'drying.plan',
    stage: 'drying',
    state: 'cannot-tell',
    reason: 'drying.approved-plan',
    params: plan === '' ? {} : { plan },
    basis: null,
    mark: 'common-practice',
  };
}

function fermentationVerdicts(slice: DryingSlice, values: DryingValues): DryingVerdict[] {
  if (slice.kind !== 'fermented-sausage') return [];
  const table = values.degreeHourTable;
  const of = values.degreeHours;
  const say = (state: DryingVerdict['state'], reason: DryingFindingId): DryingVerdict[] => [
    {
      id: 'drying.degree-hours',
      stage: 'drying',
      state,
      reason,
      params:
        of === null ? {} : { total: of.total, limit: of.limit, highest: of.highest, unit: table?.unit ?? '' },
      basis: table?.source ?? null,
      mark: table?.mark ?? null,
    },
  ];
  if (table === null) return say('cannot-tell', 'drying.no-degree-hour-rule');
  if (of === null) return say('cannot-tell', 'drying.degree-hours-unknown');
  if (!of.isWithin) return say('fail', 'drying.degree-hours-over');
  // Within the limit so far, but the count runs on until the acid is there.
  return slice.reachedPh53 === true
    ? say('pass', 'drying.degree-hours-within')
    : say('cannot-tell', 'drying.degree-hours-running');
}

function dryingFindings(
  slice: DryingSlice,
  values: DryingValues,
  verdicts: readonly DryingVerdict[],
): DryingFinding[] {
  const found: DryingFinding[] = [];
  const tell = (
    id: DryingFindingId,
    severity: Severity,
    field: string,
    params: Params = {},
    caution?: string,
  ) =>
    found.push({
      id,
      severity,
      stage: 'drying',
      field: `drying.${field}`,
      params,
      ...(caution === undefined ? {} : { caution }),
    });
  const plan = slice.approvedPlan.trim();
  tell('drying.approved-plan', 'stop', 'approvedPlan', plan === '' ? {} : { plan }, 'selling-needs-approval');
  const over = verdicts.find(({ state }) => state === 'fail');
  if (over !== undefined) tell('drying.hold-product', 'stop', 'steps', over.params, 'staph-toxin');
  tell('drying.trichinella', 'caution', 'trichina.casing', {}, 'trichinella-pork-dried');
  tell('drying.case-hardening', 'note', 'now');
  if (values.lossFraction !== null && values.lossFraction < 0) {
    tell('drying.gained-weight', 'caution', 'now', { lossFraction: values.lossFraction });
  }
  const moisture = entryValue('fraction', slice.startMoisture);
  const target = entryValue('fraction', slice.lossTarget);
  if (moisture !== null && target !== null && target >= moisture) {
    tell('drying.loss-over-water', 'caution', 'lossTarget', {
      lossFraction: target,
      moistureFraction: moisture,
    });
  } else if (target !== null) tell('drying.loss-is-no-proof', 'note', 'lossTarget', { lossFraction: target });
  const estimate = values.now?.waterActivity ?? values.atTarget?.waterActivity ?? null;
  if (estimate !== null && values.measuredWaterActivity === null) {
    tell('drying.estimate-is-wet', 'caution', 'waterActivity', { low: estimate.low, high: estimate.high });
  }
  if (values.measuredRatio !== null || values.estimatedRatio !== null) {
    tell('drying.ratio-is-no-proof', 'note', 'moisture');
  }
  const casingMm = entryValue('length', slice.trichina.casing);
  if (casingMm !== null && values.trichinaSalt !== null && values.trichina === null) {
    const isThick = casingMm > convert(6, 'in', 'mm');
    const params = { casingMm, saltPercent: values.trichinaSalt.cutPercent };
    const id = isThick ? 'drying.casing-over-table' : 'drying.salt-under-table';
    tell(id, 'caution', isThick ? 'trichina.casing' : 'trichina.salt', params, 'trichinella-pork-dried');
  }
  return found.map((one) =>
    one.id === 'drying.casing-over-table' || one.id === 'drying.salt-under-table'
      ? { ...one, basis: TRICHINA_SOURCE }
      : one,
  );
}

function missingInputs(slice: DryingSlice, values: DryingValues): MissingInput[] {
  const missing: MissingInput[] = [];
  const need = (field: string, neededFor: string) => missing.push({ field: `drying.${field}`, neededFor });
  if (entryValue('mass', slice.start) === null) need('start', 'drying.loss');
  if (entryValue('mass', slice.now) === null) need('now', 'drying.loss');
  if (values.measuredWaterActivity === null) need('waterActivity', 'drying.water-activity');
  if (slice.kind !== 'fermented-sausage') return missing;
  if (slice.degreeHourRule === null) need('degreeHourRule', 'drying.degree-hours');
  if (readSteps(slice) === null) need('steps', 'drying.degree-hours');
  if (slice.reachedPh53 === null) need('reachedPh53', 'drying.degree-hours');
  return missing;
}
