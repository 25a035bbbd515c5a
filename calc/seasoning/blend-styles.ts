import type { Mark } from '../sources/index.ts';
import type { SpiceForm } from './slice.ts';

export interface StylePart {
  readonly spiceId: string;
  readonly form: SpiceForm;
  readonly parts: number;
}

/** A blend in general terms, with proportions invented for teaching. */
export interface BlendStyle {
  readonly id: string;
  readonly name: string;
  readonly parts: readonly StylePart[];
  readonly doseGPerUnit: { readonly min: number; readonly max: number };
  /** On the mix, on the meat of a dry cure, or by the litre of a brine. */
  readonly unit: 'g/kg' | 'g/L';
  readonly use: string;
  readonly mark: Mark;
}

type Part = readonly [spiceId: string, parts: number, form?: SpiceForm];

function style(
  id: string,
  name: string,
  parts: readonly Part[],
  [min, max]: readonly [number, number],
  use: string,
  unit: BlendStyle['unit'] = 'g/kg',
): BlendStyle {
  return {
    id,
    name,
    parts: parts.map(([spiceId, share, form = 'ground']) => ({ spiceId, form, parts: share })),
    doseGPerUnit: { min, max },
    unit,
    use,
    mark: 'common-practice',
  };
}

/** Blend styles with invented proportions. Doses are common practice, no source. */
export const BLEND_STYLES: readonly BlendStyle[] = [
  style(
    'four-spice-pepper',
    'Four spices, led by pepper',
    [
      ['white-pepper', 14],
      ['nutmeg', 3],
      ['ginger', 2],
      ['clove', 1],
    ],
    [2, 4],
    'Pork and veal forcemeat, en croûte',
  ),
  style(
    'four-spice-sweet',
    'Four spices, sweet',
    [
      ['cinnamon', 4],
      ['allspice', 4],
      ['nutmeg', 2],
      ['clove', 1],
    ],
    [0.8, 1.5],
    'Liver, dark terrines with dried fruit',
  ),
  style(
    'pale',
    'Pale meat',
    [
      ['white-pepper', 12],
      ['mace', 4],
      ['ginger', 3],
      ['cardamom', 1],
    ],
    [1, 2],
    'Poultry, rabbit, veal',
  ),
  style(
    'game',
    'Game',
    [
      ['black-pepper', 8],
      ['juniper', 6],
      ['thyme', 3, 'dried'],
      ['allspice', 2],
      ['bay', 1],
    ],
    [4, 6],
    'Venison, hare, boar',
  ),
  style(
    'liver',
    'Liver',
    [
      ['white-pepper', 10],
      ['marjoram', 8, 'dried'],
      ['mace', 3],
      ['coriander-seed', 3],
      ['cardamom', 1],
    ],
    [3, 5],
    'Liver pâté and liver sausage',
  ),
  style(
    'country-herb',
    'Country, with herbs',
    [
      ['black-pepper', 10],
      ['coriander-seed', 6],
      ['thyme', 3, 'dried'],
      ['bay', 1],
    ],
    [3, 5],
    'Rustic terrines, rillettes',
  ),
  style(
    'mutton-ham',
    'Mutton ham cure, cracked',
    [
      ['coriander-seed', 8],
      ['black-pepper', 6],
      ['juniper', 4],
      ['bay', 1],
    ],
    [6, 10],
    'Rub for lamb and mutton, on the meat',
  ),
  style(
    'poaching-brine',
    'Poaching brine, whole',
    [
      ['black-pepper', 6, 'whole'],
      ['coriander-seed', 6, 'whole'],
      ['mustard', 4, 'whole'],
      ['allspice', 2, 'whole'],
      ['bay', 2, 'whole'],
    ],
    [5, 10],
    'Ham, tongue',
    'g/L',
  ),
  style(
    'fish',
    'Fish',
    [
      ['white-pepper', 8],
      ['coriander-seed', 4],
      ['fennel-seed', 3],
      ['chilli', 1],
    ],
    [1, 2],
    'Fish mousseline',
  ),
  style(
    'garlic-fennel',
    'Sausage, garlic and fennel',
    [
      ['fennel-seed', 6],
      ['black-pepper', 6],
      ['garlic', 2],
      ['chilli', 1],
    ],
    [4, 6],
    'Fresh pork sausage',
  ),
];

/** A blend style by its id, or undefined. */
export function blendStyleOf(id: string): BlendStyle | undefined {
  return BLEND_STYLES.find((row) => row.id === id);
}
