import { expect, test } from 'vitest';
import { hash, stream } from '#draw/paint/ink/seed.ts';

// FNV-1a test vectors of the authors (isthe.com/chongo/tech/comp/fnv; from memory).
test.each([
  ['', 0x811c9dc5],
  ['a', 0xe40c292c],
  ['foobar', 0xbf9cf968],
])('the hash of %j is as published', (text, value) => {
  expect(hash(text)).toBe(value);
});

test('a stream stays within 0 and 1, fills it evenly, and is the same again', () => {
  const next = stream(7);
  const drawn = Array.from({ length: 20_000 }, next);
  expect(Math.min(...drawn)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...drawn)).toBeLessThan(1);
  const tenths = Array.from(
    { length: 10 },
    (_, at) => drawn.filter((one) => Math.floor(one * 10) === at).length,
  );
  for (const count of tenths) expect(Math.abs(count - 2000)).toBeLessThan(250);
  const again = stream(7);
  expect(Array.from({ length: 20_000 }, again)).toEqual(drawn);
  expect(stream(8)()).not.toBe(drawn[0]);
});
