import { readBatch } from '@larderwright/calc/batch';
import { describe, expect, it } from 'vitest';
import { terrineSeries } from '../../../content/demo/terrine-series.ts';
import type { CompareFigures } from '../../../worksheets/compare/figures-of.ts';
import { compareGroups } from '../../../worksheets/compare/rows.ts';

const figures = (change: Partial<CompareFigures>): CompareFigures => ({
  id: 'a',
  name: 'Terrine',
  batchNo: '',
  day: '2026-01-06',
  demo: true,
  familyId: 'country-terrine',
  state: 'planned',
  shares: {},
  saltFraction: null,
  nitritePpmTotal: null,
  boughtG: null,
  trimmedG: null,
  filledG: null,
  finishedG: null,
  cookLossFraction: null,
  cookMin: null,
  comeUpMin: null,
  peakC: null,
  coolRuleSetId: null,
  legs: [],
  deviations: 0,
  verdicts: { pass: 0, fail: 0, 'cannot-tell': 0 },
  oven: '',
  predictedMin: null,
  slicedG: null,
  pricePerSlice: null,
  currency: '',
  ...change,
});

const rowOf = (batches: readonly CompareFigures[], label: string) =>
  compareGroups(batches)
    .flatMap(({ rows }) => rows)
    .find((row) => row.label === label);

describe('rows of the comparison', () => {
  it('differ only where two batches have different figures; one that has none is no difference', () => {
    const known = figures({ cookLossFraction: 0.06 });
    expect(rowOf([known, figures({})], 'Cook loss')).toMatchObject({
      cells: ['6.0 %', null],
      differs: false,
    });
    expect(rowOf([known, figures({ cookLossFraction: 0.08 })], 'Cook loss')).toMatchObject({ differs: true });
    expect(rowOf([known, known], 'Cook loss')).toMatchObject({ differs: false });
  });

  it('say none of a part that a formula does not have, and nothing where there is no formula', () => {
    const lean = figures({ shares: { lean: 1 } });
    const both = figures({ shares: { lean: 0.8, fat: 0.2 } });
    expect(rowOf([lean, both, figures({})], 'Fat')).toMatchObject({ cells: ['none', '20.0 %', null] });
  });

  it('keep legs of different cooling rules in different rows', () => {
    const leg = (id: string) => [{ id, worstMin: 90, state: 'pass' as const }];
    const one = figures({ coolRuleSetId: 'us-food-code', legs: leg('135F-70F') });
    const other = figures({ coolRuleSetId: null });
    const cooling = compareGroups([one, other]).find(({ title }) => title === 'Cooling');
    expect(cooling?.rows.map(({ cells }) => cells)).toEqual([
      ['1 h 30 min, pass', null],
      [null, null],
    ]);
  });
});

it('every batch of the invented series is a record that reads, marked as a demo', () => {
  for (const batch of terrineSeries) {
    expect(readBatch(JSON.parse(JSON.stringify(batch)))).toMatchObject({ ok: true, batch: { demo: true } });
  }
});
