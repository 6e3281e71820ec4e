/** The whole links of an extender chain: the clasp hooks into one of them, and nowhere between. */
import type { Design, Ends } from './design.ts';

/** Chains measured with a ruler and links with a calliper never divide evenly, mm. */
const NOISE_MM = 0.01;

/** Whole links that a length of chain holds. */
export function wholeLinks(chainMm: number, linkMm: number): number {
  return Math.floor((chainMm + NOISE_MM) / linkMm);
}

/** The link that the clasp hooks into where the chain is let out so far, counted from the piece; null where the links' length isn't known. */
export function linkAt({ linkMm }: Pick<Ends, 'linkMm'>, chainMm: number): number | null {
  return linkMm === undefined ? null : Math.round(chainMm / linkMm);
}

/**
 * Links that a fit may count on; 0 where there are none, or where their length isn't known.
 * On several strands the chain is left to the wearer: let out, it would lengthen all of them alike.
 */
export function linksToFit({ strands, ends }: Design): number {
  return strands.length === 1 ? (linkAt(ends, ends.extenderMm) ?? 0) : 0;
}

/** The same design, of whose chain nobody knows the links: it may be let out by any length. */
export function withoutLinks(design: Design): Design {
  const { linkMm: _linkMm, ...ends } = design.ends;
  return { ...design, ends };
}
