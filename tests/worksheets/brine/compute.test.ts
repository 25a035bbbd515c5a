import { type Batch, newBatch } from '@larderwright/calc/batch';
import { BRINE_TABLE, newBrineSlice } from '@larderwright/calc/brine';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, test } from 'vitest';
import { computeBrine } from '../../../worksheets/brine/compute.ts';
import { convertReading } from '../../../worksheets/brine/convert-reading.ts';

/** An invented mutton ham: 2.4 kg of leg in 1.2 kg of water, soaked. */
function batch(changes: Partial<NonNullable<Batch['brine']>> = {}): Batch {
  const blank = newBatch({ id: 'b1', at: '2026-03-10T07:30:00+00:00', zone: 'UTC' });
  const slice = newBrineSlice();
  return {
    ...blank,
    cure: { ...blank.cure, ruleSetId: 'us-federal', scaleReadability: enteredEntry('0.1', 'g') },
    brine: {
      ...slice,
      product: 'ham',
      finish: 'cooked',
      method: 'equilibrium',
      skinOff: enteredEntry('2400', 'g'),
      thickness: enteredEntry('110', 'mm'),
      water: enteredEntry('1200', 'g'),
      saltTarget: enteredEntry('2.4', '%'),
      nitriteTarget: enteredEntry('120', 'ppm'),
      pack: {
        ...slice.pack,
        strength: { nitrite: enteredEntry('6.25', '%'), nitrate: enteredEntry('0', '%') },
      },
      use: 'fresh',
      ...changes,
    },
  };
}

describe('the brine page', () => {
  test('prints both federal countings and the worst case on one line', () => {
    const { vat } = computeBrine(batch({ pickUp: enteredEntry('10', '%') }));
    expect(vat.nitriteLines.join(' ')).toMatch(
      /by pick-up: 33\.\d mg\/kg; at equilibrium: 11\d\.\d mg\/kg; if all of it went in: 179\.7/,
    );
  });

  test('leaves the counting by pick-up untold where nobody weighed it', () => {
    expect(computeBrine(batch()).vat.nitriteLines.join(' ')).toMatch(/by pick-up: cannot tell/);
  });

  test('gives no days of a soak on the card of an injected piece', () => {
    expect(computeBrine(batch()).vat.guidance).toMatch(/^\d+ to \d+$/);
    expect(computeBrine(batch({ method: 'inject-cover' })).vat.guidance).toBeNull();
  });

  test('carries every number field of the slice to the card', () => {
    const { slice, vat } = computeBrine(batch());
    const entries = Object.entries(slice).filter(
      ([, value]) => typeof value === 'object' && value !== null && 'origin' in value,
    );
    expect(Object.keys(vat.fields).sort()).toEqual(entries.map(([key]) => key).sort());
  });

  test('prints a used brine as a stop', () => {
    expect(computeBrine(batch({ use: 'used' })).stops.join(' ')).toMatch(/lain in this brine before/);
  });

  test('says nothing and judges nothing for a batch without the slice', () => {
    const blank = newBatch({ id: 'b', at: '', zone: 'UTC' });
    expect(computeBrine(blank)).toMatchObject({ findings: [], verdicts: [], stops: [] });
  });
});

describe('a reading of a brine', () => {
  // The salometer and how to use it; specific gravity derived up to 85 degrees and from memory above.
  test.each(BRINE_TABLE.filter(({ salometer }) => salometer > 0))(
    'of $salometer degrees salometer is $saltPercent % of salt',
    ({ salometer, saltPercent }) => {
      const read = convertReading('salometer', String(salometer));
      expect(read.state === 'ok' && read.saltFraction * 100).toBeCloseTo(saltPercent, 2);
    },
  );

  test('of salt by weight is a per cent, with the sign or without', () => {
    expect(convertReading('fraction', '10')).toEqual(convertReading('fraction', '10 %'));
  });

  test.each(['-1', '101', 'NaN', '1e2', '1,234', 'x', '٣'])(
    'typed %s gives no brine but a reason',
    (text) => {
      expect(convertReading('salometer', text)).toMatchObject({
        state: 'bad',
        problem: expect.stringMatching(/./),
      });
    },
  );

  test('left blank gives neither', () => {
    expect(convertReading('baume', ' ')).toEqual({ state: 'blank' });
  });
});
