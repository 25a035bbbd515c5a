import type { Mark, SourceId } from '../sources/index.ts';

export type CasingMaterial = 'natural' | 'collagen' | 'cellulose' | 'fibrous' | 'cloth';
export type CasingSpecies = 'sheep' | 'pig' | 'cattle';

type Range = readonly [min: number, max: number];

/** One row of the casing table. Links: mm and g. */
export interface Casing {
  readonly id: string;
  readonly name: string;
  readonly material: CasingMaterial;
  /** Of natural casings: it is on the label, and it matters to guests. */
  readonly species: CasingSpecies | null;
  /** What it stuffs to, mm. */
  readonly stuffedMm: Range;
  /** The usual one of the range. */
  readonly usualMm: number;
  readonly linkMm: Range | null;
  readonly linkG: Range | null;
  readonly soakMin: Range | null;
  readonly soakC: Range | null;
  readonly eaten: boolean;
}

export const CASING_SOURCE: SourceId = 'trade-casing-sizes';
export const CASING_MARK: Mark = 'common-practice';

interface CasingRow extends Pick<Casing, 'id' | 'name' | 'material' | 'stuffedMm' | 'usualMm'> {
  readonly species?: CasingSpecies;
  readonly linkMm?: Range;
  readonly linkG?: Range;
  readonly soakMin?: Range;
  readonly soakC?: Range;
  readonly eaten?: boolean;
}

function casing(row: CasingRow): Casing {
  const nothing = { species: null, linkMm: null, linkG: null, soakMin: null, soakC: null };
  return { ...nothing, eaten: row.material === 'natural', ...row };
}

const SHEEP = {
  material: 'natural',
  species: 'sheep',
  soakMin: [30, 60],
  soakC: [20, 25],
} as const;
const HOG = { material: 'natural', species: 'pig' } as const;
const BEEF = { material: 'natural', species: 'cattle' } as const;

/** Casings with what they stuff to. Common practice, no source. */
export const CASINGS: readonly Casing[] = [
  casing({
    ...SHEEP,
    id: 'sheep-18-20',
    name: 'Sheep 18–20',
    stuffedMm: [18, 20],
    usualMm: 19,
    linkMm: [100, 120],
    linkG: [30, 40],
  }),
  casing({
    ...SHEEP,
    id: 'sheep-22-24',
    name: 'Sheep 22–24',
    stuffedMm: [22, 24],
    usualMm: 23,
    linkMm: [120, 120],
    linkG: [50, 50],
  }),
  casing({
    ...SHEEP,
    id: 'sheep-26-28',
    name: 'Sheep 26–28',
    stuffedMm: [26, 28],
    usualMm: 27,
    linkMm: [120, 120],
    linkG: [70, 70],
  }),
  casing({
    ...HOG,
    id: 'hog-28-30',
    name: 'Hog 28–30',
    stuffedMm: [28, 30],
    usualMm: 29,
    linkMm: [120, 150],
    linkG: [80, 100],
  }),
  casing({
    ...HOG,
    id: 'hog-32-35',
    name: 'Hog 32–35',
    stuffedMm: [32, 35],
    usualMm: 33,
    linkMm: [120, 150],
    linkG: [110, 130],
  }),
  casing({
    ...HOG,
    id: 'hog-38-42',
    name: 'Hog 38–42',
    stuffedMm: [38, 42],
    usualMm: 40,
    linkMm: [150, 200],
    linkG: [200, 250],
  }),
  casing({
    ...BEEF,
    id: 'beef-runner',
    name: 'Beef runner or round 40–46',
    stuffedMm: [40, 46],
    usualMm: 43,
    soakMin: [60, 60],
  }),
  casing({
    ...BEEF,
    id: 'beef-middle',
    name: 'Beef middle 50–60',
    stuffedMm: [50, 60],
    usualMm: 55,
    linkMm: [250, 250],
  }),
  casing({ ...BEEF, id: 'bung', name: 'Bung or cap 75–120', stuffedMm: [75, 120], usualMm: 90 }),
  casing({
    id: 'collagen',
    name: 'Collagen, edible 21–32',
    material: 'collagen',
    stuffedMm: [21, 32],
    usualMm: 26,
    eaten: true,
  }),
  casing({
    id: 'cellulose',
    name: 'Cellulose, to be peeled 20–28',
    material: 'cellulose',
    stuffedMm: [20, 28],
    usualMm: 24,
  }),
  casing({
    id: 'fibrous',
    name: 'Fibrous or plastic log 60–100',
    material: 'fibrous',
    stuffedMm: [60, 100],
    usualMm: 60,
    soakMin: [30, 30],
    soakC: [40, 40],
  }),
  casing({
    id: 'cloth',
    name: 'Muslin or film roll 60–90',
    material: 'cloth',
    stuffedMm: [60, 90],
    usualMm: 60,
  }),
];

/** Spare casing by material, on top. Common practice, no source; null where the trade has no figure. */
export const SPARE: Readonly<Record<CasingMaterial, { readonly min: number; readonly max: number } | null>> =
  {
    natural: { min: 0.08, max: 0.12 },
    collagen: { min: 0.03, max: 0.05 },
    cellulose: null,
    fibrous: null,
    cloth: null,
  };

/** A casing by its id, or undefined. */
export function casingOf(id: string | null): Casing | undefined {
  return CASINGS.find((row) => row.id === id);
}
