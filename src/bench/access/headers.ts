/** The headers that every answer of bench and desk carries. */
import { isPreview } from './previewPage.ts';

/** Only the bench's own files run, load or receive a form; nothing inline, no frame. */
const BENCH_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  "font-src 'self'",
  "connect-src 'self'",
  "form-action 'self'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
].join('; ');

const HEADERS: Readonly<Record<string, string>> = {
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  // Not `no-referrer`: with it browsers send `Origin: null` with the bench's own forms.
  'referrer-policy': 'same-origin',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'camera=(), geolocation=(), microphone=(), payment=(), usb=()',
  'x-robots-tag': 'noindex, nofollow',
};

/** A page of the shop brings hashes of its own scripts along; no other page may hold it all the same. */
const previewPolicy = (ownPolicy: string): string =>
  `${ownPolicy.replace(/;?\s*$/, '')}; frame-ancestors 'none'`;

/** Orders are personal: kept by no cache. Assets hold nothing personal. */
const ASSET = /^\/bench\/assets\//;

/** Puts the headers on an answer. `strict`: with the content policy; off in development, whose tools run inline. */
export function guardHeaders(headers: Headers, path: string, strict: boolean): void {
  for (const [name, value] of Object.entries(HEADERS)) headers.set(name, value);
  // Pages come without it, and older readers would guess.
  if (headers.get('content-type') === 'text/html') headers.set('content-type', 'text/html; charset=utf-8');
  if (!ASSET.test(path)) headers.set('cache-control', 'no-store');
  if (path.startsWith('/desk')) headers.set('cross-origin-resource-policy', 'cross-origin');
  const own = isPreview(path) ? headers.get('content-security-policy') : null;
  if (strict) headers.set('content-security-policy', own === null ? BENCH_POLICY : previewPolicy(own));
}
