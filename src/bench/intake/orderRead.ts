/** Orders found in what the maker pastes or drops. */
import type { OrderDocument } from '#order/document.ts';
import type { ArrivalProblem } from '#words/benchCodes.ts';

export type OrderRead =
  | { readonly ok: true; readonly document: OrderDocument }
  | { readonly ok: false; readonly problem: ArrivalProblem };

/** Orders looked at in one text or mailbox: a year of a busy shop. */
export const MOST_ORDERS = 2_000;

/** The largest file that is taken in. */
export const MOST_FILE_MB = 16;

/** What is said where no order was found. */
export const NONE: readonly OrderRead[] = [{ ok: false, problem: { code: 'no-order' } }];

/** True where no order was found, not even a broken one. */
export function isNone(found: readonly OrderRead[]): boolean {
  return found.every((one) => !one.ok && one.problem.code === 'no-order');
}

/** How many orders can be taken in. */
export const whole = (found: readonly OrderRead[]): number => found.filter((one) => one.ok).length;

/** All that was found in several places, each order once; `NONE` where there is nothing. */
export function together(places: readonly (readonly OrderRead[])[]): readonly OrderRead[] {
  const seen = new Set<string>();
  const found = places
    .filter((place) => !isNone(place))
    .flat()
    .filter((one) => !one.ok || seen.size < seen.add(JSON.stringify(one.document)).size);
  return found.length === 0 ? NONE : found;
}

/**
 * What was found in several readings of the same thing: each order that any of them gives,
 * and as many refusals of the best reading as no other gives an order for.
 */
export function best(readings: readonly (readonly OrderRead[])[]): readonly OrderRead[] {
  const [most = NONE, ...others] = readings.toSorted(
    (a, b) => whole(b) - whole(a) || Number(isNone(a)) - Number(isNone(b)) || a.length - b.length,
  );
  const orders = together([most, ...others].map((one) => one.filter(({ ok }) => ok)));
  if (isNone(orders)) return most;
  const refused = together([most]).filter(({ ok }) => !ok);
  return [...orders, ...refused.slice(orders.length - whole(most))];
}
