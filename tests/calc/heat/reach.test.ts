import {
  airGap,
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
  pastry,
  simulate,
  WALLS,
  type WallMaterial,
  waterStage,
} from '@larderwright/calc/heat';
import { afterAll, describe, expect, it } from 'vitest';
import { printTable } from './print.ts';

const material =
  foodMaterial({ water: 0.575, protein: 0.16, fat: 0.245, carbohydrate: 0.005, fibre: 0, ash: 0.015 }) ??
  constantMaterial(0.45, 1050, 3500);

const SHAPES: readonly HeatShape[] = [
  { kind: 'rectangular', lengthMm: 240, widthMm: 100, depthMm: 75 },
  { kind: 'tapered', lengthMm: 240, widthMm: 110, depthMm: 75, baseLengthMm: 220, baseWidthMm: 90 },
  { kind: 'half-cylinder', lengthMm: 240, diameterMm: 90 },
  { kind: 'cylinder', lengthMm: 250, diameterMm: 70 },
  { kind: 'standing-cylinder', diameterMm: 100, depthMm: 80 },
  { kind: 'roof', lengthMm: 280, widthMm: 90, depthMm: 70 },
  { kind: 'oval', lengthMm: 200, widthMm: 110, depthMm: 80 },
  { kind: 'cube', sideMm: 60 },
  { kind: 'slab', thicknessMm: 60 },
];

const until = (minutes: number) => ({ when: 'time', minutes }) as const;
const pan = (covered: boolean, altitudeM: number) =>
  ovenPan({ waterG: 3000, covered, mouldPlanMm2: 24_000, altitudeM });
const refrigerator = airStage('refrigerate', 3, until(60));

/** One of each stage there is, from the raw mix to the cold. */
const STAGES: readonly (readonly [string, HeatStage])[] = [
  ['bath in an oven, open, warming from tap water', bathStage(150, 50, 40, pan(false, 0), until(30))],
  ['bath in an oven, covered, at 2000 m', bathStage(150, 60, 40, pan(true, 2000), until(20))],
  ['oven without a bath', airStage('oven', 140, until(10))],
  ['oven with a fan', airStage('fan-oven', 120, until(10))],
  ['steam oven', airStage('steam', 85, until(10))],
  ['poaching kettle', waterStage('poach', 80, 200, 25, until(20))],
  [
    'bath as it was measured',
    waterStage(
      'poach',
      [
        [0, 70],
        [20, 80],
      ],
      40,
      25,
      until(20),
    ),
  ],
  ['rest', airStage('rest', 20, until(10))],
  [
    'press, cold weight on top, base on a board',
    {
      ...airStage('refrigerate', 3, until(30)),
      kind: 'press',
      faces: { top: { tempC: 3, filmWm2K: 100 }, bottom: 'closed' },
    },
  ],
  ['ice bath, stirred', waterStage('ice-bath', 0.5, 50, 15, until(30), true)],
  ['blast', airStage('blast', 1, until(30))],
  ['refrigerator, stacked', airStage('refrigerate', 3, until(60), true)],
  ['refrigerator, covered', { ...refrigerator, cover: { top: 0.05 } }],
];

const COATINGS: readonly (readonly [string, BatchThermal['layers']])[] = [
  ...(Object.keys(WALLS) as WallMaterial[]).map(
    (wall) => [wall, mouldLayers({ wall, inside: [fatLining(3)], insideOverTop: true })] as const,
  ),
  ['pastry', mouldLayers({ wall: 'tinplate', inside: [pastry(5)], insideOverTop: true })],
  ['lid over air', mouldLayers({ wall: 'cast-iron', lid: { headspaceMm: 6 } })],
  ['air at the side', { side: [airGap(1)] }],
  ['bare', {}],
];

describe('every shape, coating and stage can be asked for', () => {
  const rows: string[][] = [];
  afterAll(() => printTable('Heat in and heat held, of all that passed', ['body', 'coating', 'gap'], rows));
  const pairs = COATINGS.map(
    ([coating, layers], index) => [SHAPES[index % SHAPES.length] as HeatShape, coating, layers] as const,
  );

  it.each(pairs)(
    'a $kind goes through all stages and keeps its heat within 0.1 %%',
    (shape, coating, layers) => {
      const batch: BatchThermal = { shape, material, startC: 4, ...(layers ? { layers } : {}) };
      const run = simulate(
        batch,
        STAGES.map(([, stage]) => stage),
      );
      if (run === null) throw new Error('a sound problem was refused');
      expect(run.stages).toHaveLength(STAGES.length);
      // Heat that passed, coarsely: what the hottest mean took in from the start.
      const volumeM3 =
        run.network.solid.copies * run.network.solid.volumeM3.reduce((sum, part) => sum + part, 0);
      const passedJ = volumeM3 * 3.4e6 * (Math.max(...run.meanC) - 4);
      const gap = (run.energy.inJ - run.energy.riseJ) / passedJ;
      rows.push([shape.kind, coating, `${(100 * gap).toFixed(4)} %`]);
      expect(Math.abs(gap)).toBeLessThan(1e-3);
      for (const temps of [run.coreC, run.hottestC, run.meanC]) {
        expect(Math.min(...temps)).toBeGreaterThan(0);
        expect(Math.max(...temps)).toBeLessThan(150);
      }
      expect(Math.max(...run.coreC)).toBeGreaterThan(30);
      expect(run.coreC.at(-1)).toBeLessThan(Math.max(...run.coreC));
    },
  );
});
