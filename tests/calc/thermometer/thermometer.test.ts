import { assess, newBatch, newProbeLog, readBatch, withThermometers } from '@larderwright/calc/batch';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { checkLog } from '@larderwright/calc/probe-log';
import type { ProbeReading } from '@larderwright/calc/process';
import { enteredEntry, entryValue } from '@larderwright/calc/quantities';
import {
  checkThermometer,
  displayMustShow,
  localBoil,
  newThermometer,
  newThermometerSlice,
  offsetAtC,
  type Thermometer,
  type ThermometerSlice,
  thermometerStage,
} from '@larderwright/calc/thermometer';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const DAY = '2026-03-10';
const SEA = { boil: localBoil(null, 0), toleranceC: 1, goodForDays: 7, days: [DAY] };

function probe(over: Partial<Record<'ice' | 'boil' | 'step' | 'error' | 'checkedOn', string>>): Thermometer {
  return {
    ...newThermometer('t'),
    name: 'Blue',
    ice: enteredEntry(over.ice ?? '', 'C'),
    boil: enteredEntry(over.boil ?? '', 'C'),
    step: enteredEntry(over.step ?? '', 'dC'),
    error: enteredEntry(over.error ?? '', 'dC'),
    checkedOn: over.checkedOn ?? DAY,
  };
}

describe('where water boils', () => {
  it.each([
    // Steam tables, saturation (IAPWS Industrial Formulation 1997), from memory
    [101.325, 99.97],
    [100, 99.61],
    [90, 96.69],
    [80, 93.49],
    [70, 89.93],
  ])('boils it at %f kPa at %f °C', (pressureKPa, boilsC) => {
    expect(Math.abs((localBoil(pressureKPa, null)?.tempC ?? 0) - boilsC)).toBeLessThan(0.05);
  });

  it.each([
    // ICAO standard atmosphere, doc 7488: pressure by height, from memory; the boil beside it derived
    [0, 101.325, 100],
    [1000, 89.875, 96.7],
    [2000, 79.495, 93.3],
    [3000, 70.109, 90],
  ])('boils it at %i m, %f kPa, at about %f °C', (altitudeM, pressureKPa, boilsC) => {
    const found = localBoil(null, altitudeM);
    expect(Math.abs((found?.pressureKPa ?? 0) / pressureKPa - 1)).toBeLessThan(0.0005);
    expect(Math.abs((found?.tempC ?? 0) - boilsC)).toBeLessThan(0.06);
  });

  it('lets a measured pressure rule over the height, and knows nothing of neither', () => {
    expect(localBoil(95, 2000)).toMatchObject({ from: 'pressure', pressureKPa: 95 });
    expect(localBoil(null, null)).toBeNull();
    for (const odd of [1013, 0, -5, Number.NaN]) expect(localBoil(odd, null)).toBeNull();
    for (const odd of [9000, -1, Number.NaN]) expect(localBoil(null, odd)).toBeNull();
  });
});

describe('the check of a thermometer', () => {
  it('puts a probe that shows 0.6 in ice and 100.6 in the boil right by 0.6 between them (derived)', () => {
    const checked = checkThermometer(probe({ ice: '0.6', boil: '100.57', error: '0.5' }), SEA);
    expect(checked.state).toBe('pass');
    expect(offsetAtC(checked, 70)).toBeCloseTo(0.6, 1);
    expect(checked.dueOn).toBe('2026-03-17');
  });

  it('tells the action temperature of 70 °C for 2 min with ± 1 °C: 71 °C (derived)', () => {
    const checked = checkThermometer(probe({ ice: '0', error: '1', step: '0.1' }), SEA);
    expect(displayMustShow(checked, 70)).toEqual({ tempC: 71, tempF: 159.8 });
  });

  it('rounds up to a whole step of the display and never takes off what it shows too little', () => {
    const low = checkThermometer(probe({ ice: '-0.6', error: '0.5', step: '0.5' }), SEA);
    expect(displayMustShow(low, 70)?.tempC).toBe(70.5);
    const high = checkThermometer(probe({ ice: '0.3', error: '0.5', step: '0.5' }), SEA);
    // derived: 70 + 0.3 + 0.5 = 70.8, the next half degree
    expect(displayMustShow(high, 70)?.tempC).toBe(71);
    const coarse = checkThermometer(probe({ ice: '0', error: '0.2', step: '1' }), SEA);
    expect(coarse.errorC).toBe(1);
  });

  it('draws a straight line between the two checks (derived)', () => {
    const checked = checkThermometer(probe({ ice: '0.2', boil: '100.8', error: '0.2' }), SEA);
    const boilsC = SEA.boil?.tempC ?? Number.NaN;
    expect(offsetAtC(checked, 0)).toBeCloseTo(0.2, 9);
    expect(offsetAtC(checked, boilsC)).toBeCloseTo(100.8 - boilsC, 9);
    expect(offsetAtC(checked, boilsC / 2)).toBeCloseTo((0.2 + 100.8 - boilsC) / 2, 9);
  });

  it.each([
    ['off in ice', { ice: '1.2', boil: '100' }, 'fail', 'thermometer.check-failed'],
    ['off in the boil', { ice: '0', boil: '98.5' }, 'fail', 'thermometer.check-failed'],
    ['off, and undated', { ice: '2', checkedOn: '' }, 'fail', 'thermometer.check-failed'],
    ['nothing read', {}, 'cannot-tell', 'thermometer.not-checked'],
    ['no day', { ice: '0.2', checkedOn: '' }, 'cannot-tell', 'thermometer.no-date'],
    ['a day long before', { ice: '0.2', checkedOn: '2026-02-01' }, 'cannot-tell', 'thermometer.check-old'],
    ['a day long after', { ice: '0.2', checkedOn: '2026-04-01' }, 'cannot-tell', 'thermometer.check-old'],
    ['the morning after', { ice: '0.6', checkedOn: '2026-03-11' }, 'pass', 'thermometer.check-met'],
    ['on the tolerance', { ice: '1', boil: '' }, 'pass', 'thermometer.check-met'],
  ] as const)('%s: %o is %s', (_, over, state, reason) => {
    expect(checkThermometer(probe(over), SEA)).toMatchObject({ state, reason });
  });

  it('does not read a boil without a height, and the boil alone is then no check', () => {
    const unplaced = { ...SEA, boil: null };
    expect(checkThermometer(probe({ boil: '100' }), unplaced).reason).toBe('thermometer.not-checked');
    const slice: ThermometerSlice = {
      ...newThermometerSlice(),
      thermometers: [probe({ ice: '0.1', boil: '96.7' })],
    };
    const ids = thermometerStage(slice, { today: DAY }).findings.map(({ id }) => id);
    expect(ids).toContain('thermometer.boil-unknown');
    const high = { ...slice, altitude: enteredEntry('1000', 'm') };
    const { values, verdicts } = thermometerStage(high, { today: DAY });
    expect(Math.abs(values.checked[0]?.boilOffsetC ?? Number.NaN)).toBeLessThan(0.1);
    expect(verdicts[0]?.state).toBe('pass');
  });

  it('is no pass while anything it needs is missing, whatever was typed', () => {
    const text = fc.constantFrom('', '0', '0.4', '99.8', 'ice', '-3', '1e9');
    fc.assert(
      fc.property(text, text, text, fc.constantFrom('', DAY, 'soon'), (ice, boil, tolerance, checkedOn) => {
        const slice: ThermometerSlice = {
          ...newThermometerSlice(),
          tolerance: enteredEntry(tolerance, 'dC'),
          thermometers: [probe({ ice, boil, checkedOn })],
        };
        const { verdicts, values } = thermometerStage(slice, { today: DAY });
        const read = values.checked[0];
        for (const figure of [read?.iceOffsetC, read?.boilOffsetC, read?.errorC])
          expect(figure).not.toBeNaN();
        if (verdicts[0]?.state === 'pass') {
          expect(checkedOn).toBe(DAY);
          expect(Number(tolerance)).toBeGreaterThan(0);
          expect(read?.iceOffsetC ?? read?.boilOffsetC).not.toBeNull();
        }
      }),
    );
  });
});

describe('a log that names a checked thermometer', () => {
  const reading = (clock: string, shown: string): ProbeReading => ({
    id: clock,
    at: `${DAY}T${clock}:00+00:00`,
    temperature: enteredEntry(shown, 'C'),
    enteredAt: null,
    initials: '',
    excluded: null,
  });
  const batchWith = (thermometer: Thermometer) => {
    const slice: ThermometerSlice = {
      ...newThermometerSlice(),
      altitude: enteredEntry('0', 'm'),
      thermometers: [thermometer],
    };
    const readings = ['10:00', '10:05', '10:10'].map((clock) => reading(clock, '71.6'));
    const log = { ...newProbeLog('log', null), thermometerId: 't', readings };
    const start = newBatch({ id: 'b', at: `${DAY}T08:00:00Z`, zone: 'UTC' });
    return {
      ...start,
      thermometers: slice,
      process: { ...start.process, logs: [log], cookRuleSetId: 'uk-fsa', cookLimitId: null },
    };
  };

  it('takes offset and error from the check, at each reading along the line of both points', () => {
    const batch = batchWith(probe({ ice: '0.6', boil: '100.57', error: '0.5' }));
    const [log] = withThermometers(batch, DAY).process.logs;
    if (!log) throw new Error('no log');
    expect(entryValue('temperature-difference', log.offset)).toBeCloseTo(0.6, 2);
    expect(entryValue('temperature-difference', log.error)).toBe(0.5);
    expect(log.probeName).toBe('Blue');
    const [first] = checkLog(log).readings;
    // derived: (71.6 − 0.6) × 99.97 ÷ (100.57 − 0.6)
    expect(first?.tempC).toBeCloseTo(71, 1);
  });

  it('is unknown, and no pass, when the thermometer failed or its check is old', async () => {
    const composition = await loadIngredients();
    for (const thermometer of [
      probe({ ice: '1.6', error: '0.5' }),
      probe({ ice: '0.2', error: '0.5', checkedOn: '2026-01-01' }),
      probe({ error: '0.5' }),
    ]) {
      const batch = batchWith(thermometer);
      const [log] = withThermometers(batch, DAY).process.logs;
      expect(log?.offset.text).toBe('');
      const { verdicts, thermometer: stage } = assess(batch, { composition, today: DAY });
      expect(stage?.verdicts[0]?.state).not.toBe('pass');
      expect(verdicts.find(({ id }) => id === 'cook.hold')?.state).not.toBe('pass');
    }
  });

  it('is stored with the thermometer’s id and without anything worked out', () => {
    const batch = batchWith(probe({ ice: '0.6', boil: '100.5', error: '0.5' }));
    expect(readBatch(JSON.parse(JSON.stringify(batch))).ok).toBe(true);
    expect(readBatch(JSON.parse(JSON.stringify(withThermometers(batch, DAY)))).ok).toBe(false);
  });

  it('keeps what was typed beside it when it names none', () => {
    const batch = batchWith(probe({ ice: '0.6' }));
    const logs = batch.process.logs.map((log) => ({
      ...log,
      thermometerId: null,
      offset: enteredEntry('0.3', 'dC'),
    }));
    const other = { ...batch, process: { ...batch.process, logs } };
    expect(withThermometers(other, DAY)).toBe(other);
  });
});
