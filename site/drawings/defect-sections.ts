/** What is cut through. */
type Shape = 'loaf' | 'jellied' | 'pie' | 'sausage' | 'ham' | 'pot';
/** What marks the slice. */
type Sign = 'holes' | 'cracks' | 'streaks' | 'specks' | 'shade' | 'drops' | 'fuzz' | 'squares' | 'gap';
/** Where in the slice. */
type Region = 'all' | 'edge' | 'centre' | 'base' | 'top';

export interface DefectSection {
  readonly shape: Shape;
  readonly sign: Sign;
  readonly region: Region;
  /** What the sign is here, where its own word says too little. */
  readonly says: string | null;
}

const section = (shape: Shape, sign: Sign, region: Region, says: string | null = null): DefectSection => ({
  shape,
  sign,
  region,
  says,
});

/** How a slice with each defect looks, by the defect's slug. What is only tasted or smelt has no picture. */
export const DEFECT_SECTIONS: Readonly<Record<string, DefectSection>> = {
  crumbly: section('loaf', 'cracks', 'all'),
  'fat-out': section('loaf', 'drops', 'edge', 'beads of melted fat'),
  smear: section('loaf', 'streaks', 'all', 'pale smears of fat where grains should be'),
  'grey-ring': section('loaf', 'shade', 'edge', 'a grey band that leaves the middle its own colour'),
  'grey-all-through': section('loaf', 'shade', 'all', 'one dull grey'),
  'pink-centre-uncured': section('loaf', 'shade', 'centre', 'a pink patch'),
  'raw-looking-liver-core': section('pot', 'drops', 'centre', 'wet, dark red spots'),
  'air-pockets': section('loaf', 'holes', 'edge'),
  'gas-holes': section('loaf', 'holes', 'all', 'round, shiny-walled holes'),
  'wet-base': section('loaf', 'drops', 'base', 'drops of loose liquid'),
  'jelly-lifts': section('jellied', 'gap', 'top'),
  'jelly-cloudy': section('jellied', 'streaks', 'top', 'milky streaks in the jelly'),
  'jelly-rubbery': section('jellied', 'shade', 'top', 'a stiff, thick layer of jelly'),
  'jelly-will-not-set': section('jellied', 'drops', 'top', 'jelly running off in drops'),
  greening: section('ham', 'specks', 'edge', 'green specks'),
  'case-hardening': section('ham', 'shade', 'edge', 'a dark, dry rim'),
  slime: section('loaf', 'streaks', 'top', 'wet threads that pull'),
  'surface-mould': section('loaf', 'fuzz', 'top', 'fuzz of mould'),
  'oxidised-face': section('loaf', 'shade', 'top', 'a brown-grey layer'),
  'split-layers': section('loaf', 'gap', 'centre', 'a gap that parts two layers'),
  'garnish-falls-out': section('loaf', 'squares', 'all'),
  'hollow-crust': section('pie', 'gap', 'top', 'a hollow between filling and crust'),
  'soggy-base': section('pie', 'shade', 'base', 'a grey, wet layer of pastry'),
  'burst-seam': section('pie', 'cracks', 'edge', 'cracks in the crust where juice ran out'),
  'curdled-mousseline': section('loaf', 'specks', 'all', 'grains of curd'),
  'parfait-green-top': section('pot', 'shade', 'top', 'a dull layer'),
  'sausage-burst': section('sausage', 'cracks', 'edge', 'splits in the skin'),
  'casing-tough': section('sausage', 'shade', 'edge', 'a thick, dull skin'),
  'ham-holes': section('ham', 'holes', 'all'),
  'ham-grey-spot': section('ham', 'shade', 'centre', 'a grey spot in the pink'),
  'rillettes-grainy': section('pot', 'specks', 'all', 'white grains of fat'),
  'confit-sour': section('pot', 'holes', 'base', 'bubbles in juice that was left'),
  'blood-pudding-holes': section('sausage', 'holes', 'all'),
  'hard-bits': section('loaf', 'specks', 'centre', 'hard bits of bone, shot or shell'),
  'white-crystals': section('ham', 'specks', 'top', 'white crystals'),
};

const SHAPE_WORDS: Readonly<Record<Shape, string>> = {
  loaf: 'A slice of a terrine',
  jellied: 'A slice of a terrine under its jelly',
  pie: 'A slice of a pâté in its crust',
  sausage: 'A sausage cut across',
  ham: 'A slice of ham',
  pot: 'A pot cut through',
};
const SIGN_WORDS: Readonly<Record<Sign, string>> = {
  holes: 'round holes',
  cracks: 'cracks',
  streaks: 'streaks',
  specks: 'specks',
  shade: 'a shade of another colour',
  drops: 'drops',
  fuzz: 'fuzz',
  squares: 'empty places where pieces were',
  gap: 'a gap',
};
const REGION_WORDS: Readonly<Record<Region, string>> = {
  all: 'all through',
  edge: 'round the edge',
  centre: 'in the middle',
  base: 'along the base',
  top: 'along the top',
};

/** The picture in words. */
export function sectionWords({ shape, sign, region, says }: DefectSection): string {
  return `${SHAPE_WORDS[shape]}, with ${says ?? SIGN_WORDS[sign]} ${REGION_WORDS[region]}.`;
}

/** The slice in the drawing, px. */
export const SLICE = { left: 40, top: 26, width: 140, height: 84 } as const;
const COLUMNS = 9;
const ROWS = 6;
/** Shares of the slice's width and height. */
const RIM = 0.17;
const HEART = 0.24;

/** The band a sign of the whole region fills, in shares of the slice: left, top, width, height. */
export const REGION_BOX: Readonly<Record<Region, readonly [number, number, number, number]>> = {
  all: [0, 0, 1, 1],
  edge: [0, 0, 1, 1],
  centre: [0.5 - HEART, 0.5 - HEART, 2 * HEART, 2 * HEART],
  base: [0, 1 - RIM, 1, RIM],
  top: [0, 0, 1, RIM],
};

function inRegion(region: Region, u: number, v: number): boolean {
  switch (region) {
    case 'all':
      return true;
    case 'edge':
      return Math.min(u, 1 - u, v, 1 - v) < RIM;
    case 'centre':
      return Math.hypot((u - 0.5) / 1.4, v - 0.5) < HEART;
    case 'base':
      return v > 1 - RIM * 1.3;
    case 'top':
      return v < RIM * 1.3;
  }
}

/** Where marks stand in the drawing: a grid, each point moved a little and always the same way. */
export function marksOf({ shape, region }: DefectSection): { x: number; y: number; turn: number }[] {
  const round = shape === 'sausage' || shape === 'ham';
  return Array.from({ length: COLUMNS * ROWS }, (_, at) => {
    const stir = (at * 37 + 11) % 17;
    const u = ((at % COLUMNS) + 0.3 + stir / 40) / COLUMNS;
    const v = (Math.floor(at / COLUMNS) + 0.3 + ((stir * 7) % 17) / 40) / ROWS;
    return { u, v, turn: (stir * 53) % 180 };
  })
    .filter(({ u, v }) => inRegion(region, u, v) && (!round || Math.hypot(u - 0.5, v - 0.5) < 0.45))
    .map(({ u, v, turn }) => ({
      x: Math.round(SLICE.left + u * SLICE.width),
      y: Math.round(SLICE.top + v * SLICE.height),
      turn,
    }));
}
