import type { Finding, Params, Severity } from '../findings/index.ts';
import { entryValue } from '../quantities/index.ts';
import type { SourceId } from '../sources/index.ts';
import type { BinderContext } from './context.ts';
import type { BinderFindingId } from './finding-ids.ts';
import { PANADE_C, PANADE_SHARE } from './panades.ts';
import { PIECE_MOST_MM, PIECE_MOST_SHARE } from './pieces.ts';
import { sideOf } from './side-of.ts';
import type { BinderSlice } from './slice.ts';
import type { BinderValues } from './values.ts';

/** Garnish of the total above which slices fall apart. Common practice, no source. */
export const GARNISH_MOST = 0.3;
/** Cream on the meat, water of an undried garnish. Common practice, no source. */
const CREAM_MOST = 1;
const WET_ABOVE = 0.85;
/** A weighed panade this far off its reckoning is told. Common practice, no source. */
const PANADE_TOLERANCE = 0.1;
const NOISE = 1e-9;

type Tell = (
  id: BinderFindingId,
  severity: Severity,
  field: string,
  params?: Params,
  caution?: string,
) => void;

/** What is worth telling about binders and garnish. */
export function binderFindings(
  slice: BinderSlice,
  context: BinderContext,
  values: BinderValues,
): Finding<BinderFindingId>[] {
  const found: Finding<BinderFindingId>[] = [];
  const basis: SourceId = 'trade-binder-habits';
  const tell: Tell = (id, severity, field, params = {}, caution) =>
    found.push({
      id,
      severity,
      stage: 'binder',
      field: `binder.${field}`,
      params,
      basis,
      ...(caution ? { caution } : {}),
    });
  panadeFindings(slice, values, tell);
  if (values.creamPerMeat !== null && values.creamPerMeat > CREAM_MOST + NOISE)
    tell('binder.cream-over', 'note', 'cream', { creamPerMeat: values.creamPerMeat });
  if (values.garnishFraction !== null && values.garnishFraction > GARNISH_MOST + NOISE)
    tell('binder.garnish-over', 'note', 'garnish', {
      garnishFraction: values.garnishFraction,
      mostFraction: GARNISH_MOST,
    });
  garnishFindings(slice, context, values, tell);
  const { euAllergens, usAllergens, allergensUnknown } = values;
  if (euAllergens.length + usAllergens.length > 0)
    tell(
      'binder.allergens',
      'caution',
      'panadeParts',
      {
        eu: euAllergens.map(({ name }) => name).join(', '),
        us: usAllergens.map(({ name }) => name).join(', '),
      },
      'allergens-listed',
    );
  if (allergensUnknown.length > 0)
    tell(
      'binder.allergens-unknown',
      'caution',
      'panadeParts',
      { count: allergensUnknown.length },
      'allergens-listed',
    );
  return found;
}

function panadeFindings(slice: BinderSlice, { panade }: BinderValues, tell: Tell): void {
  if (slice.panadeKind === 'none') return;
  const { shareFraction, rawG, cookedG } = panade;
  if (shareFraction !== null && shareFraction > PANADE_SHARE.most + NOISE)
    tell('binder.panade-over', 'note', 'panadeShare', { shareFraction, mostFraction: PANADE_SHARE.most });
  const tempC = entryValue('temperature', slice.panadeTemp);
  if (tempC !== null && tempC > PANADE_C.most + NOISE)
    tell('binder.panade-warm', tempC > PANADE_C.harm + NOISE ? 'caution' : 'note', 'panadeTemp', {
      tempC,
      mostC: PANADE_C.most,
    });
  const loss = entryValue('fraction', slice.panadeLoss);
  const reckonedG = rawG === null || loss === null ? null : rawG * (1 - loss);
  if (reckonedG && cookedG !== null && Math.abs(cookedG / reckonedG - 1) > PANADE_TOLERANCE)
    tell('binder.panade-differs', 'note', 'panadeCooked', { cookedG, reckonedG });
}

function garnishFindings(
  slice: BinderSlice,
  context: BinderContext,
  { garnish }: BinderValues,
  tell: Tell,
): void {
  const sides = [
    sideOf(slice.mouldWidth, context.mouldWidthMm),
    sideOf(slice.mouldHeight, context.mouldHeightMm),
  ].flatMap((side) => side ?? []);
  const smallerMm = sides.length === 2 ? Math.min(...sides) : null;
  for (const line of slice.garnish) {
    const row = garnish.find(({ lineId }) => lineId === line.id);
    const path = `garnish.${line.id}`;
    const { sizeMm = null, waterFraction = null, preparedG = null } = row ?? {};
    if (preparedG === 0) continue;
    const { name } = line;
    if (sizeMm !== null && smallerMm !== null && sizeMm > smallerMm * PIECE_MOST_SHARE + NOISE)
      tell('binder.piece-too-large', 'caution', `${path}.pieceSize`, {
        name,
        sizeMm,
        smallerMm,
        mostMm: smallerMm * PIECE_MOST_SHARE,
      });
    else if (sizeMm !== null && sizeMm > PIECE_MOST_MM + NOISE)
      tell('binder.piece-over-usual', 'note', `${path}.pieceSize`, { name, sizeMm, mostMm: PIECE_MOST_MM });
    if (line.rawAllium)
      tell('binder.raw-allium', 'caution', `${path}.rawAllium`, { name }, 'sealed-without-air');
    if (waterFraction !== null && waterFraction > WET_ABOVE + NOISE && !line.dried)
      tell('binder.wet-garnish', 'note', `${path}.dried`, { name, waterFraction });
  }
}
