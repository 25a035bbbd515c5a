import { type Batch, newBatch, newMould, newProbeLog, newStep } from '@larderwright/calc/batch';
import { enteredEntry } from '@larderwright/calc/quantities';
import { line, readings } from './compose.ts';

const DAY = '2026-05-06';
const OFFSET = '+12:00';
const at = (clock: string) => `${DAY}T${clock}:00${OFFSET}`;

const blank = newBatch({ id: 'demo-liver-parfait', at: at('11:40'), zone: 'Pacific/Auckland' });
const mould = newMould('bar');
const probe = newProbeLog('probe-m3', 'bar');

/**
 * Invented: a chicken-liver parfait in a deeper mould than its card was written for. At the planned time
 * the core is far short of the limit; it is held in steam until its readings show the limit, and passes.
 */
export const liverParfait: Batch = {
  ...blank,
  demo: true,
  product: {
    ...blank.product,
    name: 'Chicken-liver parfait with madeira and thyme',
    batchNo: '20260506-A',
    kitchen: 'Quillstone Farm Shop',
    portions: enteredEntry('31', 'count'),
    madeBy: 'Bench 2',
    finished: enteredEntry('1645', 'g'),
    useBy: '2026-05-11',
  },
  formula: {
    familyId: 'poultry-liver-parfait',
    saltTarget: enteredEntry('1.43', '%'),
    lines: [
      line('livers', 'Chicken livers, trimmed', 'liver', 'kitchen-chicken-liver', '700', { lot: 'C-88' }),
      line('butter', 'Butter, unsalted, melted', 'liquid', 'kitchen-butter-unsalted', '600', { lot: 'D-14' }),
      line('egg', 'Whole egg', 'egg', 'kitchen-egg', '250', { lot: 'E-203' }),
      line('shallot', 'Shallot, sweated, cold', 'liquid', 'kitchen-shallot-sweated', '80'),
      line('madeira', 'Madeira, reduced', 'liquid', 'kitchen-fortified-wine-reduced', '60'),
      line('brandy', 'Brandy, reduced', 'liquid', 'kitchen-brandy-reduced', '20'),
      line('salt', 'Salt', 'salt', 'salt', '22.5'),
      line('sugar', 'Sugar', 'seasoning', 'sugar-white', '3'),
      line('pepper', 'White pepper, ground', 'seasoning', 'pepper-white', '2.6'),
      line('nutmeg', 'Nutmeg, ground', 'seasoning', 'nutmeg', '0.9'),
      line('thyme', 'Thyme, fresh leaf', 'seasoning', 'thyme-fresh', '2'),
      line('garlic', 'Garlic, fresh', 'seasoning', 'garlic', '5'),
    ],
  },
  cure: { ...blank.cure, ruleSetId: 'australia-new-zealand' },
  mould: {
    density: enteredEntry('1.00', 'g/mL'),
    moulds: [
      {
        ...mould,
        name: 'Bar 300 × 80 × 80',
        dimensions: {
          ...mould.dimensions,
          length: enteredEntry('300', 'mm'),
          width: enteredEntry('80', 'mm'),
          depth: enteredEntry('80', 'mm'),
        },
        headspace: enteredEntry('10', 'mm'),
        count: enteredEntry('1', 'count'),
        actualFills: [enteredEntry('1680', 'g')],
      },
    ],
  },
  process: {
    cookRuleSetId: 'nz-card',
    cookLimitId: 'nz-70C-3min',
    coolRuleSetId: 'au-nz-3.2.2',
    steps: [
      {
        ...newStep('cook', 'cook'),
        medium: enteredEntry('76', 'C'),
        startedAt: at('13:00'),
        endedAt: at('15:22'),
        note: 'Full steam, film and foil. The card said out at 14:30: it was written for a mould 60 mm deep.',
      },
      {
        ...newStep('chill', 'chill'),
        medium: enteredEntry('0', 'C'),
        startedAt: at('15:34'),
        endedAt: at('20:49'),
        note: '12 min rest, ice bath to 18:19, then a 2 °C chiller.',
      },
    ],
    logs: [
      {
        ...probe,
        name: 'Bar, centre',
        probeName: 'M-3',
        offset: enteredEntry('0', 'dC'),
        error: enteredEntry('0.5', 'dC'),
        readings: readings(
          DAY,
          OFFSET,
          'b2',
          '13:00 35.8, 13:10 36.2, 13:20 37.8, 13:30 41.7, 13:40 46.3, 13:50 50.9, 14:00 54.9, 14:10 58.3, ' +
            '14:20 61.1, 14:30 63.5, 14:35 64.8, 14:40 65.7, 14:45 66.6, 14:50 67.4, 14:55 68.2, 15:00 69.0, ' +
            '15:05 69.4, 15:10 70.0, 15:12 70.1, 15:14 70.4, 15:16 70.6, 15:18 70.7, 15:20 71.0, 15:22 71.2, ' +
            '15:34 72.7, 15:49 70.2, 16:04 60.5, 16:19 48.0, 16:34 37.4, 16:49 29.1, 17:04 22.6, 17:19 17.5, ' +
            '17:34 13.6, 17:49 10.7, 18:04 8.4, 18:19 6.8, 18:34 5.4, 18:49 4.8, 19:04 4.4, 19:19 3.9, 19:34 3.6, ' +
            '19:49 3.7, 20:04 3.3, 20:19 3.2, 20:34 2.9, 20:49 2.9',
        ),
      },
    ],
  },
  deviations: [
    {
      id: 'card',
      at: at('14:30'),
      what: 'Core 63.5 °C at the time on the card. The limit was not met.',
      decision: 'release',
      cause: 'The card was timed for a mould 60 mm deep, this one is 80 mm.',
      prevention:
        'Held in steam to the limit. Card timed anew for 80 mm, the old one destroyed; two people trained.',
      by: 'Kitchen lead',
    },
  ],
  notes: 'Cooked without nitrite: grey at the edge and rosy in the middle. Colour decided nothing.',
};
