/** Codes of the shop on a host elsewhere that the bench makes sentences of. */

/** `connecting` to the host, `comparing` what lies there, `sending` files, `clearing` away what is no longer needed. */
export type HostStep = 'connecting' | 'comparing' | 'sending' | 'clearing';

/** Why the host could not be written to. */
export type HostTrouble =
  /** No address belongs to the name. */
  | { readonly code: 'no-such-host'; readonly host: string }
  /** The machine is there and nothing listens at the port. */
  | { readonly code: 'refused'; readonly host: string; readonly port: number }
  | { readonly code: 'no-answer'; readonly host: string; readonly port: number }
  /** Something answers there that speaks no SSH, or none that both sides hold safe. */
  | { readonly code: 'no-ssh'; readonly host: string; readonly port: number }
  | { readonly code: 'wrong-password' | 'wrong-key'; readonly user: string }
  /** The key that is kept can't be read; `key-locked`: not without its passphrase. */
  | { readonly code: 'key-unreadable' | 'key-locked' }
  /** Fingerprints as they were confirmed and as they are now. */
  | { readonly code: 'host-key-changed'; readonly known: string; readonly got: string }
  | { readonly code: 'no-sftp' }
  | { readonly code: 'not-a-folder'; readonly path: string }
  | { readonly code: 'no-permission'; readonly path: string }
  /** The host takes no more bytes of a file: its disk or the account's share is full. */
  | { readonly code: 'no-room'; readonly path: string }
  | { readonly code: 'cut-off' }
  /** Anything else, in the host's or the system's own words. */
  | { readonly code: 'host-said'; readonly path: string; readonly said: string }
  /** It ended without a word: killed, or the machine went off. */
  | { readonly code: 'stopped' };

/** Why the settings of a host could not be saved. */
export type HostFormTrouble =
  | { readonly code: 'host-unreadable' | 'port-unreadable' | 'user-missing' | 'folder-unreadable' }
  | { readonly code: 'secret-missing' | 'secret-twice' | 'key-unreadable' | 'key-locked' | 'key-public' }
  | { readonly code: 'too-long' | 'changed-meanwhile' };

/** Its field in the form; null for the form as a whole. */
export const HOST_FIELDS = ['host', 'port', 'user', 'folder', 'password', 'key'] as const;
export type HostField = (typeof HOST_FIELDS)[number];
