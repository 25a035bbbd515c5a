import { newCuringSaltPack } from '../dry-cure/index.ts';
import type { FormulaLine } from '../formula/index.ts';
import { newStorageSlice } from '../growth/index.ts';
import { blankEntry, type Entry } from '../quantities/index.ts';
import { newBatch } from './new-batch.ts';
import type { Batch, OptionalSlices } from './record.ts';

const emptied = ({ unit }: Entry): Entry => blankEntry(unit);

/**
 * What each slice hands on to the next batch: the plan, never what was measured. Undefined: nothing. A new slice
 * must say it here, or nothing compiles.
 */
type HandedOn = {
  readonly [Name in keyof OptionalSlices]-?: (
    slice: NonNullable<OptionalSlices[Name]>,
  ) => OptionalSlices[Name];
};
const HANDED_ON: HandedOn = {
  plan: (plan) => ({ ...plan, servingAt: null }),
  // Trials belong to the meat they were done on. What they taught stands in the plan's prices.
  yield: () => undefined,
  blend: (blend) => ({
    ...blend,
    materials: blend.materials.map((material) => ({ ...material, stock: emptied(material.stock) })),
  }),
  slicing: (slicing) => slicing,
  dryCure: (dryCure) => ({ ...dryCure, pieces: [], pack: newCuringSaltPack(), startedOn: '' }),
  brine: (brine) => ({
    ...brine,
    skinOff: emptied(brine.skinOff),
    skinOn: emptied(brine.skinOn),
    heaviest: emptied(brine.heaviest),
    thickness: emptied(brine.thickness),
    pack: newCuringSaltPack(),
    pickUp: emptied(brine.pickUp),
    afterInjection: emptied(brine.afterInjection),
    afterBrine: emptied(brine.afterBrine),
    mixedOn: '',
    startedOn: '',
    use: null,
    actual: {
      water: emptied(brine.actual.water),
      salt: emptied(brine.actual.salt),
      curingSalt: emptied(brine.actual.curingSalt),
      sugar: emptied(brine.actual.sugar),
      accelerator: emptied(brine.actual.accelerator),
      phosphate: emptied(brine.actual.phosphate),
    },
  }),
  drying: (drying) => ({
    ...drying,
    start: emptied(drying.start),
    now: emptied(drying.now),
    startMoisture: emptied(drying.startMoisture),
    startProtein: emptied(drying.startProtein),
    moisture: emptied(drying.moisture),
    protein: emptied(drying.protein),
    waterActivity: '',
    ph: '',
    steps: [],
    reachedPh53: null,
  }),
  seasoning: (seasoning) => ({
    ...seasoning,
    blends: seasoning.blends.map((blend) => ({ ...blend, groundOn: '' })),
  }),
  chillBudget: (budget) => ({
    ...budget,
    lots: budget.lots.map((lot) => ({ ...lot, temp: emptied(lot.temp) })),
    iceTemp: emptied(budget.iceTemp),
    room: emptied(budget.room),
  }),
  binder: (binder) => ({
    ...binder,
    panadeCooked: emptied(binder.panadeCooked),
    panadeTemp: emptied(binder.panadeTemp),
    garnish: binder.garnish.map((line) => ({ ...line, prepared: emptied(line.prepared) })),
  }),
  gelee: (gelee) => ({
    ...gelee,
    naturalSet: emptied(gelee.naturalSet),
    ph: emptied(gelee.ph),
    pour: emptied(gelee.pour),
    core: emptied(gelee.core),
  }),
  casings: (casings) => ({ ...casings, actualLinks: [] }),
  crust: (crust) => crust,
  cookPlan: ({ told, ...cookPlan }) => cookPlan,
  // A check has its day: the next batch looks at the thermometer again.
  thermometers: (slice) => ({
    ...slice,
    pressure: emptied(slice.pressure),
    thermometers: slice.thermometers.map((each) => ({
      ...each,
      ice: emptied(each.ice),
      boil: emptied(each.boil),
      error: emptied(each.error),
      checkedOn: '',
      checkedBy: '',
    })),
  }),
  // What nobody has confirmed stays unconfirmed.
  ruleSetDefaults: (defaults) => defaults,
  storage: ({ listeriaGroupId }) => ({ listeriaGroupId, stays: newStorageSlice().stays }),
  label: (label) => ({
    ...label,
    filled: emptied(label.filled),
    drainedFat: emptied(label.drainedFat),
    cookedOn: '',
    packedOn: '',
  }),
};

/** A line without its lot and its weight off the scale; a curing salt waits for its own pack to be read. */
function nextLine(line: FormulaLine): FormulaLine {
  return {
    ...line,
    lot: '',
    actual: emptied(line.actual),
    cure: line.cure && { nitrite: emptied(line.cure.nitrite), nitrate: emptied(line.cure.nitrate) },
  };
}

function handedOn(batch: Batch): OptionalSlices {
  const slices: OptionalSlices = {};
  const take = <Name extends keyof OptionalSlices>(name: Name) => {
    const slice = batch[name];
    if (slice === undefined) return;
    // The key pairs slice and function; the compiler cannot follow it through a generic name.
    const handOn = HANDED_ON[name] as unknown as (slice: unknown) => OptionalSlices[Name];
    const next = handOn(slice);
    if (next !== undefined) slices[name] = next;
  };
  for (const name of Object.keys(HANDED_ON) as (keyof OptionalSlices)[]) take(name);
  return slices;
}

/**
 * The next batch of the same product: formula, rules, moulds, targets and plan, and nothing that was measured,
 * dated, signed or read off a pack of this one. Lots, weights, readings, probe checks, dates, names, notes, decisions
 * and all that was issued stay behind.
 *
 * @param start id, moment, zone and number of the new record
 */
export function nextBatch(
  batch: Batch,
  start: { id: string; at: string; zone: string; batchNo: string },
): Batch {
  const blank = newBatch(start);
  const { product, formula, cure, mould, process, press } = batch;
  return {
    ...blank,
    product: {
      ...blank.product,
      name: product.name,
      kitchen: product.kitchen,
      portions: product.portions,
      batchNo: start.batchNo,
    },
    formula: { ...formula, lines: formula.lines.map(nextLine) },
    cure: { ...cure, weighedBy: '', checkedBy: '' },
    mould: { ...mould, moulds: mould.moulds.map((each) => ({ ...each, actualFills: [] })) },
    process: {
      ...process,
      steps: process.steps.map((step) => ({ ...step, startedAt: null, endedAt: null, note: '' })),
      logs: [],
    },
    press: { ...press, startedAt: null },
    ...handedOn(batch),
  };
}
