/** The page that lets tablets in, as it shows itself. */
import { pairedDevices, type Device } from '../book/devices.ts';
import type { Book } from '../book/open.ts';
import { asHostName } from '../tablets/addresses.ts';
import type { DoorState } from '../tablets/door.ts';

/** An address that pairs a device, and the same without its token to be read. */
export type PairingCode = { readonly shown: string; readonly address: string };

export type TabletSheet = {
  /** null where no server runs that has such a door. */
  readonly door: DoorState | null;
  readonly devices: readonly Device[];
  /** The likeliest address first; none where no code was asked for. */
  readonly codes: readonly PairingCode[];
  /** A device was sent away just now. */
  readonly gone: boolean;
};

/**
 * @param token of a pairing that was just begun; null for none
 * @param path of the page that pairs, as a browser has to ask for it
 */
export function tabletSheet(
  book: Book,
  door: DoorState | null,
  token: string | null,
  path: string,
  gone: boolean,
): TabletSheet {
  return {
    door,
    devices: pairedDevices(book),
    codes: token === null || door === null || !door.open ? [] : codesOf(door, token, path),
    gone,
  };
}

function codesOf(
  { names, port }: DoorState & { readonly open: true },
  token: string,
  path: string,
): PairingCode[] {
  return names.map((name) => {
    const shown = `https://${asHostName(name)}:${port}`;
    return { shown, address: `${shown}${path}?token=${token}` };
  });
}

/** Pairs of digits in lines of eight, as they are easiest held against another screen. */
export function fingerprintLines(fingerprint: string): string[] {
  const pairs = fingerprint.split(':');
  return Array.from({ length: Math.ceil(pairs.length / 8) }, (_, line) =>
    pairs.slice(8 * line, 8 * line + 8).join(':'),
  );
}
