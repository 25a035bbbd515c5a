import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Batch, nextBatch, readBatch } from '@larderwright/calc/batch';
import { newBrineSlice } from '@larderwright/calc/brine';
import { newDryCurePiece, newDryCureSlice } from '@larderwright/calc/dry-cure';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';

const START = { id: 'next', at: '2026-12-01T08:00:00+00:00', zone: 'Europe/Paris', batchNo: '20261201-A' };

function demo(slug: string): Batch {
  const batch = demos[slug];
  if (!batch) throw new Error(slug);
  return structuredClone(batch);
}

describe.each(Object.keys(demos))('the next batch of %s', (slug) => {
  const before = demo(slug);
  const next = nextBatch(before, START);

  it('carries the formula, the moulds, the rules and the plan', () => {
    expect(next.formula.lines.map(({ name, amount, basis }) => ({ name, amount, basis }))).toEqual(
      before.formula.lines.map(({ name, amount, basis }) => ({ name, amount, basis })),
    );
    expect(next.mould.moulds.map(({ dimensions }) => dimensions)).toEqual(
      before.mould.moulds.map(({ dimensions }) => dimensions),
    );
    expect(next.cure.ruleSetId).toBe(before.cure.ruleSetId);
    expect(next.process).toMatchObject({
      cookLimitId: before.process.cookLimitId,
      coolRuleSetId: before.process.coolRuleSetId,
    });
    expect(next.product).toMatchObject({ name: before.product.name, batchNo: '20261201-A' });
  });

  it('carries nothing that was measured, dated, signed or read off a pack of the old one', () => {
    expect(next).toMatchObject({ id: 'next', demo: false, createdAt: START.at, zone: START.zone });
    expect(next.formula.lines.every(({ lot, actual }) => lot === '' && actual.text === '')).toBe(true);
    expect(next.formula.lines.every(({ cure }) => cure === null || cure.nitrite.text === '')).toBe(true);
    expect(next.mould.moulds.every(({ actualFills }) => actualFills.length === 0)).toBe(true);
    expect(next.process.steps.every(({ startedAt, endedAt }) => startedAt === null && endedAt === null)).toBe(
      true,
    );
    expect(next).toMatchObject({ deviations: [], signOffs: [], notes: '', issued: [] });
    expect(next).toMatchObject({ lifecycle: [], dispatches: [], history: [] });
    expect(next.process.logs).toEqual([]);
    expect(next.product).toMatchObject({ madeBy: '', useBy: '', finished: { text: '' } });
    // No lot and no initials of the old batch stand anywhere in the new one.
    const text = JSON.stringify(next);
    for (const { lot } of before.formula.lines) if (lot !== '') expect(text).not.toContain(lot);
    expect(text).not.toContain('"initials"');
  });

  it('is a sound record, and leaves the old one as it was', () => {
    expect(readBatch(JSON.parse(JSON.stringify(next)))).toEqual({ ok: true, batch: next });
    expect(before).toEqual(demo(slug));
  });
});

describe('a slice of the next batch', () => {
  it('has its plan, and neither weights nor packs nor dates', () => {
    const before = demo('mutton-ham');
    const dryCure = newDryCureSlice();
    dryCure.pieces = [{ ...newDryCurePiece('p'), skinOff: enteredEntry('2000', 'g') }];
    dryCure.pack.lot = 'C-77';
    dryCure.startedOn = '2026-11-01';
    dryCure.saltTarget = enteredEntry('3', '%');
    const brine = newBrineSlice();
    brine.saltTarget = enteredEntry('2.2', '%');
    brine.actual.salt = enteredEntry('88', 'g');
    brine.mixedOn = '2026-11-01';
    const next = nextBatch({ ...before, dryCure, brine }, START);
    expect(next.dryCure).toMatchObject({
      pieces: [],
      pack: { lot: '' },
      startedOn: '',
      saltTarget: { text: '3' },
    });
    expect(next.brine).toMatchObject({
      saltTarget: { text: '2.2' },
      actual: { salt: { text: '' } },
      mixedOn: '',
    });
    expect(next.yield).toBeUndefined();
  });

  it('is sound whatever slices the old one had', () => {
    const file = join(import.meta.dirname, '../../fixtures/records/v1-last.json');
    const read = readBatch(JSON.parse(readFileSync(file, 'utf8')));
    if (!read.ok) throw new Error('the fixture is read elsewhere');
    const next = nextBatch(read.batch, START);
    expect(readBatch(JSON.parse(JSON.stringify(next)))).toMatchObject({ ok: true });
  });
});
