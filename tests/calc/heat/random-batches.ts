import {
  airStage,
  type BatchThermal,
  bathStage,
  constantMaterial,
  fatLining,
  foodMaterial,
  type HeatShape,
  type HeatStage,
  mouldLayers,
  ovenPan,
  type StageEnd,
  type WallMaterial,
  waterStage,
} from '@larderwright/calc/heat';

/** Even numbers in 0–1 from a seed: the minimal standard generator of Park and Miller. */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

export const KINDS = [
  'rectangular',
  'tapered',
  'half-cylinder',
  'cylinder',
  'standing-cylinder',
  'roof',
  'oval',
  'cube',
  'slab',
] as const;

const WALLS: readonly (WallMaterial | null)[] = [
  null,
  'stoneware',
  'porcelain',
  'glass',
  'cast-iron',
  'stainless-steel',
  'tinplate',
  'aluminium',
  'silicone',
];

export interface Process {
  readonly kind: string;
  readonly wall: string;
  readonly batch: BatchThermal;
  readonly stages: readonly HeatStage[];
}

/** A random batch of a shape, cooked to a core temperature, rested and chilled to 5 °C. Sizes of the trade. */
export function randomProcess(index: number, random: () => number): Process {
  const between = (low: number, high: number) => low + (high - low) * random();
  const kind = KINDS[index % KINDS.length] ?? 'rectangular';
  const wall = WALLS[Math.floor(random() * WALLS.length)] ?? null;
  const shape = randomShape(kind, between);
  const depthMm = depthOf(shape);
  const fat = between(0.08, 0.35);
  const material =
    foodMaterial({ water: 0.81 - fat, protein: 0.16, fat, carbohydrate: 0.01, fibre: 0, ash: 0.02 }) ??
    constantMaterial(0.45, 1050, 3500);
  const end: StageEnd = { when: 'core-reaches', tempC: between(62, 74), mostMin: 400 };
  const pan = ovenPan({ waterG: between(1500, 4500), covered: random() < 0.5, mouldPlanMm2: 24_000 });
  const cooks = [
    () => bathStage(between(130, 190), between(15, 80), depthMm * between(0.4, 1), pan, end),
    () => airStage('steam', between(78, 95), end),
    () => airStage('oven', between(110, 160), end),
    () => waterStage('poach', between(76, 85), depthMm + 20, 60, end),
  ];
  const chills = [
    () => airStage('refrigerate', between(1, 3), { when: 'core-falls', tempC: 5, mostMin: 900 }),
    () => airStage('blast', between(-2, 2), { when: 'core-falls', tempC: 5, mostMin: 900 }),
    () =>
      waterStage('ice-bath', 0.5, depthMm * between(0.6, 1.2), 15, {
        when: 'core-falls',
        tempC: 5,
        mostMin: 900,
      }),
  ];
  const pick = (makers: readonly (() => HeatStage)[]) =>
    (makers[Math.floor(random() * makers.length)] ?? chills[0])?.();
  const stages = [pick(cooks), airStage('rest', 20, { when: 'time', minutes: between(5, 40) }), pick(chills)];
  return {
    kind,
    wall: wall ?? 'bare',
    batch: {
      shape,
      material,
      startC: between(1, 10),
      layers: mouldLayers({
        wall,
        inside: random() < 0.5 ? [fatLining(between(2, 4))] : [],
        insideOverTop: random() < 0.5,
        lid: random() < 0.3 ? { headspaceMm: between(1, 8) } : null,
      }),
    },
    stages: stages.filter((stage): stage is HeatStage => stage !== undefined),
  };
}

function randomShape(
  kind: (typeof KINDS)[number],
  between: (low: number, high: number) => number,
): HeatShape {
  const lengthMm = between(180, 320);
  const widthMm = between(60, 120);
  const depthMm = between(50, 100);
  switch (kind) {
    case 'rectangular':
    case 'roof':
      return { kind, lengthMm, widthMm, depthMm };
    case 'tapered':
      return {
        kind,
        lengthMm,
        widthMm,
        depthMm,
        baseLengthMm: lengthMm * between(0.85, 1),
        baseWidthMm: widthMm * between(0.75, 1),
      };
    case 'half-cylinder':
    case 'cylinder':
      return { kind, lengthMm, diameterMm: widthMm };
    case 'standing-cylinder':
      return { kind, diameterMm: widthMm, depthMm };
    case 'oval':
      return { kind, lengthMm: 0.7 * lengthMm, widthMm, depthMm };
    case 'cube':
      return { kind, sideMm: depthMm };
    case 'slab':
      return { kind, thicknessMm: depthMm };
  }
}

function depthOf(shape: HeatShape): number {
  switch (shape.kind) {
    case 'cube':
      return shape.sideMm;
    case 'slab':
      return shape.thicknessMm;
    case 'half-cylinder':
      return shape.diameterMm / 2;
    case 'cylinder':
      return shape.diameterMm;
    default:
      return shape.depthMm;
  }
}
