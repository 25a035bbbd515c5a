import type { Batch } from '@larderwright/calc/batch';
import { newBatch } from '@larderwright/calc/batch';
import { enteredEntry } from '@larderwright/calc/quantities';
import { newSlicingSlice } from '@larderwright/calc/slicing';
import { line } from '../demo/compose.ts';
import { countryTerrine } from '../demo/country-terrine.ts';
import { pateEnCroute } from '../demo/pate-en-croute.ts';
import { cure, derived, example, formula, loaves, work } from './compose.ts';
import { coreReadings } from './core-curve.ts';
import { labelled, planned } from './sale-work.ts';
import { terrines } from './terrines.ts';

const QUILLSTONE = 'Quillstone Farm Shop';

/** The packed pâté goes on from the page that made it. */
const madeAlready = terrines['liver-pates'] ?? newBatch({ id: 'none', at: '', zone: 'UTC' });

/** From the finished block to the file. */
export const serveAndRecord: Readonly<Record<string, Batch>> = {
  'unmould-slice-serve': derived(countryTerrine, 'unmould-slice-serve', {
    product: { name: 'Venison terrine, released for service', batchNo: '20260310-S' },
    slicing: {
      ...newSlicingSlice(),
      thickness: enteredEntry('12', 'mm'),
      endTrim: enteredEntry('10', 'mm'),
      slicesPerPortion: enteredEntry('1', 'count'),
    },
    signOffs: [
      { role: 'made', name: 'Second-year bench 3', at: '2026-03-10T17:00:00-04:00' },
      { role: 'checked', name: 'Instructor', at: '2026-03-10T17:10:00-04:00' },
      { role: 'verified', name: 'Course tutor', at: '2026-03-11T09:00:00-04:00' },
    ],
  }),

  'packing-and-shelf-life': derived(madeAlready, 'packing-and-shelf-life', {
    product: {
      name: 'Fine pork liver pâté, for vacuum packs',
      batchNo: '20260217-V',
      madeBy: 'Bench 2',
      portions: enteredEntry('24', 'count'),
      finished: enteredEntry('2740', 'g'),
      useBy: '2026-02-24',
    },
    signOffs: [
      { role: 'made', name: 'Bench 2', at: '2026-02-17T16:45:00+00:00' },
      { role: 'checked', name: 'Bench 4', at: '2026-02-17T16:55:00+00:00' },
    ],
    notes: 'Sliced and packed the day after. The date counts from the cook.',
    label: labelled(
      'Fine pork liver pâté',
      QUILLSTONE,
      {
        liver: { stressed: true },
        bread: { name: 'bread', madeOf: 'wheat flour, water, yeast, salt', allergens: ['gluten'] },
        cure: { name: 'curing salt', madeOf: 'salt, preservative: sodium nitrite' },
      },
      {
        pack: 'vacuum',
        loss: 'juices',
        netWeight: enteredEntry('160', 'g'),
        serving: enteredEntry('40', 'g'),
        packedOn: '2026-02-18',
        life: enteredEntry('8', 'd'),
      },
    ),
  }),

  'label-price-sell': example('label-price-sell', 'Duck and prune terrine, for the counter', QUILLSTONE, {
    product: {
      batchNo: '20260217-L',
      madeBy: 'Bench 1',
      portions: enteredEntry('21', 'count'),
      finished: enteredEntry('2330', 'g'),
      useBy: '2026-02-21',
    },
    mould: {
      density: enteredEntry('1.04', 'g/mL'),
      moulds: [
        loaves('Bar 300 × 80 × 70', ['300', '80', '70'], '8', '1', { id: 'bar' }),
        loaves('Bar 200 × 80 × 70', ['200', '80', '70'], '8', '1', { id: 'short-bar' }),
      ],
    },
    process: work({
      limit: ['us-food-code', 'fc-165F'],
      coolRuleSetId: 'us-food-code',
      place: 'Middle of the long bar',
      cook: ['09:00', '11:15', '84', 'Duck in it, so the poultry limit.'],
      chill: ['11:20', '16:20', '1', 'Ice and water, then the chiller.'],
      core: coreReadings('09:00', 6, { skinMin: 10, coreMin: 38 }, [
        { until: '10:30', mediumC: 84, everyMin: 15 },
        { until: '11:15', mediumC: 84, everyMin: 5 },
        { until: '13:20', mediumC: 1, everyMin: 15 },
        { until: '16:20', mediumC: 1, everyMin: 30 },
      ]),
    }),
    slicing: {
      ...newSlicingSlice(),
      length: enteredEntry('290', 'mm'),
      slicesPerPortion: enteredEntry('2', 'count'),
    },
    cure: { ...cure('great-britain', '0', '1'), checkedBy: '' },
    plan: planned('96', {
      duck: '8.90',
      pork: '7.40',
      backfat: '3.90',
      prune: '6.50',
      egg: '5.20',
      bread: '2.20',
      milk: '1.10',
      brandy: '20.00',
      port: '14.00',
      salt: '0.80',
      pepper: '24.00',
    }),
    label: labelled(
      'Duck and prune terrine',
      QUILLSTONE,
      {
        duck: { stressed: true },
        prune: { name: 'prunes', stressed: true, allergens: [] },
        bread: { name: 'bread', madeOf: 'wheat flour, water, yeast, salt', allergens: ['gluten'] },
        port: { name: 'fortified wine', allergens: ['sulphites'] },
        brandy: { allergens: [] },
      },
      { loss: 'juices', netWeight: enteredEntry('150', 'g'), life: enteredEntry('5', 'd') },
    ),
    formula: formula('straight-terrine', '1.65', [
      line('duck', 'Duck leg meat', 'lean', 'kitchen-duck-leg', '900', { lot: 'K-61' }),
      line('pork', 'Pork shoulder 80/20', 'lean', 'kitchen-pork-shoulder-80-20', '500', { lot: 'P-3500' }),
      line('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '890', { lot: 'P-3501' }),
      line('prune', 'Prunes, soaked', 'garnish', 'prune', '300', { lot: 'N-4' }),
      line('egg', 'Whole egg', 'egg', 'kitchen-egg', '110', { lot: 'E-11' }),
      line('bread', 'White bread, crusts off', 'panade', 'kitchen-bread-white', '40', { lot: 'W-2' }),
      line('milk', 'Whole milk', 'panade', 'kitchen-milk-whole', '60', { lot: 'M-5' }),
      line('brandy', 'Brandy', 'liquid', 'kitchen-brandy', '30', { lot: 'B-1' }),
      line('port', 'Port, reduced', 'liquid', 'kitchen-fortified-wine-reduced', '70', { lot: 'B-4' }),
      line('salt', 'Salt', 'salt', 'salt', '45', { lot: 'S-1' }),
      line('pepper', 'Black pepper, ground', 'seasoning', 'pepper-black', '5', { lot: 'W-12' }),
    ]),
  }),

  // The pie that failed its cooling, as it lies in the file: readings, decision, cause, what changes.
  'haccp-records-review': derived(pateEnCroute, 'haccp-records-review', {
    product: { name: 'Rabbit pâté en croûte, held and discarded', batchNo: '20260421-H' },
    signOffs: [
      { role: 'made', name: 'Cold section', at: '2026-04-22T08:30:00-05:00' },
      { role: 'verified', name: 'Head chef and owner', at: '2026-04-22T09:00:00-05:00' },
    ],
  }),
};
