import { type Assessment, assess, readBatch } from '@larderwright/calc/batch';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { describe, expect, it } from 'vitest';
import { coreReadings } from '../../content/examples/core-curve.ts';
import { examples } from '../../content/examples/index.ts';
import { readCollection } from './read-content.ts';

const composition = await loadIngredients();
const pages = readCollection('techniques');
const batchOf = (slug: string) => {
  const batch = examples[slug];
  if (!batch) throw new Error(`No example ${slug}`);
  return batch;
};
const assessed = (slug: string) => assess(batchOf(slug), { composition, today: '2026-11-25' });
const states = ({ verdicts }: Assessment['cook'] | Assessment['cool']) => verdicts.map(({ state }) => state);

/** Pages that teach from a log, with what their log is meant to show: cook, then every leg of the cooling. */
const LOGS: Readonly<Record<string, readonly [cook: string, cool: string]>> = {
  'hygiene-and-cold-chain': ['pass', 'cannot-tell'],
  'water-bath-and-probe': ['pass', 'cannot-tell'],
  'press-and-chill': ['pass', 'pass'],
  'country-terrine': ['pass', 'pass'],
  'liver-pates': ['pass', 'pass'],
  'parfaits-and-mousses': ['pass', 'pass'],
  mousselines: ['pass', 'pass'],
  'game-terrines': ['pass', 'pass'],
  'layered-terrines': ['pass', 'pass'],
  'pate-en-croute': ['pass', 'pass'],
  'galantines-and-ballotines': ['pass', 'pass'],
  'jelly-and-finishing': ['pass', 'pass'],
  rillettes: ['pass', 'pass'],
  confit: ['pass', 'pass'],
  'brawn-and-jellied-meats': ['pass', 'pass'],
  'cooked-sausages': ['pass', 'pass'],
  'brined-hams': ['pass', 'pass'],
  'unmould-slice-serve': ['pass', 'pass'],
  'packing-and-shelf-life': ['pass', 'pass'],
  // The record of a batch that was thrown away: a review needs one that went wrong.
  'haccp-records-review': ['pass', 'fail'],
};

/** Pages where the example is meant to be stopped: the subject may only be made under an accepted process. */
const STOPPED: readonly string[] = ['dried-whole-muscle'];

it('every technique has an example of its own, and none is left over', () => {
  const named = pages.map(({ data }) => String(data.example)).sort();
  expect(named).toEqual(Object.keys(examples).sort());
});

describe.each(Object.keys(examples))('the example of %s', (slug) => {
  it('is a record the worksheets can read, unchanged, under an id of its own', () => {
    const batch = batchOf(slug);
    const read = readBatch(JSON.parse(JSON.stringify(batch)));
    expect(read).toEqual({ ok: true, batch });
    expect(batch.id).toBe(`example-${slug}`);
  });

  it('is marked as invented and has a name', () => {
    const { demo, product } = batchOf(slug);
    expect(demo).toBe(true);
    expect(product.name).not.toBe('');
    expect(product.kitchen).not.toBe('');
  });

  it('keeps every limit on nitrite, where it has curing salt', () => {
    const { cure, dryCure, brine } = assessed(slug);
    const states = [cure, dryCure, brine].flatMap(
      (stage) => stage?.verdicts.map(({ id, state }) => `${id} ${state}`) ?? [],
    );
    expect(states.filter((state) => state.endsWith('fail'))).toEqual([]);
  });

  it('teaches nothing that is stopped, unless the page is about that', () => {
    const stops = assessed(slug).findings.filter(({ severity }) => severity === 'stop');
    expect(stops.length > 0).toBe(STOPPED.includes(slug));
  });
});

describe.each(Object.entries(LOGS))('the log of the example of %s', (slug, [wantedCook, wantedCool]) => {
  it('shows what the page is about', () => {
    const { cook, cool } = assessed(slug);
    expect(states(cook)).toEqual(states(cook).map(() => wantedCook));
    expect(states(cool)).toEqual(states(cool).map(() => wantedCool));
    expect(states(cook)).not.toEqual([]);
    expect(states(cool)).not.toEqual([]);
  });
});

describe('pages that work a sum out show the same sum', () => {
  // The self-check of each page states these; arithmetic checked in worked-figures.
  it('curing salts: 5.4 g for 120 mg/kg on 2.8 kg of meat', () => {
    expect(assessed('curing-salts').cure.values.cured.ingoingPpmMeat).toBeCloseTo((5.4 * 62_500) / 2_800, 6);
  });

  it('panades: a tenth of 2.4 kg of meat', () => {
    const { lines } = batchOf('panades').formula;
    const grams = (part: string) =>
      lines.filter((line) => line.part === part).reduce((sum, { amount }) => sum + Number(amount.text), 0);
    expect(grams('panade')).toBe(240);
    expect(grams('lean') + grams('fat')).toBe(2_400);
  });

  it('spices: parts 14, 3, 2 and 1 at 3 g/kg in 4 kg', () => {
    const { values } = assessed('spices-and-blends').formula;
    expect(values.mix.totalG).toBeCloseTo(4_000, 6);
    const grams = batchOf('spices-and-blends')
      .formula.lines.filter(({ part }) => part === 'seasoning')
      .map(({ amount }) => Number(amount.text));
    // Derived: 3 g/kg × 4 kg = 12 g over 20 parts.
    expect(grams).toEqual([14, 3, 2, 1].map((parts) => Number(((12 / 20) * parts).toFixed(1))));
  });

  it('bacon: 2.5 kg of belly takes 4.8 g of curing salt and 58 g of plain salt', () => {
    const lines = new Map(
      batchOf('dry-cured-bacon').formula.lines.map((line) => [line.id, line.amount.text]),
    );
    expect([lines.get('belly'), lines.get('cure'), lines.get('salt')]).toEqual(['2500', '4.8', '58']);
  });
});

describe('coreReadings', () => {
  const loaf = { skinMin: 10, coreMin: 40 };

  it('starts at the start, reads at the end of each stretch, and tells the time of day', () => {
    expect(
      coreReadings('08:55', 5, loaf, [
        { until: '09:10', mediumC: 80, everyMin: 10 },
        { until: '09:20', mediumC: 0, everyMin: 10 },
      ]).replaceAll(/ -?\d+\.\d/g, ''),
    ).toBe('08:55, 09:05, 09:10, 09:20');
  });

  it('stays where its surroundings are, and goes on rising after the bath', () => {
    expect(coreReadings('10:00', 4, loaf, [{ until: '10:20', mediumC: 4, everyMin: 20 }])).toBe(
      '10:00 4.0, 10:20 4.0',
    );
    const temps = coreReadings('08:00', 5, loaf, [
      { until: '09:00', mediumC: 80, everyMin: 60 },
      { until: '09:05', mediumC: 20, everyMin: 5 },
    ])
      .split(', ')
      .map((pair) => Number(pair.split(' ')[1]));
    expect(temps[2]).toBeGreaterThan(temps[1] ?? Number.NaN);
  });
});
