/** The drill over the built shop: whatever happens, an order with a receipt is found. */
import { expect, it } from 'vitest';
import { disasters, playAll } from '../../src/command/drill/play.ts';

/** All of them where CLASPWISE_THOROUGH is set (a minute or two); else those that take seconds. */
const wanted = disasters.filter(
  ({ short }) => short === true || process.env.CLASPWISE_THOROUGH !== undefined,
);

it(`${wanted.length} disasters lose no order that was answered for`, { timeout: 900_000 }, async () => {
  expect(wanted.length).toBeGreaterThan(1);
  for (const { name, receipted, found, leftOut } of await playAll(wanted)) {
    expect([name, found]).toEqual([name, receipted]);
    // Building alone takes no orders.
    if (leftOut !== true && name !== 'build folder not writable') expect(receipted).toBeGreaterThan(0);
  }
});
