/** What the bench takes from its environment; each has a value that is right for one maker at one machine. */
import { isIP } from 'node:net';
import { resolve } from 'node:path';

export type Settings = {
  /** CLASPWISE_BOOK: the order book's file. */
  readonly bookFile: string;
  /** CLASPWISE_HOSTS: names, besides this machine's own, under which shop and bench are reached; comma between. */
  readonly hosts: readonly string[];
  /** CLASPWISE_SHOP_ORIGINS: addresses of shops elsewhere whose pages may send orders here; comma between. */
  readonly shopOrigins: readonly string[];
  /** CLASPWISE_PROXIES: addresses of proxies that hand visitors on and say from where and by what; comma between. */
  readonly proxies: readonly string[];
  /** CLASPWISE_DESK_PER_MINUTE: orders a minute from one address; 0 for no limit. */
  readonly deskPerMinute: number;
  /** CLASPWISE_TABLET_PORT: where tablets of the home network are let in, once that is switched on; 0 for any that is free. */
  readonly tabletPort: number;
};

type Environment = Readonly<Record<string, string | undefined>>;

/** A buyer sends one; a class of ten behind one address sends ten. */
const DESK_PER_MINUTE = 20;
const TABLET_PORT = 4343;

/** Reads the settings. Throws RangeError naming a variable that can't be read. */
export function settingsFrom(environment: Environment, folder: string): Settings {
  return {
    bookFile: resolve(folder, environment.CLASPWISE_BOOK ?? '.book/orders.sqlite'),
    hosts: listed(environment.CLASPWISE_HOSTS).map((host) => host.toLowerCase()),
    shopOrigins: listed(environment.CLASPWISE_SHOP_ORIGINS).map(toOrigin),
    proxies: listed(environment.CLASPWISE_PROXIES).map(toAddress),
    deskPerMinute: toCount(
      'CLASPWISE_DESK_PER_MINUTE',
      environment.CLASPWISE_DESK_PER_MINUTE,
      DESK_PER_MINUTE,
    ),
    tabletPort: toPort('CLASPWISE_TABLET_PORT', environment.CLASPWISE_TABLET_PORT, TABLET_PORT),
  };
}

function listed(text: string | undefined): string[] {
  return (text ?? '')
    .split(',')
    .map((part) => part.trim())
    .filter((part) => part !== '');
}

function toOrigin(address: string): string {
  if (!URL.canParse(address)) {
    throw new RangeError(
      `CLASPWISE_SHOP_ORIGINS: got "${address}", expected addresses like https://shop.example`,
    );
  }
  return new URL(address).origin;
}

function toAddress(text: string): string {
  if (isIP(text) === 0) {
    throw new RangeError(`CLASPWISE_PROXIES: got "${text}", expected IP addresses like 127.0.0.1`);
  }
  return text;
}

function toCount(name: string, text: string | undefined, usual: number): number {
  if (text === undefined || text === '') return usual;
  if (!/^\d{1,7}$/.test(text)) throw new RangeError(`${name}: got "${text}", expected a whole number from 0`);
  return Number(text);
}

function toPort(name: string, text: string | undefined, usual: number): number {
  const port = toCount(name, text, usual);
  if (port > 65_535) throw new RangeError(`${name}: got "${text ?? ''}", expected a port from 0 to 65535`);
  return port;
}
