import type { Mark, SourceId } from '../sources/index.ts';

/** Where a table of yields comes from and how its figures are known. */
interface Published {
  readonly source: SourceId;
  readonly mark: Mark;
}

/** A pig of 115 kg taken apart, kg. The carcass is 70.4 % of the live weight (derived from the two). */
export const PIG_BREAKDOWN: Published & { readonly partsKg: Readonly<Record<string, number>> } = {
  source: 'oklahoma-swine-yield',
  mark: 'confirmed',
  partsKg: {
    live: 115,
    carcass: 81,
    'fresh ham': 12.7,
    loin: 10.4,
    side: 10.4,
    'spare ribs': 2.72,
    'shoulder butt': 4.08,
    picnic: 5.44,
    feet: 1.36,
    head: 2.26,
    'back fat': 10.4,
    trimmings: 4.08,
    jowls: 1.36,
  },
};

/** Joints bought, boned, cooked and carved, in ounces as printed. Two of the three do not close by an ounce. */
export const JOINTS_OZ: Published & {
  readonly joints: readonly {
    readonly name: string;
    readonly bought: number;
    readonly waste: number;
    readonly cooking: number;
    readonly eatable: number;
  }[];
} = {
  source: 'household-management-joints',
  mark: 'confirmed',
  joints: [
    { name: 'ham', bought: 191, waste: 13.25, cooking: 58.75, eatable: 119 },
    { name: 'leg', bought: 104, waste: 16.5, cooking: 15.5, eatable: 73 },
    { name: 'loin', bought: 224, waste: 16.5, cooking: 56.5, eatable: 152 },
  ],
};

/** Mass lost when slices were cooked, fractions: least and most of three carcass grades. */
export const COOKING_LOSSES: Published & {
  readonly cuts: readonly { readonly name: string; readonly least: number; readonly most: number }[];
} = {
  source: 'pork-belly-and-butt-2021',
  mark: 'confirmed',
  cuts: [
    { name: 'pork belly', least: 0.173, most: 0.175 },
    { name: 'pork shoulder butt', least: 0.244, most: 0.253 },
  ],
};

/**
 * Raw protein ÷ cooked protein of paired rows of one food table: what a cooked yield must be if no protein is lost.
 * A rough stand-in, no measured yield. Numbers are NDB numbers of the raw and the cooked row.
 */
export const YIELDS_FROM_PROTEIN: Published & {
  readonly pairs: readonly (readonly [name: string, raw: number, cooked: number, yieldFraction: number])[];
} = {
  source: 'usda-sr28',
  mark: 'derived',
  pairs: [
    ['pork, ground', 10219, 10220, 0.657],
    ['pork shoulder blade', 10080, 10082, 0.681],
    ['pork shoulder whole, roasted', 10070, 10071, 0.738],
    ['pork leg, roasted', 10008, 10009, 0.65],
    ['pork sausage, fried', 7063, 7064, 0.831],
    ['Italian sausage', 7036, 7089, 0.745],
    ['bacon, fried', 10123, 10862, 0.372],
    ['chicken liver, simmered', 5027, 5028, 0.692],
    ['pork liver, braised', 10110, 10111, 0.822],
    ['duck, roasted', 5139, 5140, 0.605],
    ['goose, roasted', 5146, 5147, 0.63],
    ['chicken meat, roasted', 5011, 5013, 0.739],
    ['rabbit, roasted', 17177, 17178, 0.69],
    ['venison, roasted', 17164, 17165, 0.76],
    ['wild boar, roasted', 17158, 17159, 0.76],
    ['salmon, dry heat', 15236, 15237, 0.924],
    ['cod, dry heat', 15015, 15016, 0.78],
  ],
};
