/** Mistakes in the rules of posting. */
import { change, type Mistake } from './mistake.ts';

/** The shop's file with a `post` that has these groups; its first line is the file's line 12. */
const withGroups = (groups: string) => [
  change('shop.yaml', 'tolerance:', `post:\n  packing: 40 g\n  groups:\n${groups}tolerance:`),
];
const bands = (...lines: readonly string[]) =>
  withGroups(`    - countries: GB\n      bands:\n${lines.map((line) => `        - { ${line} }\n`).join('')}`);

export const postMistakes: readonly Mistake[] = [
  {
    code: 'not-a-country',
    edits: withGroups('    - countries: UK\n      bands: [{ up-to: 2 kg, price: £3.00 }]\n'),
    at: 'shop.yaml:15 post, groups 1, countries 1',
    what: '“UK” isn’t a country’s two letters.',
    fix: 'Great Britain and Northern Ireland are GB.',
  },
  {
    code: 'post-nothing',
    edits: [change('shop.yaml', 'tolerance:', 'post: { packing: 40 g }\ntolerance:')],
    at: 'shop.yaml:12 post',
    what: 'There is a “post” without groups of countries and without a place to collect from.',
    fix: 'take “post” away',
  },
  {
    code: 'no-bands',
    edits: withGroups('    - countries: [GB, IE]\n'),
    at: 'shop.yaml:15 post, groups 1',
    what: 'This group of countries has no weight bands, so nothing can be posted there.',
    fix: 'Add “bands”',
  },
  {
    code: 'country-twice',
    edits: withGroups(
      '    - countries: [GB, everywhere else]\n      bands: [{ up-to: 2 kg, price: £3.00 }]\n' +
        '    - countries:\n        - NO\n        - GB\n      bands: [{ up-to: 2 kg, price: £5.00 }]\n',
    ),
    at: 'shop.yaml:19 post, groups 2, countries 2',
    what: '“GB” stands in group 2, and in group 1 already.',
    fix: 'whose prices hold for it',
  },
  {
    code: 'bands-overlap',
    edits: bands('up-to: 250 g, price: £3.00', 'from: 100 g, up-to: 2 kg, price: £4.00'),
    at: 'shop.yaml:18 post, groups 1, bands 2',
    what: 'The band from 100 to 2,000 g overlaps the one before it, which goes up to 250 g: a parcel would have two prices.',
    fix: 'lightest first; this one goes on from 250 g',
  },
  {
    code: 'bands-gap',
    edits: bands('up-to: 250 g, price: £3.00', 'from: 251 g, up-to: 2 kg, price: £4.00'),
    at: 'shop.yaml:18 post, groups 1, bands 2, from',
    what: 'No band holds parcels between 250 and 251 g: they would have no price.',
    fix: 'Write “from: 250 g”',
  },
  {
    code: 'band-empty',
    edits: bands('from: 600 g, up-to: 500 g, price: £3.00'),
    at: 'shop.yaml:17 post, groups 1, bands 1',
    what: 'The band begins at 600 g and ends at 500 g, so nothing fits into it.',
    fix: 'Check both weights',
  },
  {
    code: 'band-cheaper',
    edits: bands('up-to: 250 g, price: £4.00', 'up-to: 2 kg, price: £3.00'),
    at: 'shop.yaml:18 post, groups 1, bands 2, price',
    what: 'This band costs £3.00, less than the lighter one before it at £4.00.',
    fix: 'Check both prices',
  },
  {
    code: 'bands-end',
    edits: bands('up-to: 50 g, price: £3.00'),
    at: 'shop.yaml:17 post, groups 1, bands 1, up-to',
    what: '“row” at its longest weighs 59 g packed, but the last band for GB ends at 50 g.',
    fix: 'Add a band for heavier parcels',
  },
];
