import {
  type Batch,
  changesBetween,
  checksum,
  historyFault,
  newBatch,
  newLine,
  newProbeLog,
  newReading,
  withChanges,
} from '@larderwright/calc/batch';
import { newBrineSlice } from '@larderwright/calc/brine';
import { enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const AT = '2026-11-27T10:00:00+00:00';

function batch(): Batch {
  const made = newBatch({ id: 'b', at: AT, zone: 'UTC' });
  made.formula.lines.push({
    ...newLine('liver', 'liver'),
    name: 'Pork liver',
    amount: enteredEntry('300', 'g'),
  });
  const log = { ...newProbeLog('p', null), name: 'Centre' };
  log.readings.push(newReading('r', '2026-11-27T10:40:00+00:00', '63.1', 'C', AT));
  made.process.logs.push(log);
  return made;
}

const changed = (change: (batch: Batch) => void) => {
  const after = structuredClone(batch());
  change(after);
  return changesBetween(batch(), after);
};
const first = <T>(list: readonly T[]): T => {
  const [row] = list;
  if (row === undefined) throw new Error('empty');
  return row;
};

describe('the checksum', () => {
  // FNV-1a, 64 bit: test vectors of Fowler, Noll and Vo's own test suite.
  it.each([
    ['', 'cbf29ce484222325'],
    ['a', 'af63dc4c8601ec8c'],
    ['foobar', '85944171f73967e8'],
  ])('of "%s" is the published one', (text, sum) => {
    expect(checksum(text)).toBe(sum);
  });

  it('is taken over the bytes of UTF-8, as any other tool would take it', () => {
    // The algorithm by its authors' definition, over bytes that the platform encoded.
    const plain = (bytes: Uint8Array) =>
      bytes.reduce((sum, byte) => ((sum ^ BigInt(byte)) * 0x100000001b3n) % 2n ** 64n, 0xcbf29ce484222325n);
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        expect(BigInt(`0x${checksum(text)}`)).toBe(plain(new TextEncoder().encode(text)));
      }),
    );
  });
});

describe('changes between two states of a record', () => {
  it('name the field, the row, the value before and after', () => {
    expect(
      changed((after) => {
        first(after.formula.lines).actual = enteredEntry('302', 'g');
        first(first(after.process.logs).readings).temperature = enteredEntry('68,1', 'C');
        after.signOffs = [{ role: 'made', name: 'JK', at: AT }];
      }),
    ).toEqual([
      { what: 'formula.lines.liver.actual', row: 'Pork liver', from: '', to: '302 g' },
      { what: 'process.logs.p.readings.r.temperature', row: 'Centre, 10:40', from: '63.1 °C', to: '68,1 °C' },
      { what: 'signOffs.made', row: '', from: '', to: 'JK' },
    ]);
  });

  it('hold no reading that was added, but each one left out or taken away', () => {
    expect(
      changed((after) => {
        first(after.process.logs).readings.push(newReading('r2', AT, '70', 'C', AT));
      }),
    ).toEqual([]);
    expect(
      changed((after) => {
        first(first(after.process.logs).readings).excluded = { reason: 'slipped', initials: 'jk', at: AT };
      }),
    ).toMatchObject([{ what: 'process.logs.p.readings.r.excluded', from: '', to: `slipped · jk · ${AT}` }]);
    expect(
      changed((after) => {
        first(after.process.logs).readings = [];
      }),
    ).toMatchObject([{ what: 'process.logs.p.readings.r', row: 'Centre, 10:40', to: '' }]);
  });

  it('hold no draft of a formula, but a planned weight once the work has begun', () => {
    const draft = newBatch({ id: 'b', at: AT, zone: 'UTC' });
    draft.formula.lines.push({ ...newLine('l', 'lean'), amount: enteredEntry('100', 'g') });
    const other = structuredClone(draft);
    first(other.formula.lines).amount = enteredEntry('200', 'g');
    expect(changesBetween(draft, other)).toEqual([]);
    expect(
      changed((after) => {
        first(after.formula.lines).amount = enteredEntry('330', 'g');
      }),
    ).toMatchObject([{ what: 'formula.lines.liver.amount', from: '300 g', to: '330 g' }]);
  });

  it('follow weights in a slice that is begun, and in one that is dropped', () => {
    const brine = newBrineSlice();
    brine.actual.curingSalt = enteredEntry('21.4', 'g');
    expect(
      changed((after) => {
        after.brine = brine;
      }),
    ).toEqual([{ what: 'brine.actual.curingSalt', row: '', from: '', to: '21.4 g' }]);
    expect(changesBetween({ ...batch(), brine }, batch())).toEqual([
      { what: 'brine.actual.curingSalt', row: '', from: '21.4 g', to: '' },
    ]);
  });

  it('leave alone names, notes and the moment of the edit', () => {
    expect(
      changed((after) => {
        after.product.name = 'Other';
        after.notes = 'x';
        after.updatedAt = '2026-12-01T00:00:00Z';
        first(after.process.logs).name = 'Edge';
      }),
    ).toEqual([]);
  });
});

describe('the running checksum', () => {
  const change = (to: string) => ({ what: 'product.finished', row: '', from: '', to });
  const history = withChanges('b', [], [change('1 g'), change('2 g'), change('3 g')], AT, 'JK');

  it('holds for what was written, in pieces or at once', () => {
    expect(historyFault('b', history)).toBeNull();
    const pieces = withChanges(
      'b',
      withChanges('b', [], [change('1 g')], AT, 'JK'),
      [change('2 g'), change('3 g')],
      AT,
      'JK',
    );
    expect(pieces).toEqual(history);
    expect(historyFault('b', [])).toBeNull();
  });

  it('finds any entry changed, taken out or moved', () => {
    const field = fc.constantFrom(
      'at' as const,
      'by' as const,
      'what' as const,
      'from' as const,
      'to' as const,
    );
    fc.assert(
      fc.property(fc.nat({ max: 2 }), field, fc.string({ minLength: 1 }), (index, name, text) => {
        const forged = history.map((entry, place) =>
          place === index ? { ...entry, [name]: `${entry[name]}${text}` } : entry,
        );
        expect(historyFault('b', forged)).toBe(index);
      }),
    );
    expect(historyFault('b', history.slice(1))).toBe(0);
    expect(historyFault('b', [first(history), ...history.slice(2)])).toBe(1);
    expect(historyFault('b', history.toReversed())).toBe(0);
  });

  it('belongs to its own batch', () => {
    expect(historyFault('another', history)).toBe(0);
  });
});
