/** localStorage as a Store. Some browsers forbid it or give none: then nothing is kept, and nothing breaks. */
import type { Store } from '../model/ports.ts';

export const browserStore: Store = {
  read(key) {
    try {
      return localStorage.getItem(key);
    } catch {
      return null;
    }
  },
  write(key, text) {
    try {
      localStorage.setItem(key, text);
      return true;
    } catch {
      return false;
    }
  },
  erase(key) {
    try {
      localStorage.removeItem(key);
    } catch {
      // Where nothing can be kept, nothing is left.
    }
  },
};
