import { type Batch, newBatch, newProbeLog, newStep } from '@larderwright/calc/batch';
import { newBrineSlice } from '@larderwright/calc/brine';
import { enteredEntry } from '@larderwright/calc/quantities';
import { line, readings } from './compose.ts';

const DAY = '2026-11-12';
const OFFSET = '-07:00';
const at = (clock: string, day = DAY) => `${day}T${clock}:00${OFFSET}`;

const blank = newBatch({ id: 'demo-mutton-ham', at: at('09:00', '2026-11-02'), zone: 'America/Denver' });
const brine = newBrineSlice();
const probe = newProbeLog('probe-s2', null);

/**
 * Invented: a mutton ham, injected, covered in brine for ten days and poached. Its probe was found to read
 * 0.6 °C high on the morning after, so every reading is judged with that taken off.
 */
export const muttonHam: Batch = {
  ...blank,
  demo: true,
  product: {
    ...blank.product,
    name: 'Juniper-cured mutton ham',
    batchNo: '20261112-A',
    kitchen: 'Skerrow Hill Farm Shop',
    portions: enteredEntry('40', 'count'),
    madeBy: 'Curing room',
    finished: enteredEntry('2112', 'g'),
    useBy: '2026-11-19',
  },
  formula: {
    familyId: 'cooked-ham',
    saltTarget: enteredEntry('2.4', '%'),
    // The brine has a place of its own: what stands here is the meat that went into it.
    lines: [
      line('mutton', 'Mutton leg muscles, tied', 'lean', 'kitchen-mutton-leg', '2400', { lot: 'M-61' }),
    ],
  },
  cure: {
    ruleSetId: 'us-federal',
    nitriteTarget: blank.cure.nitriteTarget,
    scaleReadability: enteredEntry('0.1', 'g'),
    weighedBy: 'Curing room',
    checkedBy: 'Shop lead',
  },
  brine: {
    ...brine,
    product: 'ham',
    finish: 'cooked',
    method: 'inject-cover',
    skinOff: enteredEntry('2400', 'g'),
    heaviest: enteredEntry('2400', 'g'),
    thickness: enteredEntry('110', 'mm'),
    meatWater: enteredEntry('72', '%'),
    water: enteredEntry('1200', 'g'),
    saltTarget: enteredEntry('2.4', '%'),
    saltBase: 'meat-and-water',
    sugar: enteredEntry('1', '%'),
    nitriteTarget: enteredEntry('120', 'ppm'),
    pack: {
      name: 'Curing salt, pack strength 6.25 %',
      lot: 'CS-0502',
      strength: { nitrite: enteredEntry('6.25', '%'), nitrate: enteredEntry('0', '%') },
    },
    acceleratorForm: 'sodium-salt',
    acceleratorTarget: enteredEntry('361', 'ppm'),
    phosphate: enteredEntry('0', '%'),
    injection: enteredEntry('8', '%'),
    brineTemp: enteredEntry('3', 'C'),
    days: enteredEntry('10', 'd'),
    mixedOn: '2026-11-02',
    startedOn: '2026-11-02',
    use: 'fresh',
    actual: {
      water: enteredEntry('1200', 'g'),
      salt: enteredEntry('79.9', 'g'),
      curingSalt: enteredEntry('6.9', 'g'),
      sugar: enteredEntry('36', 'g'),
      accelerator: enteredEntry('1.3', 'g'),
      phosphate: enteredEntry('0', 'g'),
    },
  },
  process: {
    cookRuleSetId: 'us-fsis-meat-6.5',
    cookLimitId: 'fsis-155F',
    coolRuleSetId: 'us-fsis-3-cured',
    steps: [
      {
        ...newStep('cook', 'cook'),
        medium: enteredEntry('75', 'C'),
        startedAt: at('07:30'),
        endedAt: at('11:15'),
        note: 'Poached in a bag.',
      },
      {
        ...newStep('chill', 'chill'),
        medium: enteredEntry('-3', 'C'),
        startedAt: at('11:15'),
        endedAt: at('18:05'),
        note: 'Running water at 12 °C for 30 min, then air at −3 °C.',
      },
    ],
    logs: [
      {
        ...probe,
        name: 'Joint, centre',
        probeName: 'S-2',
        offset: enteredEntry('0.6', 'dC'),
        error: enteredEntry('0', 'dC'),
        readings: readings(
          DAY,
          OFFSET,
          'cr',
          '07:30 6.6, 07:45 6.6, 08:00 10.3, 08:15 18.0, 08:30 26.7, 08:45 34.7, 09:00 41.7, 09:15 47.7, 09:30 52.8, ' +
            '09:45 56.8, 10:00 59.9, 10:15 62.9, 10:30 65.1, 10:45 67.0, 11:00 68.5, 11:15 69.8, 11:25 70.5, 11:45 68.0, ' +
            '12:05 59.9, 12:25 51.0, 12:45 43.9, 13:05 38.0, 13:25 33.3, 13:45 28.9, 14:05 25.1, 14:25 21.4, 14:45 18.3, ' +
            '15:05 16.0, 15:25 14.0, 15:45 12.0, 16:05 9.9, 16:25 8.8, 16:45 6.9, 17:05 6.0, 17:25 5.0, 17:45 4.4, ' +
            '18:05 2.9',
        ),
      },
    ],
  },
  deviations: [
    {
      id: 'probe',
      at: at('07:20', '2026-11-13'),
      what: 'Ice check: the probe reads 0.6 °C high, in ice and at the boil.',
      decision: 'hold',
      cause: 'The probe was dropped; it was not checked before the cook.',
      prevention: 'Every reading corrected and judged again. Ice check before each cook.',
      by: 'Shop lead',
    },
  ],
};
