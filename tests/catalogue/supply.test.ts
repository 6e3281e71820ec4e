/** What a strand, pack, bag or spool holds, as she writes how a thing is bought. */
import { describe, expect, it } from 'vitest';
import type { Supply } from '#catalogue/model/supply.ts';
import { restoreCatalogue, storeCatalogue } from '#catalogue/model/storedCatalogue.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';
import { contentFolder } from './contentFolder.ts';

const bead = (size: string, lines: string): string =>
  `thing:\n  name: Thing\n  size: ${size}\n  hole: 0.8 mm\n  material: glass\n  colour: '#123456'\n  cost: £0.10\n  ${lines}\n`;
const wire = (lines: string): string =>
  `reel:\n  name: Reel\n  diameter: 0.019 in\n  strands: 49\n  weight: 0.7 g/m\n  cost: £1.00 per m\n  ${lines}\n`;
const of = (file: string, text: string): Readonly<Record<string, Supply>> =>
  catalogueOf(contentFolder([{ file, write: text }])).supplies;
const beads = (size: string, lines: string): Supply | undefined =>
  of('components/thing.yaml', bead(size, lines))['thing'];
const reel = (lines: string): Supply | undefined => of('wires/reel.yaml', wire(lines))['wire/reel'];

describe('a strand', () => {
  // Common practice, from memory: tables of beads on a strand of 16 in give about 101, 67, 50, 40.
  it.each([
    ['4 mm', 101],
    ['6 mm', 67],
    ['8 mm', 50],
    ['10 mm', 40],
  ])('of 16 in, beads of %s: %i, reckoned', (size, holds) => {
    const { sold } = beads(size, 'sold: { by: strand, length: 16 in, price: £4.20 }')!;
    expect(sold).toMatchObject({ by: 'strand', holds, estimated: true, priceMinor: 420 });
  });

  it('that was counted is as it was counted', () => {
    const { sold } = beads('6 mm', 'sold: { by: strand, length: 16 in, pieces: 64, price: £4.20 }')!;
    expect(sold).toMatchObject({ holds: 64, estimated: false });
  });
});

it('a pack has its pieces, a piece is one, with supplier, number and mark', () => {
  expect(
    beads('6 mm', 'sold: { by: pack, pieces: 10, price: £3.50, supplier: Ferrand Glass, number: FG-271 }'),
  ).toEqual({
    keep: null,
    sold: {
      ...{ by: 'pack', holds: 10, estimated: false, priceMinor: 350 },
      ...{ supplier: 'Ferrand Glass', number: 'FG-271' },
    },
  });
  expect(beads('6 mm', 'sold: { by: piece, price: £3.50 }')?.sold?.holds).toBe(1);
  expect(beads('6 mm', 'keep: 20')).toEqual({ keep: 20, sold: null });
  expect(beads('6 mm', 'tray: A1')).toBeUndefined();
});

it('a bag by weight is reckoned by what one weighs', () => {
  // 50 g of 0.31 g each: 161.29.
  const { sold } = beads('6 mm', 'weight: 0.31 g\n  sold: { by: bag, weight: 50 g, price: £6.00 }')!;
  expect(sold).toMatchObject({ holds: 161, estimated: true });
});

it.each([
  // NIST SP 811: 1 ft = 0.3048 m.
  ['30 ft', 9144],
  ['10 m', 10_000],
  ['100 yd', 91_440],
])('a spool of %s is %i mm of wire', (length, holds) => {
  const supply = reel(`keep: 2 m\n  sold: { length: ${length}, price: £9.80 }`);
  expect(supply).toMatchObject({ keep: 2000, sold: { by: 'spool', holds, estimated: false } });
});

it('is kept in a release', () => {
  const catalogue = catalogueOf(
    contentFolder([{ file: 'components/thing.yaml', write: bead('6 mm', 'keep: 20') }]),
  );
  const stored = JSON.parse(JSON.stringify(storeCatalogue(catalogue, []))) as ReturnType<
    typeof storeCatalogue
  >;
  const again = restoreCatalogue(stored);
  expect(again.supplies).toEqual(catalogue.supplies);
  expect(again.components['thing']).toEqual(catalogue.components['thing']);
});
