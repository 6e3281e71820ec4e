import { describe, expect, it } from 'vitest';
import { takes } from '#core/geometry/packing.ts';

describe('a hole', () => {
  it('takes what is as wide as itself, give or take less than a drill’s error', () => {
    expect([takes(1, 1), takes(1, 0.9), takes(0.9996, 1), takes(0.999, 1)]).toEqual([
      true,
      true,
      true,
      false,
    ]);
  });
});
