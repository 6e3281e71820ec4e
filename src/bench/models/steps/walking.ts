/**
 * Going through the steps on a device: where she is, what the order book knows of it, and what is still to be saved.
 * Pure: the browser brings clock, network and store. One save is under way at a time, and it stays the same until it
 * is answered, so that one whose answer was lost can be sent again and is done once.
 */

/** A save as it is sent. */
export type Pending = { readonly save: string; readonly place: number; readonly seconds: number };

/** What another window or device left in the book. */
export type Elsewhere = { readonly place: number; readonly version: number; readonly text: string };

export type Walking = {
  readonly total: number;
  /** Ticks done. */
  readonly place: number;
  /** As the book has it, as far as is known; version 0 where it has nothing. */
  readonly book: { readonly place: number; readonly version: number };
  readonly pending: Pending | null;
  /** Seconds by her clock that no save has taken along yet. */
  readonly seconds: number;
  /** `lost`: the bench can't be reached. `refused`: it answers, and doesn't take it; what was sent stays on the device. */
  readonly line: 'well' | 'lost' | 'refused';
  /** Set where another was first, until she says which place counts. */
  readonly elsewhere: Elsewhere | null;
};

/** What is kept on the device, while the book doesn't have it. */
export type Kept = Pick<Walking, 'place' | 'pending' | 'seconds'> & {
  readonly digest: string;
  readonly version: number;
};

export type Answer =
  | { readonly outcome: 'done'; readonly version: number }
  | ({ readonly outcome: 'elsewhere' } & Elsewhere)
  /** `text`: why. */
  | { readonly outcome: 'refused'; readonly text: string };

const within = (place: number, total: number): number => Math.min(total, Math.max(0, Math.trunc(place)));

/**
 * Where to begin on this device.
 * @param book the place and version that the page came with
 * @param kept what the device has of these very steps; null for nothing
 * @param textOf says of the book's place what another window's answer would
 */
export function beginWalking(
  total: number,
  book: Walking['book'],
  kept: Kept | null,
  textOf: () => string,
): Walking {
  const fresh: Walking = {
    total,
    place: within(book.place, total),
    book,
    pending: null,
    seconds: 0,
    line: 'well',
    elsewhere: null,
  };
  if (kept === null) return fresh;
  const mine = { ...fresh, place: within(kept.place, total), pending: kept.pending, seconds: kept.seconds };
  if (kept.version === book.version) return mine;
  // Its own last save may have come through with the answer lost: sent again, the book says how it stands.
  if (kept.pending !== null) return { ...mine, book: { ...book, version: kept.version } };
  if (mine.place === fresh.place) return mine;
  return { ...mine, elsewhere: { ...book, text: textOf() } };
}

/** To another place. */
export const goTo = (walking: Walking, place: number): Walking => ({
  ...walking,
  place: within(place, walking.total),
});

/** Ticks one of a stop, and with it those before it; one that was ticked is unticked, with those after it. */
export const tick = (walking: Walking, at: number): Walking =>
  goTo(walking, at < walking.place ? at : at + 1);

/** The longest that passes between two looks at the clock while anybody strings: beyond it the device slept, s. */
const MOST_GAP_S = 300;

/** Time that went by while her clock ran. */
export const passTime = (walking: Walking, seconds: number): Walking => ({
  ...walking,
  seconds: walking.seconds + Math.min(MOST_GAP_S, Math.max(0, seconds)),
});

/** True where the book doesn't have all of it. */
export const isUnsaved = ({ place, book, pending, seconds }: Walking): boolean =>
  pending !== null || place !== book.place || seconds >= 1;

/** Puts together the next save, or the last one again; null where there is nothing to send, or she must decide first. */
export function nextSave(
  walking: Walking,
  newSave: () => string,
): (Walking & { readonly pending: Pending }) | null {
  const { pending, elsewhere, place, seconds } = walking;
  if (elsewhere !== null || walking.line === 'refused') return null;
  if (pending !== null) return { ...walking, pending };
  if (!isUnsaved(walking)) return null;
  const whole = Math.floor(seconds);
  return { ...walking, pending: { save: newSave(), place, seconds: whole }, seconds: seconds - whole };
}

/** What the bench said to the save that was under way. */
export function answered(walking: Walking, answer: Answer): Walking {
  const { pending } = walking;
  if (pending === null) return walking;
  switch (answer.outcome) {
    case 'done':
      return {
        ...walking,
        pending: null,
        line: 'well',
        book: { place: pending.place, version: answer.version },
      };
    case 'elsewhere': {
      const { place, version, text } = answer;
      return {
        ...walking,
        // Its time was taken all the same.
        pending: null,
        line: 'well',
        elsewhere: { place, version, text },
      };
    }
    case 'refused':
      return { ...walking, line: 'refused' };
  }
}

/** Nothing came back: it is sent again later. */
export const unanswered = (walking: Walking): Walking => ({ ...walking, line: 'lost' });

/** She goes on where the other left off, or keeps to her own place, which then is saved over it. */
export function decide(walking: Walking, whose: 'theirs' | 'mine'): Walking {
  const { elsewhere, place } = walking;
  if (elsewhere === null) return walking;
  const book = { place: elsewhere.place, version: elsewhere.version };
  return goTo({ ...walking, book, elsewhere: null }, whose === 'theirs' ? elsewhere.place : place);
}

/** What the device keeps of it. */
export const keptOf = ({ place, pending, seconds, book }: Walking, digest: string): Kept => ({
  ...{ place, pending, seconds, digest },
  version: book.version,
});

/** Reads what a device kept; null for anything else, and for other steps than today's. */
export function readKept(text: string | null, digest: string): Kept | null {
  if (text === null) return null;
  try {
    const kept = JSON.parse(text) as Partial<Kept> | null;
    if (kept?.digest !== digest) return null;
    const { place, version, seconds, pending = null } = kept;
    if (![place, version, seconds].every((one) => typeof one === 'number' && Number.isFinite(one)))
      return null;
    return isPending(pending) ? ({ place, version, seconds, pending, digest } as Kept) : null;
  } catch {
    return null;
  }
}

function isPending(value: unknown): value is Pending | null {
  if (value === null) return true;
  const { save, place, seconds } = value as Partial<Pending>;
  return typeof save === 'string' && Number.isInteger(place) && Number.isInteger(seconds);
}
