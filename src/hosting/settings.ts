/** The way to a host: where the shop goes, as whom, and the secret that opens it. */
import { randomUUID } from 'node:crypto';
import { chmodSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { syncFile, syncFolder } from '#catalogue/released/durable.ts';
import { FILE_MODE, FOLDER_MODE } from './place.ts';

/** Never shown, logged or handed on: only connect.ts reads it. `key` in the text form that OpenSSH and others write. */
export type Secret =
  | { readonly kind: 'password'; readonly password: string }
  | { readonly kind: 'key'; readonly key: string; readonly passphrase: string | null };

/** A host's key as it was confirmed. */
export type HostKey = {
  /** As `ssh-ed25519`. */
  readonly type: string;
  /** As `SHA256:` and 43 characters of base64, the way OpenSSH writes it. */
  readonly fingerprint: string;
};

/** Where the shop goes; nothing of it is secret. */
export type HostPlace = {
  readonly host: string;
  readonly port: number;
  readonly user: string;
  /** Path on the host, absolute or from where the account begins. */
  readonly folder: string;
};

export type HostSettings = HostPlace & {
  readonly version: 1;
  /** Another one with every change, so that a form that saw an older one is found out. */
  readonly revision: string;
  readonly secret: Secret;
  /** Null until she has confirmed it. */
  readonly hostKey: HostKey | null;
};

/** What a page may know: everything but the secret. */
export type HostSeen = Omit<HostSettings, 'secret'> & { readonly secretKind: Secret['kind'] };

const SETTINGS_FILE = 'host.json';

/** Null where none are kept, or what is kept can't be read. */
export function readSettings(folder: string): HostSettings | null {
  try {
    const settings = JSON.parse(readFileSync(join(folder, SETTINGS_FILE), 'utf8')) as HostSettings;
    return settings.version === 1 ? settings : null;
  } catch {
    return null;
  }
}

export function seen({ secret, ...rest }: HostSettings): HostSeen {
  return { ...rest, secretKind: secret.kind };
}

type Kept = Omit<HostSettings, 'version' | 'revision'>;

/** Keeps them in the place of those before. Throws what the system says. */
export function writeSettings(folder: string, kept: Kept): HostSettings {
  mkdirSync(folder, { recursive: true, mode: FOLDER_MODE });
  chmodSync(folder, FOLDER_MODE);
  const settings: HostSettings = { version: 1, revision: randomUUID(), ...kept };
  const file = join(folder, SETTINGS_FILE);
  const fresh = `${file}.${process.pid}`;
  try {
    writeFileSync(fresh, JSON.stringify(settings), { mode: FILE_MODE });
    chmodSync(fresh, FILE_MODE);
    syncFile(fresh);
    renameSync(fresh, file);
  } finally {
    rmSync(fresh, { force: true });
  }
  syncFolder(folder);
  return settings;
}

/** Takes settings and secret away. */
export function removeSettings(folder: string): void {
  rmSync(join(folder, SETTINGS_FILE), { force: true });
}
