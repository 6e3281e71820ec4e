import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { LANGS } from '#words/lang.ts';
import { headersFor, readHeaders } from '../../../src/command/serve/fileHeaders.ts';

it('reads paths, wildcards and comments, the later rule over the earlier', () => {
  const rules = readHeaders('# note\n/*\n  X-A: 1\n  X-B: a: b\n\n/x/*\n\tX-A: 2\n/x/y\n  X-C: 3\n');
  expect([...headersFor(rules, '/')]).toEqual([
    ['x-a', '1'],
    ['x-b', 'a: b'],
  ]);
  expect(headersFor(rules, '/x/y').get('x-a')).toBe('2');
  expect(headersFor(rules, '/x/y').get('x-c')).toBe('3');
  expect(headersFor(rules, '/x/z').has('x-c')).toBe(false);
});

it('gives every public page what a careful person expects', () => {
  const headers = headersFor(readHeaders(readFileSync('public/_headers', 'utf8')), '/pieces/weir-light/');
  // OWASP Secure Headers Project, recommended response headers.
  expect(headers.get('x-content-type-options')).toBe('nosniff');
  expect(headers.get('content-security-policy')).toContain("frame-ancestors 'self'");
  expect(headers.get('content-security-policy')).not.toContain('unsafe');
  expect(headers.get('strict-transport-security')).toMatch(/max-age=\d{8}/);
  expect(headers.has('referrer-policy')).toBe(true);
  expect(headers.has('permissions-policy')).toBe(true);
});

it('lets a browser keep for ever only what is named by its content', () => {
  const rules = readHeaders(readFileSync('public/_headers', 'utf8'));
  const kept = (path: string) => headersFor(rules, path).get('cache-control') ?? '';
  for (const path of [
    '/_astro/a.1b2c.js',
    ...LANGS.map((lang) => `/pagefind/${lang}/lists/1b2c/7.json`),
    ...LANGS.flatMap((lang) =>
      ['fragment', 'index', 'filter'].map((kind) => `/pagefind/${lang}/${kind}/unknown_1.pf_${kind}`),
    ),
  ]) {
    // RFC 8246, section 2.
    expect(kept(path), path).toContain('immutable');
  }
  expect(kept('/fonts/ysabeau.woff2')).toBe('public, max-age=2592000');
  for (const path of [
    '/',
    '/pieces/weir-light/',
    '/pagefind/en/pagefind-entry.json',
    '/pagefind/de/pagefind.js',
  ]) {
    expect(kept(path), path).toBe('');
  }
});
