/** Mistakes that show only when a whole entry, or several, are looked at. */
import type { Edit } from '../contentFolder.ts';
import { change, parts, row, sections, write, type Mistake } from './mistake.ts';

/** A picture line in the piece, and the file it names. */
function pictured(name: string, bytes: Uint8Array | null): Edit[] {
  const line = change(row, 'wire: soft-19', `pictures: [{ file: ${name}, alt: A row. }]\nwire: soft-19`);
  return bytes === null ? [line] : [line, write(`pieces/${name}`, bytes)];
}

const jpegWithoutEnd = Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, ...Array<number>(80).fill(0)]);

export const entryMistakes: readonly Mistake[] = [
  {
    code: 'duplicate-id',
    edits: [
      write(
        'components/more.yaml',
        "ball-8:\n  name: Another\n  size: 8 mm\n  hole: 1 mm\n  material: glass\n  colour: '#123456'\n  cost: £0.10\n",
      ),
    ],
    at: 'components/parts.yaml:1 ball-8',
    what: '“ball-8” is there twice; the other is in components/more.yaml:1.',
    fix: 'another short name',
  },
  {
    code: 'duplicate-name',
    edits: [change(parts, 'name: Stone round', 'name: glass  Round')],
    at: 'components/parts.yaml:10 stone-8, name',
    what: 'The name “glass  Round” is there twice; the other is in components/parts.yaml:1.',
    fix: 'tell them apart',
  },
  {
    code: 'duplicate-part-number',
    edits: [
      change(parts, 'name: Glass round', 'name: Glass round\n  part-number: G 101'),
      change(parts, 'name: Stone round', 'name: Stone round\n  part-number: g 101'),
    ],
    at: 'components/parts.yaml:12 stone-8, part-number',
    what: 'The part number “g 101” is there twice; the other is in components/parts.yaml:1.',
    fix: 'Look at the bags',
  },
  {
    code: 'size-or-both',
    edits: [change(parts, 'size: 8 mm', 'along: 8 mm')],
    at: 'components/parts.yaml:1 ball-8',
    what: 'The measures of this ball aren’t complete.',
    fix: 'Write “size” alone',
  },
  {
    code: 'measure-needed',
    edits: [change(parts, '  hole: 1.2 mm\n', '')],
    at: 'components/parts.yaml:1 ball-8',
    what: 'A bead needs “hole”.',
    fix: 'hole: … mm',
  },
  {
    code: 'choice-needed',
    edits: [change(parts, '  shape: lobster\n', '')],
    at: 'components/parts.yaml:46 lobster-12',
    what: 'A clasp needs “shape”.',
    fix: 'with one of: lobster, spring-ring,',
  },
  {
    code: 'sold-unclear',
    edits: [change(parts, '  hole: 1.2 mm\n', '  hole: 1.2 mm\n  sold: { by: strand, price: £4.20 }\n')],
    at: 'components/parts.yaml:5 ball-8, sold',
    what: 'How many are in a strand isn’t said.',
    fix: 'or its “length” with its unit',
  },
  {
    code: 'sold-unclear',
    edits: [change(parts, '  hole: 1.2 mm\n', '  hole: 1.2 mm\n  sold: { by: pack, price: £4.20 }\n')],
    at: 'components/parts.yaml:5 ball-8, sold',
    what: 'How many are in a pack isn’t said.',
    fix: 'Write “pieces”, as many as there are in one.',
  },
  {
    code: 'currency-other',
    edits: [
      change(
        parts,
        '  hole: 1.2 mm\n',
        '  hole: 1.2 mm\n  sold: { by: pack, pieces: 10, price: 4.20 EUR }\n',
      ),
    ],
    at: 'components/parts.yaml:5 ball-8, sold, price',
    what: '“4.20 EUR” isn’t in the shop’s currency, GBP.',
    fix: 'GBP',
  },
  {
    code: 'field-not-for',
    edits: [change(parts, '  hole: 1.2 mm\n', '  hole: 1.2 mm\n  closed: 1 mm\n')],
    at: 'components/parts.yaml:5 ball-8, closed',
    what: '“closed” means nothing for a bead.',
    fix: 'check the kind',
  },
  {
    code: 'rounding-too-large',
    edits: [change(parts, 'size: 8 mm', 'size: 8 mm\n  rounding: 5 mm')],
    at: 'components/parts.yaml:4 ball-8, rounding',
    what: 'A rounding of 5 mm is more than half of the component.',
    fix: 'at most 4 mm',
  },
  {
    code: 'hole-too-wide',
    edits: [change(parts, 'hole: 1.2 mm', 'hole: 12 mm')],
    at: 'components/parts.yaml:4 ball-8, hole',
    what: 'A hole of 12 mm doesn’t leave anything of a component 8 mm across.',
    fix: 'Check both',
  },
  {
    code: 'sections-or-strands',
    edits: [change(row, sections, '')],
    at: 'pieces/row.yaml:1',
    what: 'The piece has either no beads, or both “sections” and “strands”.',
    fix: '“sections” for one strand',
  },
  {
    code: 'counts-order',
    edits: [change(row, 'fewest: 18', 'fewest: 23')],
    at: 'pieces/row.yaml:17 sections 1',
    what: 'Fewest 23, usual 22 and most 27 aren’t in rising order.',
    fix: 'fewest is not above usual',
  },
  {
    code: 'focal-place',
    edits: [change(row, '    beads: ball-8', '    role: focal\n    beads: ball-8')],
    at: 'pieces/row.yaml:17 sections 1',
    what: 'A focal section stands in the middle, so it comes first in a mirrored strand, and once.',
    fix: 'Move it to the top',
  },
  {
    code: 'lie-needed',
    edits: [
      change(
        row,
        sections,
        'strands:\n  - name: One\n    sections:\n      - name: Run\n        beads: 11 ball-8\n  - name: Two\n    sections:\n      - name: Run\n        beads: 11 ball-8\n',
      ),
    ],
    at: 'pieces/row.yaml:15 strands',
    what: '2 strands, but nothing says how they lie.',
    fix: '“lie: side-by-side”',
  },
  {
    code: 'strands-apart',
    edits: [
      change(parts, '  shape: lobster\n', '  shape: lobster\n  ways: 2\n'),
      change(
        row,
        `mirrored: no\n${sections.replace('mirrored: no\n', '')}`,
        `lie: side-by-side\nstrands:\n${['One', 'Two']
          .map(
            (name, at) =>
              `  - name: ${name}\n    mirrored: no\n    sections:\n      - name: Run\n        beads: ball-8\n        usual: ${22 - 6 * at}\n`,
          )
          .join('')}`,
      ),
    ],
    at: 'pieces/row.yaml:16 strands',
    what: 'The strands don’t come to one size: one is never below 178.68 mm, another never above 131.21 mm.',
    fix: 'reach the same sizes',
  },
  {
    code: 'teach-place-missing',
    edits: [change(row, 'wire: soft-19', 'teach:\n  steps:\n    cut-wire: Cut some wire.\nwire: soft-19')],
    at: 'pieces/row.yaml:10 teach, steps, cut-wire',
    what: 'Your words for this step have no {length} in them, and the learner couldn’t do it.',
    fix: 'Write {length} where the shop',
  },
  {
    code: 'teach-place-unknown',
    edits: [
      change(
        row,
        'wire: soft-19',
        'teach:\n  de:\n    steps:\n      cut-wire: "{length} {bead}"\nwire: soft-19',
      ),
    ],
    at: 'pieces/row.yaml:11 teach, de, steps, cut-wire',
    what: 'There is no {bead} in this step.',
    fix: 'There is {length}, {wire}.',
  },
  {
    code: 'unknown-material',
    edits: [change(parts, 'material: glass', 'material: glas')],
    at: 'components/parts.yaml:5 ball-8, material',
    what: 'The material “glas” isn’t known.',
    fix: 'Did you mean “glass”?',
  },
  {
    code: 'unknown-component',
    edits: [change(row, 'beads: ball-8', 'beads: [ball-8, bal-8]')],
    at: 'pieces/row.yaml:18 sections 1, beads 2',
    what: 'There is no component “bal-8”.',
    fix: 'Did you mean “ball-8”?',
  },
  {
    code: 'unknown-wire',
    edits: [change(row, 'wire: soft-19', 'wire: soft-91')],
    at: 'pieces/row.yaml:8 wire',
    what: 'There is no wire “soft-91”.',
    fix: 'Did you mean “soft-19”?',
  },
  {
    code: 'price-below-rule',
    edits: [change(row, 'price: £35.00', 'price: £12.00')],
    at: 'pieces/row.yaml:5 price',
    what: 'The price is £12.00; by the shop’s rule the piece comes to £35.00.',
    fix: 'Raise the price',
    note: true,
  },
  {
    code: 'gaps',
    edits: [],
    at: 'pieces/row.yaml:1',
    what: 'It can’t be made within your tolerance for wrists, at an easy sit, of 5¾\u00a0in and 7\u00a0in.',
    fix: 'For 5¾\u00a0in and 7\u00a0in: add a filler close to the clasp of none to 2 beads or spacers 1 mm long.',
    note: true,
  },
  {
    code: 'gaps-none',
    edits: [change(row, 'kind: bracelet', 'kind: anklet\ngaps: Nothing but one bead.')],
    at: 'pieces/row.yaml:3 gaps',
    what: 'It says why it leaves sizes out, but every size that is often asked for can be met.',
    fix: 'Take “gaps” away.',
    note: true,
  },
  {
    code: 'picture-outside',
    edits: pictured('../../row.jpg', null),
    at: 'pieces/row.yaml:8 pictures 1, file',
    what: 'The picture “../../row.jpg” lies outside the content folder.',
    fix: 'beside the piece',
  },
  {
    code: 'picture-missing',
    edits: pictured('row.jpg', null),
    at: 'pieces/row.yaml:8 pictures 1, file',
    what: 'The picture “row.jpg” isn’t there.',
    fix: 'capitals included',
  },
  {
    code: 'picture-format',
    edits: pictured('row.jpg', new TextEncoder().encode('not a picture at all')),
    at: 'pieces/row.yaml:8 pictures 1, file',
    what: '“row.jpg” isn’t a JPEG, PNG, WebP or AVIF picture.',
    fix: 'Save it as JPEG',
  },
  {
    code: 'picture-broken',
    edits: pictured('row.jpg', jpegWithoutEnd),
    at: 'pieces/row.yaml:8 pictures 1, file',
    what: 'The picture “row.jpg” is broken: its end is missing.',
    fix: 'Copy it again',
  },
  {
    code: 'picture-crop',
    edits: [
      change(
        row,
        'wire: soft-19',
        'pictures: [{ file: row.jpg, alt: A row., crop: 90% 0% 20% 100% }]\nwire: soft-19',
      ),
    ],
    at: 'pieces/row.yaml:8 pictures 1, crop',
    what: '“90% 0% 20% 100%” isn’t a part of the picture.',
    fix: 'four percentages',
  },
  {
    code: 'guide-language',
    edits: [write('guides/fr/measuring.md', '---\ntitle: A\nsummary: B\norder: 1\n---\nC\n')],
    at: 'guides/fr/measuring.md:1',
    what: 'The shop isn’t written in “fr”.',
    fix: 'en, de',
  },
];
