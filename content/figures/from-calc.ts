import { type CasingMaterial, casingOf, SPARE } from '@larderwright/calc/casings';
import { type CoolRuleSet, coolRuleSet } from '@larderwright/calc/cooling';
import { CURING_TIME_RULES, wholeMuscleRuleSet } from '@larderwright/calc/dry-cure';
import { type Band, FAMILY_MARK, familyOf } from '@larderwright/calc/formula';
import type { UseStrength } from '@larderwright/calc/gelee';
import { cookLimit, cookRuleSet, isByFat, PARASITE_TABLES } from '@larderwright/calc/lethality';
import { PASTES } from '@larderwright/calc/mould';
import { usualCookLoss } from '@larderwright/calc/plan';
import { PRESS_BANDS, type PressBand } from '@larderwright/calc/press';
import { BLEND_STYLES, doseOf, SPICE_MARK, type SpiceForm } from '@larderwright/calc/seasoning';
import { sliceHabitOf } from '@larderwright/calc/slicing';
import type { Bound, Figure } from './figure.ts';

/*
 * Figures that calc computes with are read from its tables, so that a page and a worksheet cannot say two things. Every
 * reader throws when the table has no such row: that is a slip of the author, and it stops the build.
 */

const PRACTICE = 'common-practice' as const;

/** Float noise of a fraction made a per cent. */
const percent = (fraction: number) => Number((fraction * 100).toFixed(6));

function there<T>(value: T | null | undefined, what: string): T {
  if (value === null || value === undefined) throw new Error(`No ${what} in calc.`);
  return value;
}

/** A range, or one value where both ends are the same. */
function span(low: number, high: number): Figure['value'] {
  return low === high ? low : [low, high];
}

/** One share as a figure in per cent. Common practice unless told otherwise. */
export function ofFraction(fraction: number, more: Partial<Figure> = {}): Figure {
  return { value: percent(fraction), unit: '%', mark: PRACTICE, ...more };
}

/** Gelatine or agar of a use as a figure in per cent of the liquid. */
export function ofStrength({ minFraction, maxFraction }: UseStrength): Figure {
  return ofRange({ min: minFraction, max: maxFraction });
}

/** A range of shares as a figure in per cent. */
export function ofRange({ min, max }: { readonly min: number; readonly max: number }): Figure {
  return { value: span(percent(min), percent(max)), unit: '%', mark: PRACTICE };
}

const family = (id: string) => there(familyOf(id), `family ${id}`);
const ofBand = (band: Band | null | undefined, what: string): Figure => ({
  ...ofRange(there(band, what)),
  mark: FAMILY_MARK,
});

/** The usual share of one part in a product family. */
export function familyPart(id: string, part: keyof ReturnType<typeof family>['parts']): Figure {
  return ofBand(family(id).parts[part], `${part} of ${id}`);
}

/** Salt, fat or gelatine of a product family. */
export function familyHas(id: string, what: 'salt' | 'chemicalFat' | 'gelatine'): Figure {
  const { [what]: found } = family(id);
  return ofBand(found !== null && 'band' in found ? found.band : found, `${what} of ${id}`);
}

/** Pepper or spice of a product family, g/kg. */
export function familyDose(id: string, what: 'pepperGPerKg' | 'spiceGPerKg'): Figure {
  return { value: there(family(id)[what], `${what} of ${id}`), unit: 'g/kg', mark: FAMILY_MARK };
}

/** The share a law ties to a name of the family, by a word of what is counted. */
export function namedShare(id: string, name: string, what: string): Figure {
  const { min, max, mark, source } = there(
    family(id).named.find((share) => share.name.startsWith(name) && share.what === what),
    `named share "${what}" of ${name} in ${id}`,
  );
  const bound: Bound = min === undefined ? 'at-most' : 'at-least';
  return ofFraction(there(min ?? max, `share of ${name}`), { bound, mark, source });
}

/** What a family loses in cook and chill. */
export function cookLoss(id: string): Figure {
  return ofRange(there(usualCookLoss(id), `cook loss of ${id}`));
}

/** How a family is sliced, mm, or portioned, g. */
export function sliced(id: string, what: 'thicknessMm' | 'starterG' | 'mainG'): Figure {
  const [low, high] = there(sliceHabitOf(id)?.[what], `${what} of ${id}`);
  return { value: span(low, high), unit: what === 'thicknessMm' ? 'mm' : 'g', mark: PRACTICE };
}

const pressBand = (id: string): PressBand =>
  there(
    PRESS_BANDS.find((band) => band.id === id),
    `press band ${id}`,
  );

/** Pressure of a press band, kPa. */
export function pressure(id: string): Figure {
  const { lowKPa, highKPa } = pressBand(id);
  return { value: span(lowKPa, highKPa), unit: 'kPa', mark: PRACTICE };
}

/** How long a press band stands, h. */
export function pressHours(id: string): Figure {
  const [from, to] = there(pressBand(id).hours, `hours of press band ${id}`);
  return { value: span(from, to), unit: 'h', mark: PRACTICE };
}

/** Core when the press goes on, °C. */
export function pressCore(id: string): Figure {
  return { value: there(pressBand(id).coreC, `core of press band ${id}`), unit: 'C', mark: PRACTICE };
}

/** The warmest core a press may go on at, °C. */
export function pressCoreMost(id: string): number {
  return there(pressBand(id).coreC, `core of press band ${id}`)[1];
}

const spice = (id: string, form: SpiceForm) => there(doseOf(id, form), `dose of ${id}, ${form}`);

/** The most of a spice before it spoils the food, g/kg. */
export function spiceCeiling(id: string, form: SpiceForm = 'ground'): Figure {
  return { value: spice(id, form).ceilingGPerKg, unit: 'g/kg', bound: 'at-most', mark: SPICE_MARK };
}

/** The usual dose of a spice, g/kg. */
export function spiceTypical(id: string, form: SpiceForm = 'ground'): Figure {
  return { value: spice(id, form).typicalGPerKg, unit: 'g/kg', mark: SPICE_MARK };
}

/** From background to the usual dose of a spice, g/kg. */
export function spiceRange(id: string, form: SpiceForm = 'ground'): Figure {
  const { lowGPerKg, typicalGPerKg } = spice(id, form);
  return { value: span(lowGPerKg, typicalGPerKg), unit: 'g/kg', mark: SPICE_MARK };
}

/** Dose of a style of blend, g/kg. */
export function blendDose(id: string): Figure {
  const { doseGPerUnit, mark } = there(
    BLEND_STYLES.find((style) => style.id === id),
    `blend ${id}`,
  );
  return { value: span(doseGPerUnit.min, doseGPerUnit.max), unit: 'g/kg', mark };
}

/** A single cooking limit, its temperature and its hold. */
export function hold(setId: string, limitId: string): { readonly temp: Figure; readonly time: Figure } {
  const limit = there(cookLimit(cookRuleSet(setId) ?? undefined, limitId), `limit ${limitId} of ${setId}`);
  if (isByFat(limit.hold) || limit.stated.unit !== 'C')
    throw new Error(`Limit ${limitId} is not one pair in °C.`);
  const known = { mark: limit.mark, source: limit.source };
  return {
    temp: { value: limit.stated.value, unit: 'C', bound: 'at-least', ...known },
    time: { value: limit.hold.s / 60, unit: 'min', ...known },
  };
}

const MM_PER_CM = 10;

/** One row of a parasite table as it is printed: cold, days, and the piece it is meant for. */
export function freezing(tableId: string, row: number) {
  const table = there(
    PARASITE_TABLES.find(({ id }) => id === tableId),
    `parasite table ${tableId}`,
  );
  const { tempC, time, thickness } = there(table.rows[row], `row ${row} of ${tableId}`);
  const number = (text: string | undefined, unit: string) =>
    Number(there(new RegExp(`(\\d+) ${unit}`).exec(text ?? '')?.[1], `${unit} in row ${row} of ${tableId}`));
  const known = { mark: table.mark, source: table.source };
  return {
    temp: { value: tempC, unit: 'C', ...known },
    time: { value: number(time, 'days'), unit: 'd', ...known },
    thickness: { value: number(thickness, 'cm') * MM_PER_CM, unit: 'mm', ...known },
  } as const satisfies Record<string, Figure>;
}

/** A limit on nitrite in whole muscle, mg/kg as the law counts it. */
export function muscleLimit(setId: string, limitId: string, more: Partial<Figure> = {}): Figure {
  const { valuePpm, mark, source } = there(
    wholeMuscleRuleSet(setId)?.limits.find(({ id }) => id === limitId),
    `limit ${limitId} of ${setId}`,
  );
  return { value: valuePpm, unit: 'mg/kg', mark, source, ...more };
}

/** The habit of curing so many millimetres a day. */
export const DAYS_BY_THICKNESS = there(
  CURING_TIME_RULES.find(({ id }) => id === 'six-mm-a-day'),
  'curing rule by thickness',
);

/** One part of a paste, % of its flour. */
export function pastePart(pasteId: string, part: 'fat' | 'water' | 'salt'): Figure {
  const { parts } = there(
    PASTES.find(({ id }) => id === pasteId),
    `paste ${pasteId}`,
  );
  const [low, high] = parts[part];
  return { value: span(low, high), unit: '%', mark: PRACTICE };
}

/** How a casing is soaked, min and °C. */
export function soaking(casingId: string, what: 'soakMin' | 'soakC'): Figure['value'] {
  const casing = there(casingOf(casingId), `casing ${casingId}`);
  const [low, high] = there(casing[what], `${what} of ${casingId}`);
  return span(low, high);
}

/** What a cooling rule asks of a product that is to count as cured. */
export function curedCooling(setId: string): { readonly nitrite: Figure; readonly salt: Figure } {
  const set: CoolRuleSet = there(coolRuleSet(setId), `cooling rule set ${setId}`);
  const way = there(set.cured?.[0], `cured way of ${setId}`);
  const known = {
    bound: 'at-least',
    mark: 'memory',
    source: there(set.sources[0], `source of ${setId}`),
  } as const;
  return {
    nitrite: { value: there(way.nitritePpm, `nitrite of ${setId}`), unit: 'mg/kg', ...known },
    salt: ofFraction(there(way.saltOnWaterFraction, `salt of ${setId}`), known),
  };
}

/** Casing to add for breaks and ends. */
export function spareCasing(material: CasingMaterial): Figure {
  return ofRange(there(SPARE[material], `spare of ${material} casing`));
}

/** The pieces that habit is meant for, mm. */
export const CURED_BY_THICKNESS: Figure = {
  value: there(DAYS_BY_THICKNESS.rangeMm, 'range of the curing rule by thickness'),
  unit: 'mm',
  mark: DAYS_BY_THICKNESS.mark,
};
