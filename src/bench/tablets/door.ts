/** The tablets' door as server and pages know it: the one opens it, the others say when. */

/**
 * By which door a request came in. The server writes it on every request, over
 * whatever a sender wrote there.
 */
export const DOOR_HEADER = 'x-claspwise-door';
export type Door = 'usual' | 'tablets';

export const doorOf = ({ headers }: Request): Door =>
  headers.get(DOOR_HEADER) === 'tablets' ? 'tablets' : 'usual';

export type DoorState =
  | { readonly open: false; readonly why: 'off' }
  /** `port-taken`: by another program. `no-certificate`: it can't be written. */
  | { readonly open: false; readonly why: 'port-taken' | 'no-certificate' | 'failed'; readonly port: number }
  | {
      readonly open: true;
      readonly port: number;
      /** Addresses and names that it goes by. */
      readonly names: readonly string[];
      readonly fingerprint: string;
      readonly endsAt: string;
    };

export type TabletDoor = {
  readonly state: () => DoorState;
  /** Opens or closes it, as the setting in the book says now. Never throws. */
  readonly apply: () => Promise<DoorState>;
  /** Closes it, whatever the setting says. */
  readonly close: () => Promise<void>;
};

/** The pages are built, and so have modules of their own: by this name they find what the server has. */
const NAME = Symbol.for('claspwise.tabletDoor');

type Holder = { [NAME]?: TabletDoor };

export function offerDoor(door: TabletDoor): void {
  (globalThis as Holder)[NAME] = door;
}

/** null where no server of this kind runs, as in development. */
export const tabletDoor = (): TabletDoor | null => (globalThis as Holder)[NAME] ?? null;
