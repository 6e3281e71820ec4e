/** Under which addresses tablets of the home network reach this machine, and who is on that network. */
import { BlockList, isIP, isIPv6 } from 'node:net';
import type { NetworkInterfaceInfo } from 'node:os';

type Interfaces = Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>;

/** Addresses that no router hands on to the wide net, and this machine's own. */
const HOME = new BlockList();
// Private (RFC 1918), link-local (RFC 3927), loopback (RFC 1122).
HOME.addSubnet('10.0.0.0', 8);
HOME.addSubnet('172.16.0.0', 12);
HOME.addSubnet('192.168.0.0', 16);
HOME.addSubnet('169.254.0.0', 16);
HOME.addSubnet('127.0.0.0', 8);
// Unique local (RFC 4193), link-local and loopback (RFC 4291).
HOME.addSubnet('fc00::', 7, 'ipv6');
HOME.addSubnet('fe80::', 10, 'ipv6');
HOME.addAddress('::1', 'ipv6');

/** True for an address of the home network, or of this machine. */
export function isHomeAddress(address: string): boolean {
  // IPv4 addresses also come written as IPv6 ones (RFC 4291, 2.5.5.2).
  const plain = address.replace(/^::ffff:(?=\d+\.)/i, '').replace(/%.*$/, '');
  return isIP(plain) !== 0 && HOME.check(plain, isIPv6(plain) ? 'ipv6' : 'ipv4');
}

const isLinkLocal = (address: string): boolean => /^(fe[89ab]|169\.254\.)/i.test(address);

/** The machine's own addresses that a tablet may use: IPv4 before IPv6, those of the home network first. */
export function ownAddresses(interfaces: Interfaces): string[] {
  const all = Object.values(interfaces)
    .flatMap((one) => one ?? [])
    .filter(({ internal, address }) => !internal && !isLinkLocal(address))
    .map(({ address }) => address);
  const rank = (address: string): number => (isIPv6(address) ? 2 : 0) + (isHomeAddress(address) ? 0 : 1);
  return [...new Set(all)].toSorted((one, other) => rank(one) - rank(other));
}

/** A name that a certificate can bear (RFC 1123, 2.1). */
const isName = (name: string): boolean =>
  /^(?=.{1,253}$)[a-z\d]([a-z\d-]*[a-z\d])?(\.[a-z\d]([a-z\d-]*[a-z\d])?)*$/i.test(name);

/**
 * All that the machine is called by on the home network: its addresses, its
 * name, that name as mDNS has it (RFC 6762), and hosts of the settings.
 */
export function doorNames(interfaces: Interfaces, hostname: string, hosts: readonly string[]): string[] {
  const name = hostname.toLowerCase();
  const local = name.endsWith('.local') ? [] : [`${name.split('.')[0] ?? name}.local`];
  const names = [name, ...local, ...hosts].filter((one) => isIP(one) !== 0 || isName(one));
  return [...new Set([...ownAddresses(interfaces), ...names])];
}

/** A name as an address or a Host header has it: IPv6 in brackets (RFC 3986, 3.2.2). */
export const asHostName = (name: string): string => (isIPv6(name) ? `[${name}]` : name);
