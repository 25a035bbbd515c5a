import type { CasingsSlice } from '@larderwright/calc/casings';
import { newCasingsSlice } from '@larderwright/calc/casings';
import type { ChillBudgetSlice } from '@larderwright/calc/chill-budget';
import { newChillBudgetSlice, newChillLot } from '@larderwright/calc/chill-budget';
import type { GeleeSlice } from '@larderwright/calc/gelee';
import { newGeleeSlice } from '@larderwright/calc/gelee';
import { enteredEntry } from '@larderwright/calc/quantities';
import type { SeasoningSlice } from '@larderwright/calc/seasoning';
import { newBlendItem, newSeasoningBlend, newSeasoningSlice } from '@larderwright/calc/seasoning';

/** Lean and fat before the grinder, kg and °C. */
export function coldMeat(
  lean: readonly [kg: string, tempC: string],
  fat: readonly [kg: string, tempC: string],
): ChillBudgetSlice {
  const lot = (kind: 'lean' | 'fat', [kg, tempC]: readonly [string, string]) => ({
    ...newChillLot(kind, kind),
    mass: enteredEntry(kg, 'kg'),
    temp: enteredEntry(tempC, 'C'),
  });
  return { ...newChillBudgetSlice(), lots: [lot('lean', lean), lot('fat', fat)] };
}

/** A jelly by its liquid, mL, and the use it is for. */
export function jelly(liquidMl: string, use: GeleeSlice['use'], more: Partial<GeleeSlice> = {}): GeleeSlice {
  return {
    ...newGeleeSlice(),
    liquid: enteredEntry(liquidMl, 'mL'),
    use,
    ph: enteredEntry('6.0', 'ratio'),
    ...more,
  };
}

/** Links of a mass, g, in a casing of the table. */
export function links(casingId: string, linkG: string): CasingsSlice {
  return { ...newCasingsSlice(), casingId, linkMass: enteredEntry(linkG, 'g') };
}

/** One blend by parts at its dose, g/kg. */
export function blend(
  name: string,
  dose: string,
  spices: readonly (readonly [spiceId: string, name: string, parts: string])[],
): SeasoningSlice {
  return {
    ...newSeasoningSlice(),
    blends: [
      {
        ...newSeasoningBlend('blend'),
        name,
        dose: enteredEntry(dose, 'g/kg'),
        items: spices.map(([spiceId, spice, parts]) => ({
          ...newBlendItem(spiceId),
          spiceId,
          name: spice,
          parts: enteredEntry(parts, 'ratio'),
        })),
      },
    ],
    scaleReadability: enteredEntry('0.01', 'g'),
  };
}
