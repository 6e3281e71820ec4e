/** A form of the content from opening to the file: saved, refused at its field, met by another window, made new. */
import { describe, expect, it } from 'vitest';
import { beginEntry, stepEntry, type EntrySheet, type EntryStep } from '#bench/models/content/editEntry.ts';
import { tutorialFields } from '#bench/models/content/entrySchemas.ts';
import { beginPiece, stepPiece } from '#bench/models/content/newPiece.ts';
import { ID, shortNameOf, stepNew } from '#bench/models/content/newEntry.ts';
import { actionsFor, withPieceAction } from '#bench/models/content/pieceAction.ts';
import { typedPicture } from '#bench/models/content/partPicture.ts';
import { pieceMarks } from '#bench/models/content/published.ts';
import { trayList } from '#bench/models/content/trayList.ts';
import type { EntryKey } from '#bench/content/entry.ts';
import { allNodes, besides } from '#bench/intake/contentForm/formTree.ts';
import { frame } from '../shop.ts';
import { keptContent, type Kept } from '../content.ts';

const BEAD: EntryKey = { kind: 'component', id: 'ball-8' };
const FILE = 'components/parts.yaml';

function opened({ store }: Kept, key: EntryKey) {
  const entry = store.open(key);
  if (entry === null) throw new Error(`no ${key.id}`);
  return entry;
}

/** The form as a browser posts it, with some of its fields typed over. */
function posted(sheet: EntrySheet, typed: Readonly<Record<string, string>>): URLSearchParams {
  const form = new URLSearchParams({ do: 'save', digest: sheet.seen.digest, seen: sheet.seen.data });
  if (sheet.body !== null) form.set('seen-body', sheet.seen.body);
  for (const node of allNodes(sheet.nodes)) {
    if (node.node === 'value') form.set(node.key, node.typed);
    if (node.node === 'rows') form.set(besides.rows(node.key), String(node.rows.length));
  }
  for (const [key, value] of Object.entries(typed)) form.set(key, value);
  return form;
}

const step = (kept: Kept, key: EntryKey, form: URLSearchParams): EntryStep =>
  stepEntry(form, opened(kept, key), { store: kept.store, frame });

const sheetIn = (result: EntryStep): EntrySheet => {
  if (!('sheet' in result)) throw new Error(`it is ${result.done}`);
  return result.sheet;
};

describe('a save', () => {
  it('touches the line of its field, and the remark beside it stays', () => {
    const kept = keptContent([
      { file: FILE, from: 'hole: 1.2 mm\n', to: 'hole: 1.2 mm # with a drill shank\n' },
    ]);
    const before = kept.textOf(FILE);
    const form = posted(beginEntry(opened(kept, BEAD)), { hole: '1.1' });
    expect(step(kept, BEAD, form)).toEqual({ done: 'saved' });
    expect(kept.textOf(FILE)).toBe(before.replace('1.2 mm # with', '1.1 mm # with'));
  });

  it('of nothing new leaves the file alone', () => {
    const kept = keptContent();
    const before = kept.textOf(FILE);
    expect(step(kept, BEAD, posted(beginEntry(opened(kept, BEAD)), {}))).toEqual({ done: 'unchanged' });
    expect(kept.textOf(FILE)).toBe(before);
  });

  it('is refused with the check’s own sentence at its field, and what was typed stays', () => {
    const kept = keptContent();
    const before = kept.textOf(FILE);
    const sheet = sheetIn(
      step(kept, BEAD, posted(beginEntry(opened(kept, BEAD)), { hole: '9 mm', tray: 'B3' })),
    );
    expect(sheet.placed.own.map(({ key }) => key)).toEqual(['hole']);
    const [, tray] = ['hole', 'tray'].map((key) => sheet.nodes.find((node) => node.key === key));
    expect(tray).toMatchObject({ typed: 'B3' });
    expect(kept.textOf(FILE)).toBe(before);
  });

  it('of a form that asks for other fields than the usual keeps those', () => {
    const kept = keptContent();
    const piece: EntryKey = { kind: 'piece', id: 'row' };
    const sheet = beginEntry(opened(kept, piece), tutorialFields);
    const form = posted(sheet, { 'teach.steps.cut-wire': 'Cut {length} off the spool.' });
    const place = { store: kept.store, frame, fields: tutorialFields };
    expect(stepEntry(form, opened(kept, piece), place)).toEqual({ done: 'saved' });
    expect(opened(kept, piece).data).toMatchObject({
      teach: { steps: { 'cut-wire': 'Cut {length} off the spool.' } },
    });
  });

  it('that upsets a piece says where, with the way there', () => {
    const kept = keptContent();
    const sheet = sheetIn(step(kept, BEAD, posted(beginEntry(opened(kept, BEAD)), { hole: '0.3 mm' })));
    expect(sheet.placed.others.map(({ href }) => href)).toContain('/bench/pieces/row/words/');
  });

  it('tells of a field that its kind needs at that field', () => {
    const kept = keptContent();
    const crimp: EntryKey = { kind: 'component', id: 'crimp-2' };
    const sheet = sheetIn(step(kept, crimp, posted(beginEntry(opened(kept, crimp)), { closed: '' })));
    expect(sheet.placed.own.map(({ key }) => key)).toEqual(['closed']);
  });
});

describe('two windows', () => {
  it('that change different fields both save', () => {
    const kept = keptContent();
    const first = beginEntry(opened(kept, BEAD));
    const second = beginEntry(opened(kept, BEAD));
    expect(step(kept, BEAD, posted(first, { tray: 'B3' }))).toEqual({ done: 'saved' });
    expect(step(kept, BEAD, posted(second, { stock: '40' }))).toEqual({ done: 'saved' });
    expect(opened(kept, BEAD).data).toMatchObject({ tray: 'B3', stock: 40 });
  });

  it('that change the same field show both, and the second save decides', () => {
    const kept = keptContent();
    const first = beginEntry(opened(kept, BEAD));
    const second = beginEntry(opened(kept, BEAD));
    step(kept, BEAD, posted(first, { tray: 'B3', stock: '12' }));
    const sheet = sheetIn(step(kept, BEAD, posted(second, { tray: 'C1' })));
    expect(sheet.clashes).toEqual([{ key: 'tray', now: 'B3' }]);
    expect(sheet.nodes.find(({ key }) => key === 'tray')).toMatchObject({ typed: 'C1' });
    expect(step(kept, BEAD, posted(sheet, {}))).toEqual({ done: 'saved' });
    // What the first changed besides is not undone.
    expect(opened(kept, BEAD).data).toMatchObject({ tray: 'C1', stock: 12 });
  });

  it('hold for a guide’s text too', () => {
    const kept = keptContent();
    const guide = kept.store.reading().catalogue?.guides[0];
    if (guide === undefined) throw new Error('no guide');
    const key: EntryKey = { kind: 'guide', id: guide.id, lang: guide.lang };
    const first = beginEntry(opened(kept, key));
    const second = beginEntry(opened(kept, key));
    step(kept, key, posted(first, { 'body~text': 'Rinse it.' }));
    const sheet = sheetIn(step(kept, key, posted(second, { 'body~text': 'Dry it.' })));
    expect(sheet.clashes).toEqual([{ key: 'body~text', now: 'Rinse it.' }]);
    expect(sheet.body).toBe('Dry it.');
  });
});

describe('a guide', () => {
  it('is refused where its text would run in a browser', () => {
    const kept = keptContent();
    const guide = kept.store.reading().catalogue?.guides[0];
    if (guide === undefined) throw new Error('no guide');
    const key: EntryKey = { kind: 'guide', id: guide.id, lang: guide.lang };
    const form = posted(beginEntry(opened(kept, key)), { 'body~text': 'Hello <b>there</b>' });
    const sheet = sheetIn(step(kept, key, form));
    expect(sheet.placed.own.map(({ what }) => what).join()).toContain('<b>');
    expect(sheet.body).toBe('Hello <b>there</b>');
  });
});

describe('something new', () => {
  const typed = {
    do: 'save',
    name: 'Höhle, grau',
    size: '6',
    hole: '1,1',
    material: 'glass',
    colour: '#888888',
    cost: '0.1',
  };

  it('is named after its name, and goes to the others of its kind', () => {
    const kept = keptContent();
    const made = stepNew(new URLSearchParams(typed), { kind: 'component' }, { store: kept.store, frame });
    expect(made).toEqual({ created: 'hohle-grau' });
    expect(opened(kept, { kind: 'component', id: 'hohle-grau' })).toMatchObject({
      file: FILE,
      data: { name: 'Höhle, grau', size: '6 mm', hole: '1.1 mm', cost: '£0.10' },
    });
    // Once more, it gets a name of its own, but not the same name twice.
    const again = stepNew(new URLSearchParams(typed), { kind: 'component' }, { store: kept.store, frame });
    if (!('sheet' in again)) throw new Error('it was made');
    expect(again.sheet.placed.own.map(({ key }) => key)).toEqual(['name']);
  });

  it('is refused at its fields, a short name that is taken too', () => {
    const { store } = keptContent();
    const place = { store, frame };
    const bad = stepNew(new URLSearchParams({ ...typed, hole: '' }), { kind: 'component' }, place);
    const taken = stepNew(new URLSearchParams({ ...typed, [ID]: 'ball-8' }), { kind: 'component' }, place);
    const ways = [bad, taken].map((one) =>
      'sheet' in one ? one.sheet.placed.own.map(({ key }) => key) : [],
    );
    expect(ways).toEqual([['hole'], [ID]]);
  });

  it('gets a short name of letters, figures and hyphens, whatever it is called', () => {
    expect(shortNameOf('Großer Bär’s Tatze, 6 mm')).toBe('grosser-bars-tatze-6-mm');
    expect(shortNameOf('…')).toBe('');
  });
});

describe('a piece', () => {
  const ROW: EntryKey = { kind: 'piece', id: 'row' };

  it('new goes to the board with its name and kind', () => {
    const place = { store: keptContent().store, frame };
    const form = new URLSearchParams({ name: 'Heron Standing', kind: 'anklet' });
    expect(stepPiece(form, place)).toEqual({
      path: '/bench/pieces/heron-standing/board/?name=Heron+Standing&kind=anklet',
    });
    const nameless = stepPiece(new URLSearchParams({ kind: 'anklet' }), place);
    expect('asked' in nameless && nameless.asked.problems).toHaveLength(1);
  });

  it('is copied under a name of its own, to order', () => {
    const kept = keptContent();
    const place = { store: kept.store, frame };
    const asked = beginPiece(new URLSearchParams({ copy: 'row' }), place);
    expect(asked.copied).toEqual({ id: 'row', name: 'Row' });
    const done = stepPiece(new URLSearchParams({ copy: 'row', name: 'Second Row' }), place);
    expect(done).toEqual({ path: '/bench/pieces/second-row/words/?done=saved' });
    const copy = kept.store.reading().catalogue?.pieces.find(({ id }) => id === 'second-row');
    expect(copy).toMatchObject({ name: 'Second Row', status: 'to-order', made: '2026-11' });
    const twice = stepPiece(new URLSearchParams({ copy: 'row', name: 'Row' }), place);
    expect('asked' in twice && twice.asked.problems).toHaveLength(1);
  });

  it('is sold or moved to the past ones with one button, whatever else is typed along with it', () => {
    const lies = {
      file: 'pieces/row.yaml',
      from: 'status: to-order',
      to: 'status: available\nlies-since: 2026-11-01',
    };
    const kept = keptContent([lies]);
    const sheet = beginEntry(opened(kept, ROW));
    expect(actionsFor(sheet.nodes)).toEqual(['sold', 'retire']);
    const form = posted(sheet, { do: 'sold', price: '36' });
    expect(step(kept, ROW, withPieceAction(form))).toEqual({ done: 'saved' });
    expect(opened(kept, ROW).data).toMatchObject({ status: 'to-order', price: '£36.00' });
    expect(opened(kept, ROW).data).not.toHaveProperty('lies-since');
    const past = withPieceAction(posted(beginEntry(opened(kept, ROW)), { do: 'retire' }));
    expect(step(kept, ROW, past)).toEqual({ done: 'saved' });
    expect(opened(kept, ROW).data).toMatchObject({ status: 'past' });
  });

  it('is marked until it is published', () => {
    const kept = keptContent();
    const published = kept.store.reading().catalogue?.pieces ?? [];
    const place = { store: kept.store, frame };
    stepPiece(new URLSearchParams({ copy: 'row', name: 'Second Row' }), place);
    step(kept, ROW, posted(beginEntry(opened(kept, ROW)), { summary: 'Another line.' }));
    const live = kept.store.reading().catalogue?.pieces ?? [];
    const marks = pieceMarks(live, published, new Set());
    expect(Object.fromEntries(marks)).toEqual({ row: 'changed', 'second-row': 'new' });
    expect(pieceMarks(published, published, new Set()).size).toBe(0);
    // A section of another name, which its page shows and its revision leaves out.
    const renamed = published.map((piece) => {
      const strands = piece.design.strands.map((strand) => ({
        ...strand,
        sections: strand.sections.map((section) => ({ ...section, name: `${section.name} of old` })),
      }));
      return { ...piece, design: { ...piece.design, strands } };
    });
    expect([...pieceMarks(renamed, published, new Set()).values()]).toEqual(published.map(() => 'changed'));
  });
});

describe('the trays', () => {
  const catalogue = () => {
    const read = keptContent([
      { file: FILE, from: 'name: Glass round', to: 'name: Glass round\n  tray: B2' },
    ]).store;
    const whole = read.reading().catalogue;
    if (whole === null) throw new Error('not read');
    return whole;
  };

  it('hold everything, what has no tray last, and are found by words and measures', () => {
    const whole = catalogue();
    const trays = trayList(whole, '', frame);
    const count = Object.keys(whole.components).length + Object.keys(whole.wires).length;
    expect(trays.flatMap(({ rows }) => rows)).toHaveLength(count);
    expect([trays[0]?.name, trays.at(-1)?.name]).toEqual(['B2', null]);
    const found = (text: string) =>
      trayList(whole, text, frame).flatMap(({ rows }) => rows.map(({ id }) => id));
    expect(found('GLASS b2')).toEqual(['ball-8']);
    expect(found('8 mm').sort()).toEqual(['ball-8', 'stone-8']);
    expect(found('nothing like it')).toEqual([]);
  });

  it('draw a part as it is typed, and nothing where that isn’t enough', () => {
    const typed = (fields: Record<string, string>) => typedPicture(new URLSearchParams(fields), catalogue());
    expect(typed({ size: '6', colour: '#aa3333' })).toContain('<svg');
    expect(typed({ kind: 'clasp', shape: 'lobster', along: '10', across: '6', colour: '#dddddd' })).toContain(
      '<svg',
    );
    expect(typed({ kind: 'pendant', across: '12', colour: '#dddddd' })).toContain('<svg');
    expect(typed({ colour: '#aa3333' })).toBeNull();
    expect(typed({ size: 'wide', colour: '#aa3333' })).toBeNull();
  });
});
