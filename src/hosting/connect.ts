/** A connection to the host by SSH, to a host whose key she has confirmed. */
import { createHash } from 'node:crypto';
import ssh2, { type ServerHostKeyAlgorithm, type SFTPWrapper } from 'ssh2';
import { readPrivateKey } from './privateKey.ts';
import type { HostKey, HostSettings } from './settings.ts';
import { connectTrouble, HostError } from './trouble.ts';

/** How long the host may take for its first words, ms. */
const READY_MS = 20_000;
/** A line that is dead without a word is noticed after three of these, ms. */
const ALIVE_MS = 10_000;

export type Connection = {
  readonly sftp: SFTPWrapper;
  /** Rejects with a HostError when the line breaks, not before. */
  readonly lost: Promise<never>;
  readonly end: () => void;
};

/** Asked before anything secret is sent: the host has shown a key that nobody has confirmed yet. */
export class UnknownHost extends Error {
  readonly key: HostKey;

  constructor(key: HostKey) {
    super(`unknown host key ${key.fingerprint}`);
    this.key = key;
  }
}

/** The key's type and fingerprint (RFC 4253, 6.6: the type is the blob's first string), as OpenSSH writes them. */
export function hostKeyOf(blob: Buffer): HostKey {
  const type = blob.subarray(4, 4 + blob.readUInt32BE(0)).toString('latin1');
  const digest = createHash('sha256').update(blob).digest('base64').replace(/=+$/, '');
  return { type, fingerprint: `SHA256:${digest}` };
}

const TYPES = ['ssh-ed25519', 'ecdsa-sha2-nistp256', 'ecdsa-sha2-nistp384', 'ecdsa-sha2-nistp521'] as const;
const RSA = ['rsa-sha2-512', 'rsa-sha2-256'] as const;

/** The confirmed type before all others: a host may have keys of several types. */
function typesFor(known: HostKey | null): ServerHostKeyAlgorithm[] {
  const all: ServerHostKeyAlgorithm[] = [...TYPES, ...RSA];
  const isKnown = (one: string): boolean =>
    known !== null && (known.type === 'ssh-rsa' ? one.startsWith('rsa-') : one === known.type);
  return [...all.filter(isKnown), ...all.filter((one) => !isKnown(one))];
}

/**
 * @throws UnknownHost where the host's key was never confirmed, and HostError with what went wrong; nothing secret has been sent
 * where the key is unknown or another one than before
 */
export async function connect(settings: HostSettings): Promise<Connection> {
  const { host, port, user, secret, hostKey } = settings;
  const client = new ssh2.Client();
  let shown: HostKey | null = null;
  let broken: () => void = () => undefined;
  const lost = new Promise<never>((_, reject) => {
    broken = () => reject(new HostError({ code: 'cut-off' }));
    client.once('close', broken);
  });
  // Waited for only where something is under way.
  lost.catch(() => undefined);
  if (secret.kind === 'password') {
    client.on('keyboard-interactive', (_name, _text, _lang, prompts, answer) => {
      // The same secret under another name: many hosts ask for a password in this way only.
      answer(prompts.length === 1 ? [secret.password] : []);
    });
  }
  try {
    await new Promise<void>((resolve, reject) => {
      client.once('connect', () => {
        // Small questions one after the other: held back for company, each would cost a delayed acknowledgement (RFC 9293, 3.7.4).
        client.setNoDelay(true);
      });
      client.once('ready', resolve);
      client.on('error', reject);
      client.once('close', () => reject(new HostError({ code: 'no-ssh', host, port })));
      client.connect({
        host,
        port,
        username: user,
        ...(secret.kind === 'password'
          ? { password: secret.password, tryKeyboard: true }
          : {
              privateKey: secret.key,
              ...(secret.passphrase === null ? {} : { passphrase: secret.passphrase }),
            }),
        readyTimeout: READY_MS,
        keepaliveInterval: ALIVE_MS,
        algorithms: { serverHostKey: typesFor(hostKey) },
        hostVerifier: (blob: Buffer) => {
          shown = hostKeyOf(blob);
          return hostKey !== null && shown.fingerprint === hostKey.fingerprint;
        },
      });
    });
    const sftp = await new Promise<SFTPWrapper>((resolve, reject) => {
      client.sftp((error, opened) => (error === undefined ? resolve(opened) : reject(error)));
    }).catch((error: unknown) => {
      throw new HostError({ code: 'no-sftp' }, { cause: error });
    });
    // The host may end what serves files and keep the line.
    sftp.once('close', broken);
    return { sftp, lost, end: () => void client.end() };
  } catch (error) {
    client.destroy();
    // Set by a callback, which the compiler doesn't follow.
    const got = shown as HostKey | null;
    if (got !== null && hostKey === null) throw new UnknownHost(got);
    if (got !== null && hostKey !== null && got.fingerprint !== hostKey.fingerprint) {
      const trouble = { code: 'host-key-changed', known: hostKey.fingerprint, got: got.fingerprint } as const;
      throw new HostError(trouble, { cause: error });
    }
    if (error instanceof HostError) throw error;
    const unreadable = secret.kind === 'key' ? readPrivateKey(secret.key, secret.passphrase) : null;
    if (unreadable !== null)
      throw new HostError({ code: unreadable === 'key-public' ? 'key-unreadable' : unreadable });
    throw new HostError(connectTrouble(error, settings, secret), { cause: error });
  }
}
