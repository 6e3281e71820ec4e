/** What holds for every drawing: valid, small, the same each time, safe whatever it is told. */
import sharp from 'sharp';
import { beforeAll, describe, expect, test } from 'vitest';
import { design, pieces, section, strand } from '../designs.ts';
import { randomDesign } from '../random.ts';
import { stampsOf } from '../stamps.ts';
import { MOST_BYTES, views } from '../views.ts';

const HOSTILE = `"/><script>alert('x')</script> & ]]> \u0000\u0008\uD800 ✓ ½ 𝄞`;

const designs = [...pieces, ...Array.from({ length: 4 }, (_, seed) => randomDesign(seed))];

/** A strand of 150 beads of five kinds, two of them with a figure. */
const long = design('long', {
  kind: 'necklace',
  strands: [
    strand('a', true, [
      section(
        'run',
        [
          ['jasper-8', 1],
          ['silver-4', 1],
          ['bicone', 1],
          ['pearl-7', 1],
          ['lapis-6', 1],
        ],
        15,
      ),
    ]),
  ],
});

beforeAll(() => {
  sharp.concurrency(1);
});

describe.each(Object.entries(views))('the %s view', (name, draw) => {
  test('is XML that an SVG reader takes, and not blank', async () => {
    for (const of of designs) {
      const { info, data } = await sharp(Buffer.from(draw(of, 'A piece', 'p')), { density: 72 })
        .resize({ width: 240 })
        .raw()
        .toBuffer({ resolveWithObject: true });
      expect(info.width).toBe(240);
      const first = data.subarray(0, info.channels);
      let differs = false;
      for (let at = 0; at < data.length && !differs; at += info.channels) {
        differs = first.compare(data, at, at + info.channels) !== 0;
      }
      expect(differs).toBe(true);
    }
  });

  test('says the words it is given as words, whatever is in them', async () => {
    const svg = draw(long, HOSTILE, 'p');
    expect(svg).not.toMatch(/<script/);
    expect(svg).toContain('&lt;script&gt;');

    expect(svg).not.toMatch(/[\u0000-\u0008]/);
    expect(svg).toContain('𝄞');
    await expect(sharp(Buffer.from(svg)).metadata()).resolves.toMatchObject({ format: 'svg' });
  });

  test('is the same each time', () => {
    for (const of of designs) expect(draw(of, 'A piece', 'p')).toBe(draw(of, 'A piece', 'p'));
  });

  test('defines each id once, under its prefix, and uses only its own', () => {
    for (const of of designs) {
      const svg = draw(of, 'A piece', 'my-prefix');
      const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id ?? '');
      expect(new Set(ids).size).toBe(ids.length);
      for (const id of ids) expect(id).toMatch(/^my-prefix-/);
      const used = [...svg.matchAll(/(?:href="#|url\(#|aria-labelledby=")([^")]+)/g)];
      expect(used.length).toBeGreaterThan(1);
      for (const [, list = ''] of used) for (const id of list.split(' ')) expect(ids).toContain(id);
    }
  });

  test('needs no style, no script and no other file', () => {
    for (const of of designs) {
      const svg = draw(of, 'A piece', 'p');
      expect(svg).not.toMatch(/ style=|<style|<script|<foreignObject|<image| on[a-z]+=/);
      expect(svg.replace('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:/);
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    }
  });

  test('has a title and a description that name it', () => {
    const svg = draw(long, 'A piece', 'p');
    expect(svg).toContain('role="img" aria-labelledby="p-title p-desc"');
    expect(svg).toContain('<title id="p-title">A piece</title><desc id="p-desc">A piece</desc>');
  });

  test('keeps 150 beads under 40 KB', () => {
    const svg = draw(long, 'A piece', 'p');
    const stamped = stampsOf(svg).reduce((sum, { places }) => sum + places.length, 0);
    // Beside the beads stand crimps and covers; jasper and lapis have two coats each.
    if (name !== 'ends') expect(stamped).toBeGreaterThan(name === 'card' || name === 'share' ? 40 : 150);
    expect(Buffer.byteLength(svg)).toBeLessThan(MOST_BYTES);
  });

  test.each(['', '1a', 'a b', 'a"b', 'a#', 'é'])('refuses %j to start ids with', (idPrefix) => {
    expect(() => draw(long, 'A piece', idPrefix)).toThrow(RangeError);
  });
});
