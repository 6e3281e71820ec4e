import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { headersUnder } from '#ui/build/folder.ts';
import { headersFor, readHeaders } from '../../../src/command/serve/fileHeaders.ts';

it('the headers of every path of the shop are those of the same path in its folder', () => {
  const written = readFileSync('public/_headers', 'utf8');
  const root = readHeaders(written);
  const inFolder = readHeaders(headersUnder(written, '/shop/'));
  for (const path of ['/', '/_astro/a.1b2c.js', '/fonts/ysabeau.woff2', '/schema/order-4.json']) {
    expect(headersFor(root, path).size).toBeGreaterThan(3);
    expect(headersFor(inFolder, `/shop${path}`)).toEqual(headersFor(root, path));
  }
  expect(headersFor(inFolder, '/elsewhere/').size).toBe(0);
  expect(headersUnder(written, '/')).toBe(written);
});
