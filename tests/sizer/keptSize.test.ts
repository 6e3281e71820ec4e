import { describe, expect, test } from 'vitest';
import type { Store } from '#sizer/model/ports.ts';
import { recall } from '#sizer/model/remember.ts';
import { startOf } from '#sizer/model/sizerState.ts';
import { bracelet } from './support.ts';
import { keepMeasure, keepUnit, keptMeasure, keptUnit } from '#sizer/model/keptSize.ts';

function memory(first: Record<string, string> = {}): Store {
  const kept = new Map(Object.entries(first));
  return {
    read: (key) => kept.get(key) ?? null,
    erase: (key) => void kept.delete(key),
    write: (key, text) => {
      kept.set(key, text);
      return true;
    },
  };
}

describe('what the device remembers', () => {
  test('a measure comes back with its unit written out', () => {
    const store = memory();
    keepMeasure(store, { of: 'wrist', text: '6 1/2' }, 'in');
    expect(keptMeasure(store)).toEqual({ of: 'wrist', text: '6 1/2 in' });
    keepMeasure(store, { of: 'length', text: '45 cm' }, 'in');
    expect(keptMeasure(store)).toEqual({ of: 'length', text: '45 cm' });
    expect(keptMeasure(store, 'wrist')).toEqual({ of: 'wrist', text: '6 1/2 in' });
    expect(keptMeasure(store, 'neck')).toBeNull();
  });

  test('the sizing island reads the same entry', () => {
    const store = memory();
    keepMeasure(store, { of: 'wrist', text: '16,5' }, 'cm');
    expect(recall(store, bracelet, startOf('bracelet', 'in'))).toMatchObject({
      of: 'wrist',
      text: '16,5',
      unit: 'cm',
    });
  });

  test('a change of unit leaves the rest alone', () => {
    const store = memory();
    keepMeasure(store, { of: 'wrist', text: '7' }, 'in');
    keepUnit(store, 'cm');
    expect(keptUnit(store)).toBe('cm');
    expect(keptMeasure(store)).toEqual({ of: 'wrist', text: '7 in' });
  });

  test.each(['', '{', '[]', 'null', '"x"', '{"unit":"ell"}', '{"of":"wrist","wrist":{"text":7}}'])(
    'a damaged entry (%s) is as none',
    (text) => {
      const store = memory({ 'claspwise.size': text });
      expect(keptUnit(store)).toBeNull();
      expect(keptMeasure(store)).toBeNull();
    },
  );
});
