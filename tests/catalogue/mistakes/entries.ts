/** Mistakes that show only when a whole entry, or several, are looked at. */
import type { Edit } from '../contentFolder.ts';
import { change, parts, row, write, type Mistake } from './mistake.ts';

/** A picture line in the piece, and the file it names. */
function pictured(name: string, bytes: Uint8Array | null): Edit[] {
  const line = change(row, 'wire: soft-19', `pictures: [{ file: ${name}, alt: A row. }]\nwire: soft-19`);
  return bytes === null ? [line] : [line, write(`pieces/${name}`, bytes)];
}

const jpegWithoutEnd = Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, ...Array<number>(80).fill(0)]);

/** The beads of the plain piece, to be put in another way. */
const sections =
  'mirrored: no\nsections:\n  - name: Run\n    beads: ball-8\n    usual: 22\n    fewest: 18\n    most: 27\n';

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
    what: "The measures of this ball aren't complete.",
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
    what: "A hole of 12 mm doesn't leave anything of a component 8 mm across.",
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
    what: "Fewest 23, usual 22 and most 27 aren't in rising order.",
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
    what: "The strands don't come to one size: one is never below 178.68 mm, another never above 131.21 mm.",
    fix: 'reach the same sizes',
  },
  {
    code: 'unknown-material',
    edits: [change(parts, 'material: glass', 'material: glas')],
    at: 'components/parts.yaml:5 ball-8, material',
    what: "The material “glas” isn't known.",
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
    code: 'wrong-kind',
    edits: [change(row, 'clasp: lobster-12', 'clasp: ball-8')],
    at: 'pieces/row.yaml:10 closing, clasp',
    what: "“ball-8” is a bead, and can't stand here.",
    fix: 'Name a clasp.',
  },
  {
    code: 'hole-too-small',
    edits: [change(parts, 'hole: 1.2 mm', 'hole: 0.4 mm')],
    at: 'pieces/row.yaml:17 sections 1',
    what: 'The hole of “ball-8” is 0.4 mm; the wire “soft-19” needs 0.48 mm.',
    fix: 'thinner wire',
  },
  {
    code: 'end-hole-too-small',
    edits: [change(row, 'beads: ball-8', 'beads: stone-8')],
    at: 'pieces/row.yaml:16 sections',
    what: '“stone-8” stands at an end, where the wire “soft-19” runs back doubled: its hole is 0.8 mm, and 0.97 mm is needed.',
    fix: 'larger holes next to the crimp',
  },
  {
    code: 'crimp-too-tight',
    edits: [change(parts, '  hole: 1.2 mm\n  closed', '  hole: 0.9 mm\n  closed')],
    at: 'pieces/row.yaml:12 closing, crimp',
    what: 'The crimp “crimp-2” is 0.9 mm inside; the wire “soft-19” doubled needs 0.97 mm.',
    fix: 'larger crimp',
  },
  {
    code: 'crimp-too-tight',
    edits: [
      change(parts, '  hole: 1.2 mm\n  closed', '  hole: 0.9 mm\n  closed'),
      change(
        parts,
        'crimp-2:\n',
        "crimp-spare:\n  name: Spare crimp\n  kind: crimp\n  along: 2 mm\n  across: 2 mm\n  hole: 1.1 mm\n  closed: 1.7 mm\n  material: silver\n  colour: '#dddddd'\n  cost: £0.25\n\ncrimp-2:\n",
      ),
    ],
    at: 'pieces/row.yaml:12 closing, crimp',
    what: 'The crimp “crimp-2” is 0.9 mm inside; the wire “soft-19” doubled needs 0.97 mm.',
    fix: '“crimp-spare” would fit.',
  },
  {
    code: 'crimp-too-loose',
    edits: [change(parts, '  hole: 1.2 mm\n  closed', '  hole: 1.6 mm\n  closed')],
    at: 'pieces/row.yaml:12 closing, crimp',
    what: 'The crimp “crimp-2” is 1.6 mm inside, too loose on the wire “soft-19” doubled: at most 1.32 mm.',
    fix: 'smaller crimp',
    note: true,
  },
  {
    code: 'cover-not-fit',
    edits: [change(parts, 'takes: 1.8 mm', 'takes: 1.5 mm')],
    at: 'pieces/row.yaml:13 closing, cover',
    what: 'The cover “cover-3” takes 1.5 mm; the crimp “crimp-2” is 1.6 mm once closed.',
    fix: 'larger cover',
  },
  {
    code: 'ring-closed',
    edits: [
      change(row, 'mirrored: no\n', 'pendant: { hangs: drop, rings: [ring-6] }\nmirrored: no\n'),
      change(
        parts,
        'ring-6:\n',
        "drop:\n  name: Drop\n  kind: pendant\n  across: 9 mm\n  hang: 20 mm\n  loop: in-plane\n  material: glass\n  colour: '#dddddd'\n  cost: £1.00\n\njump-4:\n  name: Jump ring\n  kind: ring\n  joint: open\n  along: 3 mm\n  across: 4 mm\n  material: silver\n  colour: '#dddddd'\n  cost: £0.10\n\nring-6:\n",
      ),
    ],
    at: 'pieces/row.yaml:15 pendant, rings 1',
    what: "“ring-6” is a closed ring: “drop” can't be hung on it.",
    fix: '“jump-4” would fit.',
  },
  {
    code: 'ways',
    edits: [
      change(
        row,
        sections,
        'lie: side-by-side\nstrands:\n  - name: One\n    sections:\n      - name: Run\n        beads: 11 ball-8\n  - name: Two\n    sections:\n      - name: Run\n        beads: 11 ball-8\n',
      ),
    ],
    at: 'pieces/row.yaml:10 closing, clasp',
    what: 'The clasp “lobster-12” takes one strand; the piece has 2.',
    fix: 'as many loops as there are strands',
  },
  {
    code: 'size-absurd',
    edits: [change(row, 'usual: 22\n    fewest: 18\n    most: 27', 'usual: 60')],
    at: 'pieces/row.yaml:1',
    what: 'Made with its usual counts this bracelet measures 481.73 mm; a bracelet lies between 90 mm and 300 mm.',
    fix: 'one side or for the whole',
  },
  {
    code: 'design-other',
    edits: [
      change(
        row,
        'beads: ball-8\n    usual: 22\n    fewest: 18\n    most: 27',
        'beads: 99 ball-8\n    usual: 1\n    most: 999',
      ),
    ],
    at: 'pieces/row.yaml:16 sections',
    what: "The design can't be strung as it stands (too-large).",
    fix: 'counts and measures',
  },
  {
    code: 'price-below-rule',
    edits: [change(row, 'price: £35.00', 'price: £12.00')],
    at: 'pieces/row.yaml:5 price',
    what: "The price is £12.00; by the shop's rule the piece comes to £35.00.",
    fix: 'Raise the price',
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
    what: "The picture “row.jpg” isn't there.",
    fix: 'capitals included',
  },
  {
    code: 'picture-format',
    edits: pictured('row.jpg', new TextEncoder().encode('not a picture at all')),
    at: 'pieces/row.yaml:8 pictures 1, file',
    what: "“row.jpg” isn't a JPEG, PNG, WebP or AVIF picture.",
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
    code: 'guide-language',
    edits: [write('guides/fr/measuring.md', '---\ntitle: A\nsummary: B\norder: 1\n---\nC\n')],
    at: 'guides/fr/measuring.md:1',
    what: "The shop isn't written in “fr”.",
    fix: 'en, de',
  },
];
