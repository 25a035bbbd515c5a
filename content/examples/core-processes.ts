import type { Batch } from '@larderwright/calc/batch';
import { newCookPlanSlice } from '@larderwright/calc/cook-plan';
import { newCrustSlice } from '@larderwright/calc/mould';
import { enteredEntry } from '@larderwright/calc/quantities';
import { line } from '../demo/compose.ts';
import { checkedProbe, coldMeat, folded, panadeFor } from './by-worksheet.ts';
import { cure, example, formula, loaves, press, work } from './compose.ts';
import { coreReadings } from './core-curve.ts';

const TARNWICK = 'Tarnwick Training Kitchen';
const QUILLSTONE = 'Quillstone Farm Shop';
const LAMPLIGHT = 'Lamplight Quay Training Kitchen';

/** A loaf of 75 mm in water, then in ice. */
const LOAF = { skinMin: 12, coreMin: 44 };

/** The work of the bench: panade, garnish, grinder, mixer, mould, bath, press. */
export const coreProcesses: Readonly<Record<string, Batch>> = {
  panades: example('panades', 'Veal and pork terrine with a bread panade', TARNWICK, {
    binder: panadeFor(2400, 'bread', 240, { egg: enteredEntry('40', 'g') }),
    formula: formula(null, '1.65', [
      line('veal', 'Veal shoulder, trimmed', 'lean', 'kitchen-veal-shoulder', '1000'),
      line('pork', 'Pork shoulder 80/20', 'lean', 'kitchen-pork-shoulder-80-20', '800'),
      line('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '600'),
      line('bread', 'White bread, crusts off', 'panade', 'kitchen-bread-white', '80'),
      line('milk', 'Whole milk', 'panade', 'kitchen-milk-whole', '120'),
      line('egg', 'Whole egg', 'panade', 'kitchen-egg', '40'),
      line('salt', 'Salt', 'salt', 'salt', '41'),
      line('mace', 'Mace, ground', 'seasoning', 'mace', '1.5'),
    ]),
  }),

  garnishes: example('garnishes', 'Pork and ham terrine with pistachio and apricot', QUILLSTONE, {
    binder: {
      ...panadeFor(2250, 'none', 0, { egg: enteredEntry('130', 'g') }),
      mouldWidth: enteredEntry('95', 'mm'),
      mouldHeight: enteredEntry('75', 'mm'),
      sliceThickness: enteredEntry('12', 'mm'),
      garnish: [
        folded('ham', 'Cooked ham, dice', 'kitchen-ham-cooked', '260', '10'),
        folded('pistachio', 'Pistachios, skinned', 'pistachio', '90', '8', { shape: 'ball' }),
        folded('apricot', 'Dried apricots, soaked, dice', 'apricot-dried', '80', '8'),
        folded('carrot', 'Carrot, blanched, dice', 'kitchen-carrot-blanched', '90', '8'),
      ],
    },
    formula: formula(null, '1.65', [
      line('pork', 'Pork shoulder 80/20', 'lean', 'kitchen-pork-shoulder-80-20', '1800'),
      line('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '450'),
      line('egg', 'Whole egg', 'egg', 'kitchen-egg', '130'),
      line('ham', 'Cooked ham, 10 mm dice', 'garnish', 'kitchen-ham-cooked', '260'),
      line('pistachio', 'Pistachios, skinned', 'garnish', 'pistachio', '90'),
      line('apricot', 'Dried apricots, soaked, 8 mm dice', 'garnish', 'apricot-dried', '80'),
      line('carrot', 'Carrot dice, blanched, dried', 'garnish', 'kitchen-carrot-blanched', '90'),
      line('salt', 'Salt', 'salt', 'salt', '40'),
    ]),
  }),

  grinding: example('grinding', 'Coarse pork and liver mix, weighed after the grinder', TARNWICK, {
    chillBudget: coldMeat({ lean: ['2.4', '-1'], fat: ['0.5', '-3'] }, '7'),
    formula: formula(null, '1.7', [
      line('pork', 'Pork shoulder 80/20, 8 mm plate', 'lean', 'kitchen-pork-shoulder-80-20', '2000', {
        actual: '1988',
      }),
      line('backfat', 'Pork back fat, 8 mm plate', 'fat', 'kitchen-pork-backfat', '500', { actual: '496' }),
      line('liver', 'Pork liver, 3 mm plate, last', 'liver', 'kitchen-pork-liver', '400', { actual: '394' }),
      line('egg', 'Whole egg', 'egg', 'kitchen-egg', '160', { actual: '160' }),
      line('salt', 'Salt', 'salt', 'salt', '48'),
      line('pepper', 'Black pepper, ground', 'seasoning', 'pepper-black', '6.5'),
    ]),
  }),

  'mixing-and-binding': example('mixing-and-binding', 'Pork and veal mix, cure and salt first', TARNWICK, {
    chillBudget: coldMeat({ lean: ['2.2', '0'], fat: ['0.6', '-2'], liquid: ['0.28', '3'] }, '12', {
      liquidAllowance: enteredEntry('140', 'g'),
    }),
    formula: formula(null, '1.65', [
      line('pork', 'Pork shoulder 80/20', 'lean', 'kitchen-pork-shoulder-80-20', '1500'),
      line('veal', 'Veal shoulder, trimmed', 'lean', 'kitchen-veal-shoulder', '700'),
      line('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '600'),
      line('milk', 'Whole milk', 'liquid', 'kitchen-milk-whole', '140'),
      line('egg', 'Whole egg', 'egg', 'kitchen-egg', '140'),
      line('ham', 'Cooked ham, 8 mm dice, last', 'garnish', 'kitchen-ham-cooked', '220'),
      line('salt', 'Salt', 'salt', 'salt', '39'),
      line('cure', 'Curing salt, strength off its pack', 'curing-salt', null, '4.5', {
        lot: 'CS-0430',
        actual: '4.5',
        nitrite: '6.25',
        nitrate: '0',
      }),
    ]),
    cure: cure('us-federal', '100', '0.01'),
  }),

  'moulds-lining-filling': example('moulds-lining-filling', 'Pork terrine in three moulds', QUILLSTONE, {
    formula: formula(null, '1.65', [
      line('pork', 'Pork shoulder 80/20', 'lean', 'kitchen-pork-shoulder-80-20', '3200'),
      line('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '900'),
      line('liver', 'Pork liver, trimmed', 'liver', 'kitchen-pork-liver', '600'),
      line('egg', 'Whole egg', 'egg', 'kitchen-egg', '260'),
      line('salt', 'Salt', 'salt', 'salt', '80'),
    ]),
    mould: {
      density: enteredEntry('1.04', 'g/mL'),
      moulds: [
        loaves('Terrine 290 × 95 × 75', ['290', '95', '75'], '10', '2', {
          waterFill: enteredEntry('2066', 'g'),
        }),
        loaves('Bar 300 × 80 × 70, lined with fat', ['300', '80', '70'], '10', '1', {
          id: 'bar',
          liningKind: 'fat',
          liningThickness: enteredEntry('3', 'mm'),
        }),
      ],
    },
    // The first mould as a pie, to see what a crust and slices of bacon take of it.
    crust: {
      ...newCrustSlice(),
      mouldId: 'loaf',
      pieceWidth: enteredEntry('60', 'mm'),
      pieceMass: enteredEntry('14', 'g'),
      pieceSalt: enteredEntry('3', '%'),
    },
  }),

  'water-bath-and-probe': example(
    'water-bath-and-probe',
    'Veal terrine, a probe that may be one degree out',
    LAMPLIGHT,
    {
      formula: formula(null, '1.65', [
        line('veal', 'Veal shoulder, trimmed', 'lean', 'kitchen-veal-shoulder', '900'),
        line('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '520'),
        line('cream', 'Whipping cream 35 %', 'liquid', 'kitchen-cream-35', '250'),
        line('egg', 'Whole egg', 'egg', 'kitchen-egg', '160'),
        line('salt', 'Salt', 'salt', 'salt', '31'),
      ]),
      mould: {
        density: enteredEntry('1.04', 'g/mL'),
        moulds: [loaves('Terrine 290 × 95 × 75', ['290', '95', '75'], '10', '1')],
      },
      thermometers: checkedProbe('L-3', ['0.0', '98.3'], '500', '1'),
      cookPlan: {
        ...newCookPlanSlice(),
        vessel: 'stoneware',
        lid: 'lid',
        start: enteredEntry('6', 'C'),
        // Water that a thermometer keeps, as high as the mix.
        method: 'poach',
        kettle: enteredEntry('78', 'C'),
        level: enteredEntry('65', 'mm'),
      },
      process: work({
        limit: ['uk-advice', 'uk-70C-2min'],
        probe: ['L-3', '0', '1'],
        thermometerId: 'first',
        place: 'Above the middle, lowest reading found',
        cook: ['09:00', '11:25', '78', 'Bath by thermometer. Lid on, water to the level of the mix.'],
        core: coreReadings('09:00', 6, LOAF, [
          { until: '10:30', mediumC: 78, everyMin: 15 },
          { until: '11:25', mediumC: 78, everyMin: 5 },
        ]),
      }),
    },
  ),

  'press-and-chill': example('press-and-chill', 'Coarse pork terrine under its board', TARNWICK, {
    formula: formula('country-terrine', null, []),
    mould: {
      density: enteredEntry('1.04', 'g/mL'),
      moulds: [loaves('Terrine 290 × 95 × 75', ['290', '95', '75'], '10', '1')],
    },
    process: work({
      limit: ['uk-advice', 'uk-70C-2min'],
      coolRuleSetId: 'us-food-code',
      cook: ['09:00', '11:20', '80', 'Film and lid.'],
      chill: ['11:30', '16:30', '1', 'Rack for 10 min, then ice and water, then the chiller.'],
      core: coreReadings('09:00', 6, LOAF, [
        { until: '10:40', mediumC: 80, everyMin: 20 },
        { until: '11:20', mediumC: 80, everyMin: 5 },
        { until: '11:30', mediumC: 20, everyMin: 5 },
        { until: '13:30', mediumC: 1, everyMin: 15 },
        { until: '16:30', mediumC: 1, everyMin: 30 },
      ]),
    }),
    press: press('290', '95', '2', '0.7', '12:00'),
  }),
};
