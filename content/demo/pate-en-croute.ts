import { type Batch, newBatch, newMould, newProbeLog, newStep } from '@larderwright/calc/batch';
import { enteredEntry } from '@larderwright/calc/quantities';
import { line, readings } from './compose.ts';

const DAY = '2026-04-21';
const OFFSET = '-05:00';
const at = (clock: string, day = DAY) => `${day}T${clock}:00${OFFSET}`;

const blank = newBatch({ id: 'demo-pate-en-croute-cooling-fails', at: at('07:10'), zone: 'America/Chicago' });
const mould = newMould('hinged');
const probe = newProbeLog('probe-t1', 'hinged');

/**
 * Invented: a rabbit pâté en croûte that cooks well and cools far too slowly in its case, on a loaded
 * shelf. Both legs fail; the pie was discarded.
 */
export const pateEnCroute: Batch = {
  ...blank,
  demo: true,
  product: {
    ...blank.product,
    name: 'Rabbit, tarragon and green pepper pâté en croûte',
    batchNo: '20260421-A',
    kitchen: 'Brackenholt Inn cold kitchen',
    portions: enteredEntry('22', 'count'),
    madeBy: 'Cold section',
  },
  formula: {
    familyId: 'en-croute',
    saltTarget: enteredEntry('1.6', '%'),
    lines: [
      line('rabbit', 'Rabbit meat, trimmed', 'lean', 'kitchen-rabbit', '900', { lot: 'R-77' }),
      line('chicken', 'Chicken thigh, skinless', 'lean', 'kitchen-chicken-thigh', '200', { lot: 'C-402' }),
      line('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '430', { lot: 'P-91' }),
      line('liver', 'Rabbit liver', 'liver', 'fr-rabbit-liver', '90', { lot: 'R-78' }),
      line('white', 'Egg white', 'egg', 'kitchen-egg-white', '70'),
      line('cream', 'Whipping cream 35 %', 'liquid', 'kitchen-cream-35', '160'),
      line('carrot', 'Carrot brunoise, blanched', 'garnish', 'kitchen-carrot-blanched', '130'),
      line('peppercorn', 'Green peppercorns, drained', 'garnish', 'kitchen-green-peppercorn-brined', '14'),
      line('tarragon', 'Tarragon, chopped', 'seasoning', 'kitchen-herb-fresh', '10'),
      line('mustard', 'Dijon-style mustard', 'seasoning', 'kitchen-mustard-dijon', '20'),
      line('wine', 'White wine, reduced', 'liquid', 'kitchen-white-wine-reduced', '30'),
      line('salt', 'Salt', 'salt', 'salt', '30'),
      line('pepper', 'White pepper, ground', 'seasoning', 'pepper-white', '3.4'),
      line('mace', 'Mace, ground', 'seasoning', 'mace', '0.9'),
      line('ginger', 'Ginger, ground', 'seasoning', 'ginger-ground', '0.6'),
    ],
  },
  cure: { ...blank.cure, ruleSetId: 'us-federal' },
  mould: {
    density: blank.mould.density,
    moulds: [
      {
        ...mould,
        name: 'Hinged 350 × 80 × 85, inside the crust',
        dimensions: {
          ...mould.dimensions,
          length: enteredEntry('342', 'mm'),
          width: enteredEntry('72', 'mm'),
          depth: enteredEntry('77', 'mm'),
        },
        headspace: enteredEntry('4', 'mm'),
        count: enteredEntry('1', 'count'),
        actualFills: [enteredEntry('1873', 'g')],
      },
    ],
  },
  process: {
    cookRuleSetId: 'us-food-code',
    cookLimitId: 'fc-165F',
    coolRuleSetId: 'us-food-code',
    steps: [
      {
        ...newStep('cook', 'cook'),
        oven: enteredEntry('125', 'C'),
        startedAt: at('09:15'),
        endedAt: at('11:12'),
        note: '205 °C for 15 min, then 125 °C. Pulled on a trialled carry-over of 8–9 °C.',
      },
      {
        ...newStep('chill', 'chill'),
        medium: enteredEntry('4', 'C'),
        startedAt: at('12:27'),
        note: 'Bench to 12:27, then middle shelf of a loaded walk-in, in its mould. Jelly poured 15:12.',
      },
    ],
    logs: [
      {
        ...probe,
        name: 'Pie, centre',
        probeName: 'T-1',
        offset: enteredEntry('0', 'dC'),
        error: enteredEntry('0.5', 'dC'),
        readings: [
          ...readings(
            DAY,
            OFFSET,
            'cs',
            '09:15 8.2, 09:25 8.1, 09:35 9.6, 09:45 14.9, 09:55 21.9, 10:05 28.9, 10:15 35.8, 10:25 41.8, ' +
              '10:35 48.1, 10:45 53.3, 10:55 58.7, 11:00 60.9, 11:05 63.4, 11:10 65.7, 11:12 66.5, 11:20 70.1, ' +
              '11:30 73.7, 11:40 75.2, 11:45 75.4, 11:50 75.3, 12:00 74.4, 12:10 73.0, 12:20 71.0, 12:30 68.7, ' +
              '12:50 64.9, 13:10 60.6, 13:30 55.6, 13:50 50.7, 14:10 46.6, 14:30 43.1, 14:50 39.5, 15:10 36.2, ' +
              '15:30 33.5, 15:50 30.7, 16:10 28.2, 16:30 26.1, 16:50 24.1, 17:10 22.5, 17:30 20.4, 17:50 19.1, ' +
              '18:10 17.7, 18:30 16.1, 18:50 15.2, 19:10 14.0, 19:30 13.4, 19:50 12.5',
          ),
          ...readings('2026-04-22', OFFSET, 'cs', '08:20 4.8'),
        ],
      },
    ],
  },
  deviations: [
    {
      id: 'cooling',
      at: at('08:40', '2026-04-22'),
      what: 'Core 20.4 °C only at 17:30, four hours after 57 °C.',
      decision: 'discard',
      cause: 'Pastry case cooled in its mould on a loaded shelf; 67 min on the bench first.',
      prevention: '60 mm moulds, or blast to 40 °C before the jelly; bench no longer than 30 min.',
      by: 'Head chef and owner',
    },
  ],
};
