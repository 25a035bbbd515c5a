import { type Batch, changeState, newBatch, nextBatch, recordStage } from '@larderwright/calc/batch';
import {
  blankKitchen,
  finestStep,
  type Kitchen,
  mergeKitchen,
  readKitchen,
  takeThermometers,
  withKitchen,
} from '@larderwright/calc/kitchen';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import { newThermometer, newThermometerSlice } from '@larderwright/calc/thermometer';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const START = { id: 'b', at: '2026-11-27T10:00:00+00:00', zone: 'UTC' };
const fresh = (): Batch => newBatch(START);
const probe = {
  ...newThermometer('t1'),
  name: 'K-2',
  ice: enteredEntry('0.2', 'C'),
  checkedOn: '2026-11-23',
};

// Invented.
const kitchen: Kitchen = {
  ...blankKitchen(),
  name: 'Tarnwick Training Kitchen',
  cureRuleSetId: 'eu',
  coolRuleSetId: 'us-food-code',
  scales: [
    { id: 's1', name: 'Bench', step: enteredEntry('1', 'g') },
    { id: 's2', name: 'Spice', step: enteredEntry('0.1', 'g') },
    { id: 's3', name: 'Broken', step: enteredEntry('0', 'g') },
    { id: 's4', name: 'Unread', step: enteredEntry('fine', 'g') },
  ],
  altitude: enteredEntry('1420', 'm'),
  thermometers: [probe],
};

describe('a new batch in a kitchen with settings', () => {
  const batch = withKitchen(fresh(), kitchen);

  it('takes over name, rule sets, thermometers and height, each flagged where it has a flag', () => {
    expect(batch.product.kitchen).toBe('Tarnwick Training Kitchen');
    expect(batch.cure.ruleSetId).toBe('eu');
    expect(batch.process).toMatchObject({ cookRuleSetId: null, coolRuleSetId: 'us-food-code' });
    expect(batch.ruleSetDefaults).toEqual({ cure: true, cook: false, cool: true });
    expect(batch.thermometers?.thermometers).toEqual([probe]);
    expect(batch.thermometers?.altitude).toEqual({ text: '1420', unit: 'm', origin: 'default' });
  });

  it('weighs curing salt on the finest scale, a broken or unread step counting for none', () => {
    // derived: the smallest of 1 and 0.1
    expect(batch.cure.scaleReadability).toEqual({ text: '0.1', unit: 'g', origin: 'default' });
    expect(finestStep({ scales: kitchen.scales.slice(2) })).toBeNull();
  });

  it('keeps what was typed before the settings came', () => {
    const typed = fresh();
    typed.product.kitchen = 'Quillstone Farm Shop';
    typed.cure.ruleSetId = 'us';
    typed.cure.scaleReadability = enteredEntry('0.5', 'g');
    const begun = withKitchen(typed, kitchen);
    expect(begun.product.kitchen).toBe('Quillstone Farm Shop');
    expect(begun.cure).toEqual(typed.cure);
    expect(begun.ruleSetDefaults).toEqual({ cure: false, cook: false, cool: true });
  });

  it('is as it was in a kitchen nobody has described', () => {
    expect(withKitchen(fresh(), blankKitchen())).toEqual(fresh());
  });
});

describe('a rule set that only the settings chose', () => {
  const batch = withKitchen(fresh(), kitchen);
  const release = {
    id: 'r',
    state: 'released',
    at: START.at,
    by: 'A',
    second: 'B',
    why: '',
  } as const;

  it('is told as a caution at its field until somebody confirms it', () => {
    const fields = (of: Batch) =>
      recordStage(of, [])
        .findings.filter(({ id }) => id === 'record.rule-set-unconfirmed')
        .map(({ field, severity }) => [field, severity]);
    expect(fields(batch)).toEqual([
      ['cure.ruleSetId', 'caution'],
      ['process.coolRuleSetId', 'caution'],
    ]);
    expect(fields({ ...batch, ruleSetDefaults: { cure: false, cook: false, cool: false } })).toEqual([]);
  });

  it('stands against the release', () => {
    const asked = changeState(batch, release, { verdicts: [], findings: [] });
    expect(asked.ok ? [] : asked.bars).toContainEqual({ id: 'rule-set-unconfirmed', subject: 'cool' });
  });

  it('stays unconfirmed in the next batch', () => {
    expect(nextBatch(batch, { ...START, id: 'c', batchNo: '' }).ruleSetDefaults).toEqual(
      batch.ruleSetDefaults,
    );
  });
});

describe('settings out of a file', () => {
  it('come back as they were written, and anything else is refused without harm', () => {
    expect(readKitchen(JSON.parse(JSON.stringify(kitchen)))).toEqual({ ok: true, kitchen });
    fc.assert(
      fc.property(fc.jsonValue(), (raw) => {
        expect(readKitchen(raw).ok).toBe(false);
      }),
    );
  });

  it('take the place of those that are here, but for scales and thermometers the file does not know', () => {
    const here = {
      ...blankKitchen(),
      name: 'Here',
      scales: [{ id: 'h', name: 'Old', step: blankEntry('g') }],
    };
    const merged = mergeKitchen(here, kitchen);
    expect(merged.name).toBe('Tarnwick Training Kitchen');
    expect(merged.scales.map(({ id }) => id)).toEqual(['s1', 's2', 's3', 's4', 'h']);
  });
});

describe('thermometers taken from a check', () => {
  const check = {
    ...newThermometerSlice(),
    thermometers: [
      { ...newThermometer('first'), name: 'k-2 ', ice: enteredEntry('0.4', 'C'), checkedOn: '2026-11-27' },
      { ...newThermometer('other'), name: 'K-3' },
      newThermometer('nameless'),
    ],
  };
  const taken = takeThermometers(kitchen, check, () => 'new');

  it('replace the one of that name, and stand beside the others', () => {
    expect(taken.thermometers.map(({ id, checkedOn }) => [id, checkedOn])).toEqual([
      ['t1', '2026-11-27'],
      ['new', ''],
    ]);
  });

  it('leave the height alone where the check has none', () => {
    expect(taken.altitude).toEqual(kitchen.altitude);
  });
});
