import type { LinePart } from '../formula/index.ts';
import { blankEntry, defaultEntry, type Unit } from '../quantities/index.ts';
import type { BlendBand, BlendMaterial, BlendSlice, BlendStandard } from './slice.ts';

function openBand(unit: Unit): BlendBand {
  return { min: blankEntry(unit), max: blankEntry(unit) };
}

/** No name chosen. */
export function newBlendStandard(): BlendStandard {
  return { nameId: null, yield: blankEntry('%'), asBounds: true };
}

/** No material yet; 28 % fat is what forcemeats are often balanced to. Common practice, no source. */
export function newBlendSlice(): BlendSlice {
  return {
    materials: [],
    total: blankEntry('kg'),
    freeA: null,
    freeB: null,
    fatTarget: defaultEntry('28', '%'),
    bands: {
      fat: openBand('%'),
      protein: openBand('%'),
      salt: openBand('%'),
      liver: openBand('%'),
      'water-to-protein': openBand('ratio'),
    },
    standard: newBlendStandard(),
  };
}

/** A material nobody has described yet. */
export function newBlendMaterial(id: string, part: LinePart): BlendMaterial {
  return {
    id,
    name: '',
    part,
    ingredientId: null,
    declared: {
      salt: blankEntry('%'),
      fat: blankEntry('%'),
      protein: blankEntry('%'),
      water: blankEntry('%'),
    },
    price: blankEntry('money'),
    priceBasis: 'kg',
    stock: blankEntry('kg'),
    minShare: blankEntry('%'),
    maxShare: blankEntry('%'),
    locked: blankEntry('kg'),
  };
}
