import { type Batch, newBatch, newMould, newProbeLog, newStep } from '@larderwright/calc/batch';
import { enteredEntry } from '@larderwright/calc/quantities';
import { line, readings } from './compose.ts';

const DAY = '2026-06-18';
const OFFSET = '+02:00';
const at = (clock: string) => `${DAY}T${clock}:00${OFFSET}`;

const blank = newBatch({ id: 'demo-trout-mousseline', at: at('12:50'), zone: 'Europe/Paris' });
const mould = newMould('bar');
const probe = newProbeLog('probe-q1', 'bar');

/**
 * Invented: a trout mousseline in layers, in a thin bar, far above the sea. It passes its cook in the
 * minutes after it left the bath, and only because they were logged; a thin bar then cools in time.
 */
export const troutMousseline: Batch = {
  ...blank,
  demo: true,
  product: {
    ...blank.product,
    name: 'Trout mousseline with spinach and hot-smoked trout',
    batchNo: '20260618-A',
    kitchen: 'Lamplight Quay Training Kitchen',
    portions: enteredEntry('14', 'count'),
    madeBy: 'Fish bench',
    finished: enteredEntry('951', 'g'),
    useBy: '2026-06-21',
  },
  formula: {
    familyId: 'fish-mousseline',
    saltTarget: enteredEntry('1.26', '%'),
    lines: [
      line('trout', 'Trout fillet, skinless', 'lean', 'kitchen-trout', '460', { lot: 'T-19' }),
      line('white', 'Egg white', 'egg', 'kitchen-egg-white', '60'),
      line('cream', 'Whipping cream 35 %', 'liquid', 'kitchen-cream-35', '380', { lot: 'K-72' }),
      line('spinach', 'Spinach, blanched, squeezed', 'garnish', 'kitchen-spinach-blanched', '70'),
      line('smoked', 'Hot-smoked trout, strips', 'garnish', 'kitchen-trout-hot-smoked', '80', {
        lot: 'T-12',
      }),
      line('salt', 'Salt', 'salt', 'salt', '10'),
      line('pepper', 'White pepper, ground', 'seasoning', 'pepper-white', '1.3'),
      line('zest', 'Lemon zest', 'seasoning', 'lemon-peel', '1.5'),
      line('nutmeg', 'Nutmeg, ground', 'seasoning', 'nutmeg', '0.4'),
      line('cayenne', 'Cayenne', 'seasoning', 'cayenne', '0.2'),
    ],
  },
  cure: { ...blank.cure, ruleSetId: 'european-union-2025' },
  mould: {
    density: enteredEntry('0.98', 'g/mL'),
    moulds: [
      {
        ...mould,
        name: 'Bar 300 × 60 × 60',
        dimensions: {
          ...mould.dimensions,
          length: enteredEntry('300', 'mm'),
          width: enteredEntry('60', 'mm'),
          depth: enteredEntry('60', 'mm'),
        },
        headspace: enteredEntry('5', 'mm'),
        count: enteredEntry('1', 'count'),
        actualFills: [enteredEntry('970', 'g')],
      },
    ],
  },
  process: {
    cookRuleSetId: 'uk-advice',
    cookLimitId: 'uk-70C-2min',
    coolRuleSetId: 'fr-catering',
    steps: [
      {
        ...newStep('cook', 'cook'),
        medium: enteredEntry('78', 'C'),
        startedAt: at('14:05'),
        endedAt: at('15:17'),
        note: 'Bath held by thermometer: at 1,420 m the water boils at about 95 °C, so bubbles tell nothing.',
      },
      {
        ...newStep('chill', 'chill'),
        medium: enteredEntry('0', 'C'),
        startedAt: at('15:25'),
        endedAt: at('19:29'),
        note: 'Ice bath to 16:55, then a 2 °C chiller.',
      },
    ],
    logs: [
      {
        ...probe,
        name: 'Bar, centre',
        probeName: 'Q-1',
        offset: enteredEntry('0', 'dC'),
        error: enteredEntry('0.5', 'dC'),
        readings: readings(
          DAY,
          OFFSET,
          'fb',
          '14:05 8.8, 14:11 8.9, 14:17 12.8, 14:23 20.0, 14:29 28.6, 14:35 36.3, 14:41 43.4, 14:47 49.8, 14:53 54.8, ' +
            '14:59 59.1, 15:05 62.9, 15:08 64.6, 15:11 66.2, 15:14 67.4, 15:17 68.8, 15:20 69.9, 15:23 71.0, 15:29 71.8, ' +
            '15:41 62.0, 15:53 45.3, 16:05 31.7, 16:17 22.6, 16:29 16.3, 16:41 11.9, 16:53 8.6, 17:05 6.5, 17:17 5.2, ' +
            '17:29 4.6, 17:41 4.3, 17:53 4.2, 18:05 3.6, 18:17 3.4, 18:29 3.1, 18:41 3.1, 18:53 3.2, 19:05 2.8, ' +
            '19:17 2.7, 19:29 2.5',
        ),
      },
    ],
  },
  notes:
    'Test poach 30.0 to 29.1 g, tasted at 9 °C. Probe at the boil 95.1 °C, where the water boils at 95.2 °C.',
};
