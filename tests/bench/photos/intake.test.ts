import { readFileSync } from 'node:fs';
import { crc32 as crc, deflateSync } from 'node:zlib';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { kindOf } from '#bench/photos/kind.ts';
import { takePhotograph, type Taken } from '#bench/photos/intake.ts';

const HEIC = readFileSync(new URL('../../fixtures/photographs/telephone.heic', import.meta.url));

const drawing = (width: number, height: number): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><rect width="${width}" height="${height}" fill="#dd9"/><rect width="${width / 4}" height="${height}" fill="#236"/></svg>`;
const still = (width = 640, height = 480) => sharp(Buffer.from(drawing(width, height)));

function jpegOf(taken: Taken): Buffer {
  if (!taken.ok) throw new Error(taken.problem.code);
  return taken.jpeg;
}
const problemOf = (taken: Taken): string => (taken.ok ? 'taken' : taken.problem.code);

/** Mean colour of a strip at the left or the top edge. */
async function edge(picture: Buffer, side: 'left' | 'top'): Promise<number[]> {
  const { width, height } = await sharp(picture).metadata();
  const box = side === 'left' ? { width: 10, height } : { width, height: 10 };
  const { channels } = await sharp(
    await sharp(picture)
      .extract({ left: 0, top: 0, ...box })
      .png()
      .toBuffer(),
  ).stats();
  return channels.map(({ mean }) => Math.round(mean));
}

describe('a photograph as a camera writes it', () => {
  const written = () =>
    still()
      .jpeg()
      .withExif({
        IFD0: { Make: 'Camera Works', Model: 'Pocket 3' },
        IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1' },
      })
      .withMetadata({ orientation: 6 })
      .toBuffer();

  test('is turned upright, and says nothing of camera or place', async () => {
    const before = await sharp(await written()).metadata();
    expect([before.orientation, before.exif === undefined]).toEqual([6, false]);
    const jpeg = jpegOf(await takePhotograph(await written()));
    const { width, height, orientation, exif, xmp, iptc, format } = await sharp(jpeg).metadata();
    expect([width, height, format]).toEqual([480, 640, 'jpeg']);
    expect([orientation ?? 1, exif, xmp, iptc]).toEqual([1, undefined, undefined, undefined]);
    expect(jpeg.toString('latin1')).not.toMatch(/Camera Works|Pocket 3/);
    // What was at its left is at the top now.
    const [red = 0, , blue = 0] = await edge(jpeg, 'top');
    expect(blue).toBeGreaterThan(red + 30);
  });

  test('keeps at most 2,400 points, and is never made larger', async () => {
    const large = await sharp(
      jpegOf(await takePhotograph(await still(4000, 3000).jpeg().toBuffer())),
    ).metadata();
    expect([large.width, large.height]).toEqual([2400, 1800]);
    const small = await sharp(
      jpegOf(await takePhotograph(await still(400, 300).png().toBuffer())),
    ).metadata();
    expect([small.width, small.height]).toEqual([400, 300]);
  });

  test('has the colours of its profile, in sRGB', async () => {
    const wide = await sharp({ create: { width: 400, height: 400, channels: 3, background: '#40c040' } })
      .withIccProfile('p3')
      .png()
      .toBuffer();
    const jpeg = jpegOf(await takePhotograph(wide));
    const [red = 0, green = 0, blue = 0] = await edge(jpeg, 'left');
    expect((await sharp(jpeg).metadata()).icc).toBeUndefined();
    for (const [is, was] of [
      [red, 0x40],
      [green, 0xc0],
      [blue, 0x40],
    ] as const) {
      expect(Math.abs(is - was)).toBeLessThanOrEqual(4);
    }
  });

  test.each(['png', 'webp', 'avif', 'tiff', 'gif'] as const)('may be a %s', async (format) => {
    expect(problemOf(await takePhotograph(await still().toFormat(format).toBuffer()))).toBe('taken');
  });
});

describe('a telephone’s picture (HEIC)', () => {
  test('is taken, without camera or place', async () => {
    expect(HEIC.toString('latin1')).toContain('Camera Works');
    const jpeg = jpegOf(await takePhotograph(HEIC));
    const { width, height, exif, icc } = await sharp(jpeg).metadata();
    expect([width, height, exif, icc]).toEqual([640, 480, undefined, undefined]);
    // The dark blue band at its top was drawn as #20405f.
    const [red = 0, green = 0, blue = 0] = await edge(jpeg, 'top');
    for (const [is, was] of [
      [red, 0x20],
      [green, 0x40],
      [blue, 0x5f],
    ] as const) {
      expect(Math.abs(is - was)).toBeLessThanOrEqual(8);
    }
  });

  test('is named as damaged where it is cut', async () => {
    expect(problemOf(await takePhotograph(HEIC.subarray(0, 1500)))).toBe('photo-broken');
  });
});

/** A PNG that states its size and holds next to nothing. */
function hollowPng(side: number): Buffer {
  const chunk = (name: string, body: Buffer): Buffer => {
    const named = Buffer.concat([Buffer.from(name), body]);
    const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
    length.writeUInt32BE(body.length);
    check.writeUInt32BE(crc(named));
    return Buffer.concat([length, named, check]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(side, 0);
  head.writeUInt32BE(side, 4);
  head.set([8, 0], 8);
  const body = deflateSync(Buffer.alloc(1000));
  const signature = Buffer.from('\x89PNG\r\n\x1a\n', 'latin1');
  return Buffer.concat([signature, chunk('IHDR', head), chunk('IDAT', body), chunk('IEND', Buffer.alloc(0))]);
}

describe('what can’t be taken is named', () => {
  const text = (start: string): Buffer => Buffer.from(start.padEnd(600, ' '), 'latin1');

  test.each([
    ['photo-missing', Buffer.alloc(0)],
    ['photo-kind', Buffer.from(drawing(900, 900))],
    ['photo-kind', text('PK\x03\x04 named flower.jpg')],
    ['photo-kind', text('%PDF-1.7')],
    ['photo-kind', Buffer.from('\0\0\0\x18ftypqt  \0\0\0\0qt      and more', 'latin1')],
    ['photo-kind', text('only words')],
    ['photo-pixels', hollowPng(20_000)],
    ['photo-broken', hollowPng(900)],
  ])('%s', async (code, bytes) => {
    expect(problemOf(await takePhotograph(bytes))).toBe(code);
  });

  test('a photograph that is cut off, one that moves, an icon', async () => {
    const jpeg = await still().jpeg().toBuffer();
    expect(problemOf(await takePhotograph(jpeg.subarray(0, jpeg.length / 2)))).toBe('photo-broken');
    const frames = await Promise.all(
      ['#f00', '#0f0'].map((background) =>
        sharp({ create: { width: 400, height: 400, channels: 3, background } })
          .png()
          .toBuffer(),
      ),
    );
    const moving = await sharp(frames, { join: { animated: true } })
      .gif()
      .toBuffer();
    expect(problemOf(await takePhotograph(moving))).toBe('photo-moves');
    expect(problemOf(await takePhotograph(await still(64, 64).png().toBuffer()))).toBe('photo-small');
  });

  test('kinds are told by their bytes', () => {
    expect(kindOf(HEIC)).toBe('heic');
    expect(kindOf(Buffer.from('\0\0\0\x1cftypmif1\0\0\0\0mif1avif....', 'latin1'))).toBe('picture');
  });
});
