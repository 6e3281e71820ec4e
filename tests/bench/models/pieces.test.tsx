/** A piece made years ago is found and gets its card, as listed or in another size. */
import { renderToString } from 'preact-render-to-string';
import { afterAll, describe, expect, it } from 'vitest';
import { receive } from '#bench/book/receive.ts';
import { snapshotOf } from '#bench/check/pieceNow.ts';
import { boardInput } from '#bench/models/boardSheet.ts';
import { pieceList } from '#bench/models/pieceList.ts';
import { pieceSheet, versionIn } from '#bench/models/pieceSheet.ts';
import { PieceListView } from '#bench/views/PieceListView.tsx';
import { PieceSheetView } from '#bench/views/PieceSheetView.tsx';
import { frameIn } from '#bench/models/frame.ts';
import { usual } from '#core/sizing/usual.ts';
import { reduce } from '#board/model/reduce.ts';
import type { Piece } from '#catalogue/model/catalogue.ts';
import { catalogue, frame, openShop, orderFor } from '../shop.ts';

const german = frameIn('de', frame);

const sheetOf = (id: string, query: string, by = frame) =>
  pieceSheet(catalogue, id, new URLSearchParams(query), { frame: by, there: () => null, book: null });

describe('the list', () => {
  it('holds every piece, past ones too, and narrows to those with every word', () => {
    expect(pieceList(catalogue, '', frame).rows).toHaveLength(catalogue.pieces.length);
    const past = catalogue.pieces.find(({ status }) => status === 'past');
    if (past === undefined) throw new Error('no past piece');
    const found = pieceList(catalogue, `${past.made.slice(0, 4)} ${past.name.toUpperCase()}`, frame).rows;
    expect(found.map(({ id }) => id)).toContain(past.id);
    expect(found.length).toBeLessThan(catalogue.pieces.length);
    expect(pieceList(catalogue, 'no such words', frame).rows).toEqual([]);
  });

  it('finds by a part number, however it is written', () => {
    const [id, number] = Object.entries(catalogue.partNumbers).find(([key]) => key.startsWith('slate')) ?? [];
    if (id === undefined || number === undefined) throw new Error('no part number');
    const found = pieceList(catalogue, number.toLowerCase(), frame).rows.map((row) => row.id);
    const within = catalogue.pieces.filter(({ design }) => id in design.components).map((piece) => piece.id);
    expect(within.length).toBeGreaterThan(0);
    expect(found.sort()).toEqual(within.sort());
  });

  it('finds by a bead, in German by its German name', () => {
    const [id, name] = Object.entries(catalogue.germanNames).find(([key]) => !key.startsWith('wire/')) ?? [];
    if (id === undefined || name === undefined) throw new Error('no German name');
    const within = catalogue.pieces.filter(({ design }) => id in design.components).map((piece) => piece.id);
    expect(within.length).toBeGreaterThan(0);
    const list = pieceList(catalogue, name, german);
    expect(list.rows.map((row) => row.id)).toEqual(expect.arrayContaining(within));
    const page = renderToString(<PieceListView list={list} text={name} frame={german} />);
    for (const one of within) expect(page).toContain(`/bench/pieces/${one}/`);
  });
});

describe('the card of a piece', () => {
  it('shows every piece as listed, its usual counts', () => {
    for (const { id, design } of catalogue.pieces) {
      const sheet = sheetOf(id, '');
      expect(sheet?.card?.candidate.counts).toEqual(usual(design));
      expect(sheet?.sizing).toBeNull();
    }
  });

  it('in a size she gives is the core’s own optimum, for that hand', () => {
    const sheet = sheetOf('banked-fire', 'size=165+mm&sit=easy&hand=left');
    if (sheet?.sizing?.status !== 'fits') throw new Error(sheet?.sizing?.status);
    expect(sheet.card?.candidate).toEqual(sheet.sizing.chosen);
    expect(sheet.card?.card.hand.boardSide).toBe('right');
    const page = renderToString(<PieceSheetView sheet={sheet} frame={frame} />);
    expect(page).toContain('165 mm round the wrist, easy');
    expect(page).toContain('Eye protection');
  });

  it('says why there is none: no length, outside what it can be', () => {
    const unread = sheetOf('banked-fire', 'size=big');
    expect(unread).toMatchObject({ card: null, sizing: null });
    expect(unread?.unread).not.toBeNull();
    const outside = sheetOf('banked-fire', 'size=290+mm');
    expect(outside?.card).toBeNull();
    if (outside === null) throw new Error('no sheet');
    expect(renderToString(<PieceSheetView sheet={outside} frame={frame} />)).toContain(
      'can’t be made that large',
    );
    expect(sheetOf('nothing', '')).toBeNull();
  });

  it('takes nothing else from the address than what it knows', () => {
    const sheet = sheetOf('banked-fire', 'of=length&sit=tight&hand=both&size=%3Cb%3E');
    expect(sheet?.asked).toEqual({ of: 'wrist', text: '<b>', sit: 'easy', hand: 'right' });
    if (sheet === null) throw new Error('no sheet');
    expect(renderToString(<PieceSheetView sheet={sheet} frame={frame} />)).not.toContain('<b>');
  });

  it('speaks German to a German reader', () => {
    const sheet = sheetOf('banked-fire', 'size=165+mm', german);
    if (sheet === null) throw new Error('no sheet');
    const page = renderToString(<PieceSheetView sheet={sheet} frame={german} />);
    const { design } = sheet.piece;
    const { germanNames } = catalogue;
    expect(page).toContain('165 mm ums Handgelenk, bequem');
    expect(page).toContain(germanNames[design.ends.clasp]);
    expect(page).toContain(`${germanNames[`wire/${design.wire.id}`] ?? '-'}:`);
    expect(page).not.toContain(design.components[design.ends.clasp]?.name);
  });
});

describe('a piece that was ordered when it was another', () => {
  const shop = openShop(catalogue);
  const place = { frame, there: () => null, book: shop.book };
  afterAll(shop.close);

  it('is found by its orders, sized as it was then, and laid on the board', () => {
    const piece = catalogue.pieces.find(({ id }) => id === 'banked-fire');
    if (piece === undefined) throw new Error('no piece');
    const design = { ...piece.design, strands: piece.design.strands.map(halved) };
    const old = { ...snapshotOf(piece, catalogue.shop), revision: 'aaaaaaaaaaaa', name: 'Fire', design };
    for (const [at, now] of [
      ['2025-03-01T10:00:00.000Z', old],
      ['2025-05-03T10:00:00.000Z', old],
      ['2026-05-03T10:00:00.000Z', snapshotOf(piece, catalogue.shop)],
    ] as const) {
      const ordered = orderFor(catalogue, piece.id, 165);
      const document = { ...ordered, piece: { ...ordered.piece, revision: now.revision } };
      receive(shop.book, [{ document, way: 'desk', at, now }]);
    }
    const query = new URLSearchParams();
    const plain = pieceSheet(catalogue, piece.id, query, place);
    expect(plain?.version).toBeNull();
    expect(plain?.versions).toMatchObject([
      { revision: old.revision, orders: 2, lastAt: '2025-05-03T10:00:00.000Z' },
    ]);
    query.set('version', String(plain?.versions[0]?.snapshot));
    const sheet = pieceSheet(catalogue, piece.id, query, place);
    expect(sheet?.piece).toMatchObject({ name: 'Fire', revision: old.revision });
    expect(sheet?.card?.candidate.counts).toEqual(usual(design));
    const gone = { ...catalogue, pieces: catalogue.pieces.filter((one) => one !== piece) };
    expect(pieceSheet(gone, piece.id, query, place)?.isThere).toBe(false);
    expect(pieceSheet(gone, piece.id, new URLSearchParams(), place)).toBeNull();

    const version = versionIn(shop.book, piece.id, query)?.copy ?? null;
    const input = boardInput(gone, piece.id, null, query, frame, version);
    expect(input?.piece.name).toBe('Fire');
    if (input === null || input.version === null) throw new Error('nothing to lay');
    const laid = reduce(input.design, { type: 'lay', design: input.version }, input.trays).design;
    expect(laid.strands.map(({ sections }) => sections.map(({ motif }) => motif))).toEqual(
      design.strands.map(({ sections }) => sections.map(({ motif }) => motif)),
    );
    expect(reduce(laid, { type: 'lay', design: input.version }, input.trays).design).toEqual(laid);
  });
});

/** The strand with its first section alone. */
const halved = (strand: Piece['design']['strands'][number]) => ({
  ...strand,
  sections: strand.sections.slice(0, 1),
});
