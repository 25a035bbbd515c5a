import type { Batch } from '@larderwright/calc/batch';
import { newGrindPass } from '@larderwright/calc/chill-budget';
import { enteredEntry } from '@larderwright/calc/quantities';
import { line } from '../demo/compose.ts';
import { countryTerrine } from '../demo/country-terrine.ts';
import { coldMeat, jelly } from './by-worksheet.ts';
import { cure, derived, example, formula, loaves, press, work } from './compose.ts';
import { coreReadings } from './core-curve.ts';
import { leanToFat, material, trimmed } from './meat-work.ts';
import { planned } from './sale-work.ts';

const QUILLSTONE = 'Quillstone Farm Shop';
const BRACKENHOLT = 'Brackenholt Inn cold kitchen';
const LAMPLIGHT = 'Lamplight Quay Training Kitchen';

/** A loaf of 75 mm, and a bar of 60 mm, in water and then in ice. */
const LOAF = { skinMin: 12, coreMin: 44 };
const BAR = { skinMin: 9, coreMin: 30 };

/** Invented prices of a kilogram; spices cost twenty. */
const TERRINE_PRICES: Readonly<Record<string, string>> = {
  venison: '14.50',
  pork: '7.40',
  backfat: '3.90',
  liver: '2.80',
  bread: '2.20',
  milk: '1.10',
  egg: '5.20',
  shallot: '2.60',
  chestnut: '11.00',
  bacon: '10.50',
  salt: '0.80',
  cure: '6.00',
};

/** Terrines and what is made of liver. */
export const terrines: Readonly<Record<string, Batch>> = {
  'country-terrine': derived(countryTerrine, 'country-terrine', {
    product: { batchNo: '20260310-E' },
    blend: leanToFat('2.8', '30', [
      material('venison', 'Venison shoulder, trimmed', 'lean', 'kitchen-venison-shoulder', '14.50'),
      material('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '3.90'),
      material('pork', 'Pork shoulder 80/20', 'lean', 'kitchen-pork-shoulder-80-20', '7.40', {
        locked: enteredEntry('0.7', 'kg'),
      }),
      material('liver', 'Pork liver, trimmed', 'liver', 'kitchen-pork-liver', '2.80', {
        locked: enteredEntry('0.33', 'kg'),
      }),
    ]),
    plan: planned('70', {
      ...Object.fromEntries(
        countryTerrine.formula.lines.map(({ id }) => [id, TERRINE_PRICES[id] ?? '20.00']),
      ),
    }),
  }),

  'liver-pates': example('liver-pates', 'Fine pork liver pâté, cured for colour', QUILLSTONE, {
    formula: formula('fine-liver-pate', '1.7', [
      line('liver', 'Pork liver, trimmed', 'liver', 'kitchen-pork-liver', '1050'),
      line('pork', 'Pork shoulder 80/20', 'lean', 'kitchen-pork-shoulder-80-20', '450'),
      line('jowl', 'Pork jowl, scalded', 'fat', 'kitchen-pork-jowl', '900'),
      line('backfat', 'Pork back fat, scalded', 'fat', 'kitchen-pork-backfat', '350'),
      line('bread', 'White bread, crusts off', 'panade', 'kitchen-bread-white', '50'),
      line('milk', 'Whole milk, boiled', 'panade', 'kitchen-milk-whole', '65'),
      line('cream', 'Whipping cream 35 %', 'liquid', 'kitchen-cream-35', '290'),
      line('egg', 'Whole egg', 'egg', 'kitchen-egg', '170'),
      line('shallot', 'Shallot, sweated, cold', 'garnish', 'kitchen-shallot-sweated', '90'),
      line('salt', 'Salt', 'salt', 'salt', '50'),
      line('cure', 'Curing salt, strength off its pack', 'curing-salt', null, '4.4', {
        lot: 'CS-0433',
        actual: '4.4',
        nitrite: '6.25',
        nitrate: '0',
      }),
      line('pepper', 'White pepper, ground', 'seasoning', 'pepper-white', '6.5'),
    ]),
    cure: cure('us-federal', '100', '0.01'),
    blend: leanToFat('2.75', '35', [
      material('pork', 'Pork shoulder 80/20', 'lean', 'kitchen-pork-shoulder-80-20', '7.40'),
      material('backfat', 'Pork back fat, scalded', 'fat', 'kitchen-pork-backfat', '3.90'),
      material('liver', 'Pork liver, trimmed', 'liver', 'kitchen-pork-liver', '2.80', {
        locked: enteredEntry('1.05', 'kg'),
      }),
      material('jowl', 'Pork jowl, scalded', 'fat', 'kitchen-pork-jowl', '4.40', {
        locked: enteredEntry('0.9', 'kg'),
      }),
    ]),
    process: work({
      limit: ['hev-advisory', 'hev-71C-20min'],
      coolRuleSetId: 'us-food-code',
      cook: ['08:30', '11:20', '77', 'Covered, in water at 77 °C.'],
      chill: ['11:25', '16:30', '1', 'Ice and water, then the chiller. No board.'],
      core: coreReadings('08:30', 14, LOAF, [
        { until: '10:30', mediumC: 77, everyMin: 15 },
        { until: '11:20', mediumC: 77, everyMin: 5 },
        { until: '13:25', mediumC: 1, everyMin: 15 },
        { until: '16:30', mediumC: 1, everyMin: 30 },
      ]),
    }),
  }),

  'parfaits-and-mousses': example(
    'parfaits-and-mousses',
    'Duck liver and port parfait in two bars',
    QUILLSTONE,
    {
      formula: formula('poultry-liver-parfait', '1.35', [
        line('liver', 'Duck livers, trimmed', 'liver', 'duck-liver', '760'),
        line('butter', 'Unsalted butter, melted', 'liquid', 'kitchen-butter-unsalted', '640'),
        line('egg', 'Whole egg', 'egg', 'kitchen-egg', '270'),
        line('port', 'Port, reduced', 'liquid', 'kitchen-fortified-wine-reduced', '90'),
        line('salt', 'Salt', 'salt', 'salt', '22'),
        line('pepper', 'White pepper, ground', 'seasoning', 'pepper-white', '2.6'),
      ]),
      mould: {
        density: enteredEntry('1.00', 'g/mL'),
        moulds: [loaves('Bar 240 × 60 × 60', ['240', '60', '60'], '6', '2')],
      },
      process: work({
        limit: ['nz-card', 'nz-70C-3min'],
        coolRuleSetId: 'au-nz-3.2.2',
        place: 'Middle of the last bar',
        cook: ['10:00', '11:45', '76', 'Film and foil, in water at 76 °C.'],
        chill: ['11:50', '15:30', '1', 'Ice and water to the level of the mix. No board, no stacking.'],
        core: coreReadings('10:00', 36, BAR, [
          { until: '11:00', mediumC: 76, everyMin: 10 },
          { until: '11:45', mediumC: 76, everyMin: 3 },
          { until: '13:00', mediumC: 1, everyMin: 10 },
          { until: '15:30', mediumC: 1, everyMin: 30 },
        ]),
      }),
    },
  ),

  mousselines: example('mousselines', 'Chicken mousseline with chives', LAMPLIGHT, {
    chillBudget: coldMeat({ lean: ['0.9', '-1'], liquid: ['0.84', '1'] }, '8', {
      passes: [
        { ...newGrindPass('chop', 'chop'), rise: enteredEntry('5', 'dC') },
        { ...newGrindPass('beat', 'mix'), rise: enteredEntry('1', 'dC') },
      ],
    }),
    formula: formula('meat-mousseline', '1.35', [
      line('chicken', 'Chicken breast, trimmed', 'lean', 'kitchen-chicken-breast', '900'),
      line('white', 'Egg white', 'egg', 'kitchen-egg-white', '170'),
      line('cream', 'Whipping cream 35 %', 'liquid', 'kitchen-cream-35', '670'),
      line('salt', 'Salt', 'salt', 'salt', '21'),
      line('pepper', 'White pepper, ground', 'seasoning', 'pepper-white', '1.7'),
      line('chives', 'Chives, cut', 'seasoning', 'chives', '18'),
    ]),
    process: work({
      limit: ['uk-advice', 'uk-70C-2min'],
      coolRuleSetId: 'fr-catering',
      cook: ['13:00', '14:33', '74', 'Covered, in water at 74 °C.'],
      chill: ['14:38', '17:30', '0.5', 'Ice and water, cover on. No board.'],
      core: coreReadings('13:00', 7, { skinMin: 8, coreMin: 27 }, [
        { until: '14:10', mediumC: 74, everyMin: 10 },
        { until: '14:33', mediumC: 74, everyMin: 2 },
        { until: '14:38', mediumC: 20, everyMin: 5 },
        { until: '16:08', mediumC: 0.5, everyMin: 10 },
        { until: '17:30', mediumC: 0.5, everyMin: 30 },
      ]),
    }),
  }),

  'game-terrines': example('game-terrines', 'Red deer terrine with a pheasant inlay', BRACKENHOLT, {
    yield: trimmed('shoulder', 'Red deer shoulder, bone in', {
      price: '9.60',
      purchasedKg: '4.2',
      piles: { lean: '2310', fat: '60', garnish: '420', 'skin-bone': '890', waste: '480' },
      by: 'Bench 1',
      neededKg: '1.3',
      usual: ['60', '70'],
    }),
    blend: leanToFat('2.6', '34', [
      material('deer', 'Red deer shoulder, trimmed', 'lean', 'kitchen-venison-shoulder', '14.50'),
      material('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '3.90'),
      material('pork', 'Pork shoulder 80/20', 'lean', 'kitchen-pork-shoulder-80-20', '7.40', {
        locked: enteredEntry('0.35', 'kg'),
      }),
    ]),
    formula: formula('game-terrine', '1.7', [
      line('deer', 'Red deer shoulder, trimmed', 'lean', 'kitchen-venison-shoulder', '1300', { lot: 'D-19' }),
      line('pork', 'Pork shoulder 80/20', 'lean', 'kitchen-pork-shoulder-80-20', '350', { lot: 'P-3401' }),
      line('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '950', { lot: 'P-3402' }),
      line('pheasant', 'Pheasant breast, whole, as the inlay', 'garnish', 'kitchen-pheasant', '350', {
        lot: 'F-44',
      }),
      line('liver', 'Chicken livers, trimmed', 'liver', 'kitchen-chicken-liver', '180', { lot: 'C-71' }),
      line('bread', 'White bread, crusts off', 'panade', 'kitchen-bread-white', '70'),
      line('milk', 'Whole milk', 'panade', 'kitchen-milk-whole', '110'),
      line('egg', 'Whole egg', 'egg', 'kitchen-egg', '150'),
      line('port', 'Port, reduced', 'liquid', 'kitchen-fortified-wine-reduced', '60'),
      line('stock', 'Game stock, strong, cold', 'liquid', 'stock-chicken', '90'),
      line('salt', 'Salt', 'salt', 'salt', '54'),
      line('juniper', 'Juniper, ground', 'seasoning', 'juniper-berry', '3'),
      line('pepper', 'Black pepper, ground', 'seasoning', 'pepper-black', '6'),
    ]),
    process: work({
      limit: ['us-food-code', 'fc-165F'],
      coolRuleSetId: 'us-food-code',
      cook: ['08:00', '10:25', '86', 'Pheasant in it, so the poultry limit.'],
      chill: ['10:30', '15:30', '0', 'Ice and water first, then the board in the cold.'],
      core: coreReadings('08:00', 5, LOAF, [
        { until: '09:45', mediumC: 86, everyMin: 15 },
        { until: '10:25', mediumC: 86, everyMin: 5 },
        { until: '12:30', mediumC: 0, everyMin: 15 },
        { until: '15:30', mediumC: 0, everyMin: 30 },
      ]),
    }),
    press: press('290', '95', '2.8', '1', '13:00'),
  }),

  'layered-terrines': example(
    'layered-terrines',
    'Leek, carrot and mushroom terrine in a custard',
    LAMPLIGHT,
    {
      gelee: jelly('330', 'inlay'),
      formula: formula('vegetable-terrine', '1.07', [
        line('leek', 'Leeks, blanched, pressed', 'garnish', 'leek', '560'),
        line('carrot', 'Carrot batons, blanched', 'garnish', 'kitchen-carrot-blanched', '440'),
        line('mushroom', 'Mushrooms, cooked dry', 'garnish', 'mushroom-crimini', '260'),
        line('egg', 'Whole egg', 'egg', 'kitchen-egg', '400'),
        line('cream', 'Whipping cream 35 %', 'liquid', 'kitchen-cream-35', '330'),
        line('salt', 'Salt', 'salt', 'salt', '19'),
      ]),
      mould: {
        density: enteredEntry('1.02', 'g/mL'),
        moulds: [loaves('Terrine 300 × 90 × 75', ['300', '90', '75'], '10', '1')],
      },
      process: work({
        limit: ['uk-advice', 'uk-75C-30s'],
        coolRuleSetId: 'us-food-code',
        cook: ['09:00', '10:55', '88', 'Covered, in a bath.'],
        chill: ['11:00', '16:00', '0.5', 'Ice and water; the board only once it is cold.'],
        core: coreReadings('09:00', 12, LOAF, [
          { until: '10:20', mediumC: 88, everyMin: 20 },
          { until: '10:55', mediumC: 88, everyMin: 5 },
          { until: '13:00', mediumC: 0.5, everyMin: 15 },
          { until: '16:00', mediumC: 0.5, everyMin: 30 },
        ]),
      }),
      press: press('300', '90', '2.8', '1', '16:00'),
    },
  ),
};
