import { expect, test } from 'vitest';
import { isShownUnit } from '#core/units/unit.ts';

test.each([
  ['in', true],
  ['cm', true],
  // Written in, but no page is read in it.
  ['mm', false],
  ['', false],
  [null, false],
  [0, false],
])('%j as the unit of a page: %j', (value, shown) => {
  expect(isShownUnit(value)).toBe(shown);
});
