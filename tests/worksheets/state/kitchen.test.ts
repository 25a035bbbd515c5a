import { blankKitchen } from '@larderwright/calc/kitchen';
import { beforeEach, describe, expect, test } from 'vitest';
import { keptSetting } from '../../../worksheets/state/kept-setting.ts';
import { $kitchen, changeKitchen, kitchenAside, lookAtKitchen } from '../../../worksheets/state/kitchen.ts';

/** localStorage of one device, as the standard has it; `full` refuses every write. */
const kept = new Map<string, string>();
let full = false;
globalThis.localStorage = {
  getItem: (key: string) => kept.get(key) ?? null,
  setItem: (key: string, text: string) => {
    if (full) throw new DOMException('no room', 'QuotaExceededError');
    kept.set(key, text);
  },
  removeItem: (key: string) => kept.delete(key),
} as unknown as Storage;

const KEY = 'larderwright.kitchen';
/** What another tab writes meanwhile. */
const elsewhere = (part: object) =>
  kept.set(KEY, JSON.stringify({ ...JSON.parse(kept.get(KEY) ?? 'null'), ...part }));

beforeEach(() => {
  kept.clear();
  full = false;
  $kitchen.set({ kitchen: blankKitchen(), trouble: null });
});

describe('the settings of the kitchen', () => {
  test('are on the device after every change, and every page can ask for one of them', () => {
    changeKitchen((now) => ({ ...now, name: 'Lamplight Quay', tempFirst: 'F' }));
    expect(keptSetting('tempFirst')).toBe('F');
    $kitchen.set({ kitchen: blankKitchen(), trouble: null });
    expect(lookAtKitchen().name).toBe('Lamplight Quay');
  });

  test('that two tabs change keep what either has set', () => {
    changeKitchen((now) => ({ ...now, name: 'Lamplight Quay' }));
    elsewhere({ paper: 'letter' });
    changeKitchen((now) => ({ ...now, tempFirst: 'C' }));
    expect(lookAtKitchen()).toMatchObject({ name: 'Lamplight Quay', paper: 'letter', tempFirst: 'C' });
  });

  test('begin with the paper and the colours that were kept before there were settings', () => {
    kept.set('larderwright.paper', 'letter');
    kept.set('scheme', 'dark');
    expect(lookAtKitchen()).toMatchObject({ paper: 'letter', scheme: 'dark' });
  });

  test('write the colours where the first script of a page reads them', () => {
    changeKitchen((now) => ({ ...now, scheme: 'light' }));
    expect(kept.get('scheme')).toBe('light');
    changeKitchen((now) => ({ ...now, scheme: 'system' }));
    expect(kept.has('scheme')).toBe(false);
  });

  test('on a full device stay on screen, all of them, and say so until there is room', () => {
    full = true;
    changeKitchen((now) => ({ ...now, name: 'Lamplight Quay' }));
    changeKitchen((now) => ({ ...now, paper: 'letter' }));
    lookAtKitchen();
    expect($kitchen.get()).toMatchObject({
      kitchen: { name: 'Lamplight Quay', paper: 'letter' },
      trouble: { id: 'not-kept', detail: 'no room' },
    });
    full = false;
    changeKitchen((now) => ({ ...now, tempFirst: 'C' }));
    expect($kitchen.get().trouble).toBeNull();
    expect(JSON.parse(kept.get(KEY) ?? '')).toMatchObject({ name: 'Lamplight Quay', tempFirst: 'C' });
  });

  test('that cannot be read are set aside whole and told', () => {
    kept.set(KEY, '{"version":1,"name":7}');
    expect(lookAtKitchen().name).toBe('');
    expect($kitchen.get().trouble?.id).toBe('damaged');
    expect(kitchenAside()).toBe('{"version":1,"name":7}');
  });

  test('of a newer version are told and never written over', () => {
    kept.set(KEY, '{"version":9,"name":"later"}');
    lookAtKitchen();
    changeKitchen((now) => ({ ...now, name: 'earlier' }));
    expect($kitchen.get().trouble).toEqual({ id: 'newer', detail: '9' });
    expect(kept.get(KEY)).toBe('{"version":9,"name":"later"}');
  });
});
