/** What is known of a request before it is let in. */
import { isIP } from 'node:net';
import type { StockHand } from '#words/benchCodes.ts';
import { insideBase } from '#ui/site/base.ts';
import { doorOf, type Door } from '../tablets/door.ts';

export type Visitor = {
  readonly method: string;
  /** Path within the shop, without query. */
  readonly path: string;
  /** The Host header, lower case; '' where there is none. */
  readonly host: string;
  /** Address the connection comes from. */
  readonly address: string;
  /** True where a proxy has handed the request on. */
  readonly forwarded: boolean;
  /** True over TLS, also where it ends at a proxy of the settings. */
  readonly secure: boolean;
  readonly origin: string | null;
  /** Fetch Metadata (W3C): which site asks, and how. */
  readonly fetchSite: string | null;
  readonly fetchMode: string | null;
  /** Value of the bench's cookie. */
  readonly token: string | null;
  /** Value of a paired device's cookie. */
  readonly deviceToken: string | null;
  readonly door: Door;
};

/** `__Host-` binds it to this host, to TLS and to the whole path (RFC 6265bis, 4.1.3.2). */
export const COOKIE = '__Host-bench';
export const DEVICE_COOKIE = '__Host-device';
const PROXY_HEADERS = [
  'forwarded',
  'x-forwarded-for',
  'x-forwarded-host',
  'x-forwarded-proto',
  'x-real-ip',
  'via',
];

/**
 * Reads a request.
 * @param address the connection's, as the server knows it
 * @param proxies addresses whose word on whom they hand on is believed; anyone can write such a header
 */
export function visitorOf(request: Request, address: string, proxies: readonly string[] = []): Visitor {
  const { headers } = request;
  const url = new URL(request.url);
  const handedOn = isOneOf(proxies, address) ? headers.get('x-forwarded-proto') : null;
  return {
    method: request.method,
    path: insideBase(url.pathname),
    host: (headers.get('host') ?? '').toLowerCase(),
    address,
    forwarded: PROXY_HEADERS.some((name) => headers.has(name)),
    secure: url.protocol === 'https:' || handedOn === 'https',
    origin: headers.get('origin'),
    fetchSite: headers.get('sec-fetch-site'),
    fetchMode: headers.get('sec-fetch-mode'),
    token: cookie(headers.get('cookie') ?? '', COOKIE),
    deviceToken: cookie(headers.get('cookie') ?? '', DEVICE_COOKIE),
    door: doorOf(request),
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

/** True for someone at this very machine: by name, by address, by the usual door, and with no proxy between. */
export function isHere(visitor: Visitor): boolean {
  return (
    visitor.door === 'usual' &&
    hasLoopbackName(visitor) &&
    LOOPBACK_ADDRESS.test(visitor.address) &&
    !visitor.forwarded
  );
}

/** Who changes stock: someone at this machine, or signed in from elsewhere. */
export const whoIs = (visitor: Visitor): StockHand => (isHere(visitor) ? 'machine' : 'visit');

/** The origin that a page of the visited host has, in the spelling of an Origin header; '' for a broken host. */
export function ownOrigin({ secure, host }: Pick<Visitor, 'secure' | 'host'>): string {
  const address = `${secure ? 'https' : 'http'}://${host}`;
  return URL.canParse(address) ? new URL(address).origin : '';
}

/**
 * Whose limit a request counts against: the connection's address, or, where a
 * proxy of the settings hands it on, the address that this proxy wrote last.
 */
export function senderOf(request: Request, address: string, proxies: readonly string[]): string {
  const passed = request.headers.get('x-forwarded-for')?.split(',').at(-1)?.trim() ?? '';
  return isOneOf(proxies, address) && isIP(passed) !== 0 ? passed : address;
}

/** IPv4 addresses also come written as IPv6 ones (RFC 4291, 2.5.5.2). */
const isOneOf = (proxies: readonly string[], address: string): boolean =>
  proxies.includes(address.replace(/^::ffff:(?=\d+\.)/, ''));

function cookie(header: string, called: string): string | null {
  const pairs = header.split(';').map((pair) => pair.trim().split('='));
  return pairs.find(([name]) => name === called)?.[1] ?? null;
}
