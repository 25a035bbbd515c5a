import { deflateSync } from 'node:zlib';
import { assess, type Batch, labelOf, mergeBatches, readBatch } from '@larderwright/calc/batch';
import { type BlendProblem, solveProblem } from '@larderwright/calc/blend';
import { coolRuleSet, judgeCooling } from '@larderwright/calc/cooling';
import { cureStage, curingSaltForTarget } from '@larderwright/calc/cure';
import { openShare, shareText } from '@larderwright/calc/exchange';
import { formulaStage } from '@larderwright/calc/formula';
import { PERFRINGENS_SETS, setGrowth } from '@larderwright/calc/growth';
import {
  loadIngredientDetails,
  loadIngredients,
  loadPickList,
  searchIngredients,
} from '@larderwright/calc/ingredients';
import { LINE_70_Z7_5, pasteurisationValue } from '@larderwright/calc/lethality';
import { checkLog } from '@larderwright/calc/probe-log';
import { parseQuantity } from '@larderwright/calc/quantities';
import { demos } from '../../content/demo/index.ts';
import { runPaste } from '../../worksheets/readings/paste-job.ts';
import { independentCost } from '../calc/blend/independent.ts';
import { longLog, ROWS } from '../fixtures/long-log.ts';
import { type Entry, processorMs, type Subject } from './registry.ts';

const TODAY = '2026-11-25';
const composition = await loadIngredients();
const details = await loadIngredientDetails();
const picks = await loadPickList();
function demoOf(slug: string): Batch {
  const batch = demos[slug];
  if (!batch) throw new Error(`No demo ${slug}`);
  return batch;
}
const terrine = demoOf('country-terrine');

/** Ms of processor time of one go, from so many goes in a row: a single one is too short to measure. */
const each = (goes: number, work: () => void) => () =>
  processorMs(() => {
    for (let go = 0; go < goes; go++) work();
  }) / goes;

/** The same in millionths of a second. */
const eachUs = (goes: number, work: () => void) => {
  const go = each(goes, work);
  return () => go() * 1000;
};

async function eachAsync(goes: number, work: () => Promise<unknown>): Promise<number> {
  const before = performance.now();
  for (let go = 0; go < goes; go++) await work();
  return (performance.now() - before) / goes;
}

/** Invented materials of a forcemeat with a band each way. */
const blend: BlendProblem = {
  totalG: 10_000,
  materials: [
    [5.2, 0.08, 0.2],
    [3.1, 0.3, 0.16],
    [1.4, 0.85, 0.03],
    [6.8, 0.04, 0.21],
    [2.2, 0.5, 0.11],
    [4.4, 0.15, 0.18],
  ].map(([perKg = 0, fat = 0, protein = 0], index) => ({
    id: `m${index}`,
    perKg,
    stockG: 6000,
    minShare: null,
    maxShare: 0.6,
    lockedG: null,
    fractions: {
      fat,
      protein,
      water: 1 - fat - protein - 0.01,
      salt: 0,
      liver: 0,
      'added-water': 0,
      'fat-and-added-water': fat,
      ice: 0,
    },
  })),
  bands: [
    { quality: 'fat', min: 0.25, max: 0.3 },
    { quality: 'protein', min: 0.14, max: null },
  ],
};

const cooling = Array.from({ length: 10_000 }, (_, index) => ({
  atMs: index * 2000,
  tempC: 3 + 62 * Math.exp(-index / 2500),
  counts: true,
}));
const curve = cooling.map(({ atMs, tempC }) => ({ timeMin: atMs / 60_000, tempC }));
const [growthSet] = PERFRINGENS_SETS;
const packed = shareText(terrine);
const json = JSON.stringify(terrine);
const pasted = longLog();
const long = (() => {
  const read = runPaste({
    text: pasted,
    options: { unit: 'C', startsOn: '2026-05-05', offset: '+02:00', startsAt: null },
  });
  const [first] = terrine.process.logs;
  if (!read.log || !first) throw new Error('The long log cannot be read');
  const readings = read.log.readings.map(({ at, temperature }, index) => ({
    id: `${index}`,
    at,
    temperature,
    enteredAt: at,
    initials: '',
    excluded: null,
  }));
  const log = { ...first, readings };
  return { ...terrine, process: { ...terrine.process, logs: [log] } };
})();
const [longest] = long.process.logs;

function entries(): Entry[] {
  if (!longest || !growthSet) throw new Error('There is nothing to measure');
  return [
    ...Object.entries(demos).map(
      ([name, batch]): Entry => ({
        name: `assess ${name}`,
        unit: 'ms',
        target: 16,
        measure: each(10, () => assess(batch, { composition, today: TODAY })),
      }),
    ),
    {
      name: 'formula of the terrine',
      unit: 'µs',
      measure: eachUs(50, () => formulaStage(terrine.formula, { composition })),
    },
    {
      name: 'curing limits of the terrine',
      unit: 'µs',
      measure: eachUs(50, () => cureStage({ formula: terrine.formula, cure: terrine.cure }, { composition })),
    },
    {
      name: 'dose of curing salt',
      unit: 'µs',
      measure: eachUs(2000, () =>
        curingSaltForTarget({
          targetPpm: 120,
          basisMassG: 2800,
          countsInBasis: false,
          nitriteFraction: 0.0625,
          readabilityG: 0.1,
          ceilingPpm: 156,
        }),
      ),
    },
    {
      name: 'label of the terrine',
      unit: 'ms',
      measure: each(20, () => labelOf(terrine, composition, details)),
    },
    {
      name: 'least-cost blend of six, bounds priced',
      unit: 'ms',
      measure: () => eachAsync(20, () => solveProblem(blend)),
      against: {
        name: 'HiGHS, the optimum alone',
        measure: () => eachAsync(20, async () => independentCost(blend)),
      },
    },
    {
      name: 'cooling verdict of 10,000 readings',
      unit: 'ms',
      target: 16,
      measure: each(5, () =>
        judgeCooling(cooling, coolRuleSet('us-food-code')?.legs ?? [], {
          errorC: 0.5,
          offsetKnown: true,
          unitSuspect: false,
          heatEndMs: 0,
        }),
      ),
      against: {
        name: 'one pass over the readings',
        measure: each(5, () => cooling.filter(({ tempC }) => tempC > 5)),
      },
    },
    {
      name: 'pasteurisation value of 10,000 points, exact',
      unit: 'ms',
      measure: each(5, () => pasteurisationValue(curve, LINE_70_Z7_5)),
      against: {
        name: 'the trapezoid rule',
        measure: each(5, () => pasteurisationValue(curve, LINE_70_Z7_5, { method: 'trapezoid' })),
      },
    },
    {
      name: 'growth over 10,000 points',
      unit: 'ms',
      measure: each(2, () => setGrowth(growthSet, curve, 0.5)),
    },
    {
      name: 'share link made',
      unit: 'ms',
      measure: each(10, () => shareText(terrine)),
      against: { name: 'zlib over its JSON', measure: each(10, () => deflateSync(json, { level: 9 })) },
    },
    {
      name: 'share link, length',
      unit: 'B',
      measure: () => packed.length,
      against: {
        name: 'zlib over its JSON, base64url',
        measure: () => deflateSync(json, { level: 9 }).toString('base64url').length,
      },
    },
    { name: 'share link opened', unit: 'ms', measure: each(10, () => openShare(packed)) },
    {
      name: 'record read and checked',
      unit: 'µs',
      measure: eachUs(20, () => readBatch(terrine)),
      against: { name: 'JSON.parse of it', measure: eachUs(20, () => JSON.parse(json)) },
    },
    {
      name: 'two edits of a record put together',
      unit: 'µs',
      measure: eachUs(20, () =>
        mergeBatches(
          terrine,
          { ...terrine, notes: 'a' },
          { ...terrine, product: { ...terrine.product, name: 'b' } },
        ),
      ),
    },
    {
      name: 'ingredients found for a word',
      unit: 'ms',
      measure: each(50, () => searchIngredients(picks, 'pork liv')),
      against: {
        name: 'scan of the names',
        measure: each(50, () =>
          picks.filter((pick) => JSON.stringify(pick).toLowerCase().includes('pork liv')),
        ),
      },
    },
    {
      name: 'a number read as typed',
      unit: 'µs',
      measure: eachUs(5000, () => parseQuantity('mass', '1 1/2 lb', 'g')),
    },
    {
      name: `log of ${ROWS} rows read, beside the page`,
      unit: 'ms',
      runs: 3,
      measure: each(1, () =>
        runPaste({
          text: pasted,
          options: { unit: 'C', startsOn: '2026-05-05', offset: '+02:00', startsAt: null },
        }),
      ),
      against: {
        name: 'splitting it into cells',
        measure: each(1, () => pasted.split('\n').map((row) => row.split(','))),
      },
    },
    {
      name: `log of ${ROWS} rows checked, all new`,
      unit: 'ms',
      runs: 3,
      measure: each(1, () => checkLog({ ...longest, readings: structuredClone(longest.readings) })),
      note: () => 'with copying it',
    },
    {
      name: `batch with ${ROWS} readings assessed after an edit elsewhere in it`,
      unit: 'ms',
      runs: 5,
      measure: each(1, () => assess({ ...long, notes: `${Math.random()}` }, { composition, today: TODAY })),
    },
  ];
}

const calc: Subject = { subject: 'calc', entries };
export default calc;
