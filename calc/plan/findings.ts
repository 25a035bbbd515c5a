import type { Finding, Params, Severity } from '../findings/index.ts';
import { type Band, familyOf } from '../formula/index.ts';
import { entryValue } from '../quantities/index.ts';
import type { PlanContext } from './context.ts';
import type { PlanFindingId } from './finding-ids.ts';
import { readPricing, shareEntry } from './read-plan.ts';
import type { PlanSlice } from './slice.ts';
import { USUAL_END_LOSS, USUAL_RESIDUE, usualCookLoss } from './usual-losses.ts';
import type { PlanValues } from './values.ts';
import { wallMin } from './wall-time.ts';

/** A last mould filled less than this cooks and chills unlike the others. Common practice, no source. */
const LEAST_LAST_FILL = 0.3;
/** Batches so many times the formula want strong aromatics by taste, at about these shares. Common practice, no source. */
export const TASTE_ABOVE = 5;
export const AROMATICS_SHARE = { min: 0.85, max: 0.95 } as const;
/** The noise of decimal shares and weights. */
const NOISE = 1e-9;

type PlanFinding = Finding<PlanFindingId>;
type Tell = (id: PlanFindingId, severity: Severity, field: string, params?: Params, caution?: string) => void;

/** What is worth telling about a plan. */
export function planFindings(slice: PlanSlice, context: PlanContext, values: PlanValues): PlanFinding[] {
  const found: PlanFinding[] = [];
  const tell: Tell = (id, severity, field, params = {}, caution) =>
    found.push({ id, severity, stage: 'plan', field, params, ...(caution ? { caution } : {}) });
  loads(values, tell);
  moulds(slice, context, values, tell);
  losses(slice, context, tell);
  lines(slice, values, tell);
  times(slice, context, values, tell);
  return found;
}

function loads({ chiller, bath }: PlanValues, tell: Tell): void {
  if (chiller?.over)
    tell(
      'plan.chiller-over',
      'caution',
      'plan.chillerCapacity',
      { loadG: chiller.load, capacityG: chiller.capacity ?? 0, runs: chiller.runs ?? 0 },
      'chill-depth',
    );
  if (bath?.over)
    tell('plan.bath-over', 'caution', 'plan.bathCapacity', {
      moulds: bath.load,
      capacity: bath.capacity ?? 0,
      runs: bath.runs ?? 0,
    });
}

function moulds(slice: PlanSlice, context: PlanContext, values: PlanValues, tell: Tell): void {
  const { flow } = values;
  if (slice.want === 'moulds' || flow === null) return;
  const [only] = values.moulds;
  if (values.moulds.length === 1 && only?.needed && only.needed.lastFraction < LEAST_LAST_FILL)
    tell('plan.last-mould-low', 'note', 'mould.moulds', {
      count: only.needed.count,
      lastFraction: only.needed.lastFraction,
    });
  if (context.capacityG !== null && context.capacityG < flow.fillG * (1 - NOISE))
    tell('plan.moulds-too-few', 'note', 'mould.moulds', {
      fillG: flow.fillG,
      capacityG: context.capacityG,
      overG: flow.fillG - context.capacityG,
    });
}

function losses(slice: PlanSlice, { familyId }: PlanContext, tell: Tell): void {
  const bands: readonly (readonly ['cookLoss' | 'endLoss' | 'residue', Band | null])[] = [
    ['cookLoss', usualCookLoss(familyId)],
    ['endLoss', USUAL_END_LOSS],
    ['residue', USUAL_RESIDUE],
  ];
  for (const [what, band] of bands) {
    const loss = entryValue('fraction', slice[what]);
    if (loss === null) continue;
    if (loss >= 1) tell('plan.loss-is-all', 'caution', `plan.${what}`, { what });
    else if (band !== null && (loss < band.min - NOISE || loss > band.max + NOISE))
      tell('plan.loss-outside-band', 'note', `plan.${what}`, {
        what,
        lossFraction: loss,
        minFraction: band.min,
        maxFraction: band.max,
        family: what === 'cookLoss' ? (familyOf(familyId)?.name ?? '') : '',
      });
  }
}

function lines(slice: PlanSlice, { purchases, factor }: PlanValues, tell: Tell): void {
  for (const { lineId, name, pieces, massG } of purchases) {
    if (pieces !== null && massG !== null && Math.abs(pieces.exact - Math.round(pieces.exact)) > 1e-6)
      tell('plan.part-pieces', 'note', `plan.lines.${lineId}.eachMass`, {
        name,
        pieces: pieces.exact,
        whole: pieces.whole,
        massG,
      });
  }
  for (const { lineId, trimYield } of slice.lines) {
    if (entryValue('fraction', trimYield) === 0)
      tell('plan.yield-is-none', 'caution', `plan.lines.${lineId}.trimYield`);
  }
  const seasoned = purchases.some(({ part }) => part === 'seasoning');
  if (factor !== null && factor > TASTE_ABOVE && seasoned)
    tell('plan.taste-aromatics', 'note', 'plan.want', {
      factor,
      minFraction: AROMATICS_SHARE.min,
      maxFraction: AROMATICS_SHARE.max,
    });
  const { shareFraction, method } = readPricing(slice);
  const impossible =
    shareFraction !== null && (method === 'food-cost' ? shareFraction === 0 : shareFraction === 1);
  if (impossible) tell('plan.no-price', 'caution', shareEntry(slice).field, { method });
}

function times(slice: PlanSlice, context: PlanContext, { timeline }: PlanValues, tell: Tell): void {
  const { servingAt } = slice;
  if (servingAt !== null && servingAt.trim() !== '' && wallMin(servingAt) === null)
    tell('plan.not-a-date', 'caution', 'plan.servingAt');
  for (const { id, leastMin, mostMin } of timeline) {
    if (leastMin !== null && mostMin !== null && mostMin < leastMin)
      tell('plan.most-under-least', 'caution', `plan.steps.${id}.most`, { leastMin, mostMin });
  }
  const [first] = timeline;
  const startMin = wallMin(first?.latestStart ?? null);
  const nowMin = wallMin(context.now);
  if (first?.latestStart && startMin !== null && nowMin !== null && startMin < nowMin)
    tell('plan.too-late', 'caution', 'plan.servingAt', {
      latestStart: first.latestStart,
      lateMin: nowMin - startMin,
    });
}
