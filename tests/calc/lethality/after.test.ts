import { newProbeLog } from '@larderwright/calc/batch';
import { loadIngredients } from '@larderwright/calc/ingredients';
import {
  type CookFacts,
  type CurvePoint,
  cookLoss,
  cookStage,
  holdsAtPresent,
  logReductionOver,
  meatKinds,
  organismLines,
  reductionsOf,
  UNKNOWN_FACTS,
  valuesOf,
} from '@larderwright/calc/lethality';
import type { ProbeReading, ProcessSlice } from '@larderwright/calc/process';
import { enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const FACTS: CookFacts = { ...UNKNOWN_FACTS, hasPoultry: false, comminuted: true, hasPorkLiver: false };

const reading = (minute: number, tempC: number, excluded: ProbeReading['excluded'] = null): ProbeReading => ({
  id: `r${minute}`,
  at: new Date(Date.UTC(2026, 2, 10, 10, minute)).toISOString(),
  temperature: enteredEntry(String(tempC), 'C'),
  enteredAt: null,
  initials: '',
  excluded,
});

function processOf(readings: readonly ProbeReading[], limitId = 'fsis-150F', error = '0.5'): ProcessSlice {
  const log = {
    ...newProbeLog('log', null),
    offset: enteredEntry('0', 'dC'),
    error: enteredEntry(error, 'dC'),
    readings: [...readings],
  };
  return {
    cookRuleSetId: 'us-fsis-meat-6.5',
    cookLimitId: limitId,
    coolRuleSetId: null,
    steps: [],
    logs: [log],
  };
}
const valuesFor = (process: ProcessSlice) => cookStage({ process }, FACTS).values;

describe('the hold that would do at the present temperature', () => {
  it('is the listed row at or below the core, its error taken off: nothing between two rows', () => {
    // FSIS Appendix A: 141 °F 9 min, 142 °F 8 min. 61.5 °C less 0.5 °C is 61.0 °C, between 60.56 and 61.11 °C
    const [now] = holdsAtPresent(valuesFor(processOf([reading(0, 55), reading(5, 61.5)])));
    expect(now?.row?.limit.id).toBe('fsis-141F');
    expect(now?.row?.hold.s).toBe(540);
    expect(now?.remainingS).toBe(540);
    expect(now?.isPlans).toBe(false);
  });

  it('counts what was already held at that row', () => {
    const rows = [reading(0, 61.5), reading(5, 61.5)];
    expect(holdsAtPresent(valuesFor(processOf(rows)))[0]?.remainingS).toBe(240);
  });

  it('is the plan’s own limit as soon as the core is hot enough for it', () => {
    // FSIS Appendix A: 140 °F 12 min
    const [now] = holdsAtPresent(valuesFor(processOf([reading(0, 66)], 'fsis-140F')));
    expect(now).toMatchObject({ isPlans: true, remainingS: 720 });
  });

  it('is nothing below the lowest row, after a doubtful reading, or without the probe’s error', () => {
    // FSIS Appendix A begins at 130 °F, 54.4 °C
    expect(holdsAtPresent(valuesFor(processOf([reading(0, 54.5)])))[0]?.row).toBeNull();
    expect(holdsAtPresent(valuesFor(processOf([reading(0, 60), reading(5, 130)])))).toEqual([]);
    expect(holdsAtPresent(valuesFor(processOf([reading(0, 60)], 'fsis-150F', '')))).toEqual([]);
  });
});

describe('log reductions of published organisms', () => {
  const hold = (tempC: number, minutes: number): CurvePoint[] => [
    { timeMin: 0, tempC },
    { timeMin: minutes, tempC },
  ];
  const row = (id: string, meats: Parameters<typeof organismLines>[0], minced: boolean) => {
    const line = organismLines(meats, minced).find((one) => one.row.id === id);
    if (!line) throw new Error(id);
    return line;
  };

  it.each([
    // One D at the measured temperature is one log; regression through several points to a tenth of a log
    ['ham at 60 °C for 1.82 min, Carlier et al. 1996', 'listeria-ham', ['pork'], false, 60, 1.82, 1],
    ['ham at 55 °C for 17.8 min, Carlier et al. 1996', 'listeria-ham', ['pork'], false, 55, 17.8, 1],
    [
      'chicken liver at 60 °C for 0.82 min, Qu et al. 2024',
      'salmonella-chicken-liver',
      ['chicken-liver'],
      true,
      60,
      0.82,
      1,
    ],
    ['beef at 60 °C for 3.17 min, Juneja et al. 1997', 'ecoli-beef', ['beef'], true, 60, 3.17, 1.3],
    ['emulsion at 63 °C for 5.4 min, Quintavalla 1991', 'listeria-emulsion-slow', ['pork'], true, 63, 5.4, 1],
  ] as const)('%s is about one (published)', (_, id, meats, minced, tempC, minutes, wanted) => {
    const found = logReductionOver(row(id, meats, minced), [hold(tempC, minutes)]);
    expect(Math.abs(found - wanted)).toBeLessThan(0.1);
  });

  it('counts nothing below what was measured, and above it no more than at it', () => {
    const line = row('listeria-ham', ['pork'], false);
    expect(logReductionOver(line, [hold(54.9, 600)])).toBe(0);
    expect(logReductionOver(line, [hold(75, 3)])).toBeCloseTo(logReductionOver(line, [hold(60, 3)]), 9);
  });

  it('never falls as a core is hotter or stays longer, and is a number', () => {
    const tempC = fc.double({ min: 0, max: 95, noNaN: true });
    const minutes = fc.double({ min: 0, max: 300, noNaN: true });
    fc.assert(
      fc.property(tempC, tempC, minutes, (a, b, long) => {
        for (const line of organismLines(['beef', 'pork', 'turkey', 'chicken-liver'], true)) {
          const cold = logReductionOver(line, [hold(Math.min(a, b), long)]);
          const hot = logReductionOver(line, [hold(Math.max(a, b), long)]);
          expect(hot).toBeGreaterThanOrEqual(cold);
          expect(cold).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });

  it('fits rows to the meats of the formula and to nothing else', async () => {
    const table = await loadIngredients();
    const ids = [...table.keys()];
    const of = (wanted: (row: NonNullable<ReturnType<typeof table.get>>) => boolean) =>
      ids.filter((id) => {
        const one = table.get(id);
        return one !== undefined && wanted(one);
      });
    const [pork = null] = of((one) => one.species === 'pork' && one.category === 'meat');
    const [beef = null] = of((one) => one.species === 'beef' && one.category === 'meat');
    expect(meatKinds([pork, null], table)).toEqual(['pork']);
    expect(meatKinds([beef, pork], table)).toEqual(['beef', 'pork']);
    expect(organismLines(meatKinds([pork], table), true).map((one) => one.row.id)).toEqual([
      'listeria-emulsion-slow',
    ]);
    expect(organismLines([], true)).toEqual([]);
  });

  it('parts carry-over from the heat, takes the probe’s error off, and moves no verdict', () => {
    const rows = [0, 5, 10, 15, 20].map((minute) => reading(minute, minute < 15 ? 62 : 60.5));
    const step = {
      id: 'cook',
      kind: 'cook',
      medium: enteredEntry('75', 'C'),
      oven: enteredEntry('', 'C'),
      startedAt: null,
      endedAt: '2026-03-10T10:10:00Z',
      note: '',
    } as const;
    const process = { ...processOf(rows), steps: [step] };
    const [log] = cookStage({ process }, FACTS).values.logs;
    if (!log) throw new Error('no log');
    const [one] = reductionsOf(log, ['pork'], true);
    expect(one?.atHeatEnd).toBeGreaterThan(0);
    expect(one?.whole).toBeGreaterThan(one?.atHeatEnd ?? Number.NaN);
    const uk = valuesOf(log).find(({ id }) => id === 'uk-70');
    // derived: 10 min at 62 − 0.5 °C by z 7.5 °C
    expect((uk?.atHeatEndMin ?? 0) / (10 * 10 ** ((61.5 - 70) / 7.5))).toBeCloseTo(1, 3);
  });
});

describe('loss in the cook', () => {
  it('is the guide of practice at its two cores and half-way between (common practice, no source)', () => {
    const at = (coreC: number) => cookLoss({ coreC, bound: true, saltFraction: 0.017 }).loss;
    expect(at(65)).toEqual({ lowFraction: 0.02, highFraction: 0.06 });
    expect(at(72)).toEqual({ lowFraction: 0.04, highFraction: 0.1 });
    expect(at(68.5)?.lowFraction).toBeCloseTo(0.03, 9);
  });

  it.each([
    [{ coreC: null, bound: true, saltFraction: 0.017 }, 'no-core'],
    [{ coreC: 68, bound: false, saltFraction: 0.017 }, 'not-a-bound-mix'],
    [{ coreC: 68, bound: null, saltFraction: 0.017 }, 'not-a-bound-mix'],
    [{ coreC: 68, bound: true, saltFraction: null }, 'not-salted'],
    [{ coreC: 80, bound: true, saltFraction: 0.017 }, 'outside-cores'],
    [{ coreC: 60, bound: true, saltFraction: 0.017 }, 'outside-cores'],
  ] as const)('cannot be told for %o', (request, doubt) => {
    expect(cookLoss(request)).toEqual({ loss: null, doubt });
  });
});
