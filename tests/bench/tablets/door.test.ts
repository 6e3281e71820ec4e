/** The tablets' door as it stands open: its certificate, its fingerprint, and nothing of it while it is off. */
import { X509Certificate } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createServer, connect as connectPlain } from 'node:net';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { connect, type PeerCertificate } from 'node:tls';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { asHostName, doorNames, isHomeAddress, ownAddresses } from '#bench/tablets/addresses.ts';
import { certificateIn, makeCertificate } from '#bench/tablets/certificate.ts';
import { makeDoor, type DoorPlan } from '#bench/tablets/listener.ts';
import { fingerprintLines, tabletSheet } from '#bench/models/tablets.ts';
import { catalogue, NOW_MS, openShop } from '../shop.ts';

const NAMES = ['192.168.1.5', 'fd00::2', 'bench', 'bench.local'];
const DAY_MS = 86_400_000;

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tablets-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

describe('the certificate', () => {
  it('is for every address and name, vouches for itself alone, and ends within 825 days', () => {
    const { cert } = makeCertificate(NAMES, NOW_MS);
    const read = new X509Certificate(cert);
    expect(read.checkIP('192.168.1.5')).toBe('192.168.1.5');
    expect(read.checkIP('fd00::2')).toBe('fd00::2');
    expect(read.checkHost('bench.local')).toBe('bench.local');
    expect(read.checkIP('192.168.1.6')).toBeUndefined();
    expect(read.ca).toBe(false);
    expect(read.verify(read.publicKey)).toBe(true);
    expect(read.keyUsage).toEqual(['1.3.6.1.5.5.7.3.1']);
    expect(Date.parse(read.validFrom)).toBeLessThan(NOW_MS);
    expect(Date.parse(read.validTo) - Date.parse(read.validFrom)).toBeLessThan(825 * DAY_MS);
  });

  it('stays the same while it serves, and is made anew for another address and near its end', () => {
    const first = certificateIn(folder, NAMES, NOW_MS);
    expect(certificateIn(folder, NAMES, NOW_MS + 100 * DAY_MS)).toEqual(first);
    expect(certificateIn(folder, NAMES.slice(1), NOW_MS)).toEqual(first);
    const moved = certificateIn(folder, [...NAMES, '192.168.1.77'], NOW_MS);
    expect(moved.fingerprint).not.toBe(first.fingerprint);
    const late = certificateIn(folder, [...NAMES, '192.168.1.77'], NOW_MS + 340 * DAY_MS);
    expect(late.fingerprint).not.toBe(moved.fingerprint);
    expect(Date.parse(late.endsAt)).toBeGreaterThan(Date.parse(moved.endsAt));
  });

  it('lies with its key where only the maker’s account reads it; one that was damaged is made anew', () => {
    const first = certificateIn(folder, NAMES, NOW_MS);
    const file = join(folder, 'certificate.pem');
    expect(statSync(file).mode & 0o777).toBe(0o600);
    expect(readFileSync(file, 'utf8')).toContain('PRIVATE KEY');
    for (const text of ['', first.cert, first.key + makeCertificate(NAMES, NOW_MS).cert]) {
      writeFileSync(file, text);
      expect(certificateIn(folder, NAMES, NOW_MS).fingerprint).not.toBe(first.fingerprint);
    }
  });
});

describe('addresses', () => {
  const one = (address: string, internal = false) =>
    ({ address, internal, family: address.includes(':') ? 'IPv6' : 'IPv4' }) as never;
  const interfaces = {
    lo: [one('127.0.0.1', true)],
    vpn: [one('203.0.113.9')],
    wifi: [one('fe80::1'), one('fd00::2'), one('192.168.1.5')],
  };

  it('the home network’s first, IPv4 before IPv6, none that is of one link only', () => {
    expect(ownAddresses(interfaces)).toEqual(['192.168.1.5', '203.0.113.9', 'fd00::2']);
    expect(doorNames(interfaces, 'Bench', ['shop.example', 'not a name'])).toEqual([
      ...['192.168.1.5', '203.0.113.9', 'fd00::2'],
      ...['bench', 'bench.local', 'shop.example'],
    ]);
    expect(asHostName('fd00::2')).toBe('[fd00::2]');
  });

  it.each<[string, boolean]>([
    ['192.168.1.20', true],
    ['10.1.2.3', true],
    ['172.16.0.1', true],
    ['172.32.0.1', false],
    ['::ffff:192.168.1.20', true],
    ['::ffff:203.0.113.9', false],
    ['203.0.113.9', false],
    ['fd12::1', true],
    ['fe80::1%eth0', true],
    ['2001:db8::1', false],
    ['127.0.0.1', true],
    ['', false],
    ['nonsense', false],
  ])('%s is of the home network: %s', (address, expected) => {
    expect(isHomeAddress(address)).toBe(expected);
  });
});

/** The certificate that is presented at a port. */
const presentedAt = (port: number): Promise<PeerCertificate> =>
  new Promise((resolve, reject) => {
    const socket = connect({ port, host: '127.0.0.1', rejectUnauthorized: false }, () => {
      resolve(socket.getPeerCertificate());
      socket.destroy();
    });
    socket.once('error', reject);
  });

const answers = (port: number): Promise<boolean> =>
  new Promise((resolve) => {
    const socket = connectPlain({ port, host: '127.0.0.1' }, () => {
      socket.destroy();
      resolve(true);
    });
    socket.once('error', () => resolve(false));
  });

const plan = (fields: Partial<DoorPlan> = {}): DoorPlan => ({
  port: 0,
  folder,
  names: () => NAMES,
  isOn: () => true,
  nowMs: () => NOW_MS,
  handler: (_, response) => response.end('in'),
  patienceMs: 0,
  ...fields,
});

describe('the door', () => {
  it('opens only while it is switched on, and leaves no port open after', async () => {
    let on = false;
    const door = makeDoor(plan({ isOn: () => on }));
    expect(await door.apply()).toEqual({ open: false, why: 'off' });
    on = true;
    const [opened, again] = await Promise.all([door.apply(), door.apply()]);
    expect(again).toEqual(opened);
    if (!opened.open) throw new Error('closed');
    expect(await answers(opened.port)).toBe(true);
    on = false;
    expect(await door.apply()).toEqual({ open: false, why: 'off' });
    expect(await answers(opened.port)).toBe(false);
  });

  it('presents the very certificate whose fingerprint is shown, and another once the machine has another address', async () => {
    let names = NAMES;
    const door = makeDoor(plan({ names: () => names }));
    const opened = await door.apply();
    if (!opened.open) throw new Error('closed');
    expect((await presentedAt(opened.port)).fingerprint256).toBe(opened.fingerprint);
    expect(fingerprintLines(opened.fingerprint).join(':')).toBe(opened.fingerprint);
    expect(fingerprintLines(opened.fingerprint)).toHaveLength(4);
    names = [...NAMES, '192.168.1.99'];
    const moved = await door.apply();
    if (!moved.open) throw new Error('closed');
    expect(moved.port).toBe(opened.port);
    expect(moved.fingerprint).not.toBe(opened.fingerprint);
    expect((await presentedAt(moved.port)).fingerprint256).toBe(moved.fingerprint);
    await door.close();
  });

  it('speaks TLS alone, none older than 1.2', async () => {
    const door = makeDoor(plan());
    const opened = await door.apply();
    if (!opened.open) throw new Error('closed');
    await expect(fetch(`http://127.0.0.1:${opened.port}/`)).rejects.toThrow();
    const old = new Promise((resolve, reject) => {
      connect(
        {
          port: opened.port,
          host: '127.0.0.1',
          rejectUnauthorized: false,
          maxVersion: 'TLSv1.1',
          minVersion: 'TLSv1',
        },
        () => resolve('in'),
      ).once('error', reject);
    });
    await expect(old).rejects.toThrow();
    expect(await presentedAt(opened.port)).toMatchObject({ subject: { CN: 'Bench' } });
    await door.close();
  });

  it('names what stands in its way, and takes nothing else down with it', async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, resolve));
    const { port } = other.address() as AddressInfo;
    const taken = makeDoor(plan({ port }));
    expect(await taken.apply()).toEqual({ open: false, why: 'port-taken', port });
    other.close();
    writeFileSync(join(folder, 'file'), '');
    const nowhere = makeDoor(plan({ folder: join(folder, 'file', 'below') }));
    expect(await nowhere.apply()).toMatchObject({ open: false, why: 'no-certificate' });
  });
});

it('a code holds the https address and the token, and none is shown while the door is shut', () => {
  const shop = openShop(catalogue);
  const open = {
    open: true,
    port: 4343,
    names: ['192.168.1.5', 'fd00::2'],
    fingerprint: 'AB',
    endsAt: '',
  } as const;
  const { codes } = tabletSheet(shop.book, open, 'secret', '/bench/tablets/pair/', false);
  expect(codes.map(({ address }) => address)).toEqual([
    'https://192.168.1.5:4343/bench/tablets/pair/?token=secret',
    'https://[fd00::2]:4343/bench/tablets/pair/?token=secret',
  ]);
  expect(codes[0]?.shown).not.toContain('secret');
  const shut = tabletSheet(shop.book, { open: false, why: 'off' }, 'secret', '/', false);
  expect(shut.codes).toEqual([]);
  shop.close();
});
