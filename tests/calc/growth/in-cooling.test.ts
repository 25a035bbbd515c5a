import { assess, newBatch, newProbeLog, newStep } from '@larderwright/calc/batch';
import {
  type GrowthFacts,
  growthInCooling,
  LIGHTLY_SALTED_FRACTION,
  listeriaGrowth,
  newStorageSlice,
  perfringensInStorage,
  productDoubt,
  staysOf,
} from '@larderwright/calc/growth';
import { loadIngredients } from '@larderwright/calc/ingredients';
import type { ProbeReading, ProcessSlice } from '@larderwright/calc/process';
import { enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const UNCURED: GrowthFacts = { nitritePpm: 0, saltFraction: 0.017 };
/** FSIS option 1 to the minute, after a cook that ends at 70 °C: 130 °F at 12:10, 80 °F at 13:40, 40 °F at 18:40. */
const CURVE: readonly (readonly [string, number, 'C' | 'F'])[] = [
  ['11:30', 66, 'C'],
  ['12:00', 70, 'C'],
  ['12:10', 130, 'F'],
  ['12:55', 105, 'F'],
  ['13:40', 80, 'F'],
  ['14:40', 72, 'F'],
  ['15:40', 64, 'F'],
  ['16:40', 56, 'F'],
  ['17:40', 48, 'F'],
  ['18:40', 40, 'F'],
];

const reading = ([clock, value, unit]: readonly [string, number, 'C' | 'F']): ProbeReading => ({
  id: clock,
  at: `2026-03-10T${clock}:00+00:00`,
  temperature: enteredEntry(String(value), unit),
  enteredAt: null,
  initials: 'QF',
  excluded: null,
});

function processOf(
  readings: readonly ProbeReading[],
  over: Partial<Record<'offset' | 'error', string>> = {},
): ProcessSlice {
  const cook = { ...newStep('cook', 'cook'), endedAt: '2026-03-10T12:00:00+00:00' };
  const chill = { ...newStep('chill', 'chill'), startedAt: '2026-03-10T12:05:00+00:00' };
  const log = {
    ...newProbeLog('log', null),
    offset: enteredEntry(over.offset ?? '0', 'dC'),
    error: enteredEntry(over.error ?? '0', 'dC'),
    readings: [...readings],
  };
  return {
    cookRuleSetId: null,
    cookLimitId: null,
    coolRuleSetId: 'us-fsis-1',
    steps: [cook, chill],
    logs: [log],
  };
}

const logOf = (process: ProcessSlice, facts = UNCURED) => {
  const log = growthInCooling(process, facts)[0]?.logs[0];
  if (!log) throw new Error('no log');
  return log;
};

describe('growth in the cooling of a log', () => {
  it('reads the limit curve of FSIS option 1 off a log, the fall to 130 °F added (derived)', () => {
    const log = logOf(processOf(CURVE.map(reading)));
    expect(log.doubt).toBeNull();
    expect(log.ended).toBe(true);
    const chicken = log.sets.find(({ set }) => set.id === 'roasted-chicken');
    // derived: 3.452 and 1.063 from 130 °F down; the ten minutes above add none below 51.5 °C
    expect(Math.abs((chicken?.withoutLag.asRead ?? 0) / 3.452 - 1)).toBeLessThan(0.002);
    expect(Math.abs((chicken?.withLag.asRead ?? 0) / 1.063 - 1)).toBeLessThan(0.002);
    expect(chicken?.withoutLag.most).toBe(chicken?.withoutLag.asRead);
  });

  it('takes the most that the probe’s error allows', () => {
    const log = logOf(processOf(CURVE.map(reading), { error: '1' }));
    for (const { withoutLag, withLag } of log.sets) {
      expect(withoutLag.most).toBeGreaterThan(withoutLag.asRead);
      expect(withLag.most).toBeGreaterThan(withLag.asRead);
    }
  });

  it('says why for every food and log the published sets are not about', () => {
    expect(productDoubt({ nitritePpm: 100, saltFraction: 0.017 })).toBe('cured');
    expect(productDoubt({ nitritePpm: null, saltFraction: 0.017 })).toBe('cure-unknown');
    expect(productDoubt({ nitritePpm: 0, saltFraction: null })).toBe('salt-unknown');
    expect(productDoubt({ nitritePpm: 0, saltFraction: LIGHTLY_SALTED_FRACTION + 0.001 })).toBe('salty');
    const rows = CURVE.map(reading);
    expect(logOf(processOf(rows), { nitritePpm: 120, saltFraction: 0.017 })).toMatchObject({
      doubt: 'cured',
      sets: [],
    });
    expect(logOf(processOf([])).doubt).toBe('no-readings');
    expect(logOf(processOf(rows, { error: '' })).doubt).toBe('error-unknown');
    expect(logOf(processOf(rows, { offset: '' })).doubt).toBe('offset-unknown');
    expect(logOf(processOf(rows.slice(3))).doubt).toBe('start-not-shown');
    expect(logOf(processOf(rows.filter(({ id }) => id !== '14:40'))).doubt).toBe('gap');
  });

  it('tells nothing past a reading that cannot be, until a person excludes it with reason and initials', () => {
    const odd = reading(['13:10', 300, 'F']);
    const rows = CURVE.map(reading).toSpliced(4, 0, odd);
    expect(logOf(processOf(rows)).doubt).toBe('doubtful-reading');
    const without = (excluded: ProbeReading['excluded']) =>
      logOf(processOf(rows.map((row) => (row === odd ? { ...row, excluded } : row))));
    expect(without({ reason: 'probe in the air', initials: '', at: odd.at }).doubt).toBe('doubtful-reading');
    const left = without({ reason: 'probe in the air', initials: 'QF', at: odd.at });
    expect(left.doubt).toBeNull();
    expect(left.sets).toEqual(logOf(processOf(CURVE.map(reading))).sets);
  });

  it('is so far, not the end, while the core is still warm', () => {
    expect(logOf(processOf(CURVE.slice(0, 6).map(reading))).ended).toBe(false);
  });
});

describe('growth beside the verdicts', () => {
  it('is heard of by no verdict, whatever it comes to', async () => {
    const composition = await loadIngredients();
    const minutes = fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 4, maxLength: 10 });
    fc.assert(
      fc.property(minutes, fc.integer({ min: 1, max: 12 }), (steps, fallC) => {
        let at = Date.parse('2026-03-10T12:00:00Z');
        const rows = steps.map((step, index) => {
          at += step * 60_000;
          return {
            ...reading(['00:00', 70 - index * fallC, 'C']),
            id: String(index),
            at: new Date(at).toISOString(),
          };
        });
        const batch = {
          ...newBatch({ id: 'b', at: '2026-03-10T08:00:00Z', zone: 'UTC' }),
          process: processOf(rows),
        };
        const today = '2026-03-11';
        const plain = assess(batch, { composition, today });
        const kept = {
          ...newStorageSlice(),
          listeriaGroupId: 'pate',
          stays: [{ id: 's', temp: enteredEntry('12', 'C'), time: enteredEntry('60', 'd') }],
        };
        const stored = assess({ ...batch, storage: kept }, { composition, today });
        expect(stored.verdicts).toEqual(plain.verdicts);
        expect(stored.findings).toEqual(plain.findings);
        for (const { id, stage } of plain.verdicts)
          expect(`${stage} ${id}`).not.toMatch(/growth|perfringens|listeria/i);
      }),
      { numRuns: 40 },
    );
  });
});

describe('growth in storage', () => {
  it('reads stays as typed, a blank row left out and a half-filled one not', () => {
    const slice = newStorageSlice();
    expect(staysOf(slice)).toEqual([]);
    const stay = { id: 'a', temp: enteredEntry('41', 'F'), time: enteredEntry('36', 'h') };
    expect(staysOf({ ...slice, stays: [...slice.stays, stay] })).toEqual([{ tempC: 5, timeMin: 2160 }]);
    const half = { id: 'b', temp: enteredEntry('4', 'C'), time: enteredEntry('', 'd') };
    expect(listeriaGrowth('pate', staysOf({ ...slice, stays: [half] })).doubt).toBe('no-stay');
  });

  it('needs a kind of food before it tells anything of Listeria', () => {
    expect(listeriaGrowth(null, [{ tempC: 4, timeMin: 1440 }]).doubt).toBe('no-group');
  });

  it('lets Clostridium perfringens grow nowhere under its ends and tells nothing of cured meat', () => {
    expect(perfringensInStorage(UNCURED, [{ tempC: 8, timeMin: 14_400 }]).withoutLag).toBe(0);
    // derived: 0.0081 per hour at 10 °C by the chicken set, 10 h, ÷ ln 10
    expect(perfringensInStorage(UNCURED, [{ tempC: 10, timeMin: 600 }]).withoutLag).toBeCloseTo(0.0352, 3);
    expect(perfringensInStorage({ ...UNCURED, nitritePpm: 80 }, [{ tempC: 4, timeMin: 60 }]).doubt).toBe(
      'cured',
    );
  });
});
