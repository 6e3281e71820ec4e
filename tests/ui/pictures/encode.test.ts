import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { cached, keyOf } from '#ui/pictures/cache.ts';
import { encode, placeholder, shareJpeg, sizeOf } from '#ui/pictures/encode.ts';
import { inTurn } from '#ui/pictures/inTurn.ts';
import { FORMATS, SHARE } from '#ui/pictures/settings.ts';

/** A photograph taken with the camera turned, as a telephone writes it, with its maker and place in it. */
async function turnedPhotograph(): Promise<Buffer> {
  const gradient = Buffer.from(
    '<svg xmlns="http://www.w3.org/2000/svg" width="300" height="200"><linearGradient id="g"><stop stop-color="#264"/><stop offset="1" stop-color="#fc8"/></linearGradient><rect width="300" height="200" fill="url(#g)"/></svg>',
  );
  return sharp(gradient)
    .jpeg()
    .withExif({ IFD0: { Make: 'Camera Works' }, IFD3: { GPSLatitudeRef: 'N' } })
    .withMetadata({ orientation: 6 })
    .toBuffer();
}

describe('a photograph', () => {
  test('is measured as it is seen, turned upright', async () => {
    expect(await sizeOf(await turnedPhotograph(), null)).toEqual({ width: 200, height: 300 });
  });

  test.each(FORMATS)(
    'as %s is upright, as wide as asked and says nothing of camera or place',
    async (format) => {
      const original = await turnedPhotograph();
      expect((await sharp(original).metadata()).exif).toBeDefined();
      const made = await sharp(await encode(original, 120, format, null)).metadata();
      expect(made).toMatchObject({ width: 120, height: 180, format: format === 'avif' ? 'heif' : format });
      expect(made.exif).toBeUndefined();
      expect(made.orientation ?? 1).toBe(1);
    },
  );

  test('is never made larger than it is', async () => {
    const made = await sharp(await encode(await turnedPhotograph(), 4000, 'webp', null)).metadata();
    expect(made.width).toBe(200);
  });

  test('has a placeholder of few bytes', async () => {
    const address = await placeholder(await turnedPhotograph(), null);
    expect(address).toMatch(/^data:image\/webp;base64,/);
    expect(address.length).toBeLessThan(400);
  });
});

test('a share picture has the size that readers of Open Graph show whole', async () => {
  const svg =
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 400 300"><circle cx="200" cy="150" r="90"/></svg>';
  const made = await sharp(await shareJpeg(svg)).metadata();
  expect(made).toMatchObject({ width: SHARE.widthPx, height: SHARE.heightPx, format: 'jpeg' });
});

describe('the cache', () => {
  let folder = '';
  const before = process.cwd();
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'pictures-'));
    process.chdir(folder);
  });
  afterEach(async () => {
    process.chdir(before);
    await rm(folder, { recursive: true });
  });

  test('makes a picture once and leaves no half one behind', async () => {
    let made = 0;
    const make = (): Promise<Buffer> => {
      made += 1;
      return Promise.resolve(Buffer.from('picture'));
    };
    for (let time = 0; time < 3; time += 1) expect(String(await cached('a.webp', make))).toBe('picture');
    expect(made).toBe(1);
    expect(await readdir(join('.cache', 'pictures'))).toEqual(['a.webp']);
  });

  test('keeps nothing of a picture that could not be made', async () => {
    await expect(cached('b.webp', () => Promise.reject(new Error('broken')))).rejects.toThrow('broken');
    expect(String(await cached('b.webp', () => Promise.resolve(Buffer.from('whole'))))).toBe('whole');
  });

  test('tells apart what differs anywhere', () => {
    expect(keyOf('a', 'b')).not.toBe(keyOf('ab', ''));
    expect(keyOf('a', 'b')).toBe(keyOf('a', 'b'));
  });
});

test('jobs run at most so many at once, their results in the order of the jobs', async () => {
  let running = 0;
  let most = 0;
  const results = await inTurn([5, 1, 4, 2, 3], 2, async (job) => {
    running += 1;
    most = Math.max(most, running);
    await new Promise((resolve) => setTimeout(resolve, job));
    running -= 1;
    return job * 10;
  });
  expect(results).toEqual([50, 10, 40, 20, 30]);
  expect(most).toBe(2);
});
