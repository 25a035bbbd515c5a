import type { Finding, MissingInput, Params, Severity, StageResult } from '../findings/index.ts';
import { type PlanCosts, type Price, type Pricing, priceOf } from '../plan/index.ts';
import { entryValue } from '../quantities/index.ts';
import { perPound } from '../yield/index.ts';
import { cutByMass, cutSlices } from './cut.ts';
import type { SlicingFindingId } from './finding-ids.ts';
import type { SlicingSlice } from './slice.ts';
import { sliceHabitOf } from './usual-slices.ts';
import type { SlicingValues } from './values.ts';

const G_PER_KG = 1000;
const NO_PRICE: Price = { exTax: null, incTax: null };
/** The noise of decimal lengths and weights. */
const NOISE = 1e-9;

/** What slicing needs of the rest of the batch. */
export interface SlicingContext {
  readonly familyId: string | null;
  /** All moulds together after chilling, g: weighed, or planned before that. */
  readonly finishedG: number | null;
  readonly mouldCount: number | null;
  /** Inside length of the mould, mm. */
  readonly mouldLengthMm: number | null;
  /** Portions the plan counts on; null when nobody planned any. */
  readonly plannedPortions: number | null;
  /** Costs of the batch and how prices are found; null without a plan. */
  readonly plan: { readonly costs: PlanCosts; readonly pricing: Pricing } | null;
}

/**
 * Slices and portions of a batch, and what to ask for them. The whole cost is shared among what is sold: ends, crumbs
 * and what the blade takes were paid for too. Prices are not rounded here.
 */
export function slicingStage(
  slice: SlicingSlice,
  context: SlicingContext,
): StageResult<SlicingValues, SlicingFindingId> {
  const values = slicingValues(slice, context);
  return {
    values,
    findings: slicingFindings(slice, context, values),
    verdicts: [],
    missing: slicingMissing(slice, context, values),
  };
}

function slicingValues(slice: SlicingSlice, context: SlicingContext): SlicingValues {
  const { finishedG, mouldCount, plan } = context;
  const perMouldG = finishedG === null || !mouldCount ? null : finishedG / mouldCount;
  const lengthMm =
    slice.length.text.trim() === '' ? context.mouldLengthMm : entryValue('length', slice.length);
  const thicknessMm = entryValue('length', slice.thickness);
  const endTrimMm = entryValue('length', slice.endTrim);
  const kerfMm = entryValue('length', slice.kerf);
  const byThickness = slice.cutBy === 'thickness';
  const cut =
    byThickness &&
    perMouldG !== null &&
    lengthMm !== null &&
    thicknessMm !== null &&
    endTrimMm !== null &&
    kerfMm !== null
      ? cutSlices({ lengthMm, massG: perMouldG, thicknessMm, endTrimMm, kerfMm })
      : null;
  const packG = entryValue('mass', slice.packMass);
  const endLoss = entryValue('fraction', slice.endLoss);
  const packed =
    !byThickness && finishedG !== null && packG !== null && endLoss !== null
      ? cutByMass(finishedG, packG, endLoss)
      : null;
  const perPortion = entryValue('count', slice.slicesPerPortion);
  const slices = cut === null || mouldCount === null ? null : cut.slices * mouldCount;
  const portions = byThickness
    ? slices === null || !perPortion
      ? null
      : Math.floor(slices / perPortion)
    : (packed?.packs ?? null);
  const portionG = byThickness ? (cut === null || !perPortion ? null : cut.sliceG * perPortion) : packG;
  const soldG = portions === null || portionG === null ? null : portions * portionG;

  const food = plan?.costs.food ?? null;
  const full = plan?.costs.full ?? null;
  const shared = (by: number | null): Price =>
    plan === null || by === null || by === 0
      ? NO_PRICE
      : priceOf(
          { food: food === null ? null : food / by, full: full === null ? null : full / by },
          plan.pricing,
        );
  const pricePerKg = shared(soldG === null ? null : soldG / G_PER_KG);
  const pound = (perKg: number | null) => (perKg === null ? null : perPound(perKg));
  return {
    finishedG,
    perMouldG,
    lengthMm,
    cut,
    packed,
    slices,
    portions,
    portionG,
    soldG,
    foodPerPortion: food === null || !portions ? null : food / portions,
    pricePerPortion: shared(portions),
    pricePerSlice: byThickness && portions !== null && perPortion ? shared(portions * perPortion) : NO_PRICE,
    pricePerKg,
    pricePerLb: { exTax: pound(pricePerKg.exTax), incTax: pound(pricePerKg.incTax) },
  };
}

function slicingFindings(
  slice: SlicingSlice,
  context: SlicingContext,
  values: SlicingValues,
): Finding<SlicingFindingId>[] {
  const found: Finding<SlicingFindingId>[] = [];
  const tell = (id: SlicingFindingId, severity: Severity, field: string, params: Params) =>
    found.push({ id, severity, stage: 'slicing', field: `slicing.${field}`, params });
  const habit = sliceHabitOf(context.familyId);
  const thicknessMm = entryValue('length', slice.thickness);
  const endTrimMm = entryValue('length', slice.endTrim);
  const byThickness = slice.cutBy === 'thickness';
  const { lengthMm, portionG, portions, cut } = values;

  if (byThickness && lengthMm !== null && endTrimMm !== null && 2 * endTrimMm >= lengthMm)
    tell('slicing.ends-are-all', 'caution', 'endTrim', { endTrimMm, lengthMm });
  else if (cut?.slices === 0 && thicknessMm !== null && lengthMm !== null)
    tell('slicing.no-slice', 'caution', 'thickness', { thicknessMm, lengthMm });
  if (byThickness && habit?.thicknessMm && thicknessMm !== null) {
    const [minMm, maxMm] = habit.thicknessMm;
    if (thicknessMm < minMm - NOISE || thicknessMm > maxMm + NOISE)
      tell('slicing.outside-habit', 'note', 'thickness', { thicknessMm, minMm, maxMm });
  }
  const starter = habit?.starterG ?? habit?.mainG ?? null;
  const main = habit?.mainG ?? habit?.starterG ?? null;
  if (starter && main && portionG !== null) {
    const [minG, maxG] = [starter[0], main[1]];
    if (portionG < minG - NOISE || portionG > maxG + NOISE)
      tell('slicing.portion-outside-habit', 'note', byThickness ? 'slicesPerPortion' : 'packMass', {
        portionG,
        minG,
        maxG,
      });
  }
  const { plannedPortions } = context;
  if (portions !== null && plannedPortions !== null && portions < plannedPortions)
    tell('slicing.fewer-than-planned', 'note', byThickness ? 'thickness' : 'packMass', {
      portions,
      planned: plannedPortions,
      short: plannedPortions - portions,
    });
  return found;
}

function slicingMissing(slice: SlicingSlice, context: SlicingContext, values: SlicingValues): MissingInput[] {
  const missing: MissingInput[] = [];
  const need = (known: unknown, field: string) => {
    if (known === null) missing.push({ field, neededFor: 'slicing.portions' });
  };
  need(context.finishedG, 'product.finished');
  if (slice.cutBy === 'mass') {
    const packG = entryValue('mass', slice.packMass);
    need(packG === 0 ? null : packG, 'slicing.packMass');
    need(entryValue('fraction', slice.endLoss), 'slicing.endLoss');
    return missing;
  }
  need(context.mouldCount || null, 'mould.moulds');
  need(values.lengthMm || null, 'slicing.length');
  need(entryValue('length', slice.thickness) || null, 'slicing.thickness');
  need(entryValue('length', slice.endTrim), 'slicing.endTrim');
  need(entryValue('length', slice.kerf), 'slicing.kerf');
  need(entryValue('count', slice.slicesPerPortion) || null, 'slicing.slicesPerPortion');
  return missing;
}
