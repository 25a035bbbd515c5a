import type { Batch } from '@larderwright/calc/batch';
import { newCrustSlice } from '@larderwright/calc/mould';
import { enteredEntry } from '@larderwright/calc/quantities';
import { line } from '../demo/compose.ts';
import { pateEnCroute } from '../demo/pate-en-croute.ts';
import { jelly, links } from './by-worksheet.ts';
import { at, cure, derived, example, formula, loaves, press, work } from './compose.ts';
import { coreReadings } from './core-curve.ts';
import { saltedPieces, trimmed } from './meat-work.ts';
import { labelled } from './sale-work.ts';

const TARNWICK = 'Tarnwick Training Kitchen';
const QUILLSTONE = 'Quillstone Farm Shop';
const BRACKENHOLT = 'Brackenholt Inn cold kitchen';
const SKERROW = 'Skerrow Hill Farm Shop';

/** In crust, in skin, in jelly, in fat. */
export const dressedAndSlow: Readonly<Record<string, Batch>> = {
  // The pie that cooled too slowly, made again in a lower mould and blasted before its jelly.
  'pate-en-croute': derived(pateEnCroute, 'pate-en-croute', {
    product: {
      name: 'Rabbit pâté en croûte, made again in a lower mould',
      batchNo: '20260428-A',
      kitchen: BRACKENHOLT,
    },
    mould: {
      density: enteredEntry('1.04', 'g/mL'),
      moulds: [
        loaves('Hinged 350 × 80 × 60, inside the crust', ['342', '72', '54'], '5', '1', { id: 'hinged' }),
      ],
    },
    crust: {
      ...newCrustSlice(),
      mouldId: 'hinged',
      lidThickness: enteredEntry('5', 'mm'),
      pieceWidth: enteredEntry('60', 'mm'),
      pieceMass: enteredEntry('14', 'g'),
      pieceSalt: enteredEntry('3', '%'),
    },
    gelee: jelly('150', 'inlay', {
      cavity: enteredEntry('980', 'mL'),
      pour: enteredEntry('26', 'C'),
      core: enteredEntry('12', 'C'),
    }),
    process: work({
      limit: ['us-food-code', 'fc-165F'],
      coolRuleSetId: 'us-food-code',
      place: 'Through a chimney, in the middle',
      cook: [
        '09:00',
        '10:25',
        '125',
        '205 °C for 15 min, then 125 °C. Pulled early on a trialled carry-over.',
      ],
      chill: ['10:45', '15:45', '-5', 'Rack, then blast; jelly at 12 °C of core.'],
      core: coreReadings('09:00', 7, { skinMin: 38, coreMin: 22 }, [
        { until: '10:00', mediumC: 125, everyMin: 10 },
        { until: '10:25', mediumC: 125, everyMin: 5 },
        { until: '10:45', mediumC: 20, everyMin: 5 },
        { until: '13:15', mediumC: -5, everyMin: 15 },
        { until: '15:45', mediumC: -2, everyMin: 30 },
      ]),
    }),
    deviations: [],
  }),

  'galantines-and-ballotines': example(
    'galantines-and-ballotines',
    'Chicken galantine, poached in its stock',
    TARNWICK,
    {
      yield: trimmed('bird', 'Chicken, whole, boned for a galantine', {
        price: '5.40',
        purchasedKg: '2.1',
        piles: { lean: '910', fat: '70', garnish: '190', 'skin-bone': '830', waste: '85' },
        by: 'Bench 2',
        worth: { fat: '1.00', 'skin-bone': '1.50' },
        neededKg: '1.2',
        usual: ['48', '55'],
      }),
      casings: links('cloth', '1800', {
        stuffedDiameter: enteredEntry('75', 'mm'),
        spare: enteredEntry('10', '%'),
      }),
      press: press('300', '80', '1.8', '0.75', '13:00'),
      formula: formula('galantine', '1.55', [
        line('chicken', 'Chicken thigh, skinless', 'lean', 'kitchen-chicken-thigh', '900'),
        line('veal', 'Veal shoulder, trimmed', 'lean', 'kitchen-veal-shoulder', '300'),
        line('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '330'),
        line('white', 'Egg white', 'egg', 'kitchen-egg-white', '80'),
        line('cream', 'Whipping cream 35 %', 'liquid', 'kitchen-cream-35', '120'),
        line('pistachio', 'Pistachios, skinned', 'garnish', 'pistachio', '60'),
        line('salt', 'Salt', 'salt', 'salt', '25'),
      ]),
      process: work({
        limit: ['us-food-code', 'fc-165F'],
        coolRuleSetId: 'us-food-code',
        place: 'Along the axis, middle of the roll',
        cook: ['09:00', '11:10', '84', 'Poached in stock held at 84 °C. Six skewers in, six out.'],
        chill: ['11:20', '16:20', '1', 'Into ice-cold stock, pot in ice.'],
        core: coreReadings('09:00', 6, { skinMin: 10, coreMin: 42 }, [
          { until: '10:30', mediumC: 84, everyMin: 15 },
          { until: '11:10', mediumC: 84, everyMin: 5 },
          { until: '11:20', mediumC: 20, everyMin: 5 },
          { until: '13:20', mediumC: 1, everyMin: 15 },
          { until: '16:20', mediumC: 1, everyMin: 30 },
        ]),
      }),
    },
  ),

  'jelly-and-finishing': example('jelly-and-finishing', 'Ham and parsley terrine, glazed', QUILLSTONE, {
    product: {
      batchNo: '20260217-J',
      madeBy: 'Bench 1',
      portions: enteredEntry('20', 'count'),
      finished: enteredEntry('1640', 'g'),
      useBy: '2026-02-22',
    },
    cure: { ...cure('great-britain', '0', '1'), checkedBy: '' },
    gelee: jelly('500', 'coat', { naturalSet: enteredEntry('0', '%') }),
    formula: formula('ham-in-jelly', '1.51', [
      line('ham', 'Cooked ham, pulled', 'lean', 'kitchen-ham-cooked', '1080', { lot: 'H-88' }),
      line('stock', 'Stock, clarified', 'liquid', 'stock-chicken', '500', { lot: 'ST-12' }),
      line('gelatine', 'Gelatine, 200 bloom', 'seasoning', 'gelatin', '16', { lot: 'G-3' }),
      line('parsley', 'Parsley, chopped', 'garnish', 'parsley', '40'),
    ]),
    mould: {
      density: enteredEntry('1.06', 'g/mL'),
      moulds: [loaves('Bowl bar 280 × 90 × 70', ['275', '90', '70'], '8', '1')],
    },
    process: work({
      limit: ['uk-advice', 'uk-70C-2min'],
      coolRuleSetId: 'us-food-code',
      cook: ['09:00', '09:50', '92', 'Meat and stock heated through together before filling.'],
      chill: ['10:00', '14:30', '1', 'Ice and water, then the chiller. Second coat at 12:45.'],
      core: coreReadings('09:00', 20, { skinMin: 6, coreMin: 18 }, [
        { until: '09:50', mediumC: 92, everyMin: 5 },
        { until: '10:00', mediumC: 20, everyMin: 5 },
        { until: '12:00', mediumC: 1, everyMin: 15 },
        { until: '14:30', mediumC: 1, everyMin: 30 },
      ]),
    }),
    signOffs: [{ role: 'made', name: 'Bench 1', at: at('14:40') }],
    notes: 'Coat: jelly J-7, brushed on twice. The date counts from the cook.',
  }),

  rillettes: example('rillettes', 'Pork rillettes in shallow pots', QUILLSTONE, {
    product: { finished: enteredEntry('2440', 'g'), useBy: '2026-02-21' },
    cure: { ...cure('great-britain', '0', '1'), checkedBy: '' },
    label: labelled(
      'Pork rillettes',
      QUILLSTONE,
      {
        belly: { stressed: true },
        shoulder: { stressed: true },
        juice: { name: 'pork cooking juice', madeOf: 'pork', allergens: [] },
      },
      { pack: 'jar', loss: 'nothing', netWeight: enteredEntry('180', 'g'), life: enteredEntry('5', 'd') },
    ),
    formula: formula('rillettes', '1.6', [
      line('belly', 'Pork belly, cooked and drained', 'lean', 'kitchen-pork-belly', '700'),
      line('shoulder', 'Pork shoulder, cooked and drained', 'lean', 'kitchen-pork-shoulder-80-20', '1000'),
      line('juice', 'Own juice, reduced', 'liquid', 'stock-beef', '210'),
      line('lard', 'Cooking fat, strained', 'fat', 'lard', '520'),
      line('salt', 'Salt', 'salt', 'salt', '37'),
      line('pepper', 'White pepper, ground', 'seasoning', 'pepper-white', '5'),
    ]),
    process: work({
      limit: ['uk-advice', 'uk-70C-2min'],
      coolRuleSetId: 'us-food-code',
      place: 'Middle of a 50 mm pot',
      cook: ['08:00', '12:00', '90', 'Under its fat, barely moving.'],
      chill: ['12:20', '16:20', '1', 'Pots in ice, stirred twice as they thickened.'],
      core: coreReadings('08:00', 6, { skinMin: 10, coreMin: 30 }, [
        { until: '12:00', mediumC: 90, everyMin: 15 },
        { until: '12:20', mediumC: 25, everyMin: 5 },
        { until: '14:20', mediumC: 1, everyMin: 15 },
        { until: '16:20', mediumC: 1, everyMin: 30 },
      ]),
    }),
  }),

  confit: example('confit', 'Duck legs confit', SKERROW, {
    cure: { ...cure('great-britain', '0', '1'), checkedBy: '' },
    dryCure: saltedPieces('2', [
      ['Legs 1 to 4', '1020', '35'],
      ['Legs 5 to 8', '980', '35'],
      ['Legs 9 to 12', '1000', '34'],
    ]),
    formula: formula('confit', '1.4', [
      line('legs', 'Duck legs, salted, rinsed, dried', 'lean', 'kitchen-duck-leg', '3000'),
      line('salt', 'Salt the legs took up', 'salt', 'salt', '36.5'),
    ]),
    process: work({
      limit: ['us-food-code', 'fc-165F'],
      coolRuleSetId: 'us-food-code',
      place: 'Thickest leg, beside the bone',
      cook: ['08:00', '11:00', '85', 'Fat held at 85 °C.'],
      chill: ['11:20', '15:50', '1', 'Shallow pots in ice, under 20 mm of clear fat.'],
      core: coreReadings('08:00', 6, { skinMin: 8, coreMin: 24 }, [
        { until: '11:00', mediumC: 85, everyMin: 15 },
        { until: '11:20', mediumC: 25, everyMin: 5 },
        { until: '13:20', mediumC: 1, everyMin: 15 },
        { until: '15:50', mediumC: 1, everyMin: 30 },
      ]),
    }),
  }),

  'brawn-and-jellied-meats': example(
    'brawn-and-jellied-meats',
    'Shank and cheek brawn with tongue',
    SKERROW,
    {
      gelee: jelly('700', 'slice', { naturalSet: enteredEntry('2', '%') }),
      formula: formula('brawn', '1.45', [
        line('shank', 'Shank meat, cooked and picked', 'lean', 'fr-pork-hock', '1400'),
        line('cheek', 'Fat cheek, cooked, diced', 'fat', 'kitchen-pork-jowl', '200'),
        line('tongue', 'Tongue, cooked and skinned', 'offal', 'pork-tongue', '400'),
        line('stock', 'Its own stock, reduced', 'liquid', 'stock-beef', '700'),
        line('vinegar', 'Cider vinegar', 'liquid', 'vinegar-cider', '50'),
        line('gherkin', 'Gherkins, drained, diced', 'garnish', 'fr-cornichon', '120'),
        line('parsley', 'Parsley, chopped', 'garnish', 'parsley', '40'),
        line('salt', 'Salt', 'salt', 'salt', '33'),
        line('pepper', 'Black pepper, ground', 'seasoning', 'pepper-black', '5'),
      ]),
      process: work({
        limit: ['uk-advice', 'uk-70C-2min'],
        coolRuleSetId: 'us-food-code',
        place: 'Middle of a pan 60 mm deep',
        cook: ['10:00', '10:45', '93', 'Second heat: picked meat and stock together.'],
        chill: ['10:55', '15:55', '1', 'Pans in ice and water, unstacked.'],
        core: coreReadings('10:00', 35, { skinMin: 5, coreMin: 14 }, [
          { until: '10:45', mediumC: 93, everyMin: 5 },
          { until: '10:55', mediumC: 20, everyMin: 5 },
          { until: '12:55', mediumC: 1, everyMin: 15 },
          { until: '15:55', mediumC: 1, everyMin: 30 },
        ]),
      }),
      press: press('300', '200', '6', '1', '12:00'),
    },
  ),
};
