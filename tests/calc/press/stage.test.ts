import { FAMILIES } from '@larderwright/calc/formula';
import { PRESS_BANDS, type PressSlice, pressBandOfFamily, pressStage } from '@larderwright/calc/press';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';

function press(change: Partial<PressSlice> = {}): PressSlice {
  return {
    boardLength: enteredEntry('285', 'mm'),
    boardWidth: enteredEntry('90', 'mm'),
    load: enteredEntry('2', 'kg'),
    pressureTarget: enteredEntry('0.7', 'kPa'),
    startedAt: null,
    ...change,
  };
}

const country = { familyId: 'country-terrine', planAreaMm2: 290 * 95 };

function ids(slice: PressSlice, context = country) {
  return pressStage(slice, context).findings.map(({ id }) => id);
}

describe('press stage', () => {
  test('2 kg on 285 × 90 mm press with 0.76 kPa, and 0.7 kPa would take 1.83 kg (derived)', () => {
    const { values, missing, verdicts } = pressStage(press(), country);
    expect(values.pressureKPa).toBeCloseTo((2 * 9.80665 * 1000) / (285 * 90), 12);
    expect(values.loadForTargetKg).toBeCloseTo((0.7 * 285 * 90) / 9806.65, 12);
    expect([missing, verdicts]).toEqual([[], []]);
  });

  test('a load typed in grams or pounds is the same load', () => {
    expect(pressStage(press({ load: enteredEntry('2000 g', 'kg') }), country).values.loadKg).toBe(2);
    expect(pressStage(press({ load: enteredEntry('2 lb', 'kg') }), country).values.loadKg).toBeCloseTo(
      0.907,
      3,
    );
  });

  test('a press slows cooling: the caution stands whenever there is a load', () => {
    expect(pressStage(press(), country).findings).toContainEqual(
      expect.objectContaining({
        id: 'press.slows-cooling',
        severity: 'caution',
        caution: 'press-slows-cooling',
      }),
    );
    expect(ids(press({ load: enteredEntry('0', 'kg'), pressureTarget: blankEntry('kPa') }))).toEqual([]);
  });

  test('outside the range of the family is a note, never a stop (common practice, no source)', () => {
    expect(ids(press({ load: enteredEntry('1', 'kg') }))).toContain('press.below-band');
    expect(ids(press({ load: enteredEntry('3', 'kg') }))).toContain('press.above-band');
    const all = pressStage(press({ load: enteredEntry('3', 'kg') }), country).findings;
    expect(all.filter(({ severity }) => severity === 'stop')).toEqual([]);
  });

  test('what is wanted is looked at while nothing lies on the board', () => {
    expect(ids(press({ load: blankEntry('kg'), pressureTarget: enteredEntry('2', 'kPa') }))).toContain(
      'press.above-band',
    );
  });

  test('a parfait is not pressed', () => {
    expect(ids(press(), { familyId: 'poultry-liver-parfait', planAreaMm2: 290 * 95 })).toContain(
      'press.not-pressed',
    );
  });

  test('more than 3 kPa takes a rated box, not weights (common practice, no source)', () => {
    expect(ids(press({ load: enteredEntry('10', 'kg') }))).toContain('press.box-only');
  });

  test('a board larger than the fill rests on the mould', () => {
    expect(
      ids(press({ boardLength: enteredEntry('300', 'mm'), boardWidth: enteredEntry('95', 'mm') })),
    ).toContain('press.board-too-large');
  });

  test('a blank or zero board is missing, never an endless pressure', () => {
    for (const text of ['', '0', '-90', 'x', 'NaN']) {
      const { values, missing } = pressStage(press({ boardWidth: enteredEntry(text, 'mm') }), country);
      expect(values.pressureKPa, text).toBeNull();
      expect(missing).toContainEqual({ field: 'press.boardWidth', neededFor: 'press.pressure' });
    }
  });

  test('a batch that is not pressed has nothing missing', () => {
    const none = press({
      boardLength: blankEntry('mm'),
      boardWidth: blankEntry('mm'),
      load: blankEntry('kg'),
      pressureTarget: blankEntry('kPa'),
    });
    expect(pressStage(none, { familyId: null, planAreaMm2: null })).toMatchObject({
      findings: [],
      missing: [],
    });
  });

  test('every family named by a band exists, and every band id is its own', () => {
    expect(new Set(PRESS_BANDS.map(({ id }) => id)).size).toBe(PRESS_BANDS.length);
    const banded = FAMILIES.filter(({ id }) => pressBandOfFamily(id) !== null).map(({ id }) => id);
    expect(banded).toHaveLength(14);
    expect(pressBandOfFamily('no-such-family')).toBeNull();
    expect(pressBandOfFamily('constructor')).toBeNull();
    expect(pressBandOfFamily(null)).toBeNull();
  });
});
