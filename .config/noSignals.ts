/** What Astro's Preact client would import for an island with signals in its props. */

/** Throws Error: no island of this shop is given a signal. */
export function signal(): never {
  throw new Error('got a signal in the props of an island, expected plain data');
}
