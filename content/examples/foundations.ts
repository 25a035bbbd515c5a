import type { Batch } from '@larderwright/calc/batch';
import { enteredEntry } from '@larderwright/calc/quantities';
import { line } from '../demo/compose.ts';
import { countryTerrine } from '../demo/country-terrine.ts';
import { blend, checkedProbe } from './by-worksheet.ts';
import { cure, derived, example, formula, work } from './compose.ts';
import { coreReadings } from './core-curve.ts';
import { leanToFat, material, trimmed } from './meat-work.ts';
import { planned } from './sale-work.ts';

const TARNWICK = 'Tarnwick Training Kitchen';
const BRACKENHOLT = 'Brackenholt Inn cold kitchen';

/** Foundations: the probe, the lots, the trim, what is in a mix, salt, spice, cure, marinade. */
export const foundations: Readonly<Record<string, Batch>> = {
  'hygiene-and-cold-chain': example(
    'hygiene-and-cold-chain',
    'Pork shoulder loaf, probe found to read high',
    TARNWICK,
    {
      thermometers: checkedProbe('T-4', ['0.4', '99.9'], '180', '0.5'),
      process: work({
        limit: ['uk-advice', 'uk-70C-2min'],
        probe: ['T-4', '0.4', '0.5'],
        thermometerId: 'first',
        cook: ['08:30', '11:00', '80', 'Ice check at 07:10: the probe showed 0.4 too much.'],
        core: coreReadings('08:30', 5, { skinMin: 12, coreMin: 44 }, [
          { until: '10:00', mediumC: 80, everyMin: 15 },
          { until: '11:00', mediumC: 80, everyMin: 5 },
        ]),
      }),
    },
  ),

  receiving: example('receiving', 'Rabbit and pork terrine, from three deliveries', BRACKENHOLT, {
    product: { batchNo: '20260217-R', portions: enteredEntry('30', 'count') },
    formula: formula(null, null, [
      line('rabbit', 'Rabbit meat, trimmed', 'lean', 'kitchen-rabbit', '1200', { lot: 'R-204, Tuesday' }),
      line('pork', 'Pork shoulder 80/20', 'lean', 'kitchen-pork-shoulder-80-20', '600', {
        lot: 'P-3310, Monday',
      }),
      line('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '600', {
        lot: 'P-3311, Monday',
      }),
      line('egg', 'Whole egg', 'egg', 'kitchen-egg', '120', { lot: 'E-07' }),
      line('salt', 'Salt', 'salt', 'salt', '39', { lot: 'S-1' }),
      line('pepper', 'White pepper, ground', 'seasoning', 'pepper-white', '5', { lot: 'W-12' }),
    ]),
    thermometers: checkedProbe('T-1', ['0.0', '99.6'], '110', '0.5'),
    process: work({
      limit: ['uk-advice', 'uk-70C-2min'],
      probe: ['T-1', '0', '0.5'],
      thermometerId: 'first',
      cook: ['09:00', '11:20', '80', 'The probe of the delivery, wiped and checked in ice again.'],
      core: coreReadings('09:00', 5, { skinMin: 12, coreMin: 44 }, [
        { until: '10:30', mediumC: 80, everyMin: 15 },
        { until: '11:20', mediumC: 80, everyMin: 5 },
      ]),
    }),
    plan: planned('70', {
      rabbit: ['9.80', '52'],
      pork: '7.40',
      backfat: '3.90',
      egg: '5.20',
      salt: '0.80',
      pepper: '24.00',
    }),
  }),

  'knives-trim-yield': example('knives-trim-yield', 'Pork shoulder, trimmed from the bone', TARNWICK, {
    formula: formula(null, '1.6', [
      line('lean', 'Pork shoulder, trimmed lean', 'lean', 'kitchen-pork-shoulder-80-20', '3250'),
      line('fat', 'Pork fat from the trim', 'fat', 'kitchen-pork-backfat', '800'),
      line('salt', 'Salt', 'salt', 'salt', '62'),
      line('pepper', 'Black pepper, ground', 'seasoning', 'pepper-black', '8'),
    ]),
    yield: trimmed('shoulder', 'Pork shoulder, bone in', {
      price: '8.00',
      purchasedKg: '5',
      piles: { lean: '3250', fat: '800', garnish: '0', 'skin-bone': '700', waste: '180' },
      by: 'Bench 3',
      neededKg: '6',
      usual: ['62', '72'],
    }),
  }),

  'meat-science': example('meat-science', 'Four lines that hold together', TARNWICK, {
    formula: formula(null, '1.7', [
      line('lean', 'Pork shoulder, lean', 'lean', 'kitchen-pork-shoulder-lean-95', '1500'),
      line('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '700'),
      line('milk', 'Whole milk', 'liquid', 'kitchen-milk-whole', '150'),
      line('egg', 'Whole egg', 'egg', 'kitchen-egg', '110'),
      line('salt', 'Salt', 'salt', 'salt', '38'),
    ]),
    blend: leanToFat('2.2', '31', [
      material('lean', 'Pork shoulder, lean', 'lean', 'kitchen-pork-shoulder-lean-95', '8.20'),
      material('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '3.90'),
    ]),
  }),

  // The batch before its last salt: bacon, curing salt and bread have brought theirs.
  'salt-and-test-poach': derived(countryTerrine, 'salt-and-test-poach', {
    formula: {
      ...countryTerrine.formula,
      saltTarget: enteredEntry('1.65', '%'),
      lines: countryTerrine.formula.lines.map((one) =>
        one.id === 'salt' ? { ...one, amount: enteredEntry('42', 'g') } : one,
      ),
    },
    product: {
      name: 'Venison terrine at its first test poach',
      batchNo: '',
      portions: enteredEntry('', 'count'),
      finished: enteredEntry('', 'g'),
      useBy: '',
    },
    ...onlyTheMix(),
    notes: 'First test poach, tasted cold: short of salt.',
  }),

  'spices-and-blends': example('spices-and-blends', 'Pork terrine with a blend of four spices', TARNWICK, {
    seasoning: blend('Four spices', '3', [
      ['black-pepper', 'Black pepper', '14'],
      ['nutmeg', 'Nutmeg', '3'],
      ['ginger', 'Ginger', '2'],
      ['clove', 'Clove', '1'],
    ]),
    formula: formula(null, '1.65', [
      line('pork', 'Pork shoulder 80/20', 'lean', 'kitchen-pork-shoulder-80-20', '2400'),
      line('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '600'),
      line('liver', 'Pork liver, trimmed', 'liver', 'kitchen-pork-liver', '450'),
      line('milk', 'Whole milk', 'liquid', 'kitchen-milk-whole', '284'),
      line('egg', 'Whole egg', 'egg', 'kitchen-egg', '195'),
      line('salt', 'Salt', 'salt', 'salt', '59'),
      line('pepper', 'Black pepper, 14 parts', 'seasoning', 'pepper-black', '8.4'),
      line('nutmeg', 'Nutmeg, 3 parts', 'seasoning', 'nutmeg', '1.8'),
      line('ginger', 'Ginger, 2 parts', 'seasoning', 'ginger-ground', '1.2'),
      line('clove', 'Clove, 1 part', 'seasoning', 'clove', '0.6'),
    ]),
  }),

  'curing-salts': example('curing-salts', 'Coarse pork terrine, cured', TARNWICK, {
    formula: formula(null, '1.7', [
      line('pork', 'Pork shoulder 80/20', 'lean', 'kitchen-pork-shoulder-80-20', '2100'),
      line('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '700'),
      line('egg', 'Whole egg', 'egg', 'kitchen-egg', '150'),
      line('salt', 'Salt', 'salt', 'salt', '41'),
      line('cure', 'Curing salt, strength off its pack', 'curing-salt', null, '5.4', {
        lot: 'CS-0417',
        actual: '5.4',
        nitrite: '6.25',
        nitrate: '0',
      }),
    ]),
    cure: cure('us-federal', '120'),
  }),

  marinating: example('marinating', 'Venison for a terrine, salted a day ahead', BRACKENHOLT, {
    formula: formula(null, '1.65', [
      line('venison', 'Venison shoulder, marinated, drained', 'lean', 'kitchen-venison-shoulder', '1500'),
      line('jowl', 'Pork jowl', 'fat', 'kitchen-pork-jowl', '500'),
      line('backfat', 'Pork back fat, rindless', 'fat', 'kitchen-pork-backfat', '400'),
      line('egg', 'Whole egg', 'egg', 'kitchen-egg', '120'),
      line('wine', 'Marinade wine, boiled and reduced', 'liquid', 'kitchen-white-wine-reduced', '60'),
      line('pre-salt', 'Salt that went on yesterday', 'salt', 'salt', '24'),
      line('salt', 'Salt still to go in', 'salt', 'salt', '13'),
      line('cure', 'Curing salt, strength off its pack', 'curing-salt', null, '4.0', {
        lot: 'CS-0421',
        actual: '4.0',
        nitrite: '6.25',
        nitrate: '0',
      }),
    ]),
    cure: cure('great-britain', '96', '0.01'),
  }),
};

/** Takes the cook, the moulds and the press off a batch that goes no further than its bowl. */
function onlyTheMix(): Pick<Batch, 'mould' | 'process' | 'press'> {
  const { mould, process, press } = example('', '', '', {});
  return { mould, process, press };
}
