/** The page's own switch between inches and centimetres, and the island, told of each other by one event. */
import type { BuyerUnit } from '../model/sizerState.ts';

/** On the window; `detail` is the unit. */
const UNIT_EVENT = 'claspwise-unit';

/** Calls whenever the reader changes the unit anywhere on the page; gives back how to stop that. */
export function onPageUnit(call: (unit: BuyerUnit) => void): () => void {
  const listen = (event: Event) => {
    const unit: unknown = event instanceof CustomEvent ? event.detail : null;
    if (unit === 'in' || unit === 'cm') call(unit);
  };
  addEventListener(UNIT_EVENT, listen);
  return () => removeEventListener(UNIT_EVENT, listen);
}

/** Tells the rest of the page. */
export function tellPageUnit(unit: BuyerUnit): void {
  dispatchEvent(new CustomEvent(UNIT_EVENT, { detail: unit }));
}
