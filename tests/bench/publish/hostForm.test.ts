/** Settings of a host: what is typed, what is kept, and who may read it. */
import { generateKeyPairSync } from 'node:crypto';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { readHostForm } from '#bench/publish/hostForm.ts';
import { readSettings, removeSettings, seen, writeSettings, type HostSettings } from '#hosting/settings.ts';

const root = new URL('../../..', import.meta.url).pathname;
const right = {
  host: 'sftp.example.org',
  port: '22',
  user: 'maker',
  folder: 'public_html',
  password: 'secret word',
};
const formOf = (fields: Readonly<Record<string, string>>): FormData => {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.set(name, value);
  return form;
};
const read = (fields: Readonly<Record<string, string>> = {}, before: HostSettings | null = null) =>
  readHostForm(formOf({ ...right, ...fields }), before);
const codes = async (fields: Readonly<Record<string, string>>, before: HostSettings | null = null) => {
  const got = await read(fields, before);
  return got.ok ? [] : got.problems.map(({ field, trouble }) => `${field}: ${trouble.code}`);
};
const kept: HostSettings = {
  version: 1,
  revision: 'r',
  host: 'sftp.example.org',
  port: 22,
  user: 'maker',
  folder: 'public_html',
  secret: { kind: 'password', password: 'kept word' },
  hostKey: { type: 'ssh-ed25519', fingerprint: 'SHA256:abc' },
};
const rsa = (passphrase?: string): string =>
  generateKeyPairSync('rsa', {
    modulusLength: 2048,
    publicKeyEncoding: { type: 'spki', format: 'pem' },
    privateKeyEncoding: {
      type: 'pkcs1',
      format: 'pem',
      ...(passphrase === undefined ? {} : { cipher: 'aes-256-cbc', passphrase }),
    },
  } as never).privateKey as unknown as string;

describe('the form', () => {
  it('is read as people write it', async () => {
    expect(await read({ host: ' SFTP.Example.org ', port: '', folder: '~/www/shop/' })).toEqual({
      ok: true,
      settings: {
        host: 'sftp.example.org',
        port: 22,
        user: 'maker',
        folder: 'www/shop',
        secret: { kind: 'password', password: 'secret word' },
        hostKey: null,
      },
    });
    expect(await read({ host: 'müllerei.example', folder: '/' })).toMatchObject({
      settings: { host: 'xn--mllerei-n2a.example', folder: '/' },
    });
    expect(await read({ host: '2001:db8::1' })).toMatchObject({ settings: { host: '2001:db8::1' } });
  });

  it('names each field that can’t be read', async () => {
    expect(
      await codes({ host: 'https://example.org/', port: '0', user: '', folder: '../etc', password: '' }),
    ).toEqual([
      'host: host-unreadable',
      'port: port-unreadable',
      'user: user-missing',
      'folder: folder-unreadable',
      'password: secret-missing',
    ]);
    expect(await codes({ host: '-oProxyCommand=x y' })).toEqual(['host: host-unreadable']);
    expect(await codes({ user: 'a\u0007b' })).toEqual(['user: user-missing']);
    expect(await codes({ key: 'x' })).toEqual(['password: secret-twice']);
  });

  it('takes a private key, and says what is wrong with one', async () => {
    const key = rsa();
    expect(await read({ password: '', key: key.replaceAll('\n', '\r\n') })).toMatchObject({
      settings: { secret: { kind: 'key', key, passphrase: null } },
    });
    const locked = rsa('four plain words');
    expect(await codes({ password: '', key: locked })).toEqual(['key: key-locked']);
    expect(await codes({ password: '', key: locked, passphrase: 'other words' })).toEqual([
      'key: key-locked',
    ]);
    expect(await codes({ password: '', key: locked, passphrase: 'four plain words' })).toEqual([]);
    expect(await codes({ password: '', key: 'nonsense' })).toEqual(['key: key-unreadable']);
    const open = 'ssh-ed25519 AAAAC3NzaC1lZDI1NTE5AAAAIJxZ1Mgt5HPkRVAHVdTbRTVXv8w7nAHTTEWvtYMxV0Rg x';
    expect(await codes({ password: '', key: open })).toEqual(['key: key-public']);
  });

  it('goes on with what is kept for the same host only', async () => {
    const empty = { password: '', key: '' };
    expect(await read({ ...empty, user: 'other' }, kept)).toMatchObject({
      settings: { user: 'other', secret: kept.secret, hostKey: kept.hostKey },
    });
    expect(await codes({ ...empty, host: 'evil.example' }, kept)).toEqual(['password: secret-missing']);
    expect(await codes({ ...empty, port: '2222' }, kept)).toEqual(['password: secret-missing']);
    expect(await read({ host: 'other.example' }, kept)).toMatchObject({ settings: { hostKey: null } });
  });
});

describe('what is kept', () => {
  it('only its owner can read, no page sees the secret, and it can be taken away', () => {
    const place = mkdtempSync(join(tmpdir(), 'host-'));
    onTestFinished(() => rmSync(place, { recursive: true }));
    const folder = join(place, 'hosting');
    const { version: _version, revision: _revision, ...settings } = kept;
    const written = writeSettings(folder, settings);
    expect(readSettings(folder)).toEqual(written);
    expect(statSync(folder).mode & 0o777).toBe(0o700);
    expect(readdirSync(folder)).toEqual(['host.json']);
    expect(statSync(join(folder, 'host.json')).mode & 0o777).toBe(0o600);
    expect(JSON.stringify(seen(written))).not.toContain('kept word');
    expect(writeSettings(folder, settings).revision).not.toBe(written.revision);
    removeSettings(folder);
    expect(readdirSync(folder)).toEqual([]);
  });

  it('lies where no repository takes it along', () => {
    const ignored = execFileSync('git', ['check-ignore', '.hosting/host.json'], {
      cwd: root,
      encoding: 'utf8',
    });
    expect(ignored.trim()).toBe('.hosting/host.json');
  });
});
