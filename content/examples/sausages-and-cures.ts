import type { Batch } from '@larderwright/calc/batch';
import { newBrineSlice } from '@larderwright/calc/brine';
import { newGrindPass } from '@larderwright/calc/chill-budget';
import { newCuringSaltPack, newDryCurePiece, newDryCureSlice } from '@larderwright/calc/dry-cure';
import { newDryingSlice } from '@larderwright/calc/drying';
import { enteredEntry } from '@larderwright/calc/quantities';
import { line } from '../demo/compose.ts';
import { blend, coldMeat, links } from './by-worksheet.ts';
import { cure, example, formula, work } from './compose.ts';
import { coreReadings } from './core-curve.ts';
import { leanToFat, material } from './meat-work.ts';

const TARNWICK = 'Tarnwick Training Kitchen';
const QUILLSTONE = 'Quillstone Farm Shop';
const SKERROW = 'Skerrow Hill Farm Shop';

const pack = {
  ...newCuringSaltPack(),
  name: 'Curing salt, strength off its pack',
  lot: 'CS-0440',
  strength: { nitrite: enteredEntry('6.25', '%'), nitrate: enteredEntry('0', '%') },
};

/** Sausages, bacon, ham, dried muscle. */
export const sausagesAndCures: Readonly<Record<string, Batch>> = {
  'fresh-sausages': example('fresh-sausages', 'Breakfast sausage of pork, with rusk', QUILLSTONE, {
    casings: links('hog-32-35', '120'),
    seasoning: blend('Breakfast seasoning', '4', [
      ['white-pepper', 'White pepper', '11'],
      ['sage', 'Sage, rubbed', '7'],
      ['nutmeg', 'Nutmeg', '2'],
    ]),
    blend: leanToFat('8.5', '26', [
      material('shoulder', 'Pork shoulder 80/20', 'lean', 'kitchen-pork-shoulder-80-20', '7.40'),
      material('belly', 'Pork belly', 'fat', 'kitchen-pork-belly', '6.10'),
    ]),
    formula: formula('fresh-sausage', '1.6', [
      line('shoulder', 'Pork shoulder 80/20', 'lean', 'kitchen-pork-shoulder-80-20', '6500'),
      line('belly', 'Pork belly', 'fat', 'kitchen-pork-belly', '2000'),
      line('rusk', 'Rusk', 'panade', 'rusk-toast', '500'),
      line('water', 'Ice water', 'liquid', 'water', '820'),
      line('salt', 'Salt', 'salt', 'salt', '140'),
      line('pepper', 'White pepper, ground', 'seasoning', 'pepper-white', '22'),
      line('sage', 'Sage, rubbed', 'seasoning', 'sage-ground', '14'),
      line('nutmeg', 'Nutmeg, ground', 'seasoning', 'nutmeg', '4'),
    ]),
  }),

  'cooked-sausages': example('cooked-sausages', 'Fine pork poaching sausage', TARNWICK, {
    casings: links('sheep-22-24', '50'),
    chillBudget: coldMeat(
      { lean: ['2.6', '2'], fat: ['1.05', '0'], liquid: ['0.4', '2'], ice: ['0.3', '-8'] },
      '12',
      {
        passes: [
          newGrindPass('grind', 'grind'),
          { ...newGrindPass('chop', 'chop'), rise: enteredEntry('14', 'dC') },
        ],
        liquidAllowance: enteredEntry('700', 'g'),
      },
    ),
    blend: leanToFat('3.65', '29', [
      material('lean', 'Pork shoulder, lean', 'lean', 'kitchen-pork-shoulder-lean-95', '8.20'),
      material('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '3.90'),
    ]),
    formula: formula('emulsified-sausage', '1.9', [
      line('lean', 'Pork shoulder, lean', 'lean', 'kitchen-pork-shoulder-lean-95', '2600'),
      line('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '1050'),
      line('ice', 'Ice', 'liquid', 'ice', '700'),
      line('salt', 'Salt', 'salt', 'salt', '70'),
      line('cure', 'Curing salt, strength off its pack', 'curing-salt', null, '7.0', {
        lot: 'CS-0436',
        actual: '7.0',
        nitrite: '6.25',
        nitrate: '0',
      }),
      line('pepper', 'White pepper, ground', 'seasoning', 'pepper-white', '9'),
      line('mace', 'Mace, ground', 'seasoning', 'mace', '3'),
    ]),
    cure: cure('us-federal', '120'),
    process: work({
      limit: ['uk-advice', 'uk-70C-2min'],
      coolRuleSetId: 'us-food-code',
      place: 'Thickest link',
      cook: ['10:00', '10:50', '76', 'Poached.'],
      chill: ['10:50', '13:20', '2', 'Cold shower to 30 °C, then ice and water.'],
      core: coreReadings('10:00', 12, { skinMin: 4, coreMin: 11 }, [
        { until: '10:30', mediumC: 76, everyMin: 5 },
        { until: '10:50', mediumC: 76, everyMin: 2 },
        { until: '11:05', mediumC: 14, everyMin: 5 },
        { until: '12:05', mediumC: 2, everyMin: 10 },
        { until: '13:20', mediumC: 2, everyMin: 15 },
      ]),
    }),
  }),

  'dry-cured-bacon': example('dry-cured-bacon', 'Belly bacon, cured in a closed bag', SKERROW, {
    formula: formula('dry-bacon', '2.5', [
      line('belly', 'Pork belly, weighed without skin', 'lean', 'kitchen-pork-belly', '2500'),
      line('salt', 'Salt', 'salt', 'salt', '58'),
      line('sugar', 'Sugar', 'seasoning', 'sugar-white', '25'),
      line('cure', 'Curing salt, strength off its pack', 'curing-salt', null, '4.8', {
        lot: 'CS-0440',
        actual: '4.8',
        nitrite: '6.25',
        nitrate: '0',
      }),
    ]),
    cure: cure('us-federal', '120', '0.01'),
    dryCure: {
      ...newDryCureSlice(),
      product: 'bacon',
      finish: 'cook-before-eating',
      pieces: [
        {
          ...newDryCurePiece('belly'),
          name: 'Belly 1',
          skinOff: enteredEntry('2500', 'g'),
          thickness: enteredEntry('40', 'mm'),
        },
      ],
      saltTarget: enteredEntry('2.5', '%'),
      sugar: enteredEntry('1', '%'),
      nitriteTarget: enteredEntry('120', 'ppm'),
      pack,
      startedOn: '2026-02-17',
    },
  }),

  'brined-hams': example('brined-hams', 'Pork leg ham, injected and poached', SKERROW, {
    formula: formula('cooked-ham', '2.2', [
      line('leg', 'Pork leg muscles, seamed', 'lean', 'pork-leg-lean', '3000'),
      line('water', 'Water the brine brought', 'liquid', 'water', '300'),
      line('salt', 'Salt', 'salt', 'salt', '66'),
      line('erythorbate', 'Sodium erythorbate', 'seasoning', 'sodium-erythorbate', '1.2'),
      line('cure', 'Curing salt, strength off its pack', 'curing-salt', null, '6.3', {
        lot: 'CS-0440',
        actual: '6.3',
        nitrite: '6.25',
        nitrate: '0',
      }),
    ]),
    cure: cure('us-federal', '120'),
    brine: {
      ...newBrineSlice(),
      product: 'ham',
      finish: 'cooked',
      method: 'inject-cover',
      skinOff: enteredEntry('3000', 'g'),
      heaviest: enteredEntry('3000', 'g'),
      thickness: enteredEntry('110', 'mm'),
      water: enteredEntry('1500', 'g'),
      saltTarget: enteredEntry('2.2', '%'),
      nitriteTarget: enteredEntry('130', 'ppm'),
      pack,
      acceleratorForm: 'sodium-salt',
      acceleratorTarget: enteredEntry('360', 'ppm'),
      mixedOn: '2026-02-10',
      startedOn: '2026-02-10',
      use: 'fresh',
    },
    process: work({
      limit: ['uk-advice', 'uk-70C-2min'],
      coolRuleSetId: 'us-fsis-3-cured',
      place: 'Middle of the thickest box',
      cook: ['06:30', '11:20', '76', 'In its box, in water at 76 °C.'],
      chill: ['11:30', '22:00', '1', 'In its box, in ice and moving water.'],
      core: coreReadings('06:30', 5, { skinMin: 20, coreMin: 90 }, [
        { until: '10:00', mediumC: 76, everyMin: 30 },
        { until: '11:20', mediumC: 76, everyMin: 5 },
        { until: '11:30', mediumC: 20, everyMin: 5 },
        { until: '15:30', mediumC: 1, everyMin: 15 },
        { until: '22:00', mediumC: 1, everyMin: 30 },
      ]),
    }),
  }),

  'dried-whole-muscle': example(
    'dried-whole-muscle',
    'Pork neck for drying, under an accepted plan',
    SKERROW,
    {
      formula: formula('dried-muscle', '3', [
        line('neck', 'Pork neck, trimmed', 'lean', 'fr-pork-neck', '1800'),
        line('salt', 'Salt', 'salt', 'salt', '50'),
        line('cure', 'Curing salt, strength off its pack', 'curing-salt', null, '4.3', {
          lot: 'CS-0440',
          actual: '4.3',
          nitrite: '6.25',
          nitrate: '0',
        }),
        line('pepper', 'Black pepper, cracked', 'seasoning', 'pepper-black', '5'),
      ]),
      cure: cure('us-federal', '149', '0.01'),
      dryCure: {
        ...newDryCureSlice(),
        product: 'other',
        finish: 'dried-raw',
        pieces: [
          {
            ...newDryCurePiece('neck'),
            name: 'Neck 1',
            skinOff: enteredEntry('1800', 'g'),
            thickness: enteredEntry('80', 'mm'),
          },
        ],
        saltTarget: enteredEntry('3', '%'),
        nitriteTarget: enteredEntry('149', 'ppm'),
        pack,
        startedOn: '2026-02-17',
        lossTarget: enteredEntry('35', '%'),
      },
      drying: {
        ...newDryingSlice(),
        kind: 'dried-muscle',
        start: enteredEntry('1800', 'g'),
        now: enteredEntry('1340', 'g'),
        lossTarget: enteredEntry('35', '%'),
        startSalt: enteredEntry('3', '%'),
        startMoisture: enteredEntry('68', '%'),
        startProtein: enteredEntry('19', '%'),
        waterActivity: '0.93',
        ph: '5.8',
      },
    },
  ),
};
