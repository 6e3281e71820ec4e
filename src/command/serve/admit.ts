/** What the server refuses before anybody reads it: methods, hosts and paths that no page answers to. */
import type { IncomingMessage } from 'node:http';

/** `area`: whose headers the answer carries. */
export type Admission =
  | { readonly admit: true; readonly area: 'files' | 'guarded' }
  | {
      readonly admit: false;
      readonly status: 400 | 404 | 405;
      /** Methods that the path knows, for `Allow`. */
      readonly allow?: string;
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
 */
export function admission({ method = 'GET', url = '/', headers }: IncomingMessage): Admission {
  const path = url.split('?')[0] ?? '/';
  // Before HTTP/1.1 no host was named.
  if (headers.host !== undefined && !HOST.test(headers.host)) return { admit: false, status: 400 };
  const plain = plainPath(path);
  if (plain === null || !path.startsWith('/')) return { admit: false, status: 400 };
  const area = GUARDED.test(path) ? 'guarded' : 'files';
  if (area === 'files' && GUARDED.test(plain)) return { admit: false, status: 404 };
  const methods: readonly string[] = METHODS[area];
  if (!methods.includes(method)) return { admit: false, status: 405, allow: methods.join(', ') };
  return { admit: true, area };
}
