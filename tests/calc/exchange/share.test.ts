import { deflateRawSync } from 'node:zlib';
import { type Batch, withoutPeople } from '@larderwright/calc/batch';
import { MOST_SHARE_CHARACTERS, openShare, shareText } from '@larderwright/calc/exchange';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crc32 } from '../../../calc/exchange/checksum.ts';
import { SHARE_DICTIONARY_1 } from '../../../calc/exchange/share-dictionary.ts';
import { demos } from '../../../content/demo/index.ts';
import { anyBatch } from './any-batch.ts';

const json = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
/** The longest address of our own page before the `#`, with room: a host name of 60 characters. */
const ADDRESS_CHARACTERS = 80;

/** A link made by hand of any text, with its checksum right: what a forger would send. */
function forged(text: string, version = 1): string {
  const bytes = new TextEncoder().encode(text);
  const dictionary = new TextEncoder().encode(SHARE_DICTIONARY_1);
  const packed = deflateRawSync(bytes, { dictionary, level: 9 });
  const whole = Buffer.alloc(4 + packed.length);
  whole.writeUInt32BE(crc32(bytes));
  whole.set(packed, 4);
  return `${version}.${whole.toString('base64url')}`;
}

describe('a share link', () => {
  it.each(Object.entries(demos))(
    'of the demo %s is at most 2,000 characters with its address',
    (_, batch) => {
      expect(shareText(batch).length + ADDRESS_CHARACTERS).toBeLessThanOrEqual(2_000);
    },
  );

  it('gives back every record letter for letter, but for the people in it', () => {
    fc.assert(
      fc.property(anyBatch, (batch) => {
        const text = shareText(batch);
        fc.pre(text.length <= MOST_SHARE_CHARACTERS);
        expect(openShare(text)).toEqual({ ok: true, batch: json(withoutPeople(batch)) });
      }),
      { numRuns: 60 },
    );
  });

  it('carries no name, no initials and no signature', () => {
    const demo = demos['country-terrine'] as Batch;
    const secret = 'Zzyzx';
    const batch: Batch = {
      ...demo,
      product: { ...demo.product, madeBy: secret },
      cure: { ...demo.cure, weighedBy: secret, checkedBy: secret },
      deviations: [{ id: 'd', at: '', what: 'w', decision: '', cause: '', prevention: '', by: secret }],
      signOffs: [{ role: 'made', name: secret, at: '2026-01-01T10:00:00+01:00' }],
      process: {
        ...demo.process,
        logs: demo.process.logs.map((log) => ({
          ...log,
          readings: log.readings.map((reading) => ({
            ...reading,
            initials: secret,
            excluded: { reason: 'steam', initials: secret, at: '' },
          })),
        })),
      },
    };
    const opened = openShare(shareText(batch));
    expect(opened.ok).toBe(true);
    expect(JSON.stringify(opened)).not.toContain(secret);
    expect(opened.ok && opened.batch.signOffs).toEqual([]);
    expect(opened.ok && opened.batch.deviations[0]?.what).toBe('w');
  });

  it('holds letters, figures, hyphen, underscore and one full stop only', () => {
    expect(shareText(demos['liver-parfait'] as Batch)).toMatch(/^1\.[\w-]+$/);
  });
});

describe('a damaged or hostile link', () => {
  const good = shareText(demos['mutton-ham'] as Batch);

  it('never opens when one letter of it was changed, cut or added', () => {
    fc.assert(
      fc.property(fc.nat(good.length - 2), fc.constantFrom('A', 'z', '-', '%', ''), (at, letter) => {
        const place = at + 2;
        const changed = good.slice(0, place) + letter + good.slice(place + 1);
        fc.pre(changed !== good);
        expect(openShare(changed)).toMatchObject({ ok: false });
      }),
    );
  });

  it('is refused with a reason whatever it holds, and never throws', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.base64String(),
          fc.json().map((text) => forged(text)),
        ),
        (text) => {
          const opened = openShare(text);
          expect(opened.ok).toBe(false);
        },
      ),
    );
  });

  it.each([
    ['', { problem: 'no-link' }],
    ['hello', { problem: 'no-link' }],
    ['1.', { problem: 'cut-or-changed' }],
    ['0.AAAAAAAA', { problem: 'cut-or-changed' }],
    ['2.AAAAAAAA', { problem: 'newer-link', version: 2 }],
    [`1.${'A'.repeat(MOST_SHARE_CHARACTERS)}`, { problem: 'too-long' }],
    [good.slice(0, -8), { problem: 'cut-or-changed' }],
    [forged('{"schema":1}'), { problem: 'forbidden' }],
    [forged('[2,-1,[],["__proto__"],true]'), { problem: 'forbidden' }],
    [forged('[2,-1,[],["constructor"],true]'), { problem: 'forbidden' }],
    [forged('[2,-1,[],["schema"],99]'), { problem: 'newer-version', version: 99 }],
    [forged('[2,-1,[],["schema"],1]'), { problem: 'damaged' }],
    [forged(`${'[0,'.repeat(5_000)}0${']'.repeat(5_000)}`), { problem: 'forbidden' }],
  ] as const)('hostile text %# gives %o', (text, wanted) => {
    expect(openShare(text)).toMatchObject({ ok: false, ...wanted });
  });

  it('a bomb of zeros is stopped while it unfolds', () => {
    const text = forged(`"${'0'.repeat(9_000_000)}"`);
    expect(text.length).toBeLessThan(MOST_SHARE_CHARACTERS);
    expect(openShare(text)).toEqual({ ok: false, problem: 'too-much-inside' });
  });

  it('a bomb of repeated rows is stopped before it fills the memory', () => {
    const rows = (inner: string) => `[1,400,2,${inner},"",""]`;
    expect(openShare(forged(rows(`[3,${rows(`[3,${rows('[3,0]')}]`)}]`)))).toMatchObject({
      problem: 'forbidden',
    });
  });
});

it('the dictionary of version 1 is the one that links out there were made with', () => {
  // Regression: any change would make every link already handed on unreadable.
  expect(crc32(new TextEncoder().encode(SHARE_DICTIONARY_1))).toMatchInlineSnapshot(`1654245310`);
});
