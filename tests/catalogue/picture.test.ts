import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { lookAtPicture } from '#catalogue/read/picture.ts';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import { contentFolder } from './contentFolder.ts';

/** A small picture with enough in it that its middle isn't its end; written by sharp (libvips), not by this project. */
const drawn = sharp({
  create: {
    width: 96,
    height: 64,
    channels: 3,
    background: '#5c8f86',
    noise: { type: 'gaussian', mean: 128, sigma: 40 },
  },
});

const encoders = {
  jpeg: () => drawn.clone().jpeg().toBuffer(),
  png: () => drawn.clone().png().toBuffer(),
  webp: () => drawn.clone().webp().toBuffer(),
  avif: () => drawn.clone().avif({ effort: 0 }).toBuffer(),
} as const;

describe.each(Object.keys(encoders) as (keyof typeof encoders)[])('a %s', (format) => {
  it('is known by what it holds, whatever its name', async () => {
    const path = join(contentFolder([]), 'pieces/row.picture');
    writeFileSync(path, await encoders[format]());
    expect(lookAtPicture(path)).toEqual({ state: 'whole', format });
  });

  it('cut short is broken', async () => {
    const path = join(contentFolder([]), 'pieces/row.picture');
    const bytes = await encoders[format]();
    writeFileSync(path, bytes.subarray(0, Math.floor(bytes.length * 0.7)));
    expect(lookAtPicture(path).state).toBe('broken');
  });
});

it('goes with its piece, with its words in both languages', async () => {
  const folder = contentFolder([
    {
      file: 'pieces/row.yaml',
      from: 'wire: soft-19',
      to: 'pictures:\n  - file: row.jpg\n    alt: A row of green beads on slate.\n    alt-de: Eine Reihe grüner Perlen auf Schiefer.\nwire: soft-19',
    },
  ]);
  writeFileSync(join(folder, 'pieces/row.jpg'), await encoders.jpeg());
  const { catalogue, problems } = readCatalogue(folder);
  expect(problems).toEqual([]);
  expect(catalogue?.pieces[0]?.pictures).toEqual([
    {
      file: 'pieces/row.jpg',
      format: 'jpeg',
      alt: { en: 'A row of green beads on slate.', de: 'Eine Reihe grüner Perlen auf Schiefer.' },
      crop: null,
    },
  ]);
});
