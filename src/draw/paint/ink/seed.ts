/** Chance that is the same each time: stones vary from one to the next, and never between two drawings. */

/** FNV-1a, 32 bits (Fowler, Noll and Vo; offset basis and prime as published). */
export function hash(text: string): number {
  let state = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) {
    state = Math.imul(state ^ text.charCodeAt(at), 0x01000193);
  }
  return state >>> 0;
}

/** A stream of numbers in [0, 1) that depends on `seed` alone: a Weyl sequence, mixed as in MurmurHash3's finaliser. */
export function stream(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32;
  };
}
