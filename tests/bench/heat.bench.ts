import {
  airStage,
  type BatchThermal,
  bathStage,
  constantMaterial,
  coreOfRun,
  fatLining,
  fitToReadings,
  foodMaterial,
  forecast,
  type HeatShape,
  type HeatStage,
  mouldLayers,
  ovenPan,
  type SimulateOptions,
  simulate,
} from '@larderwright/calc/heat';
import { seeded } from '../calc/heat/random-batches.ts';
import { againstGeneralSolver } from './general-solver.ts';
import { type Entry, processorMs, type Subject } from './registry.ts';

const material =
  foodMaterial({ water: 0.575, protein: 0.16, fat: 0.245, carbohydrate: 0.005, fibre: 0, ash: 0.015 }) ??
  constantMaterial(0.45, 1050, 3500);
const pan = ovenPan({ waterG: 3000, covered: true, mouldPlanMm2: 24_000 });

/** Bodies of one household size. */
const SHAPES: readonly HeatShape[] = [
  { kind: 'rectangular', lengthMm: 234, widthMm: 94, depthMm: 69 },
  { kind: 'tapered', lengthMm: 234, widthMm: 104, depthMm: 69, baseLengthMm: 214, baseWidthMm: 84 },
  { kind: 'half-cylinder', lengthMm: 240, diameterMm: 90 },
  { kind: 'cylinder', lengthMm: 240, diameterMm: 80 },
  { kind: 'standing-cylinder', diameterMm: 100, depthMm: 80 },
  { kind: 'roof', lengthMm: 240, widthMm: 90, depthMm: 75 },
  { kind: 'oval', lengthMm: 180, widthMm: 100, depthMm: 75 },
  { kind: 'cube', sideMm: 80 },
  { kind: 'slab', thicknessMm: 70 },
];

/** The body in a lined tin: the case a cook has. */
const inTin = (shape: HeatShape): BatchThermal => ({
  shape,
  material,
  startC: 4,
  layers: mouldLayers({ wall: 'tinplate', inside: [fatLining(3)], insideOverTop: true }),
});

const cook = bathStage(150, 55, 45, pan, { when: 'core-reaches', tempC: 70, mostMin: 400 });
/** Cook, rest and as long in the refrigerator as told. */
const chilled = (minutes: number): HeatStage[] => [
  cook,
  airStage('rest', 20, { when: 'time', minutes: 20 }),
  airStage('refrigerate', 3, { when: 'time', minutes }),
];
const TWELVE_HOURS = chilled(590);

/** A slab is a metre wide: no pan would hold it. It cooks in steam. */
const forShape = (shape: HeatShape): HeatStage[] =>
  shape.kind === 'slab' ? [airStage('steam', 85, cook.end), ...TWELVE_HOURS.slice(1)] : TWELVE_HOURS;

/** A slider moves the body, so the net and everything else is made anew each time. */
function run(shape: HeatShape, stages: readonly HeatStage[], options: SimulateOptions) {
  const result = simulate(inTin(shape), stages, options);
  if (result === null) throw new Error('a sound problem was refused');
  return result;
}

function timed(
  name: string,
  shape: HeatShape,
  stages: readonly HeatStage[],
  options: SimulateOptions,
  target?: number,
): Entry {
  let cost = { nodes: 0, steps: 0, evaluations: 0 };
  return {
    name,
    unit: 'ms',
    ...(target === undefined ? {} : { target }),
    measure: () =>
      processorMs(() => {
        cost = run(shape, stages, options).cost;
      }),
    note: () => `${cost.nodes} nodes, ${cost.steps} steps, ${cost.evaluations} evaluations`,
  };
}

function fitting(): Entry[] {
  const loaf = inTin(SHAPES[0] ?? { kind: 'cube', sideMm: 80 });
  const truth = simulate(loaf, [{ ...cook, end: { when: 'time', minutes: 90 } }]);
  if (truth === null) throw new Error('a sound problem was refused');
  const readings = Array.from({ length: 40 }, (_, i) => ({
    timeMin: 2 * i + 2,
    tempC: coreOfRun(truth, 2 * i + 2) + 1,
  }));
  const fit = fitToReadings(loaf, [cook], readings);
  return [
    {
      name: 'refit from 40 readings',
      unit: 'ms',
      target: 150,
      measure: () => processorMs(() => fitToReadings(loaf, [cook], readings)),
    },
    {
      name: 'band of 200 draws, cook and rest',
      unit: 'ms',
      target: 1500,
      runs: 3,
      measure: () =>
        processorMs(() => {
          const draws = forecast(loaf, TWELVE_HOURS.slice(0, 2), fit, 200, seeded(5));
          while (!draws.next().done);
        }),
    },
  ];
}

const LOAF: HeatShape = { kind: 'rectangular', lengthMm: 234, widthMm: 94, depthMm: 69 };

export default {
  subject: 'heat',
  entries: () => [
    ...SHAPES.map((shape) => timed(`12 h, exact, ${shape.kind}`, shape, forShape(shape), {}, 100)),
    ...SHAPES.map((shape) =>
      timed(`12 h, preview, ${shape.kind}`, shape, forShape(shape), { tier: 'preview' }, 7),
    ),
    ...[3, 4, 6, 8, 12].map((fineness) =>
      timed(`by cells: ${fineness} through the loaf`, LOAF, TWELVE_HOURS, { fineness }),
    ),
    ...[60, 180, 360, 720, 1440].map((minutes) =>
      timed(`by length: ${minutes} min of chilling`, LOAF, chilled(minutes), {}),
    ),
    ...fitting(),
    ...againstGeneralSolver(),
  ],
} satisfies Subject;
