import type { MissingInput } from '../findings/index.ts';
import { isMeat, type LineComposition, lineComposition } from '../formula/index.ts';
import { type CompositionTable, isLiver } from '../ingredients/index.ts';
import { type Entry, type QuantityKind, readEntry } from '../quantities/index.ts';
import { pricePerKg } from '../yield/index.ts';
import type { ReadBand } from './band.ts';
import type { BlendMaterial, BlendQuality, BlendSlice } from './slice.ts';
import { type ReadStandard, readStandard } from './standard.ts';

/** The qualities a blend can be held to, in the order of the sheet. */
export const BLEND_QUALITIES = [
  'fat',
  'protein',
  'salt',
  'liver',
  'water-to-protein',
] as const satisfies readonly BlendQuality[];

/** Whether a person has fields for it: what only a standard bounds has none. */
export function isBlendQuality(quality: string): quality is BlendQuality {
  return BLEND_QUALITIES.some((known) => known === quality);
}

/** A material with its fields read. Null bounds bind nothing. */
export interface ReadMaterial {
  readonly id: string;
  readonly name: string;
  readonly composition: LineComposition;
  readonly isLiver: boolean;
  readonly isMeat: boolean;
  readonly isWater: boolean;
  readonly perKg: number | null;
  readonly stockG: number | null;
  readonly minShare: number | null;
  readonly maxShare: number | null;
  readonly lockedG: number | null;
}

export interface ReadBlend {
  readonly materials: readonly ReadMaterial[];
  readonly totalG: number | null;
  readonly fatTargetFraction: number | null;
  readonly bands: readonly ReadBand[];
  readonly standard: ReadStandard;
  /** Optional fields somebody wrote in, but not readably: no bound must not stand in for a bad one. */
  readonly unreadable: readonly MissingInput[];
}

function isUntouched({ name, ingredientId, price, stock, locked }: BlendMaterial): boolean {
  const texts = [name, price.text, stock.text, locked.text];
  return ingredientId === null && texts.every((text) => text.trim() === '');
}

/** Read a blend. Rows nobody has begun are left out. */
export function readBlend(slice: BlendSlice, table: CompositionTable): ReadBlend {
  const unreadable: MissingInput[] = [];
  const optional = (kind: QuantityKind, entry: Entry, field: string): number | null => {
    const reading = readEntry(kind, entry);
    if (reading.state === 'bad') unreadable.push({ field, neededFor: 'blend.bounds' });
    return reading.state === 'ok' ? reading.value : null;
  };
  const materials = slice.materials
    .filter((material) => !isUntouched(material))
    .map((material): ReadMaterial => {
      const path = `blend.materials.${material.id}`;
      const row = material.ingredientId === null ? undefined : table.get(material.ingredientId);
      const price = optional('money', material.price, `${path}.price`);
      return {
        id: material.id,
        name: material.name,
        composition: lineComposition({ ...material, cure: null }, table),
        isLiver: material.part === 'liver' || (row !== undefined && isLiver(row)),
        isMeat: isMeat(material.part),
        isWater: row?.category === 'water',
        perKg: price === null ? null : pricePerKg(price, material.priceBasis),
        stockG: optional('mass', material.stock, `${path}.stock`),
        minShare: optional('fraction', material.minShare, `${path}.minShare`),
        maxShare: optional('fraction', material.maxShare, `${path}.maxShare`),
        lockedG: optional('mass', material.locked, `${path}.locked`),
      };
    });
  const bands = BLEND_QUALITIES.map((quality): ReadBand => {
    const { min, max } = slice.bands[quality];
    const kind = quality === 'water-to-protein' ? 'ratio' : 'fraction';
    return {
      quality,
      min: optional(kind, min, `blend.bands.${quality}.min`),
      max: optional(kind, max, `blend.bands.${quality}.max`),
    };
  });
  const standard = readStandard(slice);
  return {
    materials,
    totalG: positive(optional('mass', slice.total, 'blend.total')),
    fatTargetFraction: optional('fraction', slice.fatTarget, 'blend.fatTarget'),
    bands: [...bands, ...standard.bands],
    standard,
    unreadable: [...unreadable, ...standard.missing],
  };
}

function positive(value: number | null): number | null {
  return value !== null && value > 0 ? value : null;
}
