/**
 * What a simulation costs in processor time: both tiers over a full cook and chill, by cells and by
 * length of the process, a refit and a band. Run with Node: `node tests/bench/heat-speed.ts`.
 */
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
  type HeatStage,
  mouldLayers,
  ovenPan,
  type SimulateOptions,
  simulate,
} from '@larderwright/calc/heat';
import { printTable } from '../calc/heat/print.ts';
import { median, seeded, timed } from './heat-batches.ts';

const material =
  foodMaterial({ water: 0.575, protein: 0.16, fat: 0.245, carbohydrate: 0.005, fibre: 0, ash: 0.015 }) ??
  constantMaterial(0.45, 1050, 3500);
const pan = ovenPan({ waterG: 3000, covered: true, mouldPlanMm2: 24_000 });
const bare: BatchThermal = {
  shape: { kind: 'rectangular', lengthMm: 240, widthMm: 100, depthMm: 75 },
  material,
  startC: 4,
};
const tin: BatchThermal = {
  ...bare,
  shape: { kind: 'rectangular', lengthMm: 234, widthMm: 94, depthMm: 69 },
  layers: mouldLayers({ wall: 'tinplate', inside: [fatLining(3)], insideOverTop: true }),
};
const cook = bathStage(150, 55, 50, pan, { when: 'core-reaches', tempC: 70, mostMin: 400 });
const chilled = (minutes: number): HeatStage[] => [
  cook,
  airStage('rest', 20, { when: 'time', minutes: 20 }),
  airStage('refrigerate', 3, { when: 'time', minutes }),
];
const whole = chilled(590);

function cost(batch: BatchThermal, stages: readonly HeatStage[], options: SimulateOptions) {
  const runs = Array.from({ length: 12 }, () => timed(() => simulate(batch, stages, options)));
  const { result } = runs.at(-1) ?? { result: null };
  if (result === null) throw new Error('a sound problem was refused');
  return { ms: median(runs.slice(4).map(({ ms }) => ms)), run: result };
}

function costRow(name: string, batch: BatchThermal, stages: readonly HeatStage[], options: SimulateOptions) {
  const { ms, run } = cost(batch, stages, options);
  const { nodes, steps, evaluations } = run.cost;
  return [name, (run.stages.at(-1)?.timeMin ?? 0).toFixed(0), nodes, steps, evaluations, ms.toFixed(1)];
}

const head = ['case', 'process min', 'nodes', 'steps', 'evaluations', 'ms'];
printTable('Full cook and chill, median of eight', head, [
  costRow('loaf, bare, exact', bare, whole, {}),
  costRow('loaf, bare, preview', bare, whole, { tier: 'preview' }),
  costRow('loaf, lined tin, exact', tin, whole, {}),
  costRow('loaf, lined tin, preview', tin, whole, { tier: 'preview' }),
]);
printTable(
  'By cells',
  head,
  [3, 4, 6, 8, 12].map((fineness) => costRow(`bare, fineness ${fineness}`, bare, whole, { fineness })),
);
printTable(
  'By length of the process, exact',
  head,
  [60, 180, 360, 720, 1440].map((minutes) =>
    costRow(`bare, ${minutes} min of chilling`, bare, chilled(minutes), {}),
  ),
);

const truth = simulate(tin, [{ ...cook, end: { when: 'time', minutes: 90 } }]);
if (truth === null) throw new Error('a sound problem was refused');
const readings = Array.from({ length: 40 }, (_, i) => ({
  timeMin: 2 * i + 2,
  tempC: coreOfRun(truth, 2 * i + 2) + 1,
}));
const fits = Array.from({ length: 8 }, () => timed(() => fitToReadings(tin, [cook], readings)));
const fit = fits.at(-1)?.result ?? null;
const band = timed(() => {
  const generator = forecast(tin, whole.slice(0, 2), fit, 200, seeded(5));
  while (!generator.next().done);
});
printTable(
  'Refit and band',
  ['case', 'ms'],
  [
    ['refit from 40 readings', median(fits.slice(2).map(({ ms }) => ms)).toFixed(0)],
    ['band of 200 draws, cook and rest', band.ms.toFixed(0)],
  ],
);
