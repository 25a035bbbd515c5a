import { expect, it } from 'vitest';
import { addressFrom } from '../../site/tools/address.mjs';

it('takes port 4173 on localhost when nothing is said', () => {
  expect(addressFrom({})).toEqual({ port: 4173, host: 'localhost' });
  expect(addressFrom({ PORT: ' ', HOST: '' })).toEqual({ port: 4173, host: 'localhost' });
});

it('honours PORT and HOST; port 0 stands for any free one', () => {
  expect(addressFrom({ PORT: '8080', HOST: '0.0.0.0' })).toEqual({ port: 8080, host: '0.0.0.0' });
  expect(addressFrom({ PORT: '0' }).port).toBe(0);
});

it.each(['abc', '-1', '80.5', '65536', '1e3', '٣', '0x50'])('refuses PORT=%s in plain words', (text) => {
  expect(() => addressFrom({ PORT: text })).toThrow('PORT must be a whole number from 0 to 65535');
});
