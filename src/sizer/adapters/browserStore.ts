/**
 * localStorage as a Store. Some browsers forbid it or give none: then nothing is kept, and nothing breaks.
 * All shops of a host share it: keys of a shop in a folder begin with the folder, as the page names it
 * (`data-folder`). At the host's root they stay as they always were, so that buyers keep what they have.
 */
import type { Store } from '../model/ports.ts';

const own = (key: string): string => (document.documentElement.dataset['folder'] ?? '') + key;

export const browserStore: Store = {
  read(key) {
    try {
      return localStorage.getItem(own(key));
    } catch {
      return null;
    }
  },
  write(key, text) {
    try {
      localStorage.setItem(own(key), text);
      return true;
    } catch {
      return false;
    }
  },
  erase(key) {
    try {
      localStorage.removeItem(own(key));
    } catch {
      // Where nothing can be kept, nothing is left.
    }
  },
};
