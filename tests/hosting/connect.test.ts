/** How a host asks for a password, which differs from one to the next; and what its key is called. */
import { generateKeyPairSync } from 'node:crypto';
import type { AddressInfo } from 'node:net';
import ssh2, { type AuthContext } from 'ssh2';
import { afterEach, expect, it } from 'vitest';
import { connect, hostKeyOf, UnknownHost } from '#hosting/connect.ts';
import type { HostKey, HostSettings } from '#hosting/settings.ts';
import { HostError } from '#hosting/trouble.ts';

const key = generateKeyPairSync('rsa', {
  modulusLength: 2048,
  privateKeyEncoding: { type: 'pkcs1', format: 'pem' },
  publicKeyEncoding: { type: 'spki', format: 'pem' },
}).privateKey;

/** What came in as secrets, and how. */
let heard: string[] = [];
let stop: () => void = () => undefined;
afterEach(() => {
  stop();
  heard = [];
});

/** A server that lets in who says the right words in the way it wants, and has no SFTP. */
async function listening(way: 'password' | 'keyboard-interactive'): Promise<number> {
  const ask = (context: AuthContext): void => {
    const rule = (said: string): void => {
      heard.push(`${way}: ${said}`);
      if (said === 'right words') context.accept();
      else context.reject([way]);
    };
    if (context.method !== way) context.reject([way]);
    else if (context.method === 'password') rule(context.password);
    else if (context.method === 'keyboard-interactive') {
      context.prompt([{ prompt: 'Password:', echo: false }], (answers) => rule(answers[0] ?? ''));
    }
  };
  const server = new ssh2.Server({ hostKeys: [key] }, (client) => {
    client.on('authentication', ask).on('error', () => undefined);
    client.on('session', (accept) => void accept().on('subsystem', (_, reject) => reject?.()));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  stop = () => server.close();
  return (server.address() as AddressInfo).port;
}

const settings = (port: number, password: string, hostKey: HostKey | null): HostSettings => ({
  version: 1,
  revision: 'r',
  host: '127.0.0.1',
  port,
  user: 'maker',
  folder: 'site',
  secret: { kind: 'password', password },
  hostKey,
});

async function codeOf(port: number, password: string, hostKey: HostKey | null): Promise<string> {
  try {
    (await connect(settings(port, password, hostKey))).end();
    return 'connected';
  } catch (error) {
    if (error instanceof HostError) return error.trouble.code;
    if (error instanceof UnknownHost) return `asks: ${error.key.type} ${error.key.fingerprint}`;
    throw error;
  }
}

/** The server's key as its own blob says it. */
function ownKey(): HostKey {
  const parsed = ssh2.utils.parseKey(key);
  if (parsed instanceof Error) throw parsed;
  return hostKeyOf(parsed.getPublicSSH());
}

it.each(['password', 'keyboard-interactive'] as const)(
  'by %s: let in with the right words only',
  async (way) => {
    const port = await listening(way);
    expect(await codeOf(port, 'right words', ownKey())).toBe('no-sftp');
    expect(heard).toEqual([`${way}: right words`]);
    expect(await codeOf(port, 'other words', ownKey())).toBe('wrong-password');
  },
);

it('hears no secret before its key is confirmed, nor where it is another', async () => {
  const port = await listening('password');
  const { type, fingerprint } = ownKey();
  expect(type).toBe('ssh-rsa');
  expect(await codeOf(port, 'right words', null)).toBe(`asks: ssh-rsa ${fingerprint}`);
  expect(await codeOf(port, 'right words', { type, fingerprint: `${fingerprint.slice(0, -1)}?` })).toBe(
    'host-key-changed',
  );
  expect(heard).toEqual([]);
});
