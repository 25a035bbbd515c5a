import {
  type Batch,
  mergeBatches,
  newBatch,
  newLine,
  newProbeLog,
  newReading,
} from '@larderwright/calc/batch';
import { enteredEntry } from '@larderwright/calc/quantities';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const AT = '2026-11-27T10:00:00+00:00';

function start(): Batch {
  const made = newBatch({ id: 'b', at: AT, zone: 'UTC' });
  for (const id of ['a', 'b', 'c'])
    made.formula.lines.push({ ...newLine(id, 'lean'), name: id, amount: enteredEntry('100', 'g') });
  const log = newProbeLog('p', null);
  log.readings.push(newReading('r', AT, '63.1', 'C', AT));
  made.process.logs.push(log);
  return made;
}
const changed = (change: (batch: Batch) => void): Batch => {
  const batch = structuredClone(start());
  change(batch);
  return batch;
};
const lineOf = (batch: Batch, id: string) => {
  const line = batch.formula.lines.find((each) => each.id === id);
  if (!line) throw new Error(id);
  return line;
};
const idsOf = (batch: Batch) => batch.formula.lines.map(({ id }) => id).join('');
const without = (id: string) => (batch: Batch) => {
  batch.formula.lines = batch.formula.lines.filter((line) => line.id !== id);
};

describe('two records that grew from one', () => {
  it('keep the changes of both sides, field by field', () => {
    const ours = changed((batch) => {
      batch.product.name = 'Terrine';
      lineOf(batch, 'a').actual = enteredEntry('101', 'g');
    });
    const theirs = changed((batch) => {
      batch.product.kitchen = 'Tarnwick';
      lineOf(batch, 'a').lot = 'L-1';
      lineOf(batch, 'b').amount = enteredEntry('90', 'g');
    });
    const { batch, conflicts } = mergeBatches(start(), ours, theirs);
    expect(conflicts).toEqual([]);
    expect(batch.product).toMatchObject({ name: 'Terrine', kitchen: 'Tarnwick' });
    expect(lineOf(batch, 'a')).toMatchObject({ actual: { text: '101' }, lot: 'L-1' });
    expect(lineOf(batch, 'b').amount.text).toBe('90');
  });

  it('tell a field both changed differently, and keep ours in it', () => {
    const read = (text: string) =>
      changed((batch) => {
        const [reading] = batch.process.logs[0]?.readings ?? [];
        if (reading) reading.temperature = enteredEntry(text, 'C');
      });
    const { batch, conflicts } = mergeBatches(start(), read('36.1'), read('66.1'));
    expect(conflicts).toEqual([
      {
        path: 'process.logs.p.readings.r.temperature',
        ours: enteredEntry('36.1', 'C'),
        theirs: enteredEntry('66.1', 'C'),
      },
    ]);
    expect(batch).toEqual(read('36.1'));
    expect(mergeBatches(start(), read('70'), read('70')).conflicts).toEqual([]);
  });

  it('never mix the number of one side with the unit of the other', () => {
    const ours = changed((batch) => {
      lineOf(batch, 'a').amount = enteredEntry('2', 'kg');
    });
    const theirs = changed((batch) => {
      lineOf(batch, 'a').amount = enteredEntry('150', 'g');
    });
    const { batch, conflicts } = mergeBatches(start(), ours, theirs);
    expect(lineOf(batch, 'a').amount).toEqual(enteredEntry('2', 'kg'));
    expect(conflicts).toHaveLength(1);
  });

  it('keep rows added on either side, each after its neighbour', () => {
    const add = (id: string, place: number) =>
      changed((batch) => void batch.formula.lines.splice(place, 0, newLine(id, 'fat')));
    const { batch, conflicts } = mergeBatches(start(), add('X', 1), add('Y', 3));
    expect(idsOf(batch)).toBe('aXbcY');
    expect(conflicts).toEqual([]);
  });

  it('let a row go that one side took away, unless the other changed it: then it stays and is told', () => {
    expect(idsOf(mergeBatches(start(), changed(without('b')), start()).batch)).toBe('ac');
    expect(idsOf(mergeBatches(start(), start(), changed(without('b'))).batch)).toBe('ac');
    const weighed = changed((batch) => {
      lineOf(batch, 'b').actual = enteredEntry('99', 'g');
    });
    const { batch, conflicts } = mergeBatches(start(), changed(without('b')), weighed);
    expect(lineOf(batch, 'b').actual.text).toBe('99');
    expect(conflicts).toMatchObject([{ path: 'formula.lines.b', ours: undefined }]);
  });

  it('take over the order of the side that moved rows', () => {
    const moved = changed((batch) => void batch.formula.lines.reverse());
    expect(idsOf(mergeBatches(start(), moved, start()).batch)).toBe('cba');
    expect(idsOf(mergeBatches(start(), start(), moved).batch)).toBe('cba');
  });

  it('keep signatures of both roles, and every entry of both histories', () => {
    const entry = (to: string) => ({ at: AT, by: '', what: 'x', row: '', from: '', to, sum: to });
    const base = changed((batch) => void batch.history.push(entry('0')));
    const grow = (role: 'made' | 'checked', to: string): Batch => ({
      ...base,
      signOffs: [{ role, name: role, at: AT }],
      history: [...base.history, entry(to)],
    });
    const { batch, conflicts } = mergeBatches(base, grow('made', '1'), grow('checked', '2'));
    expect(batch.signOffs.map(({ role }) => role).toSorted()).toEqual(['checked', 'made']);
    expect(batch.history.map(({ to }) => to)).toEqual(['0', '2', '1']);
    expect(conflicts).toEqual([]);
  });

  it('keep a slice begun on one side', () => {
    const { casings: _, ...bare } = start();
    const theirs = { ...start(), updatedAt: '2026-11-27T11:00:00+00:00', notes: 'x' };
    expect(mergeBatches(bare, { ...bare, zone: 'Europe/Paris' }, theirs).batch).toMatchObject({
      zone: 'Europe/Paris',
      notes: 'x',
      updatedAt: '2026-11-27T11:00:00+00:00',
    });
  });
});

describe('a merge', () => {
  const edits = fc.array(
    fc.record({
      line: fc.constantFrom('a', 'b', 'c'),
      field: fc.constantFrom('amount' as const, 'actual' as const),
      text: fc.integer({ min: 1, max: 999 }).map(String),
    }),
    { maxLength: 6 },
  );
  const apply = (list: { line: string; field: 'amount' | 'actual'; text: string }[]) =>
    changed((batch) => {
      for (const { line, field, text } of list) lineOf(batch, line)[field] = enteredEntry(text, 'g');
    });

  it('loses no value that anybody typed: it stands in the record or is told', () => {
    fc.assert(
      fc.property(edits, edits, (left, right) => {
        const [ours, theirs] = [apply(left), apply(right)];
        const { batch, conflicts } = mergeBatches(start(), ours, theirs);
        for (const id of ['a', 'b', 'c'])
          for (const field of ['amount', 'actual'] as const) {
            const kept = lineOf(batch, id)[field];
            const told = conflicts.filter(({ path }) => path === `formula.lines.${id}.${field}`);
            for (const side of [ours, theirs]) {
              const value = lineOf(side, id)[field];
              const untouched = value.text === lineOf(start(), id)[field].text;
              if (untouched) continue;
              const stands = kept.text === value.text;
              const isTold = told.some(({ theirs: other }) => (other as typeof value).text === value.text);
              expect(stands || isTold).toBe(true);
            }
          }
      }),
    );
  });

  it('with an unchanged side is the other side, and changes neither', () => {
    fc.assert(
      fc.property(edits, (list) => {
        const side = apply(list);
        const before = JSON.stringify(side);
        expect(mergeBatches(start(), side, start())).toEqual({ batch: side, conflicts: [] });
        expect(mergeBatches(start(), start(), side)).toEqual({ batch: side, conflicts: [] });
        expect(JSON.stringify(side)).toBe(before);
      }),
    );
  });
});
