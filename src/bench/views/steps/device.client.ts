/** What the device keeps of a place that the order book doesn't have yet. */

const key = (subject: string): string => `bench-place ${subject}`;

/** null where nothing is kept, or the browser keeps nothing at all. */
export function keptOnDevice(subject: string): string | null {
  try {
    return localStorage.getItem(key(subject));
  } catch {
    return null;
  }
}

/** @param text null: nothing is to be kept any more */
export function keepOnDevice(subject: string, text: string | null): void {
  try {
    if (text === null) localStorage.removeItem(key(subject));
    else localStorage.setItem(key(subject), text);
  } catch {
    // A full or forbidden store keeps nothing; the book has it as long as the bench is there.
  }
}
