import type { MissingInput, StageResult } from '../findings/index.ts';
import { compensatedSum, entryValue, readEntry } from '../quantities/index.ts';
import { allergensOf, type CarryingPart, carriedBy, fractionOf } from './carried.ts';
import type { BinderContext } from './context.ts';
import type { BinderFindingId } from './finding-ids.ts';
import { binderFindings } from './findings.ts';
import { rawPanadeG } from './panades.ts';
import { piecesPerSlice } from './pieces.ts';
import { sideOf } from './side-of.ts';
import type { BinderSlice, GarnishLine } from './slice.ts';
import { extenderShares, judgeExtenders } from './us-limits.ts';
import type { BinderValues, GarnishValues, PanadeValues } from './values.ts';

/**
 * Panade, egg, cream, extenders and garnish: raw and cooked weights, shares, pieces in a slice, and the salt, water and
 * allergens they bring. The only verdicts are those of a federal limit on binders, when it applies.
 */
export function binderStage(
  slice: BinderSlice,
  context: BinderContext,
): StageResult<BinderValues, BinderFindingId> {
  const meatG = typedOr(slice.meat, context.meatG);
  const panade = panadeOfSlice(slice, meatG);
  const baseG = context.finishedG ?? context.totalG;
  const extenders = extenderShares(slice.extenders, baseG);
  const garnish = slice.garnish.map((line) => garnishOf(line, slice, context));
  const eggG = entryValue('mass', slice.egg);
  const creamG = entryValue('mass', slice.cream);
  const share = (massG: number | null, ofG: number | null) => (massG === null || !ofG ? null : massG / ofG);
  const parts = carryingParts(slice, garnish);
  const steamG =
    slice.panadeKind === 'none'
      ? 0
      : panade.rawG === null || panade.cookedG === null
        ? null
        : panade.rawG - panade.cookedG;
  const values: BinderValues = {
    meatG,
    totalG: context.totalG,
    panade,
    eggG,
    eggFraction: share(eggG, context.totalG),
    creamPerMeat: share(creamG, meatG),
    extenders,
    garnish,
    garnishFraction: share(sumOrNull(garnish.map(({ preparedG }) => preparedG)), context.totalG),
    carried: carriedBy(parts, steamG, context.composition),
    ...allergensOf(parts, context.composition),
  };
  return {
    values,
    findings: binderFindings(slice, context, values),
    verdicts: slice.usNamedSausage ? judgeExtenders(extenders, context.finishedG !== null) : [],
    missing: binderMissing(slice, values),
  };
}

function typedOr(entry: BinderSlice['meat'], fallback: number | null): number | null {
  const typed = readEntry('mass', entry);
  return typed.state === 'blank' ? fallback : typed.state === 'ok' ? typed.value : null;
}

function panadeOfSlice(slice: BinderSlice, meatG: number | null): PanadeValues {
  if (slice.panadeKind === 'none')
    return { rawG: 0, cookedG: 0, shareFraction: meatG ? 0 : null, wantedCookedG: null, wantedRawG: null };
  const rawG =
    slice.panadeParts.length === 0
      ? null
      : sumOrNull(slice.panadeParts.map(({ amount }) => entryValue('mass', amount)));
  const loss = entryValue('fraction', slice.panadeLoss);
  const weighed = readEntry('mass', slice.panadeCooked);
  const reckonedG = rawG === null || loss === null ? null : rawG * (1 - loss);
  const cookedG = weighed.state === 'ok' ? weighed.value : weighed.state === 'blank' ? reckonedG : null;
  const wanted = entryValue('fraction', slice.panadeShare, { range: { min: 0, max: 1 } });
  const wantedCookedG = wanted === null || meatG === null ? null : wanted * meatG;
  return {
    rawG,
    cookedG,
    shareFraction: cookedG === null || !meatG ? null : cookedG / meatG,
    wantedCookedG,
    wantedRawG: wantedCookedG === null || loss === null ? null : rawPanadeG(wantedCookedG, loss),
  };
}

function garnishOf(line: GarnishLine, slice: BinderSlice, context: BinderContext): GarnishValues {
  const asBought = entryValue('mass', line.asBought);
  const yieldFraction = entryValue('fraction', line.prepYield);
  const typed = readEntry('mass', line.prepared);
  const reckonedG = asBought === null || yieldFraction === null ? null : asBought * yieldFraction;
  const preparedG = typed.state === 'ok' ? typed.value : typed.state === 'blank' ? reckonedG : null;
  const sizeMm = entryValue('length', line.pieceSize);
  return {
    lineId: line.id,
    preparedG,
    shareFraction: preparedG === null || !context.totalG ? null : preparedG / context.totalG,
    waterFraction: fractionOf(line, 'water', context.composition),
    sizeMm,
    pieces: piecesOf(line, slice, context, preparedG, sizeMm),
    toBuyG:
      typed.state === 'ok' && yieldFraction !== null && yieldFraction > 0
        ? typed.value / yieldFraction
        : null,
  };
}

function piecesOf(
  line: GarnishLine,
  slice: BinderSlice,
  context: BinderContext,
  preparedG: number | null,
  sizeMm: number | null,
): GarnishValues['pieces'] {
  const laid = readEntry('count', line.laidCount);
  if (laid.state === 'ok') return { within: laid.value, onFace: laid.value };
  if (laid.state === 'bad') return null;
  const widthMm = sideOf(slice.mouldWidth, context.mouldWidthMm);
  const heightMm = sideOf(slice.mouldHeight, context.mouldHeightMm);
  const sliceMm = entryValue('length', slice.sliceThickness);
  const density = entryValue('density', line.density);
  const { totalG, mixDensityGPerMl } = context;
  const numbers = [preparedG, sizeMm, widthMm, heightMm, sliceMm, density, totalG, mixDensityGPerMl];
  if (numbers.some((value) => value === null || value === 0))
    return preparedG === 0 ? { within: 0, onFace: 0 } : null;
  // Garnish is in the total of the formula: its volume is a share of the whole mix.
  const volumeFraction = (preparedG ?? 0) / (density ?? 1) / ((totalG ?? 0) / (mixDensityGPerMl ?? 1));
  return piecesPerSlice({
    volumeFraction: Math.min(1, volumeFraction),
    shape: line.shape,
    sizeMm: sizeMm ?? 0,
    faceMm2: (widthMm ?? 0) * (heightMm ?? 0),
    sliceMm: sliceMm ?? 0,
  });
}

/** Everything with a mass and a composition. */
function carryingParts(slice: BinderSlice, garnish: readonly GarnishValues[]): CarryingPart[] {
  const blank = { text: '', unit: '%', origin: 'default' } as const;
  const weighed = [...(slice.panadeKind === 'none' ? [] : slice.panadeParts), ...slice.extenders];
  return [
    ...weighed.map((part) => ({ ...part, massG: entryValue('mass', part.amount) })),
    {
      id: 'egg',
      massG: entryValue('mass', slice.egg),
      ingredientId: slice.eggIngredientId,
      salt: blank,
      water: blank,
    },
    {
      id: 'cream',
      massG: entryValue('mass', slice.cream),
      ingredientId: slice.creamIngredientId,
      salt: blank,
      water: blank,
    },
    ...slice.garnish.map((line, index) => ({ ...line, massG: garnish[index]?.preparedG ?? null })),
  ];
}

function sumOrNull(values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null);
  return known.length === values.length ? compensatedSum(known) : null;
}

function binderMissing(slice: BinderSlice, values: BinderValues): MissingInput[] {
  const missing: MissingInput[] = [];
  const need = (known: unknown, field: string, neededFor: string) => {
    if (known === null) missing.push({ field: `binder.${field}`, neededFor });
  };
  if (slice.panadeKind !== 'none') {
    need(values.meatG, 'meat', 'binder.panade');
    for (const part of slice.panadeParts)
      need(entryValue('mass', part.amount), `panadeParts.${part.id}.amount`, 'binder.panade');
    need(values.panade.cookedG, 'panadeLoss', 'binder.panade');
    need(entryValue('temperature', slice.panadeTemp), 'panadeTemp', 'binder.panade-cold');
  }
  need(values.eggG, 'egg', 'binder.carried');
  need(entryValue('mass', slice.cream), 'cream', 'binder.carried');
  for (const extender of slice.extenders)
    need(entryValue('mass', extender.amount), `extenders.${extender.id}.amount`, 'binder.extenders');
  for (const { lineId, preparedG, pieces } of values.garnish) {
    need(preparedG, `garnish.${lineId}.prepared`, 'binder.garnish');
    if (preparedG !== null) need(pieces, `garnish.${lineId}.pieceSize`, 'binder.pieces');
  }
  return missing;
}
