import { type CureAmounts, type MeasuredResidual, nitritePpm, weighingErrorFraction } from '../cure/index.ts';
import {
  ceilingOnMeat,
  cureTime,
  dateAfter,
  judgeMuscle,
  type PackReading,
  readPack,
  type SkinFree,
  skinFreeMass,
  turnDates,
  type WholeMuscleKind,
  type WholeMuscleRuleSet,
  wholeMuscleAmounts,
  wholeMuscleLimits,
} from '../dry-cure/index.ts';
import { entryValue } from '../quantities/index.ts';
import { brineFreezesC, brineStrength, WATER_LB_PER_GALLON } from './brine-scales.ts';
import { type SaltOutcome, saltAtEquilibrium } from './equilibrium-salt.ts';
import { immersionPpm, pumpedPpm } from './nitrite-by-method.ts';
import { partsInUse, pickleOf } from './parts.ts';
import { questionOf, readShares, recipeOf, type Shares } from './plan.ts';
import type { BrineRecipe } from './recipe.ts';
import type { BrineMethod, BrineSlice } from './slice.ts';
import { type Uptake, uptakeOf } from './uptake.ts';
import type { BrineParts, BrineValues } from './values.ts';
import { estimateWaterActivity } from './water-activity.ts';

/** Stronger than this a brine is timed. Common practice, no source. */
export const TIMED_FROM_FRACTION = 0.1;
const MINUTES_PER_DAY = 1440;

/** The slice as numbers, and what follows from it. */
export interface BrineFigures {
  readonly values: BrineValues;
  readonly amounts: CureAmounts;
  readonly kind: WholeMuscleKind;
  readonly uptake: Uptake | null;
  readonly readabilityG: number | null;
  readonly nitriteTargetPpm: number | null;
}

/** Everything the brine of a vat comes to. */
export function brineFigures(
  slice: BrineSlice,
  ruleSet: WholeMuscleRuleSet | null,
  readabilityG: number | null,
  finishedG: number | null,
  measured: MeasuredResidual | null = null,
): BrineFigures {
  const { product, finish, isTraditional, method } = slice;
  const route = method === 'inject' || method === 'inject-cover' ? 'pumped' : 'immersion';
  const kind: WholeMuscleKind = { product, finish, isTraditional, route };
  const pack = readPack(slice.pack);
  const green = skinFreeMass(entryValue('mass', slice.skinOff), entryValue('mass', slice.skinOn));
  const limits = ruleSet === null || product === null ? [] : wholeMuscleLimits(ruleSet, kind);
  const ceilingPpmTarget = ceilingOnMeat(limits, 0);
  const nitriteTargetPpm = entryValue('ppm', slice.nitriteTarget);
  const shares = readShares(slice, method);
  const recipe =
    green === null || method === null
      ? null
      : recipeOf(slice, method, questionOf(slice, green.massG, pack, readabilityG, ceilingPpmTarget), shares);
  const inUse = partsInUse(slice, recipe);
  const pickleG = pickleOf(inUse);
  const greenG = green?.massG ?? null;
  const uptake =
    method === null || greenG === null || pickleG === null || pickleG <= 0
      ? null
      : uptakeOf({
          method,
          greenG,
          pickleG,
          pumpFraction: shares.pumpFraction,
          pickUpFraction: shares.pickUpFraction,
          federalMethod: ruleSet?.id === 'us-federal' ? slice.federalMethod : null,
        });
  const wet = method === 'inject' ? (shares.pumpFraction ?? 0) * shares.staysFraction : 0;
  const totalG = greenG === null ? null : greenG * (1 + wet);
  const amounts = wholeMuscleAmounts(
    { greenG, totalG, finishedG, curingSaltG: taken(inUse.curingSaltG, uptake) },
    pack,
  );
  const values = valuesOf({
    slice,
    ruleSet,
    pack,
    green,
    recipe,
    inUse,
    pickleG,
    shares,
    uptake,
    readabilityG,
  });
  const judged = judgeMuscle(ruleSet, kind, amounts, measured);
  return {
    values: { ...values, ...judged, ceilingPpmTarget },
    amounts,
    kind,
    uptake,
    readabilityG,
    nitriteTargetPpm,
  };
}

function taken(curingSaltG: number | null, uptake: Uptake | null) {
  if (curingSaltG === null) return null;
  if (curingSaltG === 0) return { low: 0, high: 0 };
  return uptake === null
    ? { low: 0, high: null }
    : { low: curingSaltG * uptake.low, high: curingSaltG * uptake.high };
}

interface Known {
  readonly slice: BrineSlice;
  readonly ruleSet: WholeMuscleRuleSet | null;
  readonly pack: PackReading;
  readonly green: SkinFree | null;
  readonly recipe: BrineRecipe | null;
  readonly inUse: BrineParts;
  readonly pickleG: number | null;
  readonly shares: Shares;
  readonly uptake: Uptake | null;
  readonly readabilityG: number | null;
}

function valuesOf(known: Known): Omit<BrineValues, 'ceilings' | 'floors' | 'ceilingPpmTarget'> {
  const { slice, ruleSet, pack, green, recipe, inUse, pickleG, shares, uptake, readabilityG } = known;
  const { method } = slice;
  const greenG = green?.massG ?? null;
  const nitriteG = product(inUse.curingSaltG, pack.nitriteFraction);
  const saltG = sum(inUse.plainSaltG, product(inUse.curingSaltG, pack.saltFraction));
  const brineSaltFraction = saltG === null || pickleG === null || pickleG <= 0 ? null : saltG / pickleG;
  const strength = brineSaltFraction === null ? null : brineStrength(brineSaltFraction);
  const isSoak = method === 'equilibrium' || method === 'inject-cover';
  const isTimed =
    method === 'timed' || (isSoak && brineSaltFraction !== null && brineSaltFraction > TIMED_FROM_FRACTION);
  const isInjected = method === 'inject' || method === 'inject-cover';
  const pumped =
    method === 'inject' && nitriteG !== null && pickleG !== null && shares.pumpFraction !== null
      ? pumpedPpm(nitriteG, pickleG, shares.pumpFraction)
      : null;
  const immersion =
    method === null || method === 'inject' || nitriteG === null || greenG === null || pickleG === null
      ? null
      : immersionPpm({ nitriteG, greenG, pickleG, pickUpFraction: shares.pickUpFraction });
  const salt = isTimed ? null : saltOutcome(known, saltG);
  const onGreen = (massG: number | null) => ({
    low: massG === null || greenG === null ? null : uptake === null ? null : (massG * uptake.low) / greenG,
    high: massG === null || greenG === null ? null : uptake === null ? null : (massG * uptake.high) / greenG,
  });
  const accelerator = onGreen(inUse.acceleratorG);
  const ppmOf = (fraction: number | null) => (fraction === null ? null : fraction * 1e6);
  const time = cureTime({
    thicknessMm: entryValue('length', slice.thickness),
    massG: entryValue('mass', slice.heaviest),
    route: 'immersion',
    isHam: slice.product === 'ham',
  });
  const days = entryValue('time', slice.days);
  const dayCount = days === null ? null : days / MINUTES_PER_DAY;
  const certain = pumped ?? leastOf(immersion, method);
  const { pumpFraction } = shares;
  return {
    ruleSet,
    pack,
    greenG,
    isSkinEstimated: green?.isEstimated ?? false,
    recipe,
    inUse,
    pickleG,
    saltG,
    brineSaltFraction,
    strength,
    freezesC: brineSaltFraction === null ? null : brineFreezesC(brineSaltFraction),
    pickleLbPerGallon: strength === null ? null : strength['specific-gravity'] * WATER_LB_PER_GALLON,
    isTimed,
    nitriteG,
    nitritePpmAll: nitriteG === null ? null : ppmOn(nitriteG, sum(greenG, pickleG)),
    nitritePpmMeatAndWater: nitriteG === null ? null : ppmOn(nitriteG, sum(greenG, inUse.waterG)),
    pumpedPpm: pumped,
    immersion,
    methodsDiffer: methodsDiffer(immersion),
    pumpFraction,
    pickUpFraction: shares.pickUpFraction,
    isPumpWeighed: shares.isPumpWeighed,
    injectG: isInjected && greenG !== null && pumpFraction !== null ? greenG * pumpFraction : null,
    targetMassG: isInjected && greenG !== null && pumpFraction !== null ? greenG * (1 + pumpFraction) : null,
    expectedMassG:
      isInjected && greenG !== null && pumpFraction !== null
        ? greenG * (1 + pumpFraction * shares.staysFraction)
        : null,
    salt,
    waterActivity: salt === null ? null : estimateWaterActivity(salt.waterPhaseFraction),
    acceleratorPpm: { low: ppmOf(accelerator.low), high: ppmOf(accelerator.high) },
    phosphateFraction: onGreen(inUse.phosphateG),
    time,
    days: dayCount,
    brineC: entryValue('temperature', slice.brineTemp),
    ageDays: daysBetween(slice.mixedOn, slice.startedOn),
    readyFrom: dayCount === null ? null : dateAfter(slice.startedOn, Math.ceil(dayCount)),
    turnOn: dayCount === null ? [] : turnDates(slice.startedOn, Math.ceil(dayCount)),
    weighingErrorFraction:
      inUse.curingSaltG === null || readabilityG === null
        ? null
        : weighingErrorFraction(inUse.curingSaltG, readabilityG),
    cured: {
      ingoingPpmMeat: certain,
      ingoingPpmTotal: certain,
      saltOnWaterFraction: salt?.waterPhaseFraction ?? null,
      saltOnWaterMinFraction: salt?.waterPhaseFraction ?? null,
      acceleratorPpmMeat: ppmOf(accelerator.low),
      acceleratorPpmTotal: ppmOf(accelerator.low),
      liverFraction: 0,
    },
    reachesCore: isInjected ? true : null,
  };
}

function saltOutcome(known: Known, saltG: number | null): SaltOutcome | null {
  const { slice, green, inUse, pickleG, shares } = known;
  const meatWaterFraction = entryValue('fraction', slice.meatWater);
  if (green === null || saltG === null || meatWaterFraction === null || inUse.waterG === null) return null;
  const meat = green.massG;
  if (slice.method !== 'inject') {
    return saltAtEquilibrium({ meat, meatWaterFraction, water: inUse.waterG }, saltG);
  }
  const { pumpFraction, staysFraction } = shares;
  if (pumpFraction === null || pickleG === null || pickleG <= 0) return null;
  const share = (meat * pumpFraction * staysFraction) / pickleG;
  const saltInMeat = saltG * share;
  const water = meat * meatWaterFraction + inUse.waterG * share;
  return {
    waterPhaseFraction: saltInMeat / (saltInMeat + water),
    saltInMeat,
    saltOnMeatFraction: saltInMeat / meat,
  };
}

function leastOf(immersion: BrineValues['immersion'], method: BrineMethod | null): number | null {
  if (immersion === null) return null;
  const even = method === 'timed' ? null : immersion.equilibriumPpm;
  const known = [immersion.pickUpPpm, even].filter((ppm) => ppm !== null);
  return known.length === 0 ? null : Math.min(...known);
}

function methodsDiffer(immersion: BrineValues['immersion']): number | null {
  if (immersion === null || immersion.pickUpPpm === null || immersion.equilibriumPpm === null) return null;
  const [low, high] = [immersion.pickUpPpm, immersion.equilibriumPpm].sort((a, b) => a - b);
  return low === undefined || high === undefined || low <= 0 ? null : high / low;
}

function daysBetween(fromIso: string, toIso: string): number | null {
  if (dateAfter(fromIso, 0) === null || dateAfter(toIso, 0) === null) return null;
  return (Date.parse(`${toIso}T00:00:00Z`) - Date.parse(`${fromIso}T00:00:00Z`)) / 86_400_000;
}

function product(massG: number | null, fraction: number | null): number | null {
  if (massG === 0) return 0;
  return massG === null || fraction === null ? null : massG * fraction;
}

function sum(a: number | null, b: number | null): number | null {
  return a === null || b === null ? null : a + b;
}

function ppmOn(nitriteG: number, basisG: number | null): number | null {
  return basisG === null ? null : nitritePpm(nitriteG, basisG);
}
