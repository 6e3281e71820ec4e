import { describe, expect, test } from 'vitest';
import { NOTHING_DONE, startedFrom } from '#sizer/model/doneBefore.ts';
import { startOf } from '#sizer/model/sizerState.ts';

const fresh = startOf('bracelet', 'in');
const kept = { ...fresh, text: '6 1/2' };

describe('what was done before the form was alive', () => {
  test('nothing leaves what was kept', () => {
    expect(startedFrom(kept, NOTHING_DONE, 'in', 'en')).toBe(kept);
  });

  test('unit and slider count where no measure was kept', () => {
    // A step of the page as built is an eighth of an inch: 52 are 165.1 mm.
    const metric = startedFrom(fresh, { ...NOTHING_DONE, unit: 'cm', step: 52 }, 'in', 'en');
    expect([metric.text, metric.unit]).toEqual(['16.5', 'cm']);
    const inches = startedFrom(fresh, { ...NOTHING_DONE, step: 52 }, 'in', 'en');
    expect([inches.text, inches.unit]).toEqual(['6½', 'in']);
    expect(startedFrom(fresh, { ...NOTHING_DONE, unit: 'cm', step: 52 }, 'in', 'de').text).toBe('16,5');
  });

  test('beside a kept measure they are what the browser put back, and change nothing', () => {
    expect(startedFrom(kept, { ...NOTHING_DONE, unit: 'cm', step: 52 }, 'in', 'en')).toBe(kept);
  });

  test('what was written counts over all, and another measure forgets what the slider said of the first', () => {
    const done = { unit: null, step: 52, actions: [{ type: 'write', text: '7' }] } as const;
    expect(startedFrom(kept, done, 'in', 'en').text).toBe('7');
    const other = { unit: null, step: 52, actions: [{ type: 'by', of: 'length' }] } as const;
    expect(startedFrom(fresh, other, 'in', 'en')).toMatchObject({ of: 'length', text: '' });
  });
});
