/** The week's page over a book of orders: due days, hours, beads that lack, days taken over. */
import { renderToString } from 'preact-render-to-string';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { change } from '#bench/book/change.ts';
import { receive } from '#bench/book/receive.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { readTaken } from '#bench/intake/takeDue.ts';
import { frameIn } from '#bench/models/frame.ts';
import { orderDetail } from '#bench/models/orderDetail.ts';
import { proposedDue, weekPlan } from '#bench/models/week.ts';
import { OrderView } from '#bench/views/OrderView.tsx';
import { WeekView } from '#bench/views/WeekView.tsx';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { tally } from '#core/design/tally.ts';
import { costsOf } from '#core/sizing/price/costs.ts';
import type { OrderDocument } from '#order/document.ts';
import { weekWords } from '#words/words.ts';
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
const render = (of: Catalogue = catalogue): string =>
  renderToString(<WeekView plan={weekPlan(shop.book, of, frame)} frame={frame} words={weekWords('en')} />);
const designOf = (id: string) => catalogue.pieces.find((piece) => piece.id === id)!.design;

it('takes the minutes of every piece by the shop’s rule, and leaves out what is done', () => {
  const one = take({ ...orderFor(catalogue, 'banked-fire', 165), quantity: 3 });
  const done = take(orderFor(catalogue, 'weir-light', 165));
  expect(change(shop.book, done.number, 1, frame.now, { kind: 'state', state: 'strung' })).toBe('done');
  const plan = weekPlan(shop.book, catalogue, frame);
  const { minutes } = costsOf(designOf('banked-fire'), one.shown.counts, catalogue.shop.rules);
  expect(plan.orders).toMatchObject([{ minutes: 3 * minutes, short: [], late: false }]);
  expect(plan.totalMinutes).toBe(3 * minutes);
  expect(plan.weeks.flatMap(({ parts }) => parts).reduce((sum, part) => sum + part.minutes, 0)).toBeCloseTo(
    3 * minutes,
    6,
  );
  expect(plan.toSend.map(({ entry }) => entry.document.number)).toEqual([done.number]);
  expect(render()).toContain('Strung, to be sent');
});

it('proposes a day, takes it over with one click, and tells it to the buyer as an estimate', () => {
  const order = take(orderFor(catalogue, 'banked-fire', 165));
  // Received on Wednesday 25 November 2026; the shop tells buyers two weeks.
  expect(weekPlan(shop.book, catalogue, frame).orders[0]?.proposed).toBe('2026-12-11');
  const [button] = /name="take" value="([^"]+)"/.exec(render())?.slice(1) ?? [];
  const taken = readTaken(new URLSearchParams({ take: button ?? '' }));
  expect(taken).toEqual([{ number: order.number, version: 1, on: '2026-12-11' }]);
  const letterOf = (): string | undefined =>
    orderDetail(shop.book, catalogue, order.number, frame)?.drafts.find(({ letter }) => letter === 'agreed')
      ?.body;
  expect(letterOf()).toContain('about 2 weeks');
  expect(change(shop.book, order.number, 1, frame.now, { kind: 'due', on: '2026-12-11' })).toBe('done');
  expect(weekPlan(shop.book, catalogue, frame).orders[0]?.proposed).toBeNull();
  expect(letterOf()).toContain('by 11 December 2026. That is my own estimate');
  expect(letterOf()).not.toContain('about 2 weeks');
});

it('reads no form that it doesn’t write', () => {
  const read = (take: string) => readTaken(new URLSearchParams({ take }));
  for (const wrong of [
    '',
    'x',
    'K7M-4PX-9RC 1 2026-12-11',
    `${orderFor(catalogue, 'banked-fire', 165).number} 1 2026-02-30`,
  ])
    expect(read(wrong), wrong).toBeNull();
  expect(readTaken(new URLSearchParams())).toBeNull();
});

it('names which order can’t be begun, and of what', () => {
  const first = take(orderFor(catalogue, 'banked-fire', 165));
  const second = take(orderFor(catalogue, 'banked-fire', 165));
  expect(change(shop.book, second.number, 1, frame.now, { kind: 'due', on: '2026-11-27' })).toBe('done');
  const design = designOf('banked-fire');
  const [id, need] = [...tally(design, first.shown.counts)].toSorted((a, b) => b[1] - a[1])[0]!;
  const found = catalogue.components[id]!;
  const counted = {
    ...catalogue,
    components: { ...catalogue.components, [id]: { ...found, stock: need + 3 } },
  };
  const { orders } = weekPlan(shop.book, counted, frame);
  // The second is due first, so it is served first.
  expect(orders.map(({ entry }) => entry.document.number)).toEqual([second.number, first.number]);
  expect(orders.map(({ short }) => short)).toEqual([
    [],
    [{ component: id, name: found.name, need, missing: need - 3 }],
  ]);
  const page = render(counted);
  expect(page).toContain('Can’t be begun for want of beads');
  expect(page).toContain(`${need - 3} × ${found.name} missing of ${need}`);
});

it('lists without weeks where no hours are given, and names what can’t be strung', () => {
  const order = take(orderFor(catalogue, 'banked-fire', 165));
  const { orders } = catalogue.shop;
  const without = { ...catalogue, shop: { ...catalogue.shop, orders: { ...orders, hoursPerWeek: null } } };
  const plan = weekPlan(shop.book, without, frame);
  expect(plan).toMatchObject({ weeks: [], orders: [{ proposed: null }] });
  expect(render(without)).toContain('By due day');
  const gone = weekPlan(shop.book, { ...catalogue, pieces: [] }, frame);
  expect(gone).toMatchObject({ orders: [], weeks: [], leftOut: [order.number] });
});

it('speaks German too', () => {
  take(orderFor(catalogue, 'banked-fire', 165));
  const german = frameIn('de', frame);
  const page = renderToString(
    <WeekView plan={weekPlan(shop.book, catalogue, german)} frame={german} words={weekWords('de')} />,
  );
  expect(page).toContain('11. Dezember 2026, Vorschlag');
});

it('writes times as people say them', () => {
  const { time } = weekWords('en');
  expect([2.2, 29, 58, 62, 119, 600].map((minutes) => time(minutes, frame.format))).toEqual([
    ...['3 min', '30 min', '1 h', '1 h', '2 h', '10 h'],
  ]);
});

it('offers the proposed day on the order’s page too', () => {
  const order = take(orderFor(catalogue, 'banked-fire', 165));
  const detail = orderDetail(shop.book, catalogue, order.number, frame)!;
  const proposed = proposedDue(shop.book, catalogue, frame, detail.entry);
  expect(proposed).toBe(weekPlan(shop.book, catalogue, frame).orders[0]?.proposed);
  const page = renderToString(<OrderView detail={detail} frame={frame} proposed={proposed} />);
  expect(page).toContain('name="on" value="2026-12-11"');
  expect(page).toContain('11 December 2026, proposed');
  expect(change(shop.book, order.number, 1, frame.now, { kind: 'due', on: proposed })).toBe('done');
  const dated = orderDetail(shop.book, catalogue, order.number, frame)!.entry;
  expect(proposedDue(shop.book, catalogue, frame, dated)).toBeNull();
});
