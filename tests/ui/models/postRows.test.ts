import { expect, test } from 'vitest';
import type { PostRules } from '#core/post/rules.ts';
import { postRows } from '#ui/models/postRows.ts';

const RULES: PostRules = {
  packingG: 40,
  groups: [
    {
      ...{ countries: ['GB', 'IM'], elsewhere: false, freeFromMinor: 12_000 },
      bands: [
        { upToG: 250, priceMinor: 395 },
        { upToG: 1500, priceMinor: 560 },
      ],
    },
    { countries: ['DE'], elsewhere: true, freeFromMinor: null, bands: [{ upToG: 2000, priceMinor: 1_390 }] },
  ],
  collection: false,
};
const rows = (lang: 'en' | 'de') =>
  postRows(RULES, 'GBP', lang).map(({ where, costs }) => `${where}: ${costs}`.replaceAll('\u00a0', ' '));

test('posting is listed group by group, with every band and from when it is free', () => {
  expect(rows('en')).toEqual([
    'United Kingdom and Isle of Man: up to 250 g £3.95, up to 1.5 kg £5.60, free from £120.00',
    'Everywhere else: up to 2 kg £13.90',
  ]);
  expect(rows('de')).toEqual([
    'Vereinigtes Königreich und Isle of Man: bis 250 g 3,95 £, bis 1,5 kg 5,60 £, kostenlos ab 120,00 £',
    'Überall sonst: bis 2 kg 13,90 £',
  ]);
});
