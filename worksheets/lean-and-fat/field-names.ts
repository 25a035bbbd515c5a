import type { BlendSlice } from '@larderwright/calc/blend';

const NAMES: Readonly<Record<string, string>> = {
  'blend.total': 'the weight to make',
  'blend.fatTarget': 'the fat wanted',
  'blend.freeA': 'the first free material',
  'blend.freeB': 'the second free material',
  'blend.materials': 'a material',
  'blend.standard.yield': 'the finished weight, of what went in',
};

const OF_MATERIAL: Readonly<Record<string, string>> = {
  price: 'the price of',
  stock: 'the stock of',
  minShare: 'the least share of',
  maxShare: 'the most share of',
  locked: 'the fixed weight of',
  'declared.fat': 'the fat of',
  'declared.protein': 'the protein of',
  'declared.water': 'the water of',
  'declared.salt': 'the salt of',
};

/** An input of the blend in the middle of a sentence. */
export function blendFieldName(field: string, slice: BlendSlice): string {
  const known = NAMES[field];
  if (known !== undefined) return known;
  const [, list, id = '', ...rest] = field.split('.');
  if (list === 'materials') {
    const material = slice.materials.find((each) => each.id === id);
    return `${OF_MATERIAL[rest.join('.')] ?? 'a figure of'} ${material?.name || 'an unnamed material'}`;
  }
  if (list === 'bands') return `the ${rest[0] === 'min' ? 'least' : 'most'} ${id.replaceAll('-', ' ')}`;
  return field;
}
