import { type Batch, newBatch, newMould, newProbeLog, newStep } from '@larderwright/calc/batch';
import { enteredEntry } from '@larderwright/calc/quantities';
import { line, readings } from './compose.ts';

const DAY = '2026-03-10';
const OFFSET = '-04:00';
const at = (clock: string) => `${DAY}T${clock}:00${OFFSET}`;

const blank = newBatch({ id: 'demo-country-terrine', at: at('07:30'), zone: 'America/New_York' });
const mould = newMould('loaf');
const probe = newProbeLog('probe-k2', 'loaf');

/**
 * Invented: a country terrine of venison with roast chestnut and juniper, two loaves. The cook passes
 * its named limit only because carry-over was logged, and both legs of the cooling pass.
 */
export const countryTerrine: Batch = {
  ...blank,
  demo: true,
  product: {
    ...blank.product,
    name: 'Country terrine of venison, chestnut and juniper',
    batchNo: '20260310-A',
    kitchen: 'Tarnwick Training Kitchen',
    portions: enteredEntry('44', 'count'),
    madeBy: 'Second-year bench 3',
    finished: enteredEntry('3497', 'g'),
    useBy: '2026-03-15',
  },
  formula: {
    familyId: 'country-terrine',
    saltTarget: enteredEntry('1.64', '%'),
    lines: [
      line('venison', 'Venison shoulder, trimmed', 'lean', 'kitchen-venison-shoulder', '1000', {
        lot: 'V-118',
      }),
      line('pork', 'Pork shoulder 80/20', 'lean', 'kitchen-pork-shoulder-80-20', '700', { lot: 'P-2207' }),
      line('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '770', { lot: 'P-2208' }),
      line('liver', 'Pork liver, trimmed', 'liver', 'kitchen-pork-liver', '330', { lot: 'P-2211' }),
      line('bread', 'White bread, crusts off', 'panade', 'kitchen-bread-white', '80'),
      line('milk', 'Whole milk', 'panade', 'kitchen-milk-whole', '120'),
      line('egg', 'Whole egg', 'egg', 'kitchen-egg', '150'),
      line('shallot', 'Shallot, sweated, cold', 'garnish', 'kitchen-shallot-sweated', '110'),
      line('brandy', 'Brandy', 'liquid', 'kitchen-brandy', '45'),
      line('port', 'Port, reduced', 'liquid', 'kitchen-fortified-wine-reduced', '50'),
      line('chestnut', 'Chestnuts, roasted, quartered', 'garnish', 'kitchen-chestnut-roasted', '240'),
      line('bacon', 'Smoked dry-cured bacon, 8 mm dice', 'garnish', 'kitchen-bacon-dry-cured', '180', {
        lot: 'B-31',
      }),
      line('salt', 'Salt', 'salt', 'salt', '47.5'),
      line('cure', 'Curing salt, pack strength 6.25 %', 'curing-salt', null, '5.4', {
        lot: 'CS-0417',
        actual: '5.4',
        nitrite: '6.25',
        nitrate: '0',
      }),
      line('pepper', 'Black pepper, medium', 'seasoning', 'pepper-black', '6'),
      line('juniper', 'Juniper, ground', 'seasoning', 'juniper-berry', '3'),
      line('allspice', 'Allspice, ground', 'seasoning', 'allspice', '1.5'),
      line('nutmeg', 'Nutmeg, ground', 'seasoning', 'nutmeg', '1.2'),
      line('bay', 'Bay, ground', 'seasoning', 'bay-leaf', '0.5'),
      line('thyme', 'Thyme, dried', 'seasoning', 'thyme-dried', '2'),
      line('garlic', 'Garlic, fresh', 'seasoning', 'garlic', '8'),
    ],
  },
  cure: {
    ruleSetId: 'us-federal',
    nitriteTarget: enteredEntry('120', 'ppm'),
    scaleReadability: enteredEntry('0.1', 'g'),
    weighedBy: 'Bench 3',
    checkedBy: 'Instructor',
  },
  mould: {
    density: blank.mould.density,
    moulds: [
      {
        ...mould,
        name: 'Terrine 290 × 95 × 75',
        dimensions: {
          ...mould.dimensions,
          length: enteredEntry('290', 'mm'),
          width: enteredEntry('95', 'mm'),
          depth: enteredEntry('75', 'mm'),
        },
        headspace: enteredEntry('10', 'mm'),
        count: enteredEntry('2', 'count'),
        actualFills: [enteredEntry('1860', 'g'), enteredEntry('1860', 'g')],
      },
    ],
  },
  process: {
    cookRuleSetId: 'hev-advisory',
    cookLimitId: 'hev-71C-20min',
    coolRuleSetId: 'us-food-code',
    steps: [
      {
        ...newStep('cook', 'cook'),
        medium: enteredEntry('78', 'C'),
        oven: enteredEntry('100', 'C'),
        startedAt: at('08:40'),
        endedAt: at('11:20'),
        note: 'Film and lid.',
      },
      {
        ...newStep('chill', 'chill'),
        medium: enteredEntry('0', 'C'),
        startedAt: at('11:30'),
        endedAt: at('16:45'),
        note: '10 min on a rack, ice bath to 13:00, blast to 14:30, then a 2 °C chiller.',
      },
    ],
    logs: [
      {
        ...probe,
        name: 'Loaf 1, centre',
        probeName: 'K-2',
        offset: enteredEntry('0', 'dC'),
        error: enteredEntry('0.5', 'dC'),
        readings: readings(
          DAY,
          OFFSET,
          'b3',
          '08:40 7.1, 08:55 7.9, 09:10 16.0, 09:25 26.4, 09:40 37.0, 09:55 45.7, 10:10 52.8, 10:25 58.8, ' +
            '10:40 63.1, 10:45 64.6, 10:50 65.9, 10:55 67.3, 11:00 68.2, 11:05 69.3, 11:10 69.9, 11:15 70.8, ' +
            '11:20 71.9, 11:30 73.1, 11:45 72.5, 12:00 63.9, 12:15 51.9, 12:30 41.8, 12:45 33.5, 13:00 26.4, ' +
            '13:15 21.3, 13:30 17.3, 13:45 14.1, 14:00 11.7, 14:15 9.7, 14:30 8.2, 14:45 6.8, 15:00 5.5, ' +
            '15:15 4.9, 15:30 4.8, 15:45 4.5, 16:00 4.2, 16:15 3.7, 16:30 3.9, 16:45 3.8',
        ),
      },
    ],
  },
  press: {
    boardLength: enteredEntry('290', 'mm'),
    boardWidth: enteredEntry('95', 'mm'),
    load: enteredEntry('2', 'kg'),
    pressureTarget: enteredEntry('0.7', 'kPa'),
    startedAt: at('12:15'),
  },
  notes: 'Test poach 40.0 to 36.9 g, tasted at 9 °C: salt right, pepper up 0.3 g/kg next time.',
};
