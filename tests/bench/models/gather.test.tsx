/** What open orders take together, against a count of each order's own sequence. */
import { renderToString } from 'preact-render-to-string';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { change } from '#bench/book/change.ts';
import { receive } from '#bench/book/receive.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { gather } from '#bench/models/gather.ts';
import { GatherView } from '#bench/views/GatherView.tsx';
import { size } from '#core/sizing/size.ts';
import type { OrderDocument } from '#order/document.ts';
import { catalogue, frame, openShop, orderFor, type Shop } from '../shop.ts';

let shop: Shop;
beforeEach(() => {
  shop = openShop(catalogue);
});
afterEach(() => shop.close());

function take(document: OrderDocument): OrderDocument {
  receive(shop.book, [{ document, way: 'desk', at: frame.now, now: pieceNow(catalogue, document.piece.id) }]);
  return document;
}

/** Components between the crimps, counted one by one from the core's own sequence. */
function beadsOf({ piece: { id }, measure, sit, hand, pick, quantity }: OrderDocument): Map<string, number> {
  const piece = catalogue.pieces.find((one) => one.id === id);
  if (piece === undefined) throw new Error('no piece');
  const choice = { measure: { of: measure.of, mm: measure.mm }, sit, hand, pick, quantity };
  const sizing = size(piece.design, catalogue.shop.rules, piece.listedMinor, choice);
  if (sizing.status === 'refused' || sizing.status === 'outside') throw new Error(sizing.status);
  const counts = new Map<string, number>();
  for (const { component, section } of sizing.chosen.sequences.flat()) {
    if (section !== 'end') counts.set(component.id, (counts.get(component.id) ?? 0) + quantity);
  }
  return counts;
}

it('adds up what every order still to be strung takes', () => {
  const one = take(orderFor(catalogue, 'banked-fire', 165));
  const two = take({ ...orderFor(catalogue, 'banked-fire', 178), quantity: 3 });
  const { parts, wires, orders, leftOut } = gather(shop.book, catalogue, frame, { of: 'open' });
  expect(orders.toSorted()).toEqual([one.number, two.number].toSorted());
  expect(leftOut).toEqual([]);
  const wanted = new Map<string, number>();
  for (const counts of [beadsOf(one), beadsOf(two)]) {
    for (const [id, count] of counts) wanted.set(id, (wanted.get(id) ?? 0) + count);
  }
  for (const [id, count] of wanted) expect(parts.find((part) => part.id === id)?.count).toBe(count);
  const { ends, wire } = catalogue.pieces.find(({ id }) => id === 'banked-fire')?.design ?? {};
  expect(parts.find(({ id }) => id === ends?.clasp)?.count).toBe(4);
  expect(parts.find(({ id }) => id === ends?.crimp)?.count).toBe(8);
  expect(wires.map(({ id }) => id)).toEqual([wire?.id]);
  for (const { id, number } of parts) expect(number).toBe(catalogue.partNumbers[id]);
  expect(wires[0]?.number).toBe(catalogue.partNumbers[`wire/${wire?.id}`]);
  // Four bracelets, each with the shop's four inches to hold by beside its own length.
  expect(wires[0]?.lengthMm).toBeGreaterThan(4 * (190 + 4 * 25.4));
});

it('leaves out what is strung already, and gathers for one order alone', () => {
  const one = take(orderFor(catalogue, 'banked-fire', 165));
  const two = take(orderFor(catalogue, 'weir-light', 165));
  const strung = { kind: 'state', state: 'strung' } as const;
  expect(change(shop.book, one.number, 1, frame.now, strung)).toBe('done');
  expect(gather(shop.book, catalogue, frame, { of: 'open' }).orders).toEqual([two.number]);
  expect(gather(shop.book, catalogue, frame, { number: one.number }).orders).toEqual([one.number]);
});

it('names what is missing, above the list, and says so of an order that can’t be strung', () => {
  const order = take(orderFor(catalogue, 'banked-fire', 165));
  const [bead, count] = [...beadsOf(order)].toSorted((a, b) => b[1] - a[1])[0] ?? ['', 0];
  const found = catalogue.components[bead];
  if (found === undefined) throw new Error('no bead');
  const counted = {
    ...catalogue,
    components: { ...catalogue.components, [bead]: { ...found, stock: count - 5 } },
  };
  const gathering = gather(shop.book, counted, frame, { of: 'open' });
  expect(gathering.parts.find(({ id }) => id === bead)).toMatchObject({ stock: count - 5, missing: 5 });
  const page = renderToString(<GatherView gathering={gathering} wanted={{ of: 'open' }} frame={frame} />);
  expect(page).toContain(found.name);
  expect(page).toContain('<strong class="warn">5</strong>');
  expect(page.indexOf('id="buy"')).toBeLessThan(page.indexOf('id="pick"'));

  const gone = gather(shop.book, { ...catalogue, pieces: [] }, frame, { of: 'open' });
  expect(gone).toMatchObject({ parts: [], orders: [], leftOut: [order.number] });
  expect(renderToString(<GatherView gathering={gone} wanted={{ of: 'open' }} frame={frame} />)).toContain(
    order.number,
  );
});

it('goes from tray to tray, says whose each bead is, and gathers only what is agreed where asked', () => {
  const one = take(orderFor(catalogue, 'banked-fire', 165));
  const two = take({ ...orderFor(catalogue, 'weir-light', 165), quantity: 2 });
  const trays = { 'crimp-2-silver': 'A10', 'lobster-12-silver': 'A2' };
  const { parts, wires } = gather(shop.book, { ...catalogue, trays }, frame, { of: 'open' });
  const placed = parts.filter(({ tray }) => tray !== null).map(({ tray }) => tray);
  expect(placed).toEqual(['A2', 'A10']);
  expect(parts.slice(placed.length).every(({ tray }) => tray === null)).toBe(true);
  const inTrays = gather(shop.book, catalogue, frame, { of: 'open' }).parts;
  expect(inTrays.map(({ tray }) => tray)).toEqual(
    inTrays.map(({ tray }) => tray ?? '').toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true })),
  );
  expect(new Set(inTrays.map(({ tray }) => tray)).size).toBeGreaterThan(2);
  for (const { count, orders } of parts) {
    expect(orders.reduce((sum, { amount }) => sum + amount, 0)).toBe(count);
    expect(new Set(orders.map(({ order }) => order)).size).toBe(orders.length);
  }
  expect(wires.flatMap(({ orders }) => orders.map(({ order }) => order)).toSorted()).toEqual(
    [one.number, two.number].toSorted(),
  );
  expect(change(shop.book, two.number, 1, frame.now, { kind: 'state', state: 'agreed' })).toBe('done');
  const agreed = gather(shop.book, catalogue, frame, { of: 'agreed' });
  expect(agreed.orders).toEqual([two.number]);
  const page = renderToString(<GatherView gathering={agreed} wanted={{ of: 'agreed' }} frame={frame} />);
  expect(page).toContain('All that is still to be strung');
});
