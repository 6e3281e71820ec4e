/** What the island needs of the world. The browser's are in `adapters/`; tests bring their own. */

/** Text kept on this device. */
export type Store = {
  /** The text under a key, null where there is none or it can't be read. */
  readonly read: (key: string) => string | null;
  /** False where it could not be kept (storage full or forbidden). */
  readonly write: (key: string, text: string) => boolean;
};
