/** What is known of a request before it is let in. */

export type Visitor = {
  readonly method: string;
  /** Path without query. */
  readonly path: string;
  /** The Host header, lower case; '' where there is none. */
  readonly host: string;
  /** Address the connection comes from. */
  readonly address: string;
  /** True where a proxy has handed the request on. */
  readonly forwarded: boolean;
  /** True over TLS, also where it ends at a proxy. */
  readonly secure: boolean;
  readonly origin: string | null;
  /** Fetch Metadata (W3C): which site asks, and how. */
  readonly fetchSite: string | null;
  readonly fetchMode: string | null;
  /** Value of the bench's cookie. */
  readonly token: string | null;
};

/** `__Host-` binds it to this host, to TLS and to the whole path (RFC 6265bis, 4.1.3.2). */
export const COOKIE = '__Host-bench';
const PROXY_HEADERS = [
  'forwarded',
  'x-forwarded-for',
  'x-forwarded-host',
  'x-forwarded-proto',
  'x-real-ip',
  'via',
];

/** Reads a request. `address`: as the server knows it. */
export function visitorOf(request: Request, address: string): Visitor {
  const { headers } = request;
  const url = new URL(request.url);
  const proto = headers.get('x-forwarded-proto') ?? url.protocol.slice(0, -1);
  return {
    method: request.method,
    path: url.pathname,
    host: (headers.get('host') ?? '').toLowerCase(),
    address,
    forwarded: PROXY_HEADERS.some((name) => headers.has(name)),
    secure: proto === 'https',
    origin: headers.get('origin'),
    fetchSite: headers.get('sec-fetch-site'),
    fetchMode: headers.get('sec-fetch-mode'),
    token: cookie(headers.get('cookie') ?? ''),
  };
}

/** Name of a Host header without its port; brackets of IPv6 kept. */
export function hostName(host: string): string {
  return /^(\[[\da-f:.]+\]|[^:]*)(:\d+)?$/.exec(host)?.[1] ?? '';
}

const LOOPBACK_NAMES = ['127.0.0.1', 'localhost', '[::1]'];
const LOOPBACK_ADDRESS = /^(127\.\d+\.\d+\.\d+|::1|::ffff:127\.\d+\.\d+\.\d+)$/;

export function hasLoopbackName(visitor: Visitor): boolean {
  return LOOPBACK_NAMES.includes(hostName(visitor.host));
}

/** True for someone at this very machine: by name, by address, and with no proxy between. */
export function isHere(visitor: Visitor): boolean {
  return hasLoopbackName(visitor) && LOOPBACK_ADDRESS.test(visitor.address) && !visitor.forwarded;
}

/**
 * Whose limit a request counts against: the connection's address, or, where a
 * proxy on this machine hands it on, the address that this proxy wrote last.
 */
export function senderOf(request: Request, address: string): string {
  const passed = request.headers.get('x-forwarded-for')?.split(',').at(-1)?.trim() ?? '';
  return LOOPBACK_ADDRESS.test(address) && passed !== '' ? passed : address;
}

function cookie(header: string): string | null {
  const pairs = header.split(';').map((pair) => pair.trim().split('='));
  return pairs.find(([name]) => name === COOKIE)?.[1] ?? null;
}
