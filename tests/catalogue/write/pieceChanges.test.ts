/** What is laid out on the board goes into a piece's file and nothing else does. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { reduce } from '#board/model/reduce.ts';
import { settled } from '#board/model/settle.ts';
import { designIn } from '#catalogue/build/designIn.ts';
import { namedDesign } from '#catalogue/write/authoredDesign.ts';
import { editYaml } from '#catalogue/write/edit.ts';
import { pieceChanges } from '#catalogue/write/pieceChanges.ts';
import { applyChanges, type PlainMap } from '#catalogue/write/plain.ts';
import type { Design } from '#core/design/design.ts';
import { anyAction } from '#tests/board/actions.ts';
import { catalogueOf, CONTENT } from '#tests/support/catalogue.ts';

const catalogue = catalogueOf();
const { pieces } = catalogue;
const textOf = (id: string): string => readFileSync(join(CONTENT, 'pieces', `${id}.yaml`), 'utf8');
const dataOf = (id: string): PlainMap => parse(textOf(id)) as PlainMap;
const designOf = (id: string): Design => pieces.find((piece) => piece.id === id)!.design;
const runs = process.env['CLASPWISE_THOROUGH'] === undefined ? 200 : 5000;

it('changes nothing in a file whose design is as it was', () => {
  for (const { id, design } of pieces) {
    expect(designIn(id, dataOf(id), catalogue)).toEqual(design);
    expect(pieceChanges(dataOf(id), design, namedDesign(design))).toEqual([]);
  }
});

it('is read again as it was laid, whatever was done, with every other field as it was', () => {
  const anyPiece = fc.constantFrom(...pieces.map(({ id }) => id));
  const ofDesign = new Set([
    ...['kind', 'wire', 'closing', 'pendant', 'one-sided', 'upright', 'mirrored', 'sections'],
    ...['strands', 'lie', 'gap'],
  ]);
  const others = (data: PlainMap): [string, unknown][] =>
    Object.entries(data).filter(([name]) => !ofDesign.has(name));
  fc.assert(
    fc.property(anyPiece, fc.array(anyAction(catalogue), { maxLength: 12 }), (id, actions) => {
      const design = designOf(id);
      const laid = actions.reduce((one, action) => reduce(one, action, catalogue).design, design);
      if (laid.strands.some(({ sections }) => sections.length === 0)) return;
      const data = dataOf(id);
      const next = applyChanges(data, pieceChanges(data, design, namedDesign(laid))) as PlainMap;
      expect(settled(designIn(id, next, catalogue)!, catalogue)).toEqual(settled(laid, catalogue));
      expect(others(next)).toEqual(others(data));
    }),
    { numRuns: runs },
  );
});

describe('in the file itself', () => {
  const lines = (text: string): string[] => text.split('\n');

  it('one count is one line', () => {
    const design = designOf('banked-fire');
    const change = { type: 'section', strand: 0, section: 2, change: { most: 7 } } as const;
    const laid = reduce(design, change, catalogue).design;
    const text = textOf('banked-fire');
    const edited = lines(editYaml(text, pieceChanges(dataOf('banked-fire'), design, namedDesign(laid))));
    const differing = lines(text).filter((line, at) => line !== edited[at]);
    expect(differing).toEqual(['    most: 6']);
    expect(edited).toHaveLength(lines(text).length);
  });

  it('a section put between others leaves them and the remarks beside them alone', () => {
    const text = textOf('banked-fire').replace('  - name: Glint', '  # only where it shows\n  - name: Glint');
    const design = designOf('banked-fire');
    const begun = { type: 'begin', strand: 0, section: 2, component: 'silver-3', name: 'New' } as const;
    const laid = reduce(design, begun, catalogue).design;
    const edited = editYaml(text, pieceChanges(dataOf('banked-fire'), design, namedDesign(laid)));
    const left = new Set(lines(edited));
    expect(lines(text).filter((line) => !left.has(line))).toEqual([]);
    const old = new Set(lines(text));
    expect(
      lines(edited)
        .filter((line) => !old.has(line))
        .join('\n'),
    ).toContain('name: New');
  });

  it('what is said although it goes without saying stays said while it is so', () => {
    const data = { ...dataOf('banked-fire'), mirrored: 'yes' } as PlainMap;
    const design = designOf('banked-fire');
    const laid = reduce(design, { type: 'wire', wire: 'strong-24' }, catalogue).design;
    expect(pieceChanges(data, design, namedDesign(laid))).toEqual([{ path: ['wire'], value: 'strong-24' }]);
  });

  it('a second strand moves the sections into strands, and one taken away moves them back', () => {
    const design = designOf('banked-fire');
    const two = reduce(design, { type: 'add-strand', like: 0 }, catalogue).design;
    const data = dataOf('banked-fire');
    const next = applyChanges(data, pieceChanges(data, design, namedDesign(two))) as PlainMap;
    expect(next['sections']).toBeUndefined();
    const again = designIn('banked-fire', next, catalogue)!;
    expect(again).toEqual(two);
    const one = reduce(again, { type: 'remove-strand', strand: 1 }, catalogue).design;
    const back = applyChanges(next, pieceChanges(next, again, namedDesign(one))) as PlainMap;
    expect(Object.keys(back)).not.toContain('strands');
    expect(designIn('banked-fire', back, catalogue)).toEqual(design);
  });
});
