/** Where the work of each piece is kept on the device: written at every step, so that no crash takes more than the last one. */

const key = (piece: string): string => `claspwise board ${piece}`;

/** null where nothing is kept, or the browser keeps nothing at all. */
export function readDraft(piece: string): string | null {
  try {
    return localStorage.getItem(key(piece));
  } catch {
    return null;
  }
}

/** A full or forbidden store keeps nothing; the board goes on without. */
export function keepDraft(piece: string, text: string): void {
  try {
    localStorage.setItem(key(piece), text);
  } catch {
    // Nothing to be done about it here, and saving still works.
  }
}

export function dropDraft(piece: string): void {
  try {
    localStorage.removeItem(key(piece));
  } catch {
    // As above.
  }
}
