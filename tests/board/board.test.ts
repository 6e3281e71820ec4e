/** What the board knows of what lies there: places, hits, words typed, work kept, answers. */
import { describe, expect, it } from 'vitest';
import { answersOf } from '#board/model/answers.ts';
import { draftOf, isUnsaved, workFrom, type Work } from '#board/model/draft.ts';
import { begin, did, now, undo } from '#board/model/history.ts';
import { nearestPlace } from '#board/model/hit.ts';
import { layPiece } from '#board/model/laid.ts';
import { panelRows } from '#board/model/panel.ts';
import { startOf } from '#board/model/place.ts';
import { reduce } from '#board/model/reduce.ts';
import { actionsFor, readIntervals, sizesOf } from '#board/model/sizes.ts';
import { swapChoices, swapStep } from '#board/model/swapping.ts';
import { readTyped } from '#board/model/typed.ts';
import type { Action, Trays } from '#board/model/action.ts';
import type { Design } from '#core/design/design.ts';
import { validateDesign } from '#core/design/validate/validateDesign.ts';
import { drawLaidBoard } from '#draw/drawings/board.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';

const catalogue = catalogueOf();
const { components, wires, pieces, shop } = catalogue;
const trays: Trays = { components, wires };
const shelf = { trays, names: {}, partNumbers: catalogue.partNumbers, trayOf: catalogue.trays };
const designOf = (id: string): Design => pieces.find((piece) => piece.id === id)!.design;
const caption = { title: '', description: '', idPrefix: 'b', unit: 'cm', claspSide: 'left' } as const;

it('knows of every bead on every board which run it belongs to', () => {
  for (const { design } of pieces) {
    const { sequences, places } = layPiece(design);
    for (const [strand, sequence] of sequences.entries()) {
      const seen = sequence.filter(({ covered }) => covered !== true);
      const named = (places[strand] ?? []).map((place) => {
        if (place === null) return 'end';
        return design.strands[strand]!.sections[place.section]!.motif[place.part]!.component;
      });
      expect(named).toEqual(seen.map(({ section, component }) => (section === 'end' ? 'end' : component.id)));
    }
  }
});

it('finds the bead under a finger, on both sides of a mirrored strand alike', () => {
  for (const id of ['banked-fire', 'amber-gale', 'two-locks']) {
    const design = designOf(id);
    const laid = layPiece(design);
    const { strands } = drawLaidBoard(design, laid.sequences, caption);
    for (const [strand, { spots }] of strands.entries()) {
      for (const [index, { xMm, yMm }] of spots.entries()) {
        const place = laid.places[strand]![index]!;
        if (place !== null) expect(nearestPlace(strands, laid.places, xMm, yMm)?.place).toEqual(place);
      }
    }
  }
});

describe('what is typed', () => {
  it.each([
    ['5 slate', 5, ['slate']],
    ['12x Tar seed', 12, ['tar', 'seed']],
    ['7', 7, []],
    ['slate 6', 1, ['slate', '6']],
    ['6 mm', 1, ['6', 'mm']],
    ['8/0', 1, ['8/0']],
    ['', 1, []],
    ['0 slate', 1, ['0', 'slate']],
  ])('%s', (text, count, words) => expect(readTyped(text)).toEqual({ count, words }));
});

describe('the trays', () => {
  const design = designOf('banked-fire');

  it('find a bead by its name, its tray and its number, the piece’s own first', () => {
    expect(panelRows(shelf, design, ['tar'])[0]?.component.id).toBe('seed-6-tar');
    const { 'seed-6-tar': number } = catalogue.partNumbers;
    expect(panelRows(shelf, design, [number!.toLowerCase()]).map(({ component }) => component.id)).toContain(
      'seed-6-tar',
    );
    const own = new Set(Object.keys(design.components));
    expect(own.has(panelRows(shelf, design, [])[0]!.component.id)).toBe(true);
  });

  it('tell what is left once the piece is strung', () => {
    const counted = Object.values(components).find(({ stock, kind }) => stock !== null && kind === 'bead')!;
    const put: Action = { type: 'put', after: startOf(0), component: counted.id, count: 2, name: 'Run' };
    const more = reduce(design, put, trays).design;
    const left = (laid: Design): number =>
      panelRows(shelf, laid, []).find(({ component }) => component.id === counted.id)!.left!;
    // Two on either side.
    expect(left(design) - left(more)).toBe(4);
  });
});

describe('work kept on the device', () => {
  const design = designOf('two-locks');
  const put: Action = { type: 'put', after: startOf(1), component: 'silver-3', count: 3, name: 'Run' };
  const laid = reduce(design, put, trays).design;
  const history = did(begin<Design, readonly Action[]>(design), [put], laid);
  const work: Work = { history, digest: 'abc', saved: 0 };

  it('comes back with its steps, from a text of a few hundred bytes more than the design', () => {
    const text = JSON.stringify(draftOf(work));
    expect(workFrom(text, trays)).toEqual(work);
    expect(text).not.toContain('alongMm');
  });

  it('is none where the text is another’s', () => {
    for (const text of ['', '{}', '[]', 'null', '{"version":1}']) expect(workFrom(text, trays)).toBeNull();
  });

  it('is unsaved until the file has it, and again when it is taken back', () => {
    expect(isUnsaved(work)).toBe(true);
    const saved = { ...work, saved: 1 };
    expect(isUnsaved(saved)).toBe(false);
    expect(isUnsaved({ ...saved, history: undo(history) })).toBe(true);
    expect(now(history)).not.toEqual(design);
  });
});

describe('the answers', () => {
  it('find nothing that stops a piece of the demo shop', () => {
    for (const { design, listedMinor } of pieces) {
      const { figures, findings } = answersOf(design, shop.rules, listedMinor);
      expect(figures).not.toBeNull();
      expect(findings.filter(({ stop }) => stop)).toEqual([]);
    }
  });

  it('lead to the bead whose hole is too small for the doubled wire', () => {
    const tight = { ...components['silver-3']!, id: 'tight-3', holeMm: 0.6 };
    const own = { components: { ...components, [tight.id]: tight }, wires };
    const begun: Action = { type: 'begin', strand: 0, section: 99, component: tight.id, name: 'End' };
    const design = reduce(designOf('banked-fire'), begun, own).design;
    const { findings } = answersOf(design, shop.rules, null);
    const end = design.strands[0]!.sections.length - 1;
    expect(findings).toContainEqual(
      expect.objectContaining({ code: 'tail', stop: true, where: { strand: 0, section: end, part: 0 } }),
    );
  });

  it('say what the trays lack', () => {
    const counted = Object.values(components).find(({ stock, kind }) => stock !== null && kind === 'bead')!;
    const put: Action = { type: 'put', after: startOf(0), component: counted.id, count: 150, name: 'Run' };
    const { findings } = answersOf(reduce(designOf('banked-fire'), put, trays).design, shop.rules, null);
    expect(findings.some((one) => one.code === 'stock' && one.component === counted.id)).toBe(true);
  });
});

describe('sizes', () => {
  it('that a change closes are met once it is done at the board', () => {
    let done = 0;
    // The shop's own pieces have none to close: without what lies beside their clasps they have.
    const bare = pieces.map(({ design }): Design => ({
      ...design,
      strands: design.strands.map((strand) => ({
        ...strand,
        sections: strand.sections.filter(({ role }) => role !== 'filler'),
      })),
    }));
    for (const design of bare.filter(({ kind }) => kind === 'bracelet').slice(0, 8)) {
      for (const { sizesMm, remedy } of sizesOf(design, shop.rules)?.closings ?? []) {
        const step = remedy === null ? [] : actionsFor(design, remedy, 'Filler');
        if (step.length === 0) continue;
        const mended = step.reduce<Design>((laid, action) => reduce(laid, action, trays).design, design);
        const missed = sizesOf(mended, shop.rules)?.missedMm ?? sizesMm;
        expect(missed.filter((mm) => sizesMm.includes(mm))).toEqual([]);
        done += 1;
      }
    }
    expect(done).toBeGreaterThan(0);
  });

  it('are told as one where their ends read alike', () => {
    const read = (mm: number): string => String(Math.round(mm));
    const told = readIntervals(
      [
        ...[
          { fromMm: 1, toMm: 2.2 },
          { fromMm: 2.4, toMm: 4 },
          { fromMm: 6, toMm: 7 },
        ],
      ],
      read,
    );
    expect(told).toEqual([
      { fromMm: 1, toMm: 4 },
      { fromMm: 6, toMm: 7 },
    ]);
  });
});

it('swaps a bead, the wire, a metal or the clasp for one that may stand there', () => {
  const names = new Set(['wrong-kind', 'unknown-component', 'wrong-type']);
  for (const id of ['banked-fire', 'two-locks', 'amber-gale']) {
    const design = designOf(id);
    const { used, instead } = swapChoices(design, trays);
    expect(used.some((one) => one.startsWith('metal/'))).toBe(true);
    for (const one of used) {
      for (const by of instead(one)) {
        const step = swapStep(design, trays, one, by);
        const swapped = step.reduce((laid, action) => reduce(laid, action, trays).design, design);
        expect(swapped).not.toEqual(design);
        expect(validateDesign(swapped).filter(({ code }) => names.has(code))).toEqual([]);
      }
    }
  }
});
