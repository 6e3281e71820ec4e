/** What the server refuses before anybody reads it: methods, hosts and paths that no page answers to. */
import type { IncomingMessage } from 'node:http';

/** `area`: whose headers the answer carries. */
export type Admission =
  | { readonly admit: true; readonly area: 'files' | 'guarded' }
  | {
      readonly admit: false;
      readonly status: 308 | 400 | 404 | 405;
      /** Methods that the path knows, for `Allow`. */
      readonly allow?: string;
      /** Where the shop stands, for one who asked beside it. */
      readonly location?: string;
    };

const GUARDED = /^\/(bench|desk)(\/|$)/;
const METHODS = {
  files: ['GET', 'HEAD'],
  guarded: ['GET', 'HEAD', 'POST', 'OPTIONS'],
} as const;
/** A name, an IPv4 address or an IPv6 one in brackets, and a port (RFC 9110, 7.2; RFC 3986, 3.2.2). */
const HOST = /^([\w.-]+|\[[\da-f:.]+\])(:\d{1,5})?$/i;

/** The path that a router may take another spelling for: decoded, slashes alike, none twice, no dots. */
function plainPath(path: string): string | null {
  try {
    const decoded = decodeURIComponent(path).replaceAll('\\', '/');
    return new URL(decoded.replace(/\/{2,}/g, '/'), 'http://x').pathname.toLowerCase();
  } catch {
    return null;
  }
}

/**
 * Rules on a request line and its Host header. A guarded page has one spelling:
 * under any other it would pass for a file, with a file's caching and compression.
 * Beside the folder that the shop stands in there is nothing.
 * @param base path of that folder, with a slash at both ends
 */
export function admission({ method = 'GET', url = '/', headers }: IncomingMessage, base = '/'): Admission {
  const asked = url.split('?')[0] ?? '/';
  // Before HTTP/1.1 no host was named.
  if (headers.host !== undefined && !HOST.test(headers.host)) return { admit: false, status: 400 };
  if (plainPath(asked) === null || !asked.startsWith('/')) return { admit: false, status: 400 };
  if (!asked.startsWith(base)) {
    const nearly = asked === '/' || `${asked}/` === base;
    return { admit: false, ...(nearly ? { status: 308, location: base } : { status: 404 }) };
  }
  const path = asked.slice(base.length - 1);
  const plain = plainPath(path) ?? path;
  const area = GUARDED.test(path) ? 'guarded' : 'files';
  if (area === 'files' && GUARDED.test(plain)) return { admit: false, status: 404 };
  const methods: readonly string[] = METHODS[area];
  if (!methods.includes(method)) return { admit: false, status: 405, allow: methods.join(', ') };
  return { admit: true, area };
}
