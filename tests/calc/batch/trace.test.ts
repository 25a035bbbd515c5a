import {
  type Batch,
  batchesWithLot,
  newBatch,
  newLine,
  searchSummaries,
  summaryOf,
} from '@larderwright/calc/batch';
import { newBrineSlice } from '@larderwright/calc/brine';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';

const WORDS = {
  planned: 'planned',
  'in-process': 'in process',
  held: 'held',
  released: 'released',
  discarded: 'discarded',
};
const AT = '2026-11-27T10:00:00+00:00';

function made(batchNo: string, lots: Readonly<Record<string, string>>, change?: (batch: Batch) => void) {
  const batch = newBatch({ id: `id-${batchNo}`, at: AT, zone: 'UTC' });
  batch.product.batchNo = batchNo;
  for (const [name, lot] of Object.entries(lots))
    batch.formula.lines.push({ ...newLine(name, 'lean'), name, lot, amount: enteredEntry('500', 'g') });
  change?.(batch);
  return summaryOf(batch, WORDS);
}
const numbers = (traced: readonly { batch: { batchNo: string } }[]) =>
  traced.map(({ batch }) => batch.batchNo);

describe('a lot that is called back', () => {
  const brined = made('B-3', {}, (batch) => {
    batch.brine = newBrineSlice();
    batch.brine.pack = { ...batch.brine.pack, name: 'Curing salt', lot: 'S-114' };
  });
  const all = [made('B-1', { Liver: 'S-114' }), made('B-2', { Liver: 'S 115' }), brined];

  it('is found in every batch that holds it, wherever it was written down', () => {
    expect(numbers(batchesWithLot(all, 'S-114'))).toEqual(['B-1', 'B-3']);
    expect(batchesWithLot(all, 'S-114').map(({ uses }) => uses)).toEqual([
      [{ lot: 'S-114', name: 'Liver', amount: '500 g' }],
      [{ lot: 'S-114', name: 'Curing salt', amount: '' }],
    ]);
  });

  it.each(['s114', 'S 114', ' s-114 '])('is found as "%s", for a dash is soon lost at the bench', (lot) => {
    expect(numbers(batchesWithLot(all, lot))).toEqual(['B-1', 'B-3']);
  });

  it('is found by its beginning, and by nothing that is not typed', () => {
    expect(numbers(batchesWithLot(all, 'S-11'))).toEqual(['B-1', 'B-2', 'B-3']);
    expect(batchesWithLot(all, '14')).toEqual([]);
    expect(batchesWithLot(all, '  -')).toEqual([]);
  });

  it('is followed through a batch that went into another, and round a ring without end', () => {
    const chain = [
      made('T-1', { Shoulder: 'S-9', Rework: 'T-3' }),
      made('T-2', { Rework: 'T 1' }),
      made('T-3', { Rework: 'T-2' }),
      made('T-4', { Shoulder: 'S-8' }),
    ];
    const traced = batchesWithLot(chain, 'S-9');
    expect(traced.map(({ batch, through }) => [batch.batchNo, through])).toEqual([
      ['T-1', null],
      ['T-2', 'T-1'],
      ['T-3', 'T-2'],
    ]);
  });

  it('comes with where each batch went', () => {
    const sent = { id: 'd', at: AT, to: 'Quillstone Farm Shop', amount: '12 portions', by: 'JK' };
    const batch = made('B-9', { Fat: 'F-1' }, (each) => void each.dispatches.push(sent));
    expect(batchesWithLot([batch], 'F-1')[0]?.batch.dispatches).toEqual([sent]);
  });
});

describe('the summary of a batch', () => {
  const terrine = made('20261127-A', { 'Pork liver': 'L-5' }, (batch) => {
    batch.product.name = 'Pâté de foie';
    batch.lifecycle.push({ id: 's', state: 'held', at: AT, by: 'JK', second: '', why: 'x' });
  });
  const other = made('20261126-A', { Venison: 'V-1' });

  it.each(['pate', 'FOIE pate', '1127-a', 'liver', 'l-5', 'held', '2026-11-27', 'held pork'])(
    'is found by "%s"',
    (text) => {
      expect(searchSummaries([other, terrine], text)).toContain(terrine);
    },
  );

  it.each(['venison pate', 'released', 'zz'])('is not found by "%s"', (text) => {
    expect(searchSummaries([terrine], text)).toEqual([]);
  });

  it('is one of all where nothing is typed', () => {
    expect(searchSummaries([other, terrine], '  ')).toEqual([other, terrine]);
  });

  it('says who brought it into its state, and stays silent where nobody did', () => {
    expect(terrine).toMatchObject({ state: 'held', stateBy: 'JK', stateAt: AT });
    expect(other).toMatchObject({ state: 'planned', stateBy: '', stateAt: '' });
  });
});
