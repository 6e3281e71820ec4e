/** Who may come in: the one decision before any page of the bench or the desk runs. */
import { hasLoopbackName, hostName, isHere, ownOrigin, type Visitor } from './visitor.ts';

export type Refusal =
  /** The Host header names neither this machine nor a host of the settings: a rebound name, or a missing setting. */
  | 'wrong-host'
  /** A page of another site asks. */
  | 'cross-site'
  /** From elsewhere, and no passphrase has been set at this machine. */
  | 'no-passphrase'
  /** From elsewhere without TLS: passphrase and orders would cross the network in the open. */
  | 'needs-https'
  /** From elsewhere, not signed in. */
  | 'sign-in'
  /** By the tablets' door, from a device that was never paired or was sent away. */
  | 'unpaired'
  /** By the tablets' door, and no card or step. */
  | 'not-on-tablet';

export type Ruling = { readonly admit: true } | { readonly admit: false; readonly refusal: Refusal };

export type House = {
  readonly hosts: readonly string[];
  readonly hasPassphrase: () => boolean;
  /** True for the token of a visit that has not ended. */
  readonly knows: (token: string) => boolean;
};

const SAFE = ['GET', 'HEAD', 'OPTIONS'];
/** What someone who is not signed in must see in order to sign in. */
const DOORSTEP = /^\/bench\/(enter|assets\/[\w.-]+)\/?$/;
const ADMIT: Ruling = { admit: true };

/** Rules on a request for `/bench/…` or `/desk/…`. */
export function rule(visitor: Visitor, house: House): Ruling {
  if (!hasLoopbackName(visitor) && !house.hosts.includes(hostName(visitor.host))) {
    return { admit: false, refusal: 'wrong-host' };
  }
  // The desk is for buyers; it looks at origins itself.
  if (visitor.path.startsWith('/desk')) return ADMIT;
  if (isCrossSite(visitor)) return { admit: false, refusal: 'cross-site' };
  if (isHere(visitor)) return ADMIT;
  if (!visitor.secure) return { admit: false, refusal: 'needs-https' };
  if (!house.hasPassphrase()) return { admit: false, refusal: 'no-passphrase' };
  if (DOORSTEP.test(visitor.path)) return ADMIT;
  const known = visitor.token !== null && house.knows(visitor.token);
  return known ? ADMIT : { admit: false, refusal: 'sign-in' };
}

/**
 * A change must come from a page of this very host; anything else from another
 * site may only be a link that was followed.
 */
export function isCrossSite(visitor: Visitor): boolean {
  const { fetchSite, fetchMode, origin } = visitor;
  if (!SAFE.includes(visitor.method)) {
    // Whole: a page of another scheme or port of this host is another site's.
    if (origin !== null) return origin !== ownOrigin(visitor);
    return fetchSite !== 'same-origin';
  }
  if (fetchSite === null || fetchSite === 'same-origin' || fetchSite === 'none') return false;
  return fetchMode !== 'navigate';
}
