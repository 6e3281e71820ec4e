/** What is strung for an order is the piece as it was agreed on, whatever becomes of the piece's file after. */
import { dirname, join } from 'node:path';
import { render } from 'preact-render-to-string';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { backUp, restore } from '#bench/book/backup.ts';
import { findEntry } from '#bench/book/entry.ts';
import { changeOrder } from '#bench/changeOrder.ts';
import { benchCard } from '#bench/models/benchCard.ts';
import { gather } from '#bench/models/gather.ts';
import { orderDetail } from '#bench/models/orderDetail.ts';
import { stockNow } from '#bench/stock/stockNow.ts';
import { OrderView } from '#bench/views/OrderView.tsx';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { Design } from '#core/design/design.ts';
import type { OrderState } from '#words/benchCodes.ts';
import { benchCardWords } from '#words/words.ts';
import { catalogue, frame } from '../shop.ts';
import { BEAD, MANY, openTrays, PIECE, type Trays } from './trays.ts';

let shop: Trays;
afterEach(() => shop.close());

/** Stands in for the bead that the piece takes most of, once it is changed. */
const OTHER = 'other-bead';

/** Of the same measures, so that counts are the same. */
function withOther(of: Design): Design {
  const bead = of.components[BEAD]!;
  return {
    ...of,
    components: { ...of.components, [OTHER]: { ...bead, id: OTHER, name: OTHER } },
    strands: of.strands.map((strand) => ({
      ...strand,
      sections: strand.sections.map((section) => ({
        ...section,
        motif: section.motif.map((part) => (part.component === BEAD ? { ...part, component: OTHER } : part)),
      })),
    })),
  };
}

/** The same catalogue, with another bead in the place of the one that the piece takes most of. */
const changed: Catalogue = {
  ...catalogue,
  pieces: catalogue.pieces.map((piece) =>
    piece.id === PIECE ? { ...piece, revision: 'changed', design: withOther(piece.design) } : piece,
  ),
};
const later = (thing: string) => {
  const stock = stockNow(shop.book, changed);
  return [stock.onHand(thing), stock.reserved(thing), stock.free(thing)];
};
const detailLater = (number: string) => orderDetail(shop.book, changed, number, frame)!;
const move = (number: string, state: OrderState, of = changed): void => {
  const version = String(findEntry(shop.book, number)!.version);
  const form = new URLSearchParams({ version, kind: 'state', state, reason: 'because' });
  expect(changeOrder(shop.book, of, number, form, frame).outcome).toBe('done');
};

beforeEach(() => {
  shop = openTrays();
  shop.count(BEAD, 500);
  shop.count(OTHER, 500);
});

it('is reserved, gathered, carded and taken as it was agreed on', () => {
  const number = shop.take();
  shop.set(number, 'agreed');
  expect(later(BEAD)).toEqual([500, MANY, 500 - MANY]);
  expect(later(OTHER)).toEqual([500, 0, 500]);
  const { parts } = gather(shop.book, changed, frame, { number });
  expect(parts.find(({ id }) => id === BEAD)?.count).toBe(MANY);
  const detail = detailLater(number);
  const card = benchCard(detail, null);
  expect(card).toMatchObject({ basis: 'agreed', copy: { revision: detail.entry.document.piece.revision } });
  expect(card?.others).toContain('now');
  const page = render(<OrderView detail={detail} frame={frame} />);
  expect(page).toContain(benchCardWords('en').agreedNote);
  move(number, 'strung');
  expect(later(BEAD)).toEqual([500 - MANY, 0, 500 - MANY]);
  expect(later(OTHER)).toEqual([500, 0, 500]);
  move(number, 'agreed');
  expect(later(BEAD)).toEqual([500, MANY, 500 - MANY]);
});

it('is taken as it stands now where it is agreed on only now, or agreed on anew', () => {
  const number = shop.take();
  expect(benchCard(detailLater(number), null)?.basis).toBe('now');
  move(number, 'agreed');
  expect(later(BEAD)).toEqual([500, 0, 500]);
  expect(later(OTHER)).toEqual([500, MANY, 500 - MANY]);
  const other = shop.take();
  shop.set(other, 'agreed');
  expect(later(BEAD)).toEqual([500, MANY, 500 - MANY]);
  move(other, 'asked');
  move(other, 'agreed');
  expect(later(BEAD)).toEqual([500, 0, 500]);
  expect(detailLater(other).agreed).toBeNull();
});

it('is taken as it stands now where the book didn’t keep what was agreed on', () => {
  const number = shop.take();
  shop.set(number, 'agreed');
  shop.book.db.exec('UPDATE orders SET agreed_snapshot = NULL');
  expect(later(OTHER)).toEqual([500, MANY, 500 - MANY]);
  expect(benchCard(detailLater(number), null)?.basis).toBe('now');
});

it('comes back from a backup with what was agreed on', () => {
  shop.set(shop.take(), 'agreed');
  const copy = join(dirname(shop.book.file), 'agreed.sqlite');
  backUp(shop.book, copy);
  restore(shop.book, copy);
  expect(later(BEAD)).toEqual([500, MANY, 500 - MANY]);
});
