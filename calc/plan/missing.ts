import type { MissingInput } from '../findings/index.ts';
import { type Entry, entryValue, readEntry } from '../quantities/index.ts';
import type { PlanContext } from './context.ts';
import type { LineToBuy } from './purchases.ts';
import { readSteps, shareEntry } from './read-plan.ts';
import type { PlanSlice } from './slice.ts';

/** Inputs that are blank or unreadable, each with the figure that waits for it. */
export function planMissing(
  slice: PlanSlice,
  context: PlanContext,
  lines: readonly LineToBuy[],
): MissingInput[] {
  return [
    ...flowMissing(slice, context),
    ...(context.totalG === null ? [{ field: 'formula.lines', neededFor: 'plan.purchases' }] : []),
    ...lines.flatMap(lineMissing),
    ...costMissing(slice),
    ...timelineMissing(slice),
  ];
}

function flowMissing(slice: PlanSlice, context: PlanContext): MissingInput[] {
  const missing: MissingInput[] = [];
  const need = (field: string) => missing.push({ field, neededFor: 'plan.masses' });
  if (slice.want === 'portions') {
    if (!entryValue('count', context.portions)) need('product.portions');
    if (!entryValue('mass', slice.portionMass)) need('plan.portionMass');
  }
  if (slice.want === 'finished' && !entryValue('mass', slice.finished)) need('plan.finished');
  if (slice.want === 'moulds' && context.capacityG === null) need('mould.moulds');
  if (entryValue('mass', slice.testPoach) === null) need('plan.testPoach');
  for (const name of ['residue', 'cookLoss', 'endLoss'] as const) {
    if (entryValue('fraction', slice[name]) === null) need(`plan.${name}`);
  }
  return missing;
}

function lineMissing(line: LineToBuy): MissingInput[] {
  const { lineId, price, priceBasis, eachMassG, yieldFraction } = line;
  const path = `plan.lines.${lineId}`;
  const missing: MissingInput[] = [];
  if (yieldFraction === null) missing.push({ field: `${path}.trimYield`, neededFor: 'plan.purchases' });
  if (priceBasis === 'sundries') return missing;
  if (price === null) missing.push({ field: `${path}.price`, neededFor: 'plan.food-cost' });
  if (priceBasis === 'each' && (eachMassG === null || eachMassG === 0))
    missing.push({ field: `${path}.eachMass`, neededFor: 'plan.food-cost' });
  return missing;
}

function isBad(kind: 'money' | 'time', entry: Entry): boolean {
  return readEntry(kind, entry).state === 'bad';
}

/** Labour and overhead are asked for only by a margin, or where something unreadable stands. */
function costMissing(slice: PlanSlice): MissingInput[] {
  const missing: MissingInput[] = [];
  const { field, entry } = shareEntry(slice);
  if (entryValue('fraction', entry) === null) missing.push({ field, neededFor: 'plan.price' });
  if (entryValue('money', slice.sundries) === null)
    missing.push({ field: 'plan.sundries', neededFor: 'plan.food-cost' });
  const full = slice.pricing === 'margin';
  const labourMin = entryValue('time', slice.labour);
  if (labourMin === null && (full || isBad('time', slice.labour)))
    missing.push({ field: 'plan.labour', neededFor: 'plan.full-cost' });
  const needsRate = labourMin === null ? full : labourMin > 0;
  if (needsRate && entryValue('money', slice.labourRate) === null)
    missing.push({ field: 'plan.labourRate', neededFor: 'plan.full-cost' });
  if (entryValue('money', slice.overhead) === null && (full || isBad('money', slice.overhead)))
    missing.push({ field: 'plan.overhead', neededFor: 'plan.full-cost' });
  return missing;
}

function timelineMissing(slice: PlanSlice): MissingInput[] {
  if (slice.servingAt === null || slice.servingAt.trim() === '') return [];
  return readSteps(slice).flatMap(({ id, leastMin, mostMin }) => {
    const field = leastMin === null ? 'least' : mostMin === null ? 'most' : null;
    return field === null ? [] : [{ field: `plan.steps.${id}.${field}`, neededFor: 'plan.timeline' }];
  });
}
