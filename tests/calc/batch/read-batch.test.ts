import {
  BATCH_SCHEMA,
  newBatch,
  newLine,
  newMould,
  newProbeLog,
  newReading,
  newStep,
  readBatch,
} from '@larderwright/calc/batch';
import { newBinderSlice, newExtender, newGarnishLine, withPanade } from '@larderwright/calc/binder';
import { newBlendMaterial, newBlendSlice } from '@larderwright/calc/blend';
import { newBrineSlice } from '@larderwright/calc/brine';
import { newCasingsSlice } from '@larderwright/calc/casings';
import { newChillBudgetSlice } from '@larderwright/calc/chill-budget';
import { newCookPlanSlice } from '@larderwright/calc/cook-plan';
import { newDryCurePiece, newDryCureSlice } from '@larderwright/calc/dry-cure';
import { newDryingSlice, newFermentationStep } from '@larderwright/calc/drying';
import { newGeleeSlice } from '@larderwright/calc/gelee';
import { newLabelExtra, newLabelLine, newLabelSlice } from '@larderwright/calc/label';
import { newCrustSlice } from '@larderwright/calc/mould';
import { newPlanLine, newPlanSlice, newPlanStep, TERRINE_STEPS } from '@larderwright/calc/plan';
import { enteredEntry } from '@larderwright/calc/quantities';
import { BLEND_STYLES, blendOfStyle, newLooseSpice, newSeasoningSlice } from '@larderwright/calc/seasoning';
import { newSlicingSlice } from '@larderwright/calc/slicing';
import { newYieldTest } from '@larderwright/calc/yield';
import { describe, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';

const full = () => {
  const batch = newBatch({ id: 'b', at: '2026-11-25T08:00:00+00:00', zone: 'Europe/Paris' });
  batch.formula.lines.push(newLine('l', 'lean'), newLine('c', 'curing-salt'));
  batch.mould.moulds.push(newMould('m'));
  batch.process.steps.push(newStep('s', 'cook'));
  const log = newProbeLog('p', 'm');
  log.readings.push(newReading('r', '2026-11-25T09:00:00+00:00', '68,2', 'C', null));
  batch.process.logs.push(log);
  return batch;
};
const json = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('readBatch', () => {
  it('gives back what was written, through JSON', () => {
    expect(readBatch(json(full()))).toEqual({ ok: true, batch: full() });
  });

  it.each(Object.entries(demos))('reads the demo %s', (_, batch) => {
    expect(readBatch(json(batch))).toEqual({ ok: true, batch });
  });

  it.each([
    ['dry cure', { dryCure: { ...newDryCureSlice(), pieces: [newDryCurePiece('p')] } }],
    ['brine', { brine: newBrineSlice() }],
    ['drying', { drying: { ...newDryingSlice(), steps: [newFermentationStep('s')] } }],
  ] as const)('gives back a batch with a slice of %s, and tells where that is damaged', (_, slice) => {
    const batch = { ...full(), ...slice };
    expect(readBatch(json(batch))).toEqual({ ok: true, batch });
    const [name] = Object.keys(slice);
    const broken = { ...full(), [String(name)]: { ...Object.values(slice)[0], extra: 1 } };
    expect(readBatch(json(broken))).toMatchObject({ ok: false, path: `${name}.extra` });
  });

  it.each([
    [
      'plan',
      {
        ...newPlanSlice(),
        lines: [newPlanLine('l'), { ...newPlanLine('c'), priceBasis: 'sundries' }],
        servingAt: '2026-05-01T12:00',
        steps: TERRINE_STEPS.map((kind, index) => newPlanStep(`s${index}`, kind)),
      },
    ],
    ['yield', { tests: [newYieldTest('t', 'one')] }],
    ['blend', { ...newBlendSlice(), materials: [newBlendMaterial('m', 'fat')], freeA: 'm' }],
    ['slicing', newSlicingSlice()],
    ['label', { ...newLabelSlice(), lines: [newLabelLine('l')], extras: [newLabelExtra('e')] }],
    [
      'seasoning',
      {
        ...newSeasoningSlice(),
        blends: BLEND_STYLES.map((style) => blendOfStyle(style.id, style)),
        loose: [newLooseSpice('l')],
      },
    ],
    ['chillBudget', newChillBudgetSlice()],
    ['cookPlan', newCookPlanSlice()],
    [
      'binder',
      {
        ...withPanade(newBinderSlice(), 'choux', 300),
        extenders: [newExtender('e')],
        garnish: [newGarnishLine('g')],
      },
    ],
    ['casings', { ...newCasingsSlice(), casingId: 'hog-32-35', actualLinks: [enteredEntry('118', 'g')] }],
    ['crust', { ...newCrustSlice(), mouldId: 'm' }],
    ['gelee', { ...newGeleeSlice(), rawFruit: ['kiwi', 'ginger'] }],
  ])('gives back the slice %s, which a batch need not have', (name, slice) => {
    const batch = { ...full(), [name]: slice };
    expect(readBatch(json(batch))).toEqual({ ok: true, batch });
    expect(readBatch(json({ ...batch, [name]: { ...slice, extra: 1 } }))).toMatchObject({
      ok: false,
      path: `${name}.extra`,
    });
    expect(readBatch({ ...batch, [name]: undefined })).toMatchObject({ ok: false });
  });

  it('refuses a newer version and names it', () => {
    expect(readBatch({ ...full(), schema: BATCH_SCHEMA + 1 })).toEqual({
      ok: false,
      problem: 'newer-version',
      version: BATCH_SCHEMA + 1,
    });
  });

  it('tells where a record is damaged', () => {
    const broken = json(full()) as ReturnType<typeof full>;
    Object.assign(broken.formula.lines[0] ?? {}, { amount: 5 });
    expect(readBatch(broken)).toMatchObject({
      ok: false,
      problem: 'damaged',
      path: 'formula.lines.0.amount',
    });
  });

  it.each([null, undefined, 7, 'text', [], {}, { schema: 'x' }, { schema: Number.NaN }])(
    'calls %j damaged',
    (raw) => {
      expect(readBatch(raw)).toMatchObject({ ok: false, problem: 'damaged' });
    },
  );

  it('takes no key it does not know, and none that reaches for a prototype', () => {
    expect(readBatch({ ...full(), extra: 1 })).toMatchObject({ ok: false });
    const polluted: unknown = JSON.parse(JSON.stringify(full()).replace('{', '{"__proto__":{"x":1},'));
    expect(readBatch(polluted)).toMatchObject({ ok: false });
    expect(({} as { x?: number }).x).toBeUndefined();
  });

  it('refuses a text longer than any field holds', () => {
    const batch = full();
    batch.notes = 'x'.repeat(20_001);
    expect(readBatch(batch)).toMatchObject({ ok: false, path: 'notes' });
  });
});

describe('an empty batch', () => {
  it('marks every shipped default as a default and leaves the rest blank', () => {
    const batch = newBatch({ id: 'b', at: '', zone: 'UTC' });
    expect(batch.formula.saltTarget).toEqual({ text: '1.7', unit: '%', origin: 'default' });
    expect(batch.cure.nitriteTarget.text).toBe('');
    expect(batch.process.coolRuleSetId).toBeNull();
  });

  it('gives no curing salt a strength', () => {
    expect(newLine('c', 'curing-salt').cure).toEqual({
      nitrite: { text: '', unit: '%', origin: 'default' },
      nitrate: { text: '', unit: '%', origin: 'default' },
    });
    expect(newLine('l', 'lean').cure).toBeNull();
  });
});
