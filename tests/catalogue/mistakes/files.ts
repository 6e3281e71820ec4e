/** Mistakes in how a file is saved or written, and what a guide may not hold. */
import { change, row, write, type Mistake } from './mistake.ts';

const guide = (body: string): string =>
  `---\ntitle: Care\nsummary: How to look after it.\norder: 1\n---\n\n${body}\n`;
const bomb = [
  'a0: &a0 [x, x, x, x, x, x, x, x, x, x]',
  ...Array.from(
    { length: 9 },
    (_, at) => `a${at + 1}: &a${at + 1} [${Array<string>(10).fill(`*a${at}`).join(', ')}]`,
  ),
].join('\n');
const keys = (count: number): string => Array.from({ length: count }, (_, at) => `k${at}: 1\n`).join('');

export const fileMistakes: readonly Mistake[] = [
  {
    code: 'file-too-large',
    edits: [write('pieces/export.yaml', keys(400_000))],
    at: 'pieces/export.yaml:1',
    what: 'The file has 4189 KB; no more than 256 KB are read.',
    fix: 'several files',
  },
  {
    code: 'too-many-fields',
    edits: [write('pieces/export.yaml', keys(8001))],
    at: 'pieces/export.yaml:8001',
    what: 'The file has more than 8000 fields.',
    fix: 'the right file',
  },
  {
    code: 'file-not-utf8',
    edits: [write(row, Uint8Array.from([0x6e, 0x61, 0x6d, 0x65, 0x3a, 0x20, 0xe9, 0x0a]))],
    at: 'pieces/row.yaml:1',
    what: 'The file isn’t saved as UTF-8, so letters would be lost.',
    fix: 'UTF-8',
  },
  ...(
    [
      ['U+0000', '\u0000'],
      ['U+0007', '\u0007'],
      ['U+001B', '\u001b'],
      ['U+202E', '\u202e'],
    ] as const
  ).map(([sign, letter]): Mistake => ({
    code: 'invisible-sign',
    edits: [change(row, 'summary: A row of beads.', `summary: A ${letter}row of beads.`)],
    at: 'pieces/row.yaml:6',
    what: `There is a sign in the text that nobody can see (${sign}).`,
    fix: 'type it again',
  })),
  {
    code: 'invisible-sign',
    edits: [change(row, 'summary: A row of beads.', String.raw`summary: "A \a row of beads."`)],
    at: 'pieces/row.yaml:6 summary',
    what: 'There is a sign in the text that nobody can see (U+0007).',
    fix: 'type it again',
  },
  {
    code: 'other-ending',
    edits: [write('pieces/other.yml', 'name: Other\n')],
    at: 'pieces/other.yml:1',
    what: 'The file ends in “.yml” and would be passed over.',
    fix: '“.yaml”',
  },
  {
    code: 'tab-indent',
    edits: [change(row, '  clasp: ', '\tclasp: ')],
    at: 'pieces/row.yaml:10',
    what: 'The line is indented with a tab, which YAML doesn’t allow.',
    fix: 'two blanks',
  },
  {
    code: 'colon-inside',
    edits: [change(row, 'summary: A row of beads.', 'summary: A row: of beads.')],
    at: 'pieces/row.yaml:6',
    what: 'The text has a colon and a blank in it, and what follows is taken for another field.',
    fix: 'in quotes',
  },
  {
    code: 'yaml-references',
    edits: [write('pieces/bomb.yaml', bomb)],
    at: 'pieces/bomb.yaml:2',
    what: 'References (&name and *name) or brackets in it stand for nothing, or for far too much.',
    fix: 'Write out',
  },
  {
    code: 'yaml-references',
    edits: [write('pieces/deep.yaml', `a: ${'['.repeat(100_000)}`)],
    at: 'pieces/deep.yaml:1',
    what: 'References (&name and *name) or brackets in it stand for nothing, or for far too much.',
    fix: 'Write out',
  },
  {
    code: 'field-twice',
    edits: [change(row, 'summary: A row of beads.', 'summary: A row of beads.\nsummary: Another.')],
    at: 'pieces/row.yaml:7',
    what: '“summary” is written twice in the same place.',
    fix: 'Keep the one',
  },
  {
    code: 'html-in-guide',
    edits: [write('guides/en/care.md', guide('Wipe it.\n\nThen <script>alert(1)</script>.'))],
    at: 'guides/en/care.md:9',
    what: '“<script>” is HTML, and a guide is plain text with Markdown.',
    fix: '[text](address)',
  },
  ...[
    '[a](javascript:alert)',
    '[a](JaVaScript&#58;alert)',
    '<javascript:alert>',
    '[a]\n\n[a]: data:text/html,1',
    '![a](vbscript:1)',
  ].map((body): Mistake => ({
    code: 'link-scheme',
    edits: [write('guides/en/care.md', guide(body))],
    at: `guides/en/care.md:${body.startsWith('[a]\n') ? 9 : 7}`,
    what: `The link “${/(?:java|vb)script:[a-z1]+|data:.*/i.exec(body.replace('&#58;', ':'))![0]}” doesn’t lead to a page, a file or an address.`,
    fix: 'https://',
  })),
  ...(
    [
      ['£1,154.00', '£1154.00'],
      ['1.154,00 €', '€1154.00'],
      ['£ 1 154', '£1154'],
      ['1’154.00 GBP', '1154.00 GBP'],
      ['£35,00', '£35.00'],
    ] as const
  ).map(([written, meant]): Mistake => ({
    code: 'money-marks',
    edits: [change(row, 'price: £35.00', `price: ${written}`)],
    at: 'pieces/row.yaml:5 price',
    what: `“${written}” has marks between the thousands, or a comma for a point.`,
    fix: `“${meant}”`,
  })),
  ...['javascript:alert(1)//{number}', 'data:text/html,{number}', 'http://pay.example/{number}'].map(
    (address): Mistake => ({
      code: 'not-https',
      edits: [change('shop.yaml', '  ready: 2 weeks', `  payment: '${address}'\n  ready: 2 weeks`)],
      at: 'shop.yaml:10 orders, payment',
      what: `“${address}” isn’t an https address.`,
      fix: 'https://',
    }),
  ),
  ...['javascript:alert(1)', '//other.example/desk', '/\\\\other.example/desk'].map((address): Mistake => ({
    code: 'not-https',
    edits: [change('shop.yaml', '  ready: 2 weeks', `  desk: '${address}'\n  ready: 2 weeks`)],
    at: 'shop.yaml:10 orders, desk',
    what: `“${address}” isn’t an https address.`,
    fix: 'https://',
  })),
  {
    code: 'ending-beyond-step',
    edits: [change('shop.yaml', '  round-up-to: £1.00', '  round-up-to: £1.00\n  ends-on: £1.00')],
    at: 'shop.yaml:25 price, ends-on',
    what: 'Prices can’t end on £1.00 where they go up by £1.00.',
    fix: 'Write less than “round-up-to”',
  },
  {
    code: 'sits-order',
    edits: [change('shop.yaml', 'easy: 60 mm', 'easy: 120 mm')],
    at: 'shop.yaml:14 ease, necklace, loose',
    what: '“loose” adds less than “easy”.',
    fix: 'snug add least',
  },
];
