import { cureStage } from '@larderwright/calc/cure';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { type MouldItem, mouldStage } from '@larderwright/calc/mould';
import { pressStage } from '@larderwright/calc/press';
import { blankEntry, type Entry, enteredEntry, type Unit } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { cureWords } from '../../../worksheets/words/cure.ts';
import { mouldWords } from '../../../worksheets/words/mould.ts';
import { pressWords } from '../../../worksheets/words/press.ts';
import type { Wording, Words } from '../../../worksheets/words/wording.ts';
import { cure, cureSlice, line, venisonTerrine, withLines } from '../../calc/cure/demo-formula.ts';

const composition = await loadIngredients();

function isPlain({ title, body }: Wording, id: string) {
  expect(`${title} ${body}`, id).not.toMatch(/undefined|NaN|null|\[object|Infinity|\( *\)| {2}|, \./);
  expect(title, id).toMatch(/[.?]$/);
  if (body !== '') expect(body, id).toMatch(/[.?]$/);
}

function say<Id extends string>(words: Words<Id>, said: { id: Id; params: Record<string, string | number> }) {
  return words[said.id](said.params);
}

describe('words of salt and cure', () => {
  const base = venisonTerrine();
  const change = (changes: Parameters<typeof withLines>[1]) => withLines(base, changes);
  const ruleSets = [
    'us-federal',
    'canada-federal',
    'great-britain',
    'european-union-2025',
    'australia-new-zealand',
    'codex',
  ];
  const formulas = [
    base,
    venisonTerrine(null),
    { ...base, lines: [] },
    ...['1', '2', '5.4', '7', '7.4', '20', '60', '', '1 oz'].map((grams) =>
      venisonTerrine(cure(grams, '6.25', '0')),
    ),
    ...['', '0.05', '0.6', '30'].map((strength) => venisonTerrine(cure('5.4', strength, ''))),
    venisonTerrine(cure('20', '0.6', '0')),
    withLines(venisonTerrine(null), { bacon: { carriedNitrite: enteredEntry('0', 'ppm') } }),
    venisonTerrine(cure('5.4', '6.25', '4')),
    { ...venisonTerrine(cure('5.4', '6.25', '4')), familyId: 'dried-muscle' },
    { ...base, familyId: 'fresh-sausage' },
    change({ cure: { ingredientId: 'sodium-nitrite' } }),
    change({ salt: { ingredientId: 'curing-salt-us-1', name: '' } }),
    change({ salt: { name: 'Pink salt' } }),
    change({ salt: { amount: enteredEntry('0', 'g') } }),
    change({ venison: { amount: blankEntry('g') } }),
    change({ venison: { ingredientId: 'kitchen-trout' } }),
    change({ liver: { amount: enteredEntry('900', 'g') } }),
    change({ bacon: { carriedNitrite: enteredEntry('900', 'ppm') } }),
    change({ bacon: { amount: enteredEntry('900', 'g') } }),
    change({ spice: { name: 'Celery powder' } }),
    change({ spice: { name: 'Celery powder', carriedNitrite: enteredEntry('0', 'ppm') } }),
    { ...base, lines: [...base.lines, line('e', 'seasoning', '3', 'sodium-erythorbate')] },
    { ...base, lines: [line('bread', 'panade', '100', 'kitchen-white-bread'), cure('5', '6.25', '0')] },
  ];
  const slices = [
    cureSlice(),
    cureSlice({ nitriteTarget: enteredEntry('300', 'ppm'), weighedBy: 'A', checkedBy: 'a' }),
    cureSlice({ nitriteTarget: enteredEntry('155', 'ppm'), checkedBy: '' }),
    cureSlice({ scaleReadability: enteredEntry('1', 'g') }),
    cureSlice({ scaleReadability: blankEntry('g') }),
    ...(
      [
        ['12', 'sodium-nitrite'],
        ['900', 'sodium-nitrite'],
        ['900', 'nitrite-and-nitrate-as-sodium-nitrite'],
        ['12', null],
      ] as const
    ).map(([found, as]) => cureSlice({ residual: { found: enteredEntry(found, 'ppm'), as, report: '' } })),
  ];

  const said = formulas.flatMap((formula) =>
    [...ruleSets, null, 'moon'].flatMap((ruleSetId) =>
      slices.flatMap((slice) =>
        [null, 3497].flatMap((finishedMassG) => {
          const result = cureStage(
            { formula, cure: { ...slice, ruleSetId } },
            { composition, finishedMassG },
          );
          const verdicts = result.verdicts.map(({ reason, params }) => ({ id: reason, params }));
          return [...result.findings, ...verdicts];
        }),
      ),
    ),
  );

  test('say whatever a batch can raise in whole sentences without a gap', () => {
    for (const one of said) isPlain(say(cureWords, one), one.id);
  });

  test('every id but one a mixed forcemeat cannot reach has been said', () => {
    const reached = new Set(said.map(({ id }) => id));
    const silent = Object.keys(cureWords).filter((id) => !reached.has(id as keyof typeof cureWords));
    // No pack within 0.4 to 10 % is weaker than a target a rule set allows.
    expect(silent).toEqual(['cure.target-above-strength']);
    isPlain(cureWords['cure.target-above-strength'](), 'cure.target-above-strength');
  });

  test('name the limit as printed and as computed, with the words of the law', () => {
    const verdict = cureStage({ formula: base, cure: cureSlice() }, { composition }).verdicts[0];
    expect(verdict && say(cureWords, { id: verdict.reason, params: verdict.params })).toEqual({
      title: 'Within the limit: 120.5 mg/kg as sodium nitrite, on the raw meat, fat, liver and offal.',
      body: 'The limit is 156 mg/kg (¼ oz to 100 lb of meat, meat by-product or poultry, computed as 156.25). With bought cured goods at their worst, up to 133.4.',
    });
  });

  test('never give curing salt in anything but grams', () => {
    for (const one of said.filter(({ id }) => id !== 'cure.grams-only')) {
      const { title, body } = say(cureWords, one);
      expect(`${title} ${body}`.replaceAll(/\([^)]*oz to 100 lb[^)]*\)/g, ''), one.id).not.toMatch(
        /spoon|cup|ounce|\boz\b|pinch/i,
      );
    }
  });
});

describe('words of moulds and press', () => {
  const entries = (measures: Record<string, string>): MouldItem['dimensions'] => {
    const mm = (key: string): Entry => enteredEntry(measures[key] ?? '', 'mm');
    return {
      length: mm('length'),
      width: mm('width'),
      depth: mm('depth'),
      baseLength: mm('baseLength'),
      baseWidth: mm('baseWidth'),
      diameter: mm('diameter'),
    };
  };
  const mould = (change: Partial<MouldItem>): MouldItem => ({
    id: 'm1',
    name: '',
    shape: 'rectangular',
    dimensions: entries({ length: '290', width: '95', depth: '75' }),
    waterFill: blankEntry('mL'),
    headspace: enteredEntry('10', 'mm'),
    liningKind: 'none',
    liningThickness: blankEntry('mm'),
    count: enteredEntry('2', 'count'),
    actualFills: [],
    ...change,
  });

  test('say every finding on moulds', () => {
    const moulds = [
      mould({ waterFill: enteredEntry('1500', 'mL'), name: 'Terrine' }),
      mould({ dimensions: entries({ length: '290', width: '95', depth: '120' }) }),
      mould({ headspace: enteredEntry('2', 'mm') }),
      mould({ headspace: enteredEntry('80', 'mm') }),
      mould({ shape: 'cylinder', dimensions: entries({ length: '290', diameter: '95', depth: '75' }) }),
      mould({ liningKind: 'film' }),
      mould({ liningKind: 'fat', liningThickness: enteredEntry('2', 'mm') }),
      mould({ actualFills: [enteredEntry('1000', 'g')] }),
    ];
    const reached = new Set<string>();
    for (const density of ['1.04', '1.5']) {
      for (const item of moulds) {
        for (const totalMassG of [2300, 3000, 8000]) {
          const { findings } = mouldStage(
            { moulds: [item], density: enteredEntry(density, 'g/mL') },
            { totalMassG },
          );
          for (const one of findings) {
            reached.add(one.id);
            isPlain(say(mouldWords, one), one.id);
          }
        }
      }
    }
    expect([...reached].sort()).toEqual(Object.keys(mouldWords).sort());
  });

  test('say every finding on the press', () => {
    const slice = (load: string, length = '285') => {
      const field = (text: string, unit: Unit) => enteredEntry(text, unit);
      return {
        boardLength: field(length, 'mm'),
        boardWidth: field('90', 'mm'),
        load: field(load, 'kg'),
        pressureTarget: blankEntry('kPa'),
        startedAt: null,
      };
    };
    const reached = new Set<string>();
    for (const familyId of ['country-terrine', 'poultry-liver-parfait']) {
      for (const one of [slice('1'), slice('3'), slice('12'), slice('2', '400')]) {
        for (const finding of pressStage(one, { familyId, planAreaMm2: 27550 }).findings) {
          reached.add(finding.id);
          isPlain(say(pressWords, finding), finding.id);
        }
      }
    }
    expect([...reached].sort()).toEqual(Object.keys(pressWords).sort());
  });
});
