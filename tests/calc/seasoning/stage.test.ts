import { enteredEntry } from '@larderwright/calc/quantities';
import {
  type BlendItem,
  blendOfStyle,
  blendStyleOf,
  newBlendItem,
  newLooseSpice,
  newSeasoningBlend,
  newSeasoningSlice,
  type SeasoningContext,
  type SeasoningSlice,
  seasoningStage,
} from '@larderwright/calc/seasoning';
import { describe, expect, it } from 'vitest';
import { seasoningWords } from '../../../worksheets/words/seasoning.ts';

const context: SeasoningContext = { totalG: 4000, today: '2026-05-01' };
const item = (spiceId: string, parts: string): BlendItem => ({
  ...newBlendItem(spiceId),
  spiceId,
  parts: enteredEntry(parts, 'ratio'),
});

/** An invented blend, 14 : 3 : 2 : 1 at 3 g/kg. */
const fourSpices = (): SeasoningSlice => ({
  ...newSeasoningSlice(),
  blends: [
    {
      ...newSeasoningBlend('b'),
      name: 'House four spices',
      items: [item('white-pepper', '14'), item('nutmeg', '3'), item('ginger', '2'), item('clove', '1')],
    },
  ],
});

const ids = (slice: SeasoningSlice, of = context) => seasoningStage(slice, of).findings.map(({ id }) => id);

describe('the seasoning of a batch', () => {
  it('says nothing of an empty slice', () => {
    const { values, findings, missing } = seasoningStage(newSeasoningSlice(), context);
    expect(findings).toEqual([]);
    expect(missing).toEqual([]);
    expect(values.totalG).toBe(0);
  });

  it('weighs a blend on the total mix of the formula, or on a batch of its own', () => {
    const weights = (slice: SeasoningSlice) =>
      seasoningStage(slice, context).values.blends[0]?.items.map(({ onScaleG }) => onScaleG);
    expect(weights(fourSpices())).toEqual([8.4, 1.8, 1.2, 0.6]);
    expect(weights({ ...fourSpices(), batch: enteredEntry('8', 'kg') })).toEqual([16.8, 3.6, 2.4, 1.2]);
  });

  it('counts the same spice, blend and loose together, against one ceiling', () => {
    // 0.15 in the blend and 0.25 loose are 0.40 g/kg of clove; ceiling 0.35, common practice.
    const slice = fourSpices();
    slice.loose = [{ ...newLooseSpice('l'), spiceId: 'clove', dose: enteredEntry('0.25', 'g/kg') }];
    expect(ids(fourSpices())).not.toContain('seasoning.over-ceiling');
    expect(ids(slice)).toContain('seasoning.over-ceiling');
  });

  it('carries what the scale cannot show in nine parts of salt, and counts that salt', () => {
    // 600 g of mix: clove 0.09 g. In ten parts 0.9 g, 0.81 g of it salt. Derived.
    const small = { ...fourSpices(), batch: enteredEntry('600', 'g') };
    const { values, findings } = seasoningStage(small, context);
    const [, , ginger, clove] = values.blends[0]?.items ?? [];
    expect(clove?.dilution?.useG).toBeCloseTo(0.9, 9);
    expect(clove?.dilution?.saltInBatchG).toBeCloseTo(0.81, 9);
    expect(ginger?.dilution?.saltInBatchG).toBeCloseTo(1.62, 9);
    expect(values.dilutionSaltG).toBeCloseTo(0.81 + 1.62 + 9 * 0.27, 9);
    expect(findings.map(({ id }) => id)).toContain('seasoning.diluted-in-salt');
    expect(ids({ ...small, diluteInSalt: false })).toContain('seasoning.too-small-to-weigh');
  });

  it('says how large a stock must be for the scale, and is content with it', () => {
    const small = { ...fourSpices(), batch: enteredEntry('600', 'g') };
    const blend = seasoningStage(small, context).values.blends[0];
    // 0.5 ÷ 0.09 = 5.6. Derived.
    expect(blend?.stockTimesNeeded).toBe(6);
    for (const row of small.blends) row.stockTimes = enteredEntry('6', 'ratio');
    const stocked = seasoningStage(small, context).values;
    expect(stocked.blends[0]?.items.every(({ weighable }) => weighable)).toBe(true);
    expect(stocked.dilutionSaltG).toBe(0);
    expect(stocked.blends[0]?.stockG).toBeCloseTo(6 * 1.8, 9);
  });

  it('leaves salt, cure and mild spice multiplied, and lets strong ones be tasted above fivefold', () => {
    const { findings } = seasoningStage(
      { ...fourSpices(), timesTasted: enteredEntry('8', 'ratio') },
      context,
    );
    expect(findings.filter(({ id }) => id === 'seasoning.taste-aromatics')).toHaveLength(1);
  });

  it('tells allergens by both lists, and never takes unknown for none', () => {
    const slice = newSeasoningSlice();
    slice.loose = [
      { ...newLooseSpice('m'), spiceId: 'mustard', dose: enteredEntry('2', 'g/kg') },
      { ...newLooseSpice('c'), spiceId: 'celery-seed', dose: enteredEntry('0.2', 'g/kg') },
      { ...newLooseSpice('s'), spiceId: 'soy-sauce', form: 'plain', dose: enteredEntry('4', 'g/kg') },
      { ...newLooseSpice('own'), name: 'Bought mix', dose: enteredEntry('1', 'g/kg') },
    ];
    const { values, findings } = seasoningStage(slice, context);
    // Regulation (EU) No 1169/2011, Annex II; 21 U.S.C. 321(qq): mustard and celery are on the first list only.
    expect(values.euAllergens.map(({ name }) => name)).toEqual([
      'celery',
      'cereals containing gluten',
      'mustard',
      'soybeans',
    ]);
    expect(values.usAllergens.map(({ name }) => name)).toEqual(['soybeans', 'wheat']);
    expect(values.allergensUnknown).toEqual(['own']);
    expect(findings.map(({ id }) => id)).toEqual(
      expect.arrayContaining([
        'seasoning.allergens',
        'seasoning.allergens-unknown',
        'seasoning.natural-nitrate',
        'seasoning.carries-salt',
      ]),
    );
    // 16 g of sauce with 14–20 % salt (common practice): 2.24 to 3.2 g. Derived.
    expect(values.carriedSaltG?.min).toBeCloseTo(2.24, 9);
    expect(values.carriedSaltG?.max).toBeCloseTo(3.2, 9);
  });

  it('warns of raw garlic, raw ginger, pink peppercorn and old ground spice', () => {
    const slice = fourSpices();
    slice.loose = (['garlic', 'ginger', 'pink-peppercorn'] as const).map((spiceId) => ({
      ...newLooseSpice(spiceId),
      spiceId,
      form: spiceId === 'pink-peppercorn' ? 'whole' : 'fresh',
      dose: enteredEntry('1', 'g/kg'),
    }));
    for (const blend of slice.blends) blend.groundOn = '2025-10-01';
    expect(ids(slice)).toEqual(
      expect.arrayContaining([
        'seasoning.raw-garlic',
        'seasoning.raw-ginger',
        'seasoning.cross-reaction',
        'seasoning.old-ground',
        'seasoning.no-ceiling',
      ]),
    );
    expect(ids(slice, { ...context, today: null })).not.toContain('seasoning.old-ground');
  });

  it('blank parts, dose or batch are unknown, never zero', () => {
    const noPart = fourSpices();
    noPart.blends[0]?.items.push({ ...newBlendItem('x'), spiceId: 'mace' });
    const blank = seasoningStage(noPart, context);
    expect(blank.values.totalG).toBe(null);
    expect(blank.values.blends[0]?.items[0]?.massG).toBe(null);
    expect(blank.missing.map(({ field }) => field)).toContain('seasoning.blends.b.items.x.parts');
    const noBatch = seasoningStage(fourSpices(), { ...context, totalG: null });
    expect(noBatch.values.totalG).toBe(null);
    expect(noBatch.missing.map(({ field }) => field)).toContain('seasoning.batch');
    const bad = seasoningStage({ ...fourSpices(), batch: enteredEntry('lots', 'kg') }, context);
    expect(bad.values.batchG).toBe(null);
  });

  it('begins a blend from a style, its parts marked as defaults', () => {
    const style = blendStyleOf('game');
    if (!style) throw new Error('no such style');
    const blend = blendOfStyle('g', style);
    expect(blend.items.map(({ id, parts }) => [id, parts.text, parts.origin])).toEqual([
      ['g-1', '8', 'default'],
      ['g-2', '6', 'default'],
      ['g-3', '3', 'default'],
      ['g-4', '2', 'default'],
      ['g-5', '1', 'default'],
    ]);
    expect(blend.dose.text).toBe('5');
  });

  it('has words for every finding it raises', () => {
    const slice = fourSpices();
    slice.batch = enteredEntry('100', 'g');
    slice.timesTasted = enteredEntry('9', 'ratio');
    slice.loose = [{ ...newLooseSpice('l'), spiceId: 'clove', dose: enteredEntry('0.02', 'g/kg') }];
    for (const { id, params } of seasoningStage(slice, context).findings)
      expect(seasoningWords[id](params).title).not.toMatch(/undefined|NaN/);
  });
});
