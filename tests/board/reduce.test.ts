/** Whatever hands do at the board, what lies there can be written to its file and read again as it is. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Action, Trays } from '#board/model/action.ts';
import { begin, canRedo, canUndo, did, now, redo, replay, undo, type History } from '#board/model/history.ts';
import { held } from '#board/model/place.ts';
import { reduce } from '#board/model/reduce.ts';
import { namedIn, settled } from '#board/model/settle.ts';
import { buildDesign, strandsOf } from '#catalogue/build/design.ts';
import { pieceSchema } from '#catalogue/schemas/piece.ts';
import { authoredDesign, namedDesign } from '#catalogue/write/authoredDesign.ts';
import type { Design } from '#core/design/design.ts';
import { validateDesign } from '#core/design/validate/validateDesign.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';
import { anyAction } from './actions.ts';

const { components, wires, pieces } = catalogueOf();
const trays: Trays = { components, wires };
// By name, so that what fast-check tells of a failure can be read.
const anyPiece = fc.constantFrom(...pieces.map(({ id }) => id));
const designOf = (id: string): Design => pieces.find((piece) => piece.id === id)!.design;
const actions = fc.array(anyAction(trays), { maxLength: 30 });
const runs = process.env['CLASPWISE_THOROUGH'] === undefined ? 300 : 10_000;

const words = { name: 'A', status: 'to-order', made: '2026', price: '£1.00', summary: 'S', story: 'T' };

/** The design as its file would be read. */
function reread(design: Design): Design {
  const value = pieceSchema.parse({ ...words, ...authoredDesign(namedDesign(design), []) });
  return buildDesign(design.id, value, strandsOf(value)!, wires[value.wire]!, components);
}

const after = (design: Design, all: readonly Action[]): Design =>
  all.reduce((laid, action) => reduce(laid, action, trays).design, design);

const isEmpty = ({ strands }: Design): boolean => strands.some(({ sections }) => sections.length === 0);

it('reads every piece of the demo shop from what its design is written as', () => {
  for (const { design } of pieces) {
    // The names of its strands are the file's; short ones serve here.
    expect(settled(reread(design), trays)).toEqual(settled(design, trays));
    expect(reread(design)).toEqual(design);
    expect(settled(design, trays)).toEqual(design);
  }
});

describe('any actions', () => {
  it('leave a design that is written and read again as it is', () => {
    fc.assert(
      fc.property(anyPiece, actions, (id, all) => {
        const laid = after(designOf(id), all);
        if (!isEmpty(laid)) expect(reread(laid)).toEqual(laid);
      }),
      { numRuns: runs },
    );
  });

  it('leave nothing but what a stringer can put right: no broken shape, counts in order, one middle', () => {
    const hers = new Set([
      ...['strand-empty', 'hole-too-small', 'crimp-too-tight', 'cover-too-tight', 'ring-closed', 'ways'],
      ...['strand-too-long'],
    ]);
    fc.assert(
      fc.property(anyPiece, actions, (id, all) => {
        const codes = validateDesign(after(designOf(id), all)).map(({ code }) => code);
        expect(codes.filter((code) => !hers.has(code))).toEqual([]);
      }),
      { numRuns: runs },
    );
  });

  it('leave the hand on runs that are there', () => {
    fc.assert(
      fc.property(anyPiece, actions, anyAction(trays), (id, all, last) => {
        const done = reduce(after(designOf(id), all), last, trays);
        if (done.span !== null) expect(held(done.design, done.span)).toEqual(done.span);
      }),
      { numRuns: runs },
    );
  });

  it('are taken back and done again, step by step, and played again on the same design', () => {
    const next = (design: Design, action: Action): Design => reduce(design, action, trays).design;
    fc.assert(
      fc.property(anyPiece, actions, fc.nat(40), (id, all, back) => {
        const design = designOf(id);
        let history: History<Design, Action> = begin(design);
        for (const action of all) {
          const before = history;
          history = did(history, action, next(now(history), action));
          if (history !== before) expect(now(undo(history))).toBe(now(before));
        }
        const last = now(history);
        let taken = history;
        for (let step = 0; step < back && canUndo(taken); step += 1) taken = undo(taken);
        const steps = taken.done.map(({ step }) => step);
        expect(replay(design, steps, taken.at, next)).toEqual(taken);
        while (canRedo(taken)) taken = redo(taken);
        expect(now(taken)).toBe(last);
        while (canUndo(taken)) taken = undo(taken);
        expect(now(taken)).toBe(design);
      }),
      { numRuns: runs },
    );
  });
});

it('names every component and no other', () => {
  for (const { design } of pieces) expect(namedIn(design)).toEqual(Object.keys(design.components));
});
