/** Bringing the shop to a real OpenSSH server (left out where none is installed). */
import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { readHostProgress, type HostProgress } from '#hosting/progress.ts';
import { writeSettings, type HostSettings } from '#hosting/settings.ts';
import { takeLock } from '#release/lock.ts';
import type { HostTrouble } from '#words/hosting.ts';
import { sshdPath, startSftpHost, type SftpHost } from '../support/sftpHost.ts';
import { missingIn, releaseOf, removeAll, siteIn, siteOf } from './release.ts';

const root = new URL('../..', import.meta.url).pathname;

let host: SftpHost;
let place: string;
let hosting: string;
let releases: string;

beforeAll(async () => {
  if (sshdPath !== undefined) host = await startSftpHost(sshdPath);
});
afterAll(() => host?.stop());
beforeEach(() => {
  place = mkdtempSync(join(tmpdir(), 'hosting-'));
  hosting = join(place, 'hosting');
  releases = join(place, 'releases');
});
afterEach(() => {
  removeAll(place);
  for (const name of host === undefined ? [] : readdirSync(host.folder)) removeAll(join(host.folder, name));
});

function begin(...options: readonly string[]): ChildProcess {
  return spawn(process.execPath, [join(root, 'src/command/upload.ts'), ...options], {
    cwd: root,
    env: { ...process.env, CLASPWISE_HOSTING: hosting, CLASPWISE_RELEASES: releases },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
}
const ended = (child: ChildProcess): Promise<number | null> =>
  new Promise((resolve) => child.once('exit', resolve));
/** Waits for a condition that a running process brings about, or its end. */
async function until(child: ChildProcess, holds: () => boolean): Promise<void> {
  while (child.exitCode === null && !holds()) await pause(1);
}
const send = (...options: readonly string[]): Promise<number | null> => ended(begin(...options));
const progress = (): HostProgress => readHostProgress(hosting);
const trouble = (): HostTrouble | null => {
  const now = progress();
  return now.state === 'failed' ? now.trouble : null;
};
/** Settings of the server as they are right, but for what is given. */
function settle(other: Partial<HostSettings> = {}): void {
  writeSettings(hosting, {
    host: '127.0.0.1',
    port: host.port,
    user: host.user,
    folder: host.folder,
    secret: { kind: 'key', key: host.key, passphrase: null },
    hostKey: { type: 'ssh-ed25519', fingerprint: host.fingerprint },
    ...other,
  });
}

const pieces = (count: number, words = 'as it was'): Record<string, string> =>
  Object.fromEntries(Array.from({ length: count }, (_, at) => [`piece-${at}`, `${words} ${at}`]));
const ids = { first: '20260401-100000-000', second: '20260402-100000-000' };

describe.skipIf(sshdPath === undefined)(
  'a real SSH server (left out where OpenSSH’s isn’t installed)',
  () => {
    test('takes the whole shop, then only what changed, and lets go of what is gone one upload later', async () => {
      settle();
      const first = siteOf(pieces(30));
      releaseOf(releases, ids.first, first);
      expect(await send()).toBe(0);
      expect(siteIn(host.folder)).toEqual(first);
      expect(progress()).toMatchObject({ state: 'done', sent: Object.keys(first).length, removed: 0 });
      expect(statSync(join(host.folder, 'index.html')).mode & 0o777).toBe(0o644);

      const second = siteOf({ ...pieces(30), 'piece-7': 'another clasp' });
      releaseOf(releases, ids.second, second);
      expect(await send()).toBe(0);
      // Its page, its picture, the list of all.
      expect(progress()).toMatchObject({ state: 'done', sent: 3, removed: 0 });
      const old = Object.keys(first).find((path) => path.startsWith('pictures/piece-7-')) ?? '';
      // Somebody may still have the page open that asks for it.
      expect(siteIn(host.folder)).toEqual({ ...second, [old]: first[old] });

      releaseOf(releases, '20260403-100000-000', siteOf({ ...pieces(29), 'piece-7': 'another clasp' }));
      expect(await send()).toBe(0);
      expect(existsSync(join(host.folder, old))).toBe(false);
      expect(existsSync(join(host.folder, 'pieces/piece-29'))).toBe(false);
      expect(missingIn(siteIn(host.folder))).toEqual([]);

      expect(await send()).toBe(0);
      expect(progress()).toMatchObject({ state: 'done', sent: 0, removed: 1 });
      expect(await send()).toBe(0);
      expect(progress()).toMatchObject({ state: 'done', sent: 0, removed: 0 });
      expect(readdirSync(host.folder).filter((name) => name.startsWith('.'))).toEqual([
        '.claspwise-files.json',
      ]);
    });

    test(
      'is killed off and goes on, and no page ever asks for what isn’t there',
      { timeout: 120_000 },
      async () => {
        settle();
        const first = siteOf(pieces(200));
        releaseOf(releases, ids.first, first);
        expect(await send()).toBe(0);
        const second = siteOf({ ...pieces(150, 'restrung'), ...pieces(30) }, 2000);
        releaseOf(releases, ids.second, second);
        let kills = 0;
        let sent = 0;
        for (;;) {
          const child = begin();
          let code: number | null | undefined;
          void ended(child).then((ended) => (code = ended));
          const before = sent;
          const until = 40 + 25 * kills;
          while (code === undefined) {
            const now = progress();
            const done = now.state === 'running' ? (now.files?.done ?? 0) : 0;
            if (kills < 3 && done > until) break;
            await pause(2);
          }
          if (code === undefined) child.kill('SIGKILL');
          if (code !== undefined) {
            expect(code).toBe(0);
            break;
          }
          await ended(child);
          kills += 1;
          sent = before + until;
          expect(missingIn(siteIn(host.folder))).toEqual([]);
          expect(trouble()).toEqual({ code: 'stopped' });
        }
        expect(kills).toBeGreaterThan(0);
        const last = progress();
        const whole = Object.keys(second).length;
        // What had arrived before was not sent again, but for a few whose note was lost.
        expect(last.state === 'done' ? last.sent : whole).toBeLessThan(whole - 40);
        const there = siteIn(host.folder);
        expect(missingIn(there)).toEqual([]);
        expect(there).toMatchObject(second);
      },
    );

    test('that it never saw is asked about by its fingerprint before anything secret goes there', async () => {
      settle({ hostKey: null });
      releaseOf(releases, ids.first, siteOf(pieces(2)));
      expect(await send()).toBe(2);
      expect(progress()).toMatchObject({
        state: 'asking',
        question: { about: 'host-key', key: { type: 'ssh-ed25519', fingerprint: host.fingerprint } },
      });
      expect(siteIn(host.folder)).toEqual({});
    });

    test('with another key than before is refused', async () => {
      settle();
      const known = host.fingerprint;
      releaseOf(releases, ids.first, siteOf(pieces(2)));
      await host.restart({ newKey: true });
      expect(await send()).toBe(1);
      expect(trouble()).toEqual({ code: 'host-key-changed', known, got: host.fingerprint });
      expect(siteIn(host.folder)).toEqual({});
    });

    test('doesn’t take a wrong password or key, and says which', async () => {
      releaseOf(releases, ids.first, siteOf(pieces(2)));
      settle({ secret: { kind: 'password', password: 'surely not this one' } });
      expect(await send()).toBe(1);
      expect(trouble()).toEqual({ code: 'wrong-password', user: host.user });
      const other = await startSftpHost(sshdPath ?? '');
      settle({ secret: { kind: 'key', key: other.key, passphrase: null } });
      await other.stop();
      expect(await send()).toBe(1);
      expect(trouble()).toEqual({ code: 'wrong-key', user: host.user });
      expect(readFileSync(join(hosting, 'progress.json'), 'utf8')).not.toContain('surely not this one');
    });

    test('has a folder with files from elsewhere: asked first, and nothing of theirs is lost', async () => {
      settle();
      writeFileSync(join(host.folder, 'family.html'), 'ours since 1999');
      writeFileSync(join(host.folder, 'index.html'), 'an old page');
      releaseOf(releases, ids.first, siteOf(pieces(2)));
      expect(await send()).toBe(2);
      expect(progress()).toMatchObject({
        state: 'asking',
        question: { about: 'folder', names: ['family.html', 'index.html'], count: 2 },
      });
      expect(siteIn(host.folder)).toEqual({ 'family.html': 'ours since 1999', 'index.html': 'an old page' });
      expect(await send('--foreign')).toBe(0);
      expect(siteIn(host.folder)).toEqual({ ...siteOf(pieces(2)), 'family.html': 'ours since 1999' });
      releaseOf(releases, ids.second, siteOf(pieces(1)));
      expect(await send()).toBe(0);
      expect(readFileSync(join(host.folder, 'family.html'), 'utf8')).toBe('ours since 1999');
    });

    test('makes the folder where there is none, and names a file in its place', async () => {
      releaseOf(releases, ids.first, siteOf(pieces(2)));
      settle({ folder: join(host.folder, 'www/shop') });
      expect(await send()).toBe(0);
      expect(siteIn(join(host.folder, 'www/shop'))).toEqual(siteOf(pieces(2)));
      writeFileSync(join(host.folder, 'a-file'), '');
      settle({ folder: join(host.folder, 'a-file') });
      expect(await send()).toBe(1);
      expect(trouble()).toMatchObject({ code: 'not-a-folder' });
    });

    test('that lets nobody write, or takes no more bytes, is named so', async () => {
      settle();
      releaseOf(releases, ids.first, siteOf(pieces(2)));
      await host.restart({ readOnly: true });
      settle();
      expect(await send()).toBe(1);
      expect(trouble()).toMatchObject({ code: 'no-permission' });
      await host.restart({ mostKib: 8 });
      releaseOf(releases, ids.second, siteOf(pieces(2), 20_000));
      expect(await send()).toBe(1);
      expect(trouble()).toMatchObject({
        code: 'no-room',
        path: expect.stringMatching(/^pictures\//) as unknown,
      });
      expect(missingIn(siteIn(host.folder))).toEqual([]);
      await host.restart();
      expect(await send()).toBe(0);
      expect(siteIn(host.folder)).toEqual(siteOf(pieces(2), 20_000));
    });

    test('that goes away meanwhile: cut off, and the next upload goes on', async () => {
      settle();
      const site = siteOf(pieces(200), 2000);
      releaseOf(releases, ids.first, site);
      const child = begin();
      await until(child, () => existsSync(join(host.folder, '_astro')));
      // Each connection has a process of its own, which the listening one doesn't end.
      const { pid } = host.child;
      for (const one of processesBelow(pid ?? 0)) process.kill(one, 'SIGKILL');
      expect(await ended(child)).toBe(1);
      expect(trouble()).toEqual({ code: 'cut-off' });
      expect(await send()).toBe(0);
      expect(siteIn(host.folder)).toEqual(site);
    });

    test('that can’t rename a file over another gets it all the same', async () => {
      await host.restart({ noReplacing: true });
      settle();
      releaseOf(releases, ids.first, siteOf(pieces(3)));
      expect(await send()).toBe(0);
      const second = siteOf({ ...pieces(3), 'piece-1': 'another clasp' });
      releaseOf(releases, ids.second, second);
      expect(await send()).toBe(0);
      expect(siteIn(host.folder)).toMatchObject(second);
      await host.restart();
    });

    test('one upload at a time', async () => {
      settle();
      releaseOf(releases, ids.first, siteOf(pieces(1)));
      const lock = takeLock(hosting);
      expect(await send()).toBe(3);
      lock?.release();
      expect(await send()).toBe(0);
    });
  },
);

/** Numbers of the processes that a process has begun, and theirs. */
function processesBelow(pid: number): number[] {
  const children = readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8')
    .split(' ')
    .filter(Boolean)
    .map(Number);
  return children.flatMap((child) => [...processesBelow(child), child]);
}

describe('what answers where a host should be', () => {
  test('nothing, nobody of that name, or something that speaks no SSH', async () => {
    releaseOf(releases, ids.first, siteOf(pieces(2)));
    const server = createServer((socket) => socket.resume().end('220 ready for FTP\r\n')).listen(
      0,
      '127.0.0.1',
    );
    await new Promise((resolve) => server.once('listening', resolve));
    const { port } = server.address() as AddressInfo;
    const other = (settings: Partial<HostSettings>): void =>
      void writeSettings(hosting, {
        host: '127.0.0.1',
        port,
        user: 'maker',
        folder: 'site',
        secret: { kind: 'password', password: 'x' },
        hostKey: null,
        ...settings,
      });
    other({});
    expect(await send()).toBe(1);
    expect(trouble()).toEqual({ code: 'no-ssh', host: '127.0.0.1', port });
    await new Promise((resolve) => server.close(resolve));
    expect(await send()).toBe(1);
    expect(trouble()).toEqual({ code: 'refused', host: '127.0.0.1', port });
    // RFC 6761, 6.4: no name ends so.
    other({ host: 'nobody.invalid' });
    expect(await send()).toBe(1);
    expect(trouble()).toEqual({ code: 'no-such-host', host: 'nobody.invalid' });
  });
});
