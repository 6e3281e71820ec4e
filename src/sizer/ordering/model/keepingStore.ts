/** A store that never loses what it was given while the page is open, even where the device keeps nothing. */
import type { Store } from '../../model/ports.ts';

export type KeepingStore = Store & {
  /** False once something could be kept in memory only. */
  readonly lasts: () => boolean;
};

export function keepingStore(device: Store): KeepingStore {
  const memory = new Map<string, string>();
  return {
    read: (key) => memory.get(key) ?? device.read(key),
    write(key, text) {
      if (device.write(key, text)) memory.delete(key);
      else memory.set(key, text);
      return true;
    },
    erase(key) {
      memory.delete(key);
      device.erase(key);
    },
    lasts: () => memory.size === 0,
  };
}
