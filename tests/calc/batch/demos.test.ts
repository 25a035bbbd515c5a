import { assess, type Batch } from '@larderwright/calc/batch';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { enteredEntry } from '@larderwright/calc/quantities';
import { beforeAll, describe, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';

// Five invented batches. Every verdict is counted on their readings by hand (derived); the limits are those of
// the rule sets, whose sources stand with them.
let composition: Awaited<ReturnType<typeof loadIngredients>>;
beforeAll(async () => {
  composition = await loadIngredients();
});

function demo(slug: string, change: (batch: Batch) => void = () => undefined): Record<string, string> {
  const found = demos[slug];
  if (!found) throw new Error(`No demo ${slug}`);
  const batch = structuredClone(found);
  change(batch);
  const { verdicts } = assess(batch, { composition, today: '2026-11-25' });
  return Object.fromEntries(verdicts.map(({ id, state }) => [id, state]));
}
const until = (clock: string) => (batch: Batch) => {
  for (const log of batch.process.logs)
    log.readings = log.readings.filter(({ at }) => at.slice(11, 16) <= clock);
};

describe('the liver parfait', () => {
  it('passes its cook and both legs: 70.6 to 72.7 °C from 15:16, on readings alone', () => {
    expect(demo('liver-parfait')).toMatchObject({
      'cook.hold': 'pass',
      'cool.leg.60C-21C': 'pass',
      'cool.leg.21C-5C': 'pass',
    });
  });

  it('does not pass at the time on its card, nor two minutes into the hold', () => {
    // 14:30: 63.5 °C. 15:18: two minutes since 15:16, of three.
    expect(demo('liver-parfait', until('14:30'))['cook.hold']).not.toBe('pass');
    expect(demo('liver-parfait', until('15:18'))['cook.hold']).not.toBe('pass');
  });
});

describe('the mutton ham', () => {
  it('passes its cook and the cured cooling with 0.6 °C taken off every reading', () => {
    // 54.4 to 26.7 °C needs 97 min by straight lines, at most 120 by readings: within 5 h.
    expect(demo('mutton-ham')).toMatchObject({
      'brine.nitrite': 'pass',
      'cook.hold': 'pass',
      'cool.leg.130F-80F': 'pass',
      'cool.leg.80F-45F': 'pass',
    });
  });

  it('does not show the cooling for any product, nor the retail one', () => {
    const under = (id: string) =>
      Object.entries(
        demo('mutton-ham', (batch) => {
          batch.process.coolRuleSetId = id;
        }),
      ).filter(([leg]) => leg.startsWith('cool.'))[0]?.[1];
    // 54.4 to 26.7 °C: between 80 min (12:25 to 13:45) and 120 (12:05 to 14:05), where 90 are allowed.
    expect(under('us-fsis-1')).toBe('cannot-tell');
    // 57.2 to 21.1 °C: between 100 min (12:25 to 14:05) and 140 (12:05 to 14:25), where 120 are allowed.
    expect(under('us-food-code')).toBe('cannot-tell');
  });

  it('would look done at 158 °F by its raw readings, and is not by the corrected ones', () => {
    // Peak as written 70.5 °C, corrected 69.9 °C; 158 °F is 70 °C.
    const plan = (offset: string) =>
      demo('mutton-ham', (batch) => {
        batch.process.cookLimitId = 'fsis-158F';
        for (const log of batch.process.logs) log.offset = enteredEntry(offset, 'dC');
      })['cook.hold'];
    expect(plan('0')).toBe('pass');
    expect(plan('0.6')).not.toBe('pass');
  });

  it('cannot use cured limits where nothing shows that the brine reached the core', () => {
    const soaked = demo('mutton-ham', (batch) => {
      if (batch.brine) batch.brine.method = 'equilibrium';
    });
    expect(soaked['cool.leg.130F-80F']).toBe('cannot-tell');
  });
});

describe('the trout mousseline', () => {
  it('passes its cook on carry-over and the French cooling', () => {
    expect(demo('trout-mousseline')).toMatchObject({ 'cook.hold': 'pass', 'cool.leg.63C-10C': 'pass' });
  });

  it('would not pass if the log had ended with the bath', () => {
    // 15:17: 68.8 °C, under 70.5 °C.
    expect(demo('trout-mousseline', until('15:17'))['cook.hold']).not.toBe('pass');
  });
});

describe('every demo', () => {
  it.each(Object.keys(demos))('%s is marked as one and misses nothing of cook and chill', (slug) => {
    expect(demos[slug]?.demo).toBe(true);
    const states = Object.entries(demo(slug)).filter(([id]) => /^(?:cook|cool)\./.test(id));
    expect(states.length).toBeGreaterThan(1);
    expect(states.filter(([, state]) => state === 'cannot-tell')).toEqual([]);
  });
});
