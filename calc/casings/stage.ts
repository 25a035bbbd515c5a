import type { Finding, MissingInput, Params, Severity, StageResult } from '../findings/index.ts';
import { entryValue, readEntry } from '../quantities/index.ts';
import { spreadOf } from '../yield/index.ts';
import { CASING_SOURCE, casingOf, SPARE } from './casing-table.ts';
import type { CasingsFindingId } from './finding-ids.ts';
import { linksByLength, linksByMass } from './links.ts';
import { casingForG, massPerMetreG } from './mass-per-metre.ts';
import type { CasingsSlice } from './slice.ts';
import type { CasingsValues } from './values.ts';

export interface CasingsContext {
  /** Everything in the bowl by the formula, g; null when unknown. */
  readonly totalG: number | null;
}

/** How tightly casings are filled: twisted links to the lower figure, logs firm. Common practice, no source. */
const FULLNESS = { min: 0.9, max: 1 } as const;
/** Sausage whose cooking the kitchen knows, mm. Common practice, no source. */
const KNOWN_MM = 30;
/** Links may weigh off their target by this much. Common practice, no source. */
const LINK_TOLERANCE = 0.05;
const MM_PER_M = 1000;
const NOISE = 1e-9;

/** Metres of casing, strands and bundles, links and their check. Quality only. */
export function casingsStage(
  slice: CasingsSlice,
  context: CasingsContext,
): StageResult<CasingsValues, CasingsFindingId> {
  const values = valuesOf(slice, context);
  return {
    values,
    findings: casingsFindings(slice, values),
    verdicts: [],
    missing: casingsMissing(slice, values),
  };
}

function valuesOf(slice: CasingsSlice, { totalG }: CasingsContext): CasingsValues {
  const batch = readEntry('mass', slice.batch);
  const batchG = batch.state === 'blank' ? totalG : batch.state === 'ok' ? batch.value : null;
  const typed = readEntry('length', slice.stuffedDiameter);
  const usual = typed.state === 'blank' ? (casingOf(slice.casingId)?.usualMm ?? null) : null;
  const stuffedMm = typed.state === 'ok' ? typed.value || null : usual;
  const density = entryValue('density', slice.density);
  const fullness = entryValue('fraction', slice.fullness);
  const perMetreG =
    stuffedMm === null || density === null || fullness === null
      ? null
      : massPerMetreG(stuffedMm, density, fullness);
  const spare = entryValue('fraction', slice.spare);
  const casing =
    batchG === null || perMetreG === null || spare === null ? null : casingForG(batchG, perMetreG, spare);
  const pieces = (entry: CasingsSlice['strandLength']) => {
    const lengthMm = entryValue('length', entry);
    return casing === null || !lengthMm ? null : Math.ceil((casing.withSpareM * MM_PER_M) / lengthMm - NOISE);
  };
  const links = linksOf(slice, batchG, perMetreG);
  const weighed = slice.actualLinks.flatMap((entry) => entryValue('mass', entry) ?? []);
  const actual = spreadOf(weighed);
  return {
    batchG,
    stuffedMm,
    perMetreG,
    metresPerKg: perMetreG === null ? null : 1000 / perMetreG,
    casing,
    strands: pieces(slice.strandLength),
    hanks: pieces(slice.hankLength),
    links,
    comeUpTimes30: stuffedMm === null ? null : (stuffedMm / KNOWN_MM) ** 2,
    actual,
    actualOffFraction: actual && links ? actual.mean / links.linkG - 1 : null,
  };
}

function linksOf(
  slice: CasingsSlice,
  batchG: number | null,
  perMetreG: number | null,
): CasingsValues['links'] {
  if (batchG === null || perMetreG === null) return null;
  if (slice.linkBy === 'mass') {
    const linkG = entryValue('mass', slice.linkMass);
    return linkG === null ? null : linksByMass(batchG, perMetreG, linkG);
  }
  const linkMm = entryValue('length', slice.linkLength);
  return linkMm === null ? null : linksByLength(batchG, perMetreG, linkMm);
}

function casingsFindings(slice: CasingsSlice, values: CasingsValues): Finding<CasingsFindingId>[] {
  const found: Finding<CasingsFindingId>[] = [];
  const tell = (
    id: CasingsFindingId,
    severity: Severity,
    field: string,
    params: Params = {},
    caution?: string,
  ) =>
    found.push({
      id,
      severity,
      stage: 'casings',
      field: `casings.${field}`,
      params,
      basis: CASING_SOURCE,
      ...(caution ? { caution } : {}),
    });
  const row = casingOf(slice.casingId);
  const { stuffedMm, links, actual, actualOffFraction } = values;
  if (row && stuffedMm !== null) {
    const [minMm, maxMm] = row.stuffedMm;
    if (stuffedMm < minMm - NOISE || stuffedMm > maxMm + NOISE)
      tell('casings.outside-size', 'caution', 'stuffedDiameter', { name: row.name, stuffedMm, minMm, maxMm });
    if (slice.stuffedDiameter.text.trim() === '' && row.material === 'natural')
      tell('casings.label-is-not-stuffed', 'note', 'stuffedDiameter', { name: row.name, stuffedMm });
  }
  const fullness = entryValue('fraction', slice.fullness);
  if (fullness !== null && fullness < FULLNESS.min - NOISE)
    tell('casings.fullness', 'note', 'fullness', { fullness, minFraction: FULLNESS.min });
  const habit = row ? SPARE[row.material] : null;
  const spare = entryValue('fraction', slice.spare);
  if (row && habit && spare !== null && (spare < habit.min - NOISE || spare > habit.max + NOISE))
    tell('casings.spare-outside-habit', 'note', 'spare', {
      name: row.name,
      spareFraction: spare,
      minFraction: habit.min,
      maxFraction: habit.max,
    });
  const field = slice.linkBy === 'mass' ? 'linkMass' : 'linkLength';
  if (links?.count === 0) tell('casings.no-link', 'caution', field);
  if (row?.linkG && links && (links.linkG < row.linkG[0] - NOISE || links.linkG > row.linkG[1] + NOISE))
    tell('casings.link-outside-habit', 'note', field, {
      name: row.name,
      linkG: links.linkG,
      linkMm: links.linkMm,
      minG: row.linkG[0],
      maxG: row.linkG[1],
    });
  if (row?.species)
    tell('casings.species', 'note', 'casingId', { name: row.name, species: row.species }, 'allergens-listed');
  if (row && !row.eaten) tell('casings.peel', 'note', 'casingId', { name: row.name });
  if (stuffedMm !== null && stuffedMm > KNOWN_MM + NOISE)
    tell('casings.heats-slower', 'note', 'stuffedDiameter', {
      stuffedMm,
      knownMm: KNOWN_MM,
      times: values.comeUpTimes30 ?? 0,
    });
  if (actual && actualOffFraction !== null && Math.abs(actualOffFraction) > LINK_TOLERANCE)
    tell('casings.links-off-target', 'note', 'actualLinks', {
      meanG: actual.mean,
      count: actual.count,
      offFraction: actualOffFraction,
      linkG: links?.linkG ?? 0,
    });
  return found;
}

function casingsMissing(slice: CasingsSlice, values: CasingsValues): MissingInput[] {
  const missing: MissingInput[] = [];
  const need = (known: unknown, field: string, neededFor = 'casings.length') => {
    if (known === null) missing.push({ field: `casings.${field}`, neededFor });
  };
  need(values.batchG, 'batch');
  need(values.stuffedMm, 'stuffedDiameter');
  need(entryValue('density', slice.density) || null, 'density');
  need(entryValue('fraction', slice.fullness) || null, 'fullness');
  need(entryValue('fraction', slice.spare), 'spare');
  if (slice.linkBy === 'mass') need(entryValue('mass', slice.linkMass) || null, 'linkMass', 'casings.links');
  else need(entryValue('length', slice.linkLength) || null, 'linkLength', 'casings.links');
  return missing;
}
