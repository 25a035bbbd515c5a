import type { MissingInput, StageResult } from '../findings/index.ts';
import { entryValue, readEntry } from '../quantities/index.ts';
import { type BloomConversion, convertBloom } from './bloom.ts';
import { jellyUnderCrustMl, SOAKING_WATER } from './fill-under-crust.ts';
import type { GeleeFindingId } from './finding-ids.ts';
import { geleeFindings } from './findings.ts';
import { sheetOf, sheetsFor } from './sheets.ts';
import type { GeleeSlice } from './slice.ts';
import { AGAR_STRENGTH, STRENGTH_BY_USE } from './strength.ts';
import type { GeleeValues } from './values.ts';
import { weakeningOf } from './weakening.ts';

/** pH a food may have; outside it the meter is wrong. */
const PH_RANGE = { min: 0, max: 14 };
/** Bloom a gelatine may have at all. */
const BLOOM_RANGE = { min: 10, max: 400 };

/**
 * Gelatine or agar for a liquid: strength by use, less what the stock sets by itself, converted to the gelatine at hand
 * by both rules, raised for acid and alcohol; jelly under a crust. Quality, but for what is carried and where it is
 * poured.
 */
export function geleeStage(slice: GeleeSlice): StageResult<GeleeValues, GeleeFindingId> {
  const values = valuesOf(slice);
  return {
    values,
    findings: geleeFindings(slice, values),
    verdicts: [],
    missing: geleeMissing(slice, values),
  };
}

function valuesOf(slice: GeleeSlice): GeleeValues {
  const agar = slice.gelling === 'agar';
  const wanted = agar ? AGAR_STRENGTH : STRENGTH_BY_USE[slice.use];
  const liquidMl = entryValue('volume', slice.liquid);
  const typed = readEntry('fraction', slice.strength);
  const middle = (wanted.minFraction + wanted.maxFraction) / 2;
  const strengthFraction = typed.state === 'ok' ? typed.value : typed.state === 'blank' ? middle : null;
  const natural = agar ? 0 : entryValue('fraction', slice.naturalSet);
  const addedFraction =
    strengthFraction === null || natural === null ? null : Math.max(0, strengthFraction - natural);
  const alcohol = entryValue('fraction', slice.alcohol);
  const weakening = agar ? weakeningOf(null, null) : weakeningOf(phOf(slice), alcohol);
  const bloom = agar ? null : bloomOf(slice);
  const atBloom = agar ? null : entryValue('count', slice.strengthBloom, { range: BLOOM_RANGE });
  const atStrengthBloomG = liquidMl === null || addedFraction === null ? null : liquidMl * addedFraction;
  const conversion =
    atStrengthBloomG === null || bloom === null || atBloom === null
      ? null
      : convertBloom(atStrengthBloomG, atBloom, bloom);
  // An alcohol that cannot be read may well weaken: no weight is given.
  const known = agar ? atStrengthBloomG : alcohol === null ? null : byRule(conversion, slice.rule);
  const gelling = known === null ? null : { minG: known * weakening.min, maxG: known * weakening.max };
  const sheetG = agar || slice.form === 'powder' ? null : sheetMassOf(slice);
  return {
    liquidMl,
    wanted,
    strengthFraction,
    addedFraction,
    weakening,
    atStrengthBloomG,
    bloom,
    conversion,
    gelling,
    sheets: sheetsOf(gelling, sheetG),
    sheetG,
    soakingWater:
      agar || gelling === null
        ? null
        : { minG: gelling.minG * SOAKING_WATER.min, maxG: gelling.maxG * SOAKING_WATER.max },
    underCrust: jellyUnderCrustMl(entryValue('volume', slice.cavity) ?? Number.NaN),
    fishAllergen: agar ? false : slice.origin === 'unknown' ? null : slice.origin === 'fish',
  };
}

function byRule(conversion: BloomConversion | null, rule: GeleeSlice['rule']): number | null {
  if (conversion === null) return null;
  return rule === 'linear' ? conversion.linearG : conversion.squareRootG;
}

/** A pH that can be one; null is unknown. */
function phOf({ ph }: GeleeSlice): number | null {
  return entryValue('ratio', ph, { range: PH_RANGE });
}

function bloomOf(slice: GeleeSlice): number | null {
  const typed = readEntry('count', slice.bloom, { range: BLOOM_RANGE });
  const isDefault = slice.bloom.origin === 'default';
  if (slice.form === 'sheet' && (typed.state === 'blank' || isDefault))
    return sheetOf(slice.sheetGrade).bloom;
  return typed.state === 'ok' ? typed.value : null;
}

function sheetMassOf({ sheetMass, sheetGrade }: GeleeSlice): number | null {
  const typed = readEntry('mass', sheetMass);
  if (typed.state === 'blank') return sheetOf(sheetGrade).sheetG;
  return typed.state === 'ok' && typed.value > 0 ? typed.value : null;
}

function sheetsOf(gelling: GeleeValues['gelling'], sheetG: number | null): GeleeValues['sheets'] {
  if (gelling === null || sheetG === null) return null;
  const min = sheetsFor(gelling.minG, sheetG);
  const max = sheetsFor(gelling.maxG, sheetG);
  return min === null || max === null ? null : { min, max };
}

function geleeMissing(slice: GeleeSlice, values: GeleeValues): MissingInput[] {
  const missing: MissingInput[] = [];
  const need = (known: unknown, field: string, neededFor = 'gelee.gelling') => {
    if (known === null) missing.push({ field: `gelee.${field}`, neededFor });
  };
  need(values.liquidMl, 'liquid');
  need(values.strengthFraction, 'strength');
  if (slice.gelling === 'agar') return missing;
  need(entryValue('count', slice.strengthBloom, { range: BLOOM_RANGE }), 'strengthBloom');
  need(values.bloom, 'bloom');
  need(entryValue('fraction', slice.naturalSet), 'naturalSet');
  need(entryValue('fraction', slice.alcohol), 'alcohol');
  need(phOf(slice), 'ph', 'gelee.acid');
  if (slice.form === 'sheet') need(values.sheetG, 'sheetMass');
  return missing;
}
