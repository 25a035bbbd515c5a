import type { Batch } from '@larderwright/calc/batch';
import { enteredEntry } from '@larderwright/calc/quantities';
import { beforeAll, describe, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';
import { loadCompute, type SheetComputed } from '../../../worksheets/batch-sheet/compute.ts';
import { CURVE_MM } from '../../../worksheets/batch-sheet/curve-size.ts';
import { recordAt } from '../../../worksheets/batch-sheet/fit.ts';

let compute: (batch: Batch) => SheetComputed;
beforeAll(async () => {
  compute = await loadCompute();
});
const logged = Object.entries(demos).filter(([, batch]) =>
  batch.process.logs.some(({ readings }) => readings.length > 2),
);

describe('what stands beside the verdicts on the record copy', () => {
  it('has demo batches with a log to be shown on', () => {
    expect(logged.length).toBeGreaterThan(0);
  });

  it.each(logged)('is one line of heat and one of growth, each called information: %s', (_, batch) => {
    const { model } = compute(structuredClone(batch));
    expect(model.cook.beside.join()).toMatch(
      /^Information, probe error taken off: P\(70 °C, z 7\.5\) [\d.]+ min/,
    );
    expect(model.cool.beside.join()).toMatch(/^Information, C\. perfringens in the cooling/);
    expect([...model.cook.beside, ...model.cool.beside].join()).not.toMatch(/NaN|undefined|Infinity/);
  });

  it.each(logged)('is a curve that lies on its drawing, its odd readings crossed: %s', (_, batch) => {
    const { model, assessment } = compute(structuredClone(batch));
    const { curve } = model;
    if (curve === null) throw new Error('no curve');
    const places = [...curve.line.matchAll(/[ML]([-\d.]+) ([-\d.]+)/g)].map(([, x, y]) => [
      Number(x),
      Number(y),
    ]);
    expect(places.length).toBeGreaterThan(2);
    for (const [x = Number.NaN, y = Number.NaN] of places) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(CURVE_MM.width);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(CURVE_MM.height);
    }
    const ruling = assessment.cook.values.logs.find(
      ({ logId }) => logId === assessment.cook.values.rulingLogId,
    );
    const odd = (ruling?.log.readings ?? []).filter(
      ({ state, tempC }) => state !== 'counts' && tempC !== null,
    );
    expect(curve.odd).toHaveLength(odd.length);
  });

  it('goes first where the page is full, the curve before the words, and no verdict with it', () => {
    const [, batch] = logged[0] ?? [];
    if (!batch) throw new Error('no demo');
    const { model } = compute(structuredClone(batch));
    expect(recordAt('with-curve', model)).toBe(model);
    expect(recordAt('with-information', model)).toMatchObject({
      curve: null,
      cook: { beside: model.cook.beside },
    });
    const plain = recordAt('all-logs', model);
    expect([plain.curve, plain.cook.beside, plain.cool.beside]).toEqual([null, [], []]);
    expect(plain.cook.verdicts).toEqual(model.cook.verdicts);
    expect(plain.cook.logs).toEqual(model.cook.logs);
  });

  it('says that growth cannot be told as soon as the batch is cured', () => {
    const cured = logged.find(([, batch]) => batch.formula.lines.some(({ part }) => part === 'curing-salt'));
    if (!cured) throw new Error('no cured demo');
    const { cool } = compute(structuredClone(cured[1])).model;
    expect(cool.beside.join()).toMatch(/cannot tell, (it is cured|whether it is cured)/);
  });

  it('draws nothing of two readings', () => {
    const [, batch] = logged[0] ?? [];
    if (!batch) throw new Error('no demo');
    const short = structuredClone(batch);
    short.process.logs = short.process.logs.map((log) => ({
      ...log,
      readings: log.readings.slice(0, 2),
      error: enteredEntry('0.5', 'dC'),
    }));
    expect(compute(short).model.curve).toBeNull();
  });
});
