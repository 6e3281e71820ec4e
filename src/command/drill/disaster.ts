/** What one disaster of the drill is, and what came of it. */
import type { Buyers } from './people.ts';

export type Place = {
  /** Folder of this disaster alone. */
  readonly folder: string;
  /** The book's file in it. */
  readonly file: string;
  readonly people: Buyers;
};

export type Outcome = {
  readonly receipted: number;
  readonly found: number;
  /** What the maker saw, or why it was left out. */
  readonly saw: string;
  readonly leftOut?: boolean;
};

export type Disaster = {
  readonly name: string;
  /** Played in the ordinary tests too: it takes a second or two. */
  readonly short?: boolean;
  readonly play: (place: Place) => Promise<Outcome>;
};

export const leftOut = (why: string): Outcome => ({
  receipted: 0,
  found: 0,
  saw: `left out: ${why}`,
  leftOut: true,
});

/** An account that owns nothing, as most systems have it; only root can run something as another. */
export const NOBODY = 65534;
export const isRoot = process.getuid?.() === 0;
