import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { browserStore } from '#sizer/adapters/browserStore.ts';

let kept: Map<string, string>;
beforeEach(() => {
  kept = new Map();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => kept.set(key, text),
    removeItem: (key: string) => kept.delete(key),
  });
});
afterEach(() => vi.unstubAllGlobals());

const standIn = (folder: string | undefined): void =>
  void vi.stubGlobal('document', { documentElement: { dataset: folder === undefined ? {} : { folder } } });

test('two shops on one host keep what is theirs apart', () => {
  standIn('/shop/');
  browserStore.write('size', '16 cm');
  standIn('/other/');
  expect(browserStore.read('size')).toBeNull();
  browserStore.write('size', '17 cm');
  browserStore.erase('size');
  standIn('/shop/');
  expect(browserStore.read('size')).toBe('16 cm');
});

test('at the root of the host the keys are as they were before there were folders', () => {
  standIn(undefined);
  browserStore.write('size', '16 cm');
  expect([...kept.keys()]).toEqual(['size']);
});

test('where nothing may be kept, nothing breaks', () => {
  standIn(undefined);
  vi.stubGlobal('localStorage', undefined);
  expect(browserStore.write('size', '16 cm')).toBe(false);
  expect(browserStore.read('size')).toBeNull();
  expect(() => browserStore.erase('size')).not.toThrow();
});
