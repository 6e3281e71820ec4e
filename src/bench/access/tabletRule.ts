/** What a tablet may do: nothing but what is named here. */
import type { Ruling } from './guard.ts';
import { isCrossSite } from './guard.ts';
import { hostName, type Visitor } from './visitor.ts';

export type TabletHouse = {
  /** Addresses and names of the door, as a Host header has them; brackets round IPv6. */
  readonly names: readonly string[];
  /** True for the token of a device that is paired. */
  readonly knows: (token: string) => boolean;
};

type Allowed = { readonly path: RegExp; readonly methods: readonly string[] };

const LOOK = ['GET', 'HEAD'];

/** What somebody who isn't paired yet must see and do. */
const DOORSTEP: readonly Allowed[] = [
  { path: /^\/bench\/tablets\/pair\/?$/, methods: [...LOOK, 'POST'] },
  { path: /^\/bench\/assets\/(bench\.css|bench\.js|steps\.css|steps\.js)$/, methods: LOOK },
];

/** Cards and steps, their pictures, and the one thing that is kept. */
const PAIRED: readonly Allowed[] = [
  { path: /^\/bench\/steps\/?$/, methods: LOOK },
  { path: /^\/bench\/steps\/batch\/?$/, methods: LOOK },
  { path: /^\/bench\/steps\/keep\/?$/, methods: [...LOOK, 'POST'] },
  { path: /^\/bench\/orders\/[\w-]+\/(steps|card)\/?$/, methods: LOOK },
  { path: /^\/bench\/pieces\/[a-z\d-]+\/steps\/?$/, methods: LOOK },
  { path: /^\/bench\/pictures\/[a-z\d-]+\.svg$/, methods: LOOK },
];

const isAmong = (allowed: readonly Allowed[], { path, method }: Visitor): boolean =>
  allowed.some((one) => one.path.test(path) && one.methods.includes(method));

/** Rules on a request that came in by the tablets' door. */
export function ruleTablet(visitor: Visitor, house: TabletHouse): Ruling {
  if (!house.names.includes(hostName(visitor.host))) return { admit: false, refusal: 'wrong-host' };
  if (isCrossSite(visitor)) return { admit: false, refusal: 'cross-site' };
  // It is the server that ends TLS here: nothing else may stand for it.
  if (!visitor.secure || visitor.forwarded) return { admit: false, refusal: 'needs-https' };
  if (isAmong(DOORSTEP, visitor)) return { admit: true };
  const isPaired = visitor.deviceToken !== null && house.knows(visitor.deviceToken);
  if (!isPaired) return { admit: false, refusal: 'unpaired' };
  return isAmong(PAIRED, visitor) ? { admit: true } : { admit: false, refusal: 'not-on-tablet' };
}
