import type { CureSlice } from '../cure/index.ts';
import { exceeds } from '../cure/index.ts';
import {
  coldFindings,
  doseFindings,
  gramsOnly,
  handlingFindings,
  limitFindings,
  packFindings,
  scaleFindings,
  THICK_MM,
} from '../dry-cure/index.ts';
import type { Params, Severity, Verdict } from '../findings/index.ts';
import { entryValue } from '../quantities/index.ts';
import { LAW_PICKLE_LB_PER_GALLON } from './brine-scales.ts';
import { type BrineFigures, TIMED_FROM_FRACTION } from './figures.ts';
import type { BrineFinding, BrineFindingId } from './finding-ids.ts';
import type { BrineSlice } from './slice.ts';

/** A brine is not kept longer. Common practice, no source. */
export const BRINE_LIFE_DAYS = 7;
/** More brine than this on the meat wastes cure. Common practice, no source. */
const MUCH_BRINE = 1.5;
/** From here on a label may have to say how much water was added. Common practice, no source. */
const ADDED_WATER_FROM = 0.1;
/** Methods are told apart from this ratio on. */
const APART = 1.2;
/** A pump may be off its plan by this share. Common practice, no source. */
const PUMP_TOLERANCE = 0.2;
const SUBJECT = 'brine';

/** What the findings speak of. */
export interface BrineState {
  readonly slice: BrineSlice;
  readonly cure: CureSlice;
  readonly figures: BrineFigures;
  readonly verdicts: readonly Verdict<BrineFindingId>[];
  readonly usesCure: boolean;
}

/** What is worth telling about a brine. Nothing, until a method is chosen. */
export function brineFindings(state: BrineState): BrineFinding[] {
  if (state.slice.method === null) return [];
  return [
    ...coldFindings(SUBJECT, state.figures.values.brineC, 'brine.brineTemp'),
    ...(state.usesCure ? cureFindings(state) : []),
    ...recipeFindings(state),
    ...(state.usesCure ? methodFindings(state) : []),
    ...ageFindings(state),
    ...meatFindings(state),
    ...additiveFindings(state),
  ];
}

function finding(
  id: BrineFindingId,
  severity: Severity,
  field: string,
  params: Params = {},
  caution?: string,
): BrineFinding {
  return { id, severity, stage: SUBJECT, field, params, ...(caution === undefined ? {} : { caution }) };
}

function cureFindings({ slice, cure, figures }: BrineState): BrineFinding[] {
  const { values, kind, readabilityG } = figures;
  const field = 'brine.actual.curingSalt';
  const params = {
    ...(values.ceilingPpmTarget === null ? {} : { ceilingPpm: values.ceilingPpmTarget }),
    ...(readabilityG === null ? {} : { readabilityG }),
  };
  const weighedG = values.inUse.isCureWeighed ? values.inUse.curingSaltG : null;
  const onBase = values.pumpedPpm ?? values.nitritePpmMeatAndWater;
  return [
    ...packFindings(SUBJECT, values.pack, kind, 'brine.pack'),
    ...gramsOnly(SUBJECT, slice.actual.curingSalt, field),
    ...doseFindings(SUBJECT, values.recipe?.dose ?? null, params, 'brine.nitriteTarget'),
    ...scaleFindings(SUBJECT, weighedG, readabilityG, {}, field),
    ...limitFindings(SUBJECT, values, onBase, {}, field),
    ...handlingFindings(SUBJECT, cure, readabilityG),
  ];
}

function recipeFindings({ slice, figures }: BrineState): BrineFinding[] {
  const { values } = figures;
  const found: BrineFinding[] = [];
  const { recipe } = values;
  if (recipe?.refusal === 'cannot-dissolve') {
    found.push(finding('brine.cannot-dissolve', 'stop', 'brine.saltTarget'));
  }
  if (recipe?.refusal === 'cure-brings-too-much-salt') {
    found.push(finding('brine.cure-brings-too-much-salt', 'stop', 'brine.saltTarget'));
  }
  if (values.isTimed && slice.method !== 'timed') {
    const params = { saltFraction: values.brineSaltFraction ?? 0, limitFraction: TIMED_FROM_FRACTION };
    found.push(finding('brine.strong-is-timed', 'caution', 'brine.method', params));
  }
  if (slice.method === 'timed' && values.pickUpFraction === null) {
    found.push(finding('brine.timed-needs-pick-up', 'caution', 'brine.pickUp'));
  }
  const waterG = values.inUse.waterG;
  if (
    slice.method !== 'inject' &&
    waterG !== null &&
    values.greenG !== null &&
    waterG > MUCH_BRINE * values.greenG
  ) {
    found.push(
      finding('brine.much-brine', 'note', 'brine.water', { ratio: waterG / values.greenG, most: MUCH_BRINE }),
    );
  }
  return found;
}

function methodFindings({ slice, figures }: BrineState): BrineFinding[] {
  const { values } = figures;
  const found: BrineFinding[] = [];
  const { immersion, methodsDiffer } = values;
  if (immersion !== null && methodsDiffer !== null && methodsDiffer >= APART) {
    const params = {
      pickUpPpm: immersion.pickUpPpm ?? 0,
      equilibriumPpm: immersion.equilibriumPpm ?? 0,
      times: methodsDiffer,
    };
    const note = finding('brine.methods-differ', 'note', 'brine.federalMethod', params);
    found.push({ ...note, basis: 'us-fsis-7620-3' });
  }
  const limit = values.ceilings.find(
    (one) => one.limit.kind === 'ingoing' && one.limit.basis === 'meat-block',
  );
  const worst = immersion?.worstPpm ?? null;
  if (limit?.state === 'pass' && worst !== null && exceeds(worst, limit.limit.valuePpm)) {
    const params = { worstPpm: worst, limitPpm: limit.limit.valuePpm };
    found.push(
      finding('brine.worst-case-over', 'caution', 'brine.federalMethod', params, 'nitrite-ceiling-and-floor'),
    );
  }
  const pounds = values.pickleLbPerGallon;
  if (values.ruleSet?.id === 'us-federal' && slice.product !== 'bacon' && pounds !== null) {
    const note = finding('brine.gallon-assumption', 'note', 'brine.water', {
      pounds,
      assumedPounds: LAW_PICKLE_LB_PER_GALLON,
    });
    found.push({ ...note, basis: 'us-9-cfr-424-21-c' });
  }
  return found;
}

function ageFindings({ slice, figures }: BrineState): BrineFinding[] {
  const { ageDays } = figures.values;
  const caution = 'reused-brine-and-marinade';
  const found: BrineFinding[] = [];
  if (slice.use === 'used') found.push(finding('brine.reused', 'stop', 'brine.use', {}, caution));
  if (slice.use === null) found.push(finding('brine.use-unknown', 'note', 'brine.use', {}, caution));
  if (ageDays !== null && (ageDays > BRINE_LIFE_DAYS || ageDays < 0)) {
    found.push(
      finding('brine.old', 'caution', 'brine.mixedOn', { ageDays, lifeDays: BRINE_LIFE_DAYS }, caution),
    );
  }
  return found;
}

function meatFindings({ slice, figures }: BrineState): BrineFinding[] {
  const { values } = figures;
  const found: BrineFinding[] = [];
  const isInjected = slice.method === 'inject' || slice.method === 'inject-cover';
  const thicknessMm = entryValue('length', slice.thickness);
  if (values.isSkinEstimated) {
    const note = finding('brine.skin-estimated', 'note', 'brine.skinOn', { greenG: values.greenG ?? 0 });
    found.push({ ...note, basis: 'us-fsis-7620-3' });
  }
  if (!isInjected && thicknessMm !== null && thicknessMm > THICK_MM) {
    const params = { thicknessMm, thickMm: THICK_MM };
    found.push(finding('brine.core-uncured', 'caution', 'brine.thickness', params, 'curing-room-cold'));
  }
  const { guidanceDays } = values.time;
  if (
    !isInjected &&
    slice.method === 'equilibrium' &&
    values.days !== null &&
    guidanceDays !== null &&
    values.days < guidanceDays.low
  ) {
    const params = { days: values.days, lowDays: guidanceDays.low, highDays: guidanceDays.high };
    found.push(finding('brine.days-short', 'caution', 'brine.days', params, 'curing-room-cold'));
  }
  if (!isInjected) return found;
  found.push(finding('brine.needles', 'note', 'brine.injection', {}, 'stuffer-and-needles'));
  const { pumpFraction } = values;
  if (pumpFraction !== null && pumpFraction > ADDED_WATER_FROM) {
    const params = { pumpFraction, fromFraction: ADDED_WATER_FROM };
    found.push(finding('brine.added-water', 'note', 'brine.injection', params, 'reserved-names'));
  }
  const planned = entryValue('fraction', slice.injection);
  if (values.isPumpWeighed && pumpFraction !== null && planned !== null && planned > 0) {
    const off = pumpFraction / planned - 1;
    if (Math.abs(off) > PUMP_TOLERANCE) {
      const params = { pumpFraction, plannedFraction: planned };
      found.push(finding('brine.pump-differs', 'caution', 'brine.afterInjection', params));
    }
  }
  return found;
}

function additiveFindings({ figures, verdicts }: BrineState): BrineFinding[] {
  const found: BrineFinding[] = [];
  for (const { id, state, params, basis } of verdicts) {
    if (state !== 'fail') continue;
    const rest = basis === null ? {} : { basis };
    if (id === 'brine.phosphate')
      found.push({ ...finding('brine.phosphate-over', 'stop', 'brine.phosphate', params), ...rest });
    if (id === 'brine.accelerator') {
      found.push({
        ...finding('brine.accelerator-over', 'stop', 'brine.acceleratorTarget', params),
        ...rest,
      });
    }
  }
  if ((figures.values.inUse.acceleratorG ?? 0) > 0) {
    found.push(finding('brine.accelerator-last', 'note', 'brine.acceleratorTarget'));
  }
  return found;
}
