import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fromBase64Url, toBase64Url } from '../../../calc/exchange/base64url.ts';

// RFC 4648 (2006), section 10, test vectors, without padding as section 5 allows.
it.each([
  ['', ''],
  ['f', 'Zg'],
  ['fo', 'Zm8'],
  ['foo', 'Zm9v'],
  ['foob', 'Zm9vYg'],
  ['fooba', 'Zm9vYmE'],
  ['foobar', 'Zm9vYmFy'],
])('%j is %j', (plain, text) => {
  expect(toBase64Url(Buffer.from(plain))).toBe(text);
  expect(Buffer.from(fromBase64Url(text) ?? [1]).toString()).toBe(plain);
});

it('gives back all bytes, as Node reads and writes them', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 60 }), (bytes) => {
      const text = toBase64Url(bytes);
      expect(text).toBe(Buffer.from(bytes).toString('base64url'));
      expect(fromBase64Url(text)).toEqual(bytes);
    }),
  );
});

it.each(['A', 'Zh', 'Zm9=', 'Zm+v', 'Zm9v Zm9v', 'é'])('%j is none', (text) => {
  expect(fromBase64Url(text)).toBeNull();
});
