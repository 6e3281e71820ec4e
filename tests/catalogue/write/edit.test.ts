/** Single edits, with the text that has to come out. */
import { describe, expect, test } from 'vitest';
import { editGuide, editYaml, newEntry } from '#catalogue/write/edit.ts';
import type { FieldChange } from '#catalogue/write/plain.ts';
import { EditError, plainOf, rewrite } from '#catalogue/write/rewrite.ts';

const order = (): string[] => ['name', 'kind', 'price', 'summary', 'story', 'wire', 'sections', 'tail'];

/** Text before, changes, text after. */
type Row = readonly [what: string, before: string, changes: FieldChange[], after: string];

const rows: readonly Row[] = [
  [
    'a value, with the remark behind it',
    'name: Heron\nprice: £48.00 # since May\n',
    [{ path: ['price'], value: '£52.00' }],
    'name: Heron\nprice: £52.00 # since May\n',
  ],
  [
    'a colour gets its quotes',
    "heron-6:\n  colour: '#8b98a3' # grey\n",
    [
      { path: ['heron-6', 'colour'], value: '#112233' },
      { path: ['heron-6', 'accent'], value: '#445566' },
    ],
    "heron-6:\n  colour: '#112233' # grey\n  accent: '#445566'\n",
  ],
  [
    'a text that YAML takes for something else',
    'name: x\n',
    [{ path: ['name'], value: '1.10' }],
    "name: '1.10'\n",
  ],
  [
    'a text that is spelt as YAML spells the number',
    'made: 2021\n',
    [{ path: ['made'], value: '2022' }],
    'made: 2022\n',
  ],
  ['yes stays yes', 'upright: yes\n', [{ path: ['upright'], value: false }], 'upright: no\n'],
  [
    'a new field goes to its place',
    'name: Heron\n# about the wire\nwire: soft-19\n',
    [{ path: ['kind'], value: 'bracelet' }],
    'name: Heron\nkind: bracelet\n# about the wire\nwire: soft-19\n',
  ],
  [
    'a field goes with its own remark, others stay',
    'name: Heron\n# form: https://x.example\n# not enough\nprice: £1.00 # no\n\nwire: soft-19\n',
    [{ path: ['price'], value: undefined }],
    'name: Heron\n# form: https://x.example\n\nwire: soft-19\n',
  ],
  [
    'a folded text stays folded, its remark too',
    'story: >- # as told\n  One two three four.\n  Five.\nwire: soft-19\n',
    [{ path: ['story'], value: 'Six.\nSeven.' }],
    'story: >- # as told\n  Six.\n\n  Seven.\nwire: soft-19\n',
  ],
  [
    'a long text is folded',
    'name: Heron\n',
    [{ path: ['story'], value: `${'word '.repeat(30)}end` }],
    `name: Heron\nstory: >-\n  ${'word '.repeat(17).trim()}\n  ${'word '.repeat(13)}end\n`,
  ],
  [
    'one bead becomes several',
    'sections:\n  - name: Middle\n    beads: a-6 # so far\n    usual: 3\n',
    [{ path: ['sections', 0, 'beads'], value: ['2 a-6', 'b-4'] }],
    'sections:\n  - name: Middle\n    beads: [2 a-6, b-4] # so far\n    usual: 3\n',
  ],
  [
    'a list in brackets stays in them',
    'beads: [2 a-6, b-4]\n',
    [{ path: ['beads'], value: ['c-3', '2 a-6', 'b-4', '3 d-2'] }],
    'beads: [c-3, 2 a-6, b-4, 3 d-2]\n',
  ],
  [
    'sections change places with their remarks',
    'sections:\n  # the first\n  - name: A\n    usual: 1\n  # the second\n  - name: B # b\n    usual: 2\ntail: x\n',
    [
      {
        path: ['sections'],
        value: [
          { name: 'B', usual: 2 },
          { name: 'New', beads: ['a-6'] },
          { name: 'A', usual: 5 },
        ],
      },
    ],
    'sections:\n  # the second\n  - name: B # b\n    usual: 2\n  - name: New\n    beads: [a-6]\n  # the first\n  - name: A\n    usual: 5\ntail: x\n',
  ],
  [
    'an item in braces among such',
    'bands:\n  - { up-to: 1 kg, price: £3.20 } # small\n',
    [{ path: ['bands', 1], value: { 'up-to': '2 kg', price: '£5.60', from: '1 kg' } }],
    'bands:\n  - { up-to: 1 kg, price: £3.20 } # small\n  - { up-to: 2 kg, price: £5.60, from: 1 kg }\n',
  ],
  [
    'an entry is added with a blank line as between the others',
    '# Glass.\n\na-6:\n  name: A\n\nb-6:\n  name: B\n',
    [{ path: ['c-6'], value: { name: 'C', hole: '1 mm' } }],
    '# Glass.\n\na-6:\n  name: A\n\nb-6:\n  name: B\n\nc-6:\n  name: C\n  hole: 1 mm\n',
  ],
  [
    'the first entry goes, the head of the file stays',
    '# Glass.\n\na-6:\n  name: A\n\nb-6:\n  name: B\n',
    [{ path: ['a-6'], value: undefined }],
    '# Glass.\n\nb-6:\n  name: B\n',
  ],
  [
    'the last entry goes with its gap',
    'a-6:\n  name: A\n\n# own\nb-6:\n  name: B\n  # below\n',
    [{ path: ['b-6'], value: undefined }],
    'a-6:\n  name: A\n',
  ],
  [
    'a field without value gets one',
    'a: # still to say\nb: 1\n',
    [{ path: ['a'], value: 'said' }],
    'a: said # still to say\nb: 1\n',
  ],
  [
    'line ends of another system, and a last line without one',
    'a: 1\r\nb: 2\r\nc: 3',
    [
      { path: ['c'], value: undefined },
      { path: ['a'], value: ['x', 'y'] },
    ],
    'a: [x, y]\r\nb: 2',
  ],
  [
    'an added field where the last line has no end',
    'a: 1\nb: 2',
    [{ path: ['c'], value: 3 }],
    'a: 1\nb: 2\nc: 3',
  ],
  [
    'fields become a value, and a value fields',
    'a: # note\n  x: 1\n  y: 2\nb: 3 # three\n',
    [
      { path: ['a'], value: 'none' },
      { path: ['b'], value: { z: 1 } },
    ],
    'a: none # note\nb: # three\n  z: 1\n',
  ],
  [
    'a reference is written out where it is changed',
    'a: &one { x: 1 }\nb: *one\nc: *one\n',
    [{ path: ['b', 'x'], value: 2 }],
    'a: &one { x: 1 }\nb:\n  x: 2\nc: *one\n',
  ],
  ['a file of remarks alone', '# nothing yet\n', [{ path: ['a'], value: 1 }], '# nothing yet\na: 1\n'],
];

describe('an edit touches what changes and nothing else', () => {
  test.each(rows)('%s', (_, before, changes, after) => {
    expect(editYaml(before, changes, order)).toBe(after);
  });

  test('what is referred to and changes at its first place keeps what it was at the others', () => {
    const text = editYaml('a: &one\n  x: 1\nb: *one\n', [{ path: ['a', 'x'], value: 2 }]);
    expect(plainOf(text)).toEqual({ a: { x: 2 }, b: { x: 1 } });
  });

  test('a text that is no YAML, or holds no fields, is refused', () => {
    expect(() => editYaml('a: [', [{ path: ['a'], value: 1 }])).toThrow(EditError);
    expect(() => editYaml('- a\n', [{ path: ['a'], value: 1 }])).toThrow(EditError);
  });

  test('a file written in an unusual way is written anew from what it says, remarks kept', () => {
    const { text, reformatted } = rewrite('? a\n: 1 # one\nb:   2\n', { a: 5, b: 2 });
    expect(reformatted).toBe(true);
    expect(text).toContain('# one');
    expect(plainOf(text)).toEqual({ a: 5, b: 2 });
  });
});

describe('guides', () => {
  const guide = '---\r\ntitle: Care\r\norder: 3 # third\r\n---\r\n\r\nOne.\r\n\r\nTwo.\r\n\r\n';

  test('a field of the heading block', () => {
    expect(editGuide(guide, [{ path: ['title'], value: 'Keeping' }])).toBe(guide.replace('Care', 'Keeping'));
  });

  test('the body alone, with the file’s line ends', () => {
    expect(editGuide(guide, [], 'Three.\n\nFour.\n')).toBe(
      guide.replace('One.\r\n\r\nTwo.', 'Three.\r\n\r\nFour.'),
    );
  });

  test('a new one', () => {
    expect(newEntry({ order: 3, title: 'Care' }, () => ['title', 'order'], 'One.')).toBe(
      '---\ntitle: Care\norder: 3\n---\n\nOne.\n',
    );
  });
});
