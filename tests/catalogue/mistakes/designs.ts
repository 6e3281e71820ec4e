/** Mistakes that keep a piece from being strung or worn. */
import { change, parts, row, sections, write, type Mistake } from './mistake.ts';

const toggle = write(
  'components/more.yaml',
  "toggle-14:\n  name: Toggle\n  kind: clasp\n  shape: toggle\n  along: 16 mm\n  across: 14 mm\n  material: silver\n  colour: '#dddddd'\n  cost: £4.60\n",
);

/** A line of what may be chosen instead, before the sections. */
const offering = (instead: string) => change(row, 'mirrored: no\n', `instead: ${instead}\nmirrored: no\n`);

export const designMistakes: readonly Mistake[] = [
  {
    code: 'unknown-component',
    edits: [offering('{ clasps: [{ clasp: lobster-21 }] }')],
    at: 'pieces/row.yaml:15 instead, clasps 1, clasp',
    what: 'There is no component “lobster-21”.',
    fix: 'lobster-12',
  },
  {
    code: 'wrong-kind',
    edits: [offering('{ clasps: [{ clasp: ball-8 }] }')],
    at: 'pieces/row.yaml:15 instead, clasps 1, clasp',
    what: '“ball-8” is a bead, which can’t stand here; a clasp can.',
    fix: 'Name a component that can.',
  },
  {
    code: 'instead-twice',
    edits: [offering('{ clasps: [{ clasp: lobster-12 }] }')],
    at: 'pieces/row.yaml:15 instead, clasps 1, clasp',
    what: '“lobster-12” is the one the piece is listed with, or stands here twice.',
    fix: 'Leave this line out',
  },
  {
    code: 'instead-needs-ring',
    edits: [
      toggle,
      change(row, '  clasp: lobster-12\n  ring: ring-6\n', '  clasp: toggle-14\n'),
      offering('{ clasps: [{ clasp: lobster-12 }] }'),
    ],
    at: 'pieces/row.yaml:14 instead, clasps 1, clasp',
    what: '“lobster-12” closes into a ring, and neither it nor the piece names one.',
    fix: 'ring: ring-6-brass',
  },
  {
    code: 'instead-of-nothing',
    edits: [offering('{ pendants: [ball-8] }')],
    at: 'pieces/row.yaml:15 instead, pendants 1',
    what: '“ball-8” can’t hang instead of a pendant, for the piece has none.',
    fix: 'under pendant',
  },
  {
    code: 'wrong-kind',
    edits: [change(row, 'clasp: lobster-12', 'clasp: ball-8')],
    at: 'pieces/row.yaml:10 closing, clasp',
    what: '“ball-8” is a bead, which can’t stand here; a clasp can.',
    fix: 'Name a component that can.',
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
    code: 'cover-too-tight',
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
    what: '“ring-6” is a closed ring: “drop” can’t be hung on it.',
    fix: '“jump-4” would fit.',
  },
  {
    code: 'chain-too-short',
    edits: [change(row, '  loop: 3 mm\n', '  loop: 3 mm\n  extender: 3 mm\n  link: 4 mm\n')],
    at: 'pieces/row.yaml:15 closing, extender',
    what: 'The chain of 3 mm is shorter than one of its links, 4 mm.',
    fix: 'Write a longer “extender”',
  },
  {
    code: 'link-without-chain',
    edits: [change(row, '  loop: 3 mm\n', '  loop: 3 mm\n  link: 4 mm\n')],
    at: 'pieces/row.yaml:15 closing, link',
    what: 'A link of 4 mm is named, but there is no chain.',
    fix: 'Write how long the chain is as “extender”',
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
    what: 'Made with its usual counts this bracelet measures 481.73 mm; one that somebody can wear lies between 90 mm and 300 mm.',
    fix: 'one side or for the whole',
  },
  {
    code: 'strand-too-long',
    edits: [
      change(
        row,
        'beads: ball-8\n    usual: 22\n    fewest: 18\n    most: 27',
        'beads: 99 ball-8\n    usual: 1\n    most: 999',
      ),
    ],
    at: 'pieces/row.yaml:16 sections',
    what: 'This strand takes up to 98,901 components; more than 3,000 can’t be computed.',
    fix: 'Lower “most”',
  },
];
