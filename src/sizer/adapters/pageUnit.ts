/** The page's own switch between inches and centimetres, and the island, in step by one event. */
import { isShownUnit, type ShownUnit } from '#core/units/unit.ts';

/** On the window; `detail` is the unit. */
const UNIT_EVENT = 'claspwise-unit';

/** Calls whenever the reader changes the unit anywhere on the page; gives back how to stop that. */
export function onPageUnit(call: (unit: ShownUnit) => void): () => void {
  const listen = (event: Event) => {
    const unit: unknown = event instanceof CustomEvent ? event.detail : null;
    if (isShownUnit(unit)) call(unit);
  };
  addEventListener(UNIT_EVENT, listen);
  return () => removeEventListener(UNIT_EVENT, listen);
}

/** Announces the unit to the rest of the page. */
export function sendPageUnit(unit: ShownUnit): void {
  dispatchEvent(new CustomEvent(UNIT_EVENT, { detail: unit }));
}
