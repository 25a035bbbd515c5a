import { newBatch, newProbeLog, newReading, newStep } from '@larderwright/calc/batch';
import { COOL_RULE_SETS, type CoolFacts, coolStage, UNKNOWN_COOL_FACTS } from '@larderwright/calc/cooling';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { chillChart } from '../../../worksheets/press-and-chill/chill-chart.ts';
import { chillStandOf } from '../../../worksheets/press-and-chill/chill-stand-of.ts';
import { curedChecks } from '../../../worksheets/press-and-chill/cured-checks.ts';
import { legRows } from '../../../worksheets/press-and-chill/leg-rows.ts';
import { chillStandLine, nextDeadlineWords } from '../../../worksheets/words/chill-stand.ts';
import { COOL_RULE_SET_NAMES } from '../../../worksheets/words/cool-rule-set-names.ts';

/** A cooling by the Food Code (135 °F to 70 °F in 2 h, to 41 °F in 6 h), out of the heat at 12:00. */
function chill(
  readings: string,
  { rule = 'us-food-code', facts = UNKNOWN_COOL_FACTS, medium = '2', second = '' } = {},
) {
  const blank = newBatch({ id: 'b', at: '2026-03-10T12:00:00+00:00', zone: 'UTC' });
  const at = (clock: string) => `2026-03-10T${clock}:00+00:00`;
  const logOf = (id: string, text: string) => ({
    ...newProbeLog(id, null),
    offset: enteredEntry('0', 'dC'),
    error: enteredEntry('0', 'dC'),
    readings: text
      .split(',')
      .filter((each) => each.trim() !== '')
      .map((each, i) => {
        const [clock = '', core = ''] = each.trim().split(' ');
        return newReading(`${id}${i}`, at(clock), core, 'C', null);
      }),
  });
  const batch = {
    ...blank,
    process: {
      ...blank.process,
      coolRuleSetId: rule,
      steps: [
        { ...newStep('cook', 'cook'), startedAt: at('10:00'), endedAt: at('12:00') },
        { ...newStep('chill', 'chill'), medium: enteredEntry(medium, 'C'), startedAt: at('12:05') },
      ],
      logs: [logOf('a', readings), ...(second === '' ? [] : [logOf('b', second)])],
    },
  };
  const { values, verdicts } = coolStage(batch, facts);
  const names = new Map([
    ['a', 'Front'],
    ['b', 'Back'],
  ]);
  return {
    stand: chillStandOf(values, verdicts),
    legs: legRows(values, verdicts, names),
    cured: curedChecks(values),
    chart: chillChart(values, batch, names),
  };
}

const SLOW = '12:00 75, 12:30 66, 13:00 58.5, 13:10 56.5, 13:30 53, 13:50 49.8';

describe('the rule sets offered', () => {
  it('are those calc has, in the same order', () => {
    expect(COOL_RULE_SET_NAMES.map(({ value }) => value)).toEqual(COOL_RULE_SETS.map(({ id }) => id));
  });
});

describe('legs', () => {
  it('each have their latest clock time from the least kind start', () => {
    const { legs } = chill(SLOW);
    // Derived: the last reading above 135 °F (57.2 °C) is at 13:00; 2 h and 6 h on.
    expect(legs.map(({ probes }) => probes[0]?.latestMs)).toEqual([
      Date.parse('2026-03-10T15:00:00Z'),
      Date.parse('2026-03-10T19:00:00Z'),
    ]);
  });

  it('have no latest time before their clock has started', () => {
    const { legs, stand } = chill('12:00 75, 12:30 66');
    expect(legs.every(({ probes }) => probes[0]?.latestMs === null)).toBe(true);
    expect(stand.kind).toBe('unknown');
  });
});

describe('a leg of two probes', () => {
  it('has the earliest deadline and the longest time of the two', () => {
    const second = '12:00 74, 12:20 58, 12:40 45, 13:10 30, 13:40 20.5, 14:10 12, 14:50 7, 15:30 4.8';
    const { legs } = chill('12:00 75, 12:40 58, 13:00 45, 13:30 30, 14:00 20.5', { second });
    const [first, last] = legs;
    expect(first?.latestMs).toBe(Date.parse('2026-03-10T14:20:00Z'));
    // Derived: 12:40 to 14:00 and 12:20 to 13:40, 80 min each; the first probe has not shown the end of leg two.
    expect(first?.worstMin).toBe(80);
    expect(last?.worstMin).toBeNull();
    expect(first?.probes.map(({ name }) => name).toSorted()).toEqual(['Back', 'Front']);
  });
});

describe('where the cooling stands', () => {
  it('says to act now when the present pace will miss a leg', () => {
    const { stand } = chill(SLOW);
    expect(stand.kind).toBe('act-now');
    expect(stand.state).toBe('cannot-tell');
    expect(chillStandLine(stand, '')).toMatch(/act now/);
    expect(nextDeadlineWords(stand, 0, Date.parse('2026-03-10T13:50:00Z'))).toMatch(
      /70\s°F \(21\s°C\) has to be shown by 15:00; at this pace it is there at about 1\d:\d\d\. Unmould/,
    );
  });

  it('gives the deadline while the pace is good', () => {
    const { stand } = chill('12:00 75, 12:20 58, 12:30 50, 12:45 40, 13:00 31', { medium: '0' });
    expect(stand.kind).toBe('act-by');
    expect(nextDeadlineWords(stand, 0, Date.parse('2026-03-10T13:00:00Z'))).toMatch(/shown by 14:20\./);
  });

  it('is missed when a reading at the deadline is still above', () => {
    const { stand } = chill(`${SLOW}, 14:30 44, 15:15 36`);
    expect(stand.kind).toBe('missed');
    expect(chillStandLine(stand, '')).toBe('A leg is missed: hold, do not serve.');
  });

  it('is done when every leg is met', () => {
    const { stand } = chill(
      '12:00 75, 12:20 58, 12:40 45, 13:10 30, 13:40 20.5, 14:10 12, 14:50 7, 15:30 4.8',
    );
    expect(stand.kind).toBe('done');
    expect(stand.state).toBe('pass');
  });

  it('is unknown without a rule, and says which thing is missing', () => {
    const { stand } = chill(SLOW, { rule: '' });
    expect(stand.kind).toBe('unknown');
    expect(stand.verdict?.reason).toMatch(/^cool\.(?:no-rule-set|rule-set-unknown)$/);
  });
});

describe('what a rule for cured products asks', () => {
  const facts = (change: Partial<CoolFacts>): CoolFacts => ({
    nitritePpm: 120,
    saltOnWaterFraction: 0.03,
    acceleratorPpm: null,
    waterActivity: null,
    liverFraction: 0,
    ...change,
  });
  const checks = (change: Partial<CoolFacts>) =>
    chill(SLOW, { rule: 'uk-large-cured', facts: facts(change) }).cured.map(({ what, has, met }) => [
      what,
      has,
      met,
    ]);

  it('is shown met or not with the figure, never rounded toward meeting it', () => {
    // Large cooked meats, cured: at least 100 mg/kg nitrite and 2.5 % salt on water (Gaze, Shaw and Archer 1998).
    expect(checks({ nitritePpm: 99.96, saltOnWaterFraction: 0.024_999 })).toEqual([
      ['Nitrite put in, on everything', '99.9 mg/kg', false],
      ['Salt on water phase', '2.49 %', false],
      ['Liver, of everything', '0.00 %', true],
    ]);
  });

  it('is unknown, not met, where the formula does not say', () => {
    expect(checks({ nitritePpm: null })[0]).toEqual(['Nitrite put in, on everything', null, null]);
  });

  it('is not asked by a rule for any product', () => {
    expect(chill(SLOW).cured).toEqual([]);
  });
});

describe('the cooling chart', () => {
  it('begins at the end of the heat and draws the window from the least kind start', () => {
    const { chart } = chill(`11:30 70, ${SLOW}`);
    expect(chart.series[0]?.points[0]?.atMs).toBe(Date.parse('2026-03-10T12:00:00Z'));
    expect(chart.window?.map(({ fromMs, byMs, label }) => [fromMs, byMs, label])).toEqual([
      [
        Date.parse('2026-03-10T13:00:00Z'),
        Date.parse('2026-03-10T15:00:00Z'),
        expect.stringMatching(/21\s°C by 15:00/),
      ],
      [
        Date.parse('2026-03-10T13:00:00Z'),
        Date.parse('2026-03-10T19:00:00Z'),
        expect.stringMatching(/5\s°C by 19:00/),
      ],
    ]);
  });

  it('is empty without a reading', () => {
    expect(chill('').chart.series).toEqual([]);
  });
});
