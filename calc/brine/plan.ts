import type { PackReading } from '../dry-cure/index.ts';
import { entryValue } from '../quantities/index.ts';
import { gainFraction } from './nitrite-by-method.ts';
import { type BrineQuestion, type BrineRecipe, immersionRecipe, pickleRecipe, pickleSalt } from './recipe.ts';
import type { BrineMethod, BrineSlice } from './slice.ts';

/** How much of the pickle the meat takes up, as typed or as weighed. Fractions of green weight. */
export interface Shares {
  /** All that was or is to be injected ÷ meat. */
  readonly pumpFraction: number | null;
  readonly isPumpWeighed: boolean;
  /** Of the pump, what stays; 1 once it was weighed after draining. */
  readonly staysFraction: number;
  readonly pickUpFraction: number | null;
}

/** Pump and pick-up of a vat; a weighed one outranks the plan. */
export function readShares(slice: BrineSlice, method: BrineMethod | null): Shares {
  // Weighed with its skin or without, as it went in.
  const weighedG = entryValue('mass', slice.skinOff) ?? entryValue('mass', slice.skinOn);
  const isInjected = method === 'inject' || method === 'inject-cover';
  const measured = isInjected ? gainFraction(weighedG, entryValue('mass', slice.afterInjection)) : null;
  const planned = isInjected ? entryValue('fraction', slice.injection) : null;
  return {
    pumpFraction: measured ?? planned,
    isPumpWeighed: measured !== null,
    staysFraction: measured === null ? (entryValue('fraction', slice.retained) ?? 1) : 1,
    pickUpFraction:
      gainFraction(weighedG, entryValue('mass', slice.afterBrine)) ?? entryValue('fraction', slice.pickUp),
  };
}

/** What the brine is planned from; null without water. */
export function questionOf(
  slice: BrineSlice,
  greenG: number,
  pack: PackReading,
  readabilityG: number | null,
  ceilingPpm: number | null,
): BrineQuestion | null {
  const waterG = entryValue('mass', slice.water);
  if (waterG === null || waterG <= 0) return null;
  return {
    greenG,
    waterG,
    meatWaterFraction: entryValue('fraction', slice.meatWater),
    saltTargetFraction: entryValue('fraction', slice.saltTarget),
    saltBase: slice.saltBase,
    sugarFraction: entryValue('fraction', slice.sugar),
    nitriteTargetPpm: entryValue('ppm', slice.nitriteTarget),
    nitriteFraction: pack.nitriteFraction,
    packSaltFraction: pack.saltFraction,
    acceleratorPpm: entryValue('ppm', slice.acceleratorTarget),
    phosphateFraction: entryValue('fraction', slice.phosphate),
    readabilityG,
    ceilingPpm,
  };
}

/** The brine to weigh, by the method. */
export function recipeOf(
  slice: BrineSlice,
  method: BrineMethod,
  question: BrineQuestion | null,
  shares: Shares,
): BrineRecipe | null {
  if (question === null) return null;
  if (method === 'timed') {
    return pickleRecipe(question, shares.pickUpFraction, entryValue('fraction', slice.strength));
  }
  if (method !== 'inject') return immersionRecipe(question);
  // The recipe is made before anything was weighed: by the planned pump.
  const pump = entryValue('fraction', slice.injection);
  const stays = entryValue('fraction', slice.retained);
  const target = question.saltTargetFraction;
  const salt = pump === null || stays === null || target === null ? null : pickleSalt(target, pump, stays);
  return pickleRecipe(question, pump, salt);
}
