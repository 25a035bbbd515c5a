import { brineStage, newBrineSlice } from '@larderwright/calc/brine';
import { dryCureStage } from '@larderwright/calc/dry-cure';
import { dryingStage, newDryingSlice, newFermentationStep } from '@larderwright/calc/drying';
import type { Params } from '@larderwright/calc/findings';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { brineWords } from '../../../worksheets/words/brine.ts';
import { dryCureWords } from '../../../worksheets/words/dry-cure.ts';
import { dryingWords } from '../../../worksheets/words/drying.ts';
import type { Wording } from '../../../worksheets/words/wording.ts';
import { muttonHam } from '../../calc/brine/brines.ts';
import { belly, cureSlice, grams, pack, percent, piece, ppm } from '../../calc/dry-cure/pieces.ts';

function isPlain({ title, body }: Wording, id: string) {
  expect(`${title} ${body}`, id).not.toMatch(/undefined|NaN|null|\[object|Infinity|\( *\)| {2}|, \./);
  expect(title, id).toMatch(/[.?]$/);
  if (body !== '') expect(body, id).toMatch(/[.?]$/);
}

type Said = { readonly id: string; readonly params: Params };
type Result = {
  readonly findings: readonly Said[];
  readonly verdicts: readonly { readonly reason: string; readonly params: Params }[];
};

function saidIn(results: readonly Result[]): Said[] {
  return results.flatMap(({ findings, verdicts }) => [
    ...findings,
    ...verdicts.map(({ reason, params }) => ({ id: reason, params })),
  ]);
}

function speak(words: Readonly<Record<string, (p: Params) => Wording>>, said: readonly Said[]): Set<string> {
  for (const { id, params } of said) {
    const say = words[id];
    expect(say, id).toBeDefined();
    if (say) isPlain(say(params), id);
  }
  return new Set(said.map(({ id }) => id));
}

/** Reasons the shared types know that no whole muscle brings about: no mix, and a pack never weaker than its ceiling. */
const NEVER_SAID = ['no-meat-block', 'other-sources-over-ceiling', 'strength-below-target'];

function unsaid(words: object, spoken: ReadonlySet<string>): string[] {
  const left = Object.keys(words).filter((id) => !spoken.has(id));
  return left.map((id) => id.slice(id.indexOf('.') + 1)).sort();
}

const RULE_SETS = [
  'us-federal',
  'canada-federal',
  'great-britain',
  'european-union-2025',
  'australia-new-zealand',
  'codex',
  'moon',
  null,
];
const LABORATORY = (
  [
    ['12', 'sodium-nitrite'],
    ['900', 'sodium-nitrite'],
    ['900', 'nitrite-and-nitrate-as-sodium-nitrite'],
    ['12', null],
  ] as const
).map(([found, as]) => ({ found: ppm(found), as, report: '' }));
const CURES = [
  {},
  { checkedBy: 'a' },
  { checkedBy: '' },
  { scaleReadability: grams('2') },
  { scaleReadability: blankEntry('g') },
  ...LABORATORY.map((residual) => ({ residual })),
];
const PACKS = [pack(), pack('', ''), pack('0.05'), pack('30'), pack('6.25', '4'), pack('0.5')];

describe('words of dry cure', () => {
  const slices = [
    ...PACKS.flatMap((one) =>
      (['bacon', 'ham', null] as const).map((product) => belly({ pack: one, product, finish: 'cooked' })),
    ),
    belly({ method: 'rub' }),
    belly({ finish: 'dried-raw', lossTarget: percent('35'), pack: pack('6.25', '4'), product: 'other' }),
    belly({ finish: null, product: 'ham', pack: pack('6.25', '4') }),
    belly({ isTraditional: true, product: 'ham' }),
    belly({ nitriteTarget: ppm('0') }),
    belly({ nitriteTarget: ppm('900') }),
    belly({ nitriteTarget: ppm('60'), product: 'ham', finish: 'cooked' }),
    belly({ nitriteTarget: ppm('80000'), pack: pack('6.25') }),
    belly({ saltTarget: percent('1') }),
    belly({ saltTarget: percent('1'), pack: pack('0.5') }),
    belly({ pieces: [piece({ skinOff: blankEntry('g'), curingSaltActual: grams('9') })] }),
    belly({ chillTemp: enteredEntry('9', 'C') }),
    belly({
      pieces: [
        piece({ thickness: enteredEntry('120', 'mm') }),
        piece({ id: 'b', name: '', skinOff: blankEntry('g') }),
      ],
    }),
    belly({
      pieces: [piece({ skinOff: blankEntry('g'), skinOn: grams('4000'), curingSaltActual: grams('2 oz') })],
    }),
    ...['2', '20', '60', '200', '1 tbsp'].map((text) =>
      belly({ pieces: [piece({ curingSaltActual: grams(text), now: grams('4500') })] }),
    ),
  ];
  const results = slices.flatMap((dryCure) =>
    RULE_SETS.flatMap((ruleSetId) =>
      CURES.map((cure) => dryCureStage({ cure: cureSlice({ ruleSetId, ...cure }), dryCure })),
    ),
  );

  test('everything the stage says has words with every number filled in', () => {
    const spoken = speak(dryCureWords, saidIn(results));
    expect(unsaid(dryCureWords, spoken)).toEqual(['carried-unknown', ...NEVER_SAID]);
  });
});

describe('words of brine', () => {
  const actual = newBrineSlice().actual;
  const inject = { method: 'inject', injection: percent('20'), retained: percent('100') } as const;
  const slices = [
    ...PACKS.map((one) => muttonHam({ pack: one })),
    ...(['equilibrium', 'inject-cover', 'inject', 'timed', null] as const).map((method) =>
      muttonHam({ method, pickUp: percent('8'), strength: percent('18') }),
    ),
    muttonHam({ method: 'timed', strength: percent('18') }),
    muttonHam({ method: 'equilibrium', saltTarget: percent('6') }),
    muttonHam({ ...inject, injection: percent('5') }),
    muttonHam({ ...inject, phosphate: percent('0.3') }),
    muttonHam({ ...inject, phosphate: percent('0.9'), afterInjection: grams('3100') }),
    muttonHam({ phosphate: percent('0.9'), acceleratorTarget: ppm('500') }),
    muttonHam({ acceleratorForm: null }),
    muttonHam({ acceleratorTarget: ppm('900') }),
    ...['120', '100', '60', '20', '0', ''].flatMap((target) =>
      (['sodium-salt', 'acid'] as const).map((acceleratorForm) =>
        muttonHam({
          ...inject,
          product: 'bacon',
          nitriteTarget: ppm(target),
          acceleratorForm,
          acceleratorTarget: ppm('550'),
        }),
      ),
    ),
    muttonHam({ product: 'bacon' }),
    muttonHam({ product: null }),
    muttonHam({ saltTarget: percent('1'), pack: pack('0.5') }),
    muttonHam({ skinOff: blankEntry('g') }),
    muttonHam({ skinOff: blankEntry('g'), nitriteTarget: ppm('0') }),
    muttonHam({ skinOff: blankEntry('g'), actual: { ...actual, curingSalt: grams('7') } }),
    muttonHam({ use: 'used', mixedOn: '2026-10-01' }),
    muttonHam({ use: null, mixedOn: '2026-11-05' }),
    muttonHam({ water: grams('9000'), brineTemp: enteredEntry('8', 'C') }),
    muttonHam({ skinOff: blankEntry('g'), skinOn: grams('3000') }),
    muttonHam({
      method: 'equilibrium',
      pickUp: percent('10'),
      federalMethod: 'pick-up',
      actual: { ...actual, curingSalt: grams('15') },
    }),
    muttonHam({ method: 'equilibrium', actual: { ...actual, curingSalt: grams('15') } }),
    muttonHam({ finish: null, pack: pack('6.25', '4') }),
    muttonHam({ finish: 'dried-raw', pack: pack('6.25', '4') }),
    ...['1', '60', '400', '1 cup'].map((text) =>
      muttonHam({ actual: { ...actual, curingSalt: grams(text) } }),
    ),
  ];
  const results = slices.flatMap((brine) =>
    RULE_SETS.flatMap((ruleSetId) =>
      CURES.flatMap((cure) =>
        [null, 2000].map((finishedMassG) =>
          brineStage({ cure: cureSlice({ ruleSetId, ...cure }), brine }, { finishedMassG }),
        ),
      ),
    ),
  );

  test('everything the stage says has words with every number filled in', () => {
    const spoken = speak(brineWords, saidIn(results));
    expect(unsaid(brineWords, spoken)).toEqual([...NEVER_SAID, 'uptake-unknown']);
  });
});

describe('words of drying', () => {
  const base = newDryingSlice();
  const step = (temp: string, hours: string) => ({
    ...newFermentationStep(temp),
    temp: enteredEntry(temp, 'C'),
    hours: enteredEntry(hours, 'h'),
  });
  const figures = {
    kind: 'fermented-sausage',
    start: grams('1000'),
    startSalt: percent('2.8'),
    startMoisture: percent('58'),
    startProtein: percent('16'),
    degreeHourRule: 'us-fahrenheit',
    steps: [step('24', '20')],
  } as const;
  const trichina = {
    casing: enteredEntry('50', 'mm'),
    holdTemp: blankEntry('C'),
    holdHours: blankEntry('h'),
    total: grams('1000'),
    dryIngredients: grams('40'),
    salt: grams('10'),
  };
  const slices = [
    { ...base, kind: 'dried-muscle' as const },
    { ...base, kind: 'fermented-sausage' as const },
    ...([true, false, null] as const).map((reachedPh53) => ({
      ...base,
      ...figures,
      steps: [...figures.steps],
      reachedPh53,
    })),
    { ...base, ...figures, steps: [step('40', '90')], approvedPlan: 'HP 7' },
    { ...base, ...figures, steps: [], degreeHourRule: 'canada-celsius' as const },
    { ...base, ...figures, steps: [], lossTarget: percent('70'), now: grams('1100') },
    {
      ...base,
      ...figures,
      steps: [],
      lossTarget: percent('35'),
      now: grams('700'),
      moisture: percent('35'),
      protein: percent('20'),
      trichina,
    },
    { ...base, ...figures, steps: [], trichina: { ...trichina, casing: enteredEntry('200', 'mm') } },
  ];

  test('everything the stage says has words, and every word is said', () => {
    const spoken = speak(dryingWords, saidIn(slices.map((slice) => dryingStage(slice))));
    expect([...spoken].sort()).toEqual(Object.keys(dryingWords).sort());
  });
});
