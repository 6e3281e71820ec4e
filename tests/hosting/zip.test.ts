/** The shop as a zip, read by the format's own description: APPNOTE.TXT 6.3.10, sections 4.3.7, 4.3.12, 4.3.16. */
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buffer } from 'node:stream/consumers';
import { crc32, inflateRawSync } from 'node:zlib';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { zipOf } from '#hosting/zip.ts';
import { releaseOf, removeAll, siteOf } from './release.ts';
import { inZone } from '#tests/support/zone.ts';

let place: string;
beforeEach(() => {
  place = mkdtempSync(join(tmpdir(), 'zip-'));
});
afterEach(() => removeAll(place));

type Entry = { readonly text: string; readonly date: number; readonly time: number; readonly mode: number };

function unzip(zip: Buffer): Map<string, Entry> {
  const end = zip.lastIndexOf(Buffer.from([0x50, 0x4b, 5, 6]));
  const count = zip.readUInt16LE(end + 10);
  let at = zip.readUInt32LE(end + 16);
  const entries = new Map<string, Entry>();
  for (let nth = 0; nth < count; nth += 1) {
    expect(zip.readUInt32LE(at)).toBe(0x02014b50);
    const [nameLength, extra, comment] = [28, 30, 32].map((field) => zip.readUInt16LE(at + field)) as [
      number,
      number,
      number,
    ];
    const name = zip.toString('utf8', at + 46, at + 46 + nameLength);
    const local = zip.readUInt32LE(at + 42);
    const from = local + 30 + zip.readUInt16LE(local + 26) + zip.readUInt16LE(local + 28);
    const packed = zip.subarray(from, from + zip.readUInt32LE(at + 20));
    const bytes = zip.readUInt16LE(at + 10) === 8 ? inflateRawSync(packed) : packed;
    expect(crc32(bytes), name).toBe(zip.readUInt32LE(at + 16));
    const mode = zip.readUInt32LE(at + 38) >>> 16;
    entries.set(name, {
      text: bytes.toString(),
      time: zip.readUInt16LE(at + 12),
      date: zip.readUInt16LE(at + 14),
      mode,
    });
    at += 46 + nameLength + extra + comment;
  }
  return entries;
}

it('holds every public file and nothing else, each whole, with the time of the release', async () => {
  const site = siteOf({ ford: 'words', weir: 'Wörter' }, 5000);
  const release = releaseOf(join(place, 'releases'), '20260401-100000-000', site);
  mkdirSync(join(release, 'server'));
  writeFileSync(join(release, 'server/entry.mjs'), 'nobody’s business');
  const entries = unzip(await buffer(zipOf(release, '2026-04-01T10:20:30.500Z')));
  expect(Object.fromEntries([...entries].map(([name, { text }]) => [name, text]))).toEqual(site);
  for (const { date, time, mode } of entries.values()) {
    // MS-DOS date and time: years from 1980, month, day; hours, minutes, half seconds.
    expect(date).toBe((46 << 9) | (4 << 5) | 1);
    expect(time).toBe((10 << 11) | (20 << 5) | 15);
    expect(mode).toBe(0o100644);
  }
});

it('is the same byte for byte whenever and in whatever zone it is made', async () => {
  const release = releaseOf(join(place, 'releases'), '20260401-100000-000', siteOf({ ford: 'words' }));
  const made: Buffer[] = [];
  for (const zone of ['UTC', 'Pacific/Auckland', 'America/St_Johns']) {
    made.push(await inZone(zone, () => buffer(zipOf(release, '2026-04-01T10:20:30Z'))));
  }
  expect(made[1]?.equals(made[0] as Buffer)).toBe(true);
  expect(made[2]?.equals(made[0] as Buffer)).toBe(true);
});

it('breaks off where a file is gone, so that nobody takes half a shop for a whole one', async () => {
  const release = releaseOf(join(place, 'releases'), '20260401-100000-000', siteOf({ ford: 'words' }));
  const stream = zipOf(release, '2026-04-01T10:20:30Z');
  removeAll(join(release, 'client'));
  await expect(buffer(stream)).rejects.toThrow('ENOENT');
});
