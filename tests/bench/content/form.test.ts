/** Forms of the content: read off schemas, and only what she changed reaches a file. */
import { describe, expect, it } from 'vitest';
import { formChanges, freshFields } from '#bench/intake/contentForm/formChanges.ts';
import { besides, formTree, allNodes } from '#bench/intake/contentForm/formTree.ts';
import { TEN, withTenMeasured } from '#bench/intake/contentForm/tenInARow.ts';
import { entryFields, needOf } from '#bench/models/content/entrySchemas.ts';
import { labelOf } from '#bench/models/content/fieldNames.ts';
import { fields, listOf, money, quantity, text, yesNo } from '#catalogue/fields/field.ts';
import { describeFields, type FormField } from '#catalogue/schemas/describe.ts';
import { applyChanges, samePlain, type Plain } from '#catalogue/write/plain.ts';
import { plainOf } from '#catalogue/write/rewrite.ts';
import { contentFormWords } from '#words/words.ts';
import { readdirSync, readFileSync } from 'node:fs';

/** What a browser posts of a form with nothing touched. */
function untouched(of: readonly FormField[], data: Plain): URLSearchParams {
  const posted = new URLSearchParams();
  for (const node of allNodes(formTree(of, data, null))) {
    if (node.node === 'value') {
      // A browser sends a line's end as two signs.
      posted.set(node.key, node.typed.replaceAll('\n', '\r\n'));
    } else if (node.node === 'values') {
      posted.set(besides.offered(node.key), '1');
      for (const one of node.typed) posted.append(node.key, one);
    } else if (node.node === 'rows') {
      posted.set(besides.rows(node.key), String(node.rows.length));
    }
  }
  return posted;
}

const changed = (of: readonly FormField[], data: Plain, typed: Readonly<Record<string, string>>) => {
  const posted = untouched(of, data);
  for (const [key, value] of Object.entries(typed)) posted.set(key, value);
  return formChanges(formTree(of, data, posted), 'GBP');
};

const root = new URL('../../../content/', import.meta.url).pathname;
const demo = (file: string): Plain => plainOf(readFileSync(root + file, 'utf8'));

describe('a form that nothing was changed in', () => {
  it('changes nothing, whatever entry of the demo shop it is of', () => {
    const many = (folder: string): Plain[] =>
      readdirSync(root + folder).flatMap((file) =>
        Object.values(demo(`${folder}/${file}`) as Record<string, Plain>),
      );
    const all = [
      ...readdirSync(`${root}pieces`).map((file) => ['piece', demo(`pieces/${file}`)] as const),
      ...many('components').map((entry) => ['component', entry] as const),
      ...many('wires').map((entry) => ['wire', entry] as const),
      ['shop', demo('shop.yaml')] as const,
    ];
    expect(all.length).toBeGreaterThan(150);
    for (const [kind, data] of all)
      expect(changed(entryFields[kind], data, {}), JSON.stringify(data)).toEqual([]);
  });
});

describe('a choice', () => {
  /** How a field of a new component of a kind stands. */
  const need = (kind: string, field: string) => {
    const nodes = formTree(entryFields.component, { kind }, null);
    const node = nodes.find(({ key }) => key === field);
    if (node === undefined) throw new Error(`no ${field}`);
    return needOf('component', nodes)(node);
  };

  it('has to be made where nothing is usual for a kind, and says what is where something is', () => {
    expect(need('clasp', 'shape')).toEqual({ required: true, usual: null });
    expect(need('pendant', 'loop')).toEqual({ required: true, usual: null });
    expect(need('bead', 'shape')).toEqual({ required: false, usual: 'ball' });
    expect(need('crimp', 'shape')).toEqual({ required: false, usual: 'tube' });
    expect(need('bead', 'colour')).toEqual({ required: true, usual: null });
    expect(need('bead', 'accent')).toEqual({ required: false, usual: null });
  });
});

describe('what she types', () => {
  const { component, shop, piece } = entryFields;
  const bead = {
    name: 'Slate',
    size: '6 mm',
    hole: '1.1 mm',
    material: 'slate',
    colour: '#4d5a68',
    cost: '£0.12',
  };

  it.each([
    ['size', '7', '7 mm'],
    ['size', '7mm', '7 mm'],
    ['size', '6,5', '6.5 mm'],
    ['size', '1/4 in', '1/4 in'],
    ['cost', '0.2', '£0.20'],
    ['cost', '1,20', '£1.20'],
    ['cost', '0.20 GBP', '0.20 GBP'],
    ['colour', '#AABBCC', '#aabbcc'],
    ['stock', '140', 140],
    // What can't be read is for the check to tell of.
    ['hole', 'wide', 'wide'],
  ] as const)('as %s %s is saved as %s', (key, typed, value) => {
    expect(changed(component, bead, { [key]: typed })).toEqual([{ path: [key], value }]);
  });

  it('goes on in the unit and the currency’s way that stood there', () => {
    const data = demo('shop.yaml');
    expect(
      changed(shop, data, {
        'ease.bracelet.snug': '3/8',
        'price.labour': '19',
        'orders.keep-invoices': '10',
      }),
    ).toEqual([
      { path: ['orders', 'keep-invoices'], value: '10 years' },
      { path: ['ease', 'bracelet', 'snug'], value: '3/8 in' },
      { path: ['price', 'labour'], value: '£19.00 per hour' },
    ]);
    expect(changed(component, { ...bead, cost: '0.12 GBP' }, { cost: '0.3' })).toEqual([
      { path: ['cost'], value: '0.30 GBP' },
    ]);
  });

  it('and is emptied goes; what may be left out as a whole goes as a whole', () => {
    const data = demo('pieces/ford.yaml');
    expect(changed(component, { ...bead, tray: 'B2' }, { tray: '' })).toEqual([
      { path: ['tray'], value: undefined },
    ]);
    expect(changed(piece, data, { 'de.summary': '', 'de.story': '' })).toEqual([
      { path: ['de'], value: undefined },
    ]);
  });

  it('reads dates and countries as she writes them', () => {
    const data = demo('shop.yaml');
    expect(changed(piece, demo('pieces/ford.yaml'), { made: '17.5.2024' })[0]?.value).toBe('2024-05-17');
    const countries = changed(shop, data, { 'post.groups.0.countries': 'United Kingdom, Irland' });
    expect(countries).toEqual([{ path: ['post', 'groups', 0, 'countries'], value: ['GB', 'IE'] }]);
  });

  it('adds rows behind those there are, and takes rows away from the last', () => {
    const data = demo('shop.yaml');
    const changes = changed(shop, data, {
      'orders.carriers~rows': '4',
      'orders.carriers.0~gone': 'on',
      'orders.carriers.2.name': 'Ferry Post',
      'orders.carriers.3.name': '',
    });
    const next = applyChanges(data, changes) as { orders: { carriers: { name: string }[] } };
    expect(next.orders.carriers.map(({ name }) => name)).toEqual(['Pennant Parcels', 'Ferry Post']);
  });

  it('of a field that was not on her form stays as it is', () => {
    const posted = new URLSearchParams({ name: 'Slate, dark' });
    expect(formChanges(formTree(component, bead, posted), 'GBP')).toEqual([
      { path: ['name'], value: 'Slate, dark' },
    ]);
  });

  it('of ten in a row gives the length of one, where none is given', () => {
    const typed = (more: Record<string, string>) =>
      Object.fromEntries(withTenMeasured(new URLSearchParams({ [TEN]: '21', ...more })));
    expect(typed({ across: '3 mm' })).toEqual({ across: '3 mm', along: '2.1 mm' });
    expect(typed({})).toEqual({ size: '2.1 mm' });
    expect(typed({ along: '2 mm' }).along).toBe('2 mm');
    expect(typed({ [TEN]: 'a bit' }).size).toBe('a bit');
  });
});

describe('a field that nobody has foreseen', () => {
  const schema = fields({
    name: text(40),
    'glue-spot': quantity('length', 0, 5).optional(),
    waxed: yesNo.default(false),
    gifts: listOf(fields({ card: text(40), price: money })).optional(),
  });
  const of = describeFields(schema);

  it('has a control and a name, is read and saved', () => {
    const nodes = formTree(of, { name: 'Thread', 'glue-spot': '2 mm' }, null);
    const [, spot] = nodes;
    expect(spot).toMatchObject({ key: 'glue-spot', typed: '2 mm' });
    expect(labelOf(contentFormWords('en').labels, 'wire', ['glue-spot'])).toBe('Glue spot');
    const typed = {
      'glue-spot': '3',
      waxed: 'yes',
      'gifts~rows': '1',
      'gifts.0.card': 'Birch',
      'gifts.0.price': '2',
    };
    const data = { name: 'Thread', 'glue-spot': '2 mm' };
    const next = applyChanges(data, changed(of, data, typed));
    const gifts = [{ card: 'Birch', price: '£2.00' }];
    expect(samePlain(next, { name: 'Thread', 'glue-spot': '3 mm', waxed: 'yes', gifts })).toBe(true);
    expect(schema.safeParse(next).success).toBe(true);
  });

  it('makes an entry out of nothing, without what is usual', () => {
    const nodes = formTree(of, {}, new URLSearchParams({ name: 'Cord', waxed: 'no' }));
    expect(freshFields(nodes, 'GBP')).toEqual({ name: 'Cord' });
  });
});

describe('labels', () => {
  it.each(['en', 'de'] as const)('name every field of every form in %s', (lang) => {
    const { labels } = contentFormWords(lang);
    const unnamed = (['component', 'wire', 'guide', 'piece', 'shop'] as const).flatMap((kind) => {
      const all: FormField[] = [];
      const look = (of: readonly FormField[]): void => {
        for (const field of of) {
          all.push(field);
          const { shape } = field;
          const inner = shape.kind === 'list' ? shape.item : shape;
          if (inner.kind === 'group') look(inner.fields);
        }
      };
      look(entryFields[kind]);
      return all.filter(
        ({ name }) =>
          labels[name] === undefined && !Object.keys(labels).some((key) => key.endsWith(`.${name}`)),
      );
    });
    expect(unnamed.map(({ name }) => name)).toEqual([]);
  });
});
