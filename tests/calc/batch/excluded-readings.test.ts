import { assess, type Batch, newBatch, newLine, newProbeLog, newStep } from '@larderwright/calc/batch';
import { loadIngredients } from '@larderwright/calc/ingredients';
import type { Exclusion, ProbeReading } from '@larderwright/calc/process';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';

const composition = await loadIngredients();
const at = (minute: number) => new Date(Date.UTC(2026, 2, 10, 10, minute)).toISOString();
const reading = (minute: number, tempC: number, excluded: Exclusion | null = null): ProbeReading => ({
  id: `r${minute}`,
  at: at(minute),
  temperature: enteredEntry(String(tempC), 'C'),
  enteredAt: null,
  initials: 'QF',
  excluded,
});

/** Pork held at 61 °C and cooled by the Food Code, with one odd reading in each. */
function batchWith(inHold: ProbeReading | null, inChill: ProbeReading | null): Batch {
  const pork = [...composition.values()].find(
    ({ species, category }) => species === 'pork' && category === 'meat',
  );
  if (!pork) throw new Error('no pork');
  const line = {
    ...newLine('l', 'lean'),
    name: pork.name,
    ingredientId: pork.id,
    amount: enteredEntry('1000', 'g'),
  };
  const start = newBatch({ id: 'b', at: at(0), zone: 'UTC' });
  const hold = [reading(0, 58), reading(5, 61), reading(12, 61), reading(18, 61)];
  const falling: readonly (readonly [number, number])[] = [
    [22, 59],
    [30, 55],
    [40, 50],
    [60, 40],
    [90, 28],
    [110, 20],
    [160, 12],
    [200, 8],
    [240, 4],
  ];
  const chill = falling.map(([minute, tempC]) => reading(minute, tempC));
  const readings = [...hold, ...chill, ...[inHold, inChill].filter((one) => one !== null)].sort(
    (a, b) => Date.parse(a.at) - Date.parse(b.at),
  );
  const log = {
    ...newProbeLog('log', null),
    offset: enteredEntry('0', 'dC'),
    error: enteredEntry('0.5', 'dC'),
    readings,
  };
  return {
    ...start,
    formula: { ...start.formula, familyId: 'country-terrine', lines: [line] },
    process: {
      ...start.process,
      cookRuleSetId: 'us-fsis-meat-6.5',
      cookLimitId: 'fsis-140F',
      coolRuleSetId: 'us-food-code',
      steps: [
        { ...newStep('cook', 'cook'), endedAt: at(19) },
        { ...newStep('chill', 'chill'), startedAt: at(20), endedAt: at(241) },
      ],
      logs: [log],
    },
  };
}

const states = (batch: Batch) => {
  const { verdicts } = assess(batch, { composition, today: '2026-03-11' });
  const worst = (prefix: string) =>
    verdicts.filter(({ id }) => id.startsWith(prefix)).map(({ state }) => state);
  return { hold: worst('cook.hold'), legs: worst('cool.leg') };
};
const signed = { reason: 'probe in the air', initials: 'QF', at: at(300) };

describe('a reading that cannot be', () => {
  // A hold of 12 min at 140 °F (FSIS Appendix A) between 10:05 and 10:18 stands and falls with what lies in it.
  const [slipped, rewarmed] = [reading(10, 20), reading(150, 130)];

  it('is flagged and kept, still breaks the hold and still counts against the cooling', () => {
    expect(states(batchWith(null, null))).toEqual({ hold: ['pass'], legs: ['pass', 'pass'] });
    expect(states(batchWith(slipped, null)).hold).not.toEqual(['pass']);
    expect(states(batchWith(null, rewarmed)).legs).not.toEqual(['pass', 'pass']);
    const { cook, cool } = assess(batchWith(slipped, rewarmed), { composition, today: '2026-03-11' });
    const found = [...cook.findings, ...cool.findings].map(({ id }) => id);
    expect(found).toContain('cook.reading-cannot-be');
    expect(found).toContain('cool.reading-cannot-be');
    const kept = cook.values.logs[0]?.log.readings.filter(({ state }) => state === 'cannot-be');
    expect(kept?.map(({ id }) => id)).toEqual([slipped.id, rewarmed.id]);
  });

  it.each([
    ['without a reason', { ...signed, reason: ' ' }],
    ['without initials', { ...signed, initials: '' }],
  ])('goes on doing so when it is crossed out %s', (_, excluded) => {
    const half = batchWith({ ...slipped, excluded }, { ...rewarmed, excluded });
    expect(states(half)).toEqual(states(batchWith(slipped, rewarmed)));
  });

  it('leaves the verdicts only when a person excludes it with a reason and initials', () => {
    const out = batchWith({ ...slipped, excluded: signed }, { ...rewarmed, excluded: signed });
    expect(states(out)).toEqual({ hold: ['pass'], legs: ['pass', 'pass'] });
  });
});
