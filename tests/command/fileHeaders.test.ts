import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { headersFor, readHeaders } from '../../src/command/serve/fileHeaders.ts';

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
