/**
 * A page that was left, kept whole, and come back to. Safari empties its fields without autocompletion then;
 * what the page shows beside them stays.
 */

/** Calls whenever that happens; gives back how to stop that. */
export function onShownAgain(call: () => void): () => void {
  const listen = ({ persisted }: PageTransitionEvent): void => {
    // It empties them in a task of its own after the event.
    if (persisted) setTimeout(call);
  };
  addEventListener('pageshow', listen);
  return () => removeEventListener('pageshow', listen);
}
