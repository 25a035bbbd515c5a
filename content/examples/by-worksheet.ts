import type { BinderSlice, GarnishLine, PanadeKind } from '@larderwright/calc/binder';
import { newBinderSlice, newGarnishLine, panadeOf, rawPanadeG, withPanade } from '@larderwright/calc/binder';
import type { CasingsSlice } from '@larderwright/calc/casings';
import { newCasingsSlice } from '@larderwright/calc/casings';
import type { ChillBudgetSlice } from '@larderwright/calc/chill-budget';
import { newChillBudgetSlice, newChillLot } from '@larderwright/calc/chill-budget';
import type { GeleeSlice } from '@larderwright/calc/gelee';
import { newGeleeSlice } from '@larderwright/calc/gelee';
import { enteredEntry } from '@larderwright/calc/quantities';
import type { SeasoningSlice } from '@larderwright/calc/seasoning';
import { newBlendItem, newSeasoningBlend, newSeasoningSlice } from '@larderwright/calc/seasoning';
import { newThermometer, newThermometerSlice, type ThermometerSlice } from '@larderwright/calc/thermometer';

type Lot = readonly [kg: string, tempC: string];

/** Lean, fat and what is poured in, kg and °C, with the warmest end wanted, °C, and the water the formula allows, g. */
export function coldMeat(
  lots: Readonly<Partial<Record<'lean' | 'fat' | 'liquid' | 'ice', Lot>>>,
  limitC: string,
  more: Partial<ChillBudgetSlice> = {},
): ChillBudgetSlice {
  const kinds = ['lean', 'fat', 'liquid', 'ice'] as const;
  return {
    ...newChillBudgetSlice(),
    lots: kinds.flatMap((kind) => {
      const given = lots[kind];
      if (!given) return [];
      const [kg, tempC] = given;
      return [{ ...newChillLot(kind, kind), mass: enteredEntry(kg, 'kg'), temp: enteredEntry(tempC, 'C') }];
    }),
    limit: enteredEntry(limitC, 'C'),
    ...more,
  };
}

/** A panade of a kind on a mass of meat, g, in the usual share. */
export function panadeFor(
  meatG: number,
  kind: PanadeKind,
  cookedG: number,
  more: Partial<BinderSlice> = {},
): BinderSlice {
  const raw = rawPanadeG(cookedG, panadeOf(kind).lossFraction);
  return {
    ...withPanade(newBinderSlice(), kind, raw),
    meat: enteredEntry(String(meatG), 'g'),
    panadeTemp: enteredEntry('3', 'C'),
    ...more,
  };
}

/** Something folded in: weighed ready, g, in dice of a size, mm. */
export function folded(
  id: string,
  name: string,
  ingredientId: string,
  preparedG: string,
  pieceMm: string,
  more: Partial<GarnishLine> = {},
): GarnishLine {
  return {
    ...newGarnishLine(id),
    name,
    ingredientId,
    prepared: enteredEntry(preparedG, 'g'),
    pieceSize: enteredEntry(pieceMm, 'mm'),
    dried: true,
    ...more,
  };
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
export function links(casingId: string, linkG: string, more: Partial<CasingsSlice> = {}): CasingsSlice {
  return { ...newCasingsSlice(), casingId, linkMass: enteredEntry(linkG, 'g'), ...more };
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

/** One thermometer in ice and in boiling water, °C, at a height, m, and how far it may still be off. */
export function checkedProbe(
  name: string,
  [ice, boil]: readonly [ice: string, boil: string],
  heightM: string,
  error: string,
): ThermometerSlice {
  return {
    ...newThermometerSlice(),
    altitude: enteredEntry(heightM, 'm'),
    thermometers: [
      {
        ...newThermometer('first'),
        name,
        ice: enteredEntry(ice, 'C'),
        boil: enteredEntry(boil, 'C'),
        step: enteredEntry('0.1', 'dC'),
        error: enteredEntry(error, 'dC'),
        checkedOn: '2026-02-17',
        checkedBy: 'Bench 2',
      },
    ],
  };
}
