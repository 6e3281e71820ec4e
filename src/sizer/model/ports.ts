/** What the island needs of the world. The browser's are in `adapters/`; tests bring their own. */

/** Text kept on this device. */
export type Store = {
  /** The text under a key, null where there is none or it can't be read. */
  readonly read: (key: string) => string | null;
  /** False where it could not be kept (storage full or forbidden). */
  readonly write: (key: string, text: string) => boolean;
  /** Nothing stays under the key. */
  readonly erase: (key: string) => void;
};

/** What came back from the shop. `offline`: the device knows that it has no network. `none`: no answer in time. */
export type Answer =
  | { readonly kind: 'answer'; readonly status: number; readonly json: unknown }
  | { readonly kind: 'none' }
  | { readonly kind: 'offline' };

/** Sends text of a media type to an address. Never rejects. */
export type Post = (address: string, type: string, text: string) => Promise<Answer>;

export type Clock = {
  /** Milliseconds since 1970. */
  readonly nowMs: () => number;
  /** Calls once after that time; gives back how to call it off. */
  readonly after: (ms: number, call: () => void) => () => void;
};
