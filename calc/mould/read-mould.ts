import type { MissingInput } from '../findings/index.ts';
import { entryValue } from '../quantities/index.ts';
import { dimensionsOf } from './dimensions-of.ts';
import { takesRoom } from './lining.ts';
import { mouldGeometry } from './mould-geometry.ts';
import type { Measures, MouldGeometry } from './shapes/geometry.ts';
import type { MouldDimension, MouldItem } from './slice.ts';

/** A mould's fields read: numbers in mm, mL and g, null where blank or unreadable. */
export interface MouldReading {
  readonly geometry: MouldGeometry | null;
  /** A cylinder with both depth and length: nobody can say whether it stands or lies. */
  readonly standsOrLies: boolean;
  readonly waterFillMl: number | null;
  readonly headspaceMm: number | null;
  readonly liningThicknessMm: number | null;
  readonly count: number | null;
  readonly actualFillsG: readonly (number | null)[];
  readonly missing: readonly MissingInput[];
}

/** Reads the fields of one mould and tells which of them are still missing for its fill. */
export function readMould(mould: MouldItem): MouldReading {
  const path = `mould.moulds.${mould.id}`;
  const missing: MissingInput[] = [];
  const need = (field: string) => missing.push({ field: `${path}.${field}`, neededFor: 'mould.fill' });

  const { needed, oneOf } = dimensionsOf(mould.shape);
  const measures: Partial<Record<MouldDimension, number>> = {};
  for (const dimension of [...needed, ...oneOf]) {
    const mm = entryValue('length', mould.dimensions[dimension]);
    if (mm !== null && mm > 0) measures[dimension] = mm;
    else if (needed.includes(dimension)) need(`dimensions.${dimension}`);
  }
  const given = oneOf.filter((dimension) => measures[dimension] !== undefined);
  if (oneOf.length > 0 && given.length === 0) need(`dimensions.${oneOf[0]}`);
  const geometry = mouldGeometry(mould.shape, measures satisfies Measures);

  const headspaceMm = readHeadspace(mould, geometry);
  if (headspaceMm === null) need('headspace');
  const liningThicknessMm = takesRoom(mould.liningKind) ? entryValue('length', mould.liningThickness) : 0;
  if (liningThicknessMm === null) need('liningThickness');
  const count = entryValue('count', mould.count);
  if (count === null) need('count');

  return {
    geometry,
    standsOrLies: given.length > 1,
    waterFillMl: entryValue('volume', mould.waterFill),
    headspaceMm,
    liningThicknessMm,
    count,
    actualFillsG: mould.actualFills.map((fill) => entryValue('mass', fill)),
    missing,
  };
}

/** A roll tied all round has no rim: a headspace counts there only when a person asked for one. */
function readHeadspace(mould: MouldItem, geometry: MouldGeometry | null): number | null {
  if (geometry?.closed && mould.headspace.origin === 'default') return 0;
  return entryValue('length', mould.headspace);
}
