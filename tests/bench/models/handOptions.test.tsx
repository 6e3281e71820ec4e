/** Orders by hand for what lies finished, and with other parts. */
import { renderToString } from 'preact-render-to-string';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { findEntry } from '#bench/book/entry.ts';
import type { HandSheet } from '#bench/models/handSheet.ts';
import { beginHand, stepHand, type HandPlace, type HandStep } from '#bench/models/handSteps.ts';
import { orderDetail } from '#bench/models/orderDetail.ts';
import { HandView } from '#bench/views/HandView.tsx';
import { makeNumber } from '#order/number.ts';
import { handWords } from '#words/words.ts';
import { catalogue, frame, openShop, randomByte, type Shop } from '../shop.ts';

let shop: Shop;
let place: HandPlace;
beforeEach(() => {
  shop = openShop(catalogue);
  const newNumber = (): string => makeNumber(randomByte);
  place = {
    ...{ catalogue, frame, lang: 'en', now: frame.now, newNumber, there: () => null },
    ...{ book: shop.book, inbox: shop.desk.inbox() },
  };
});
afterEach(() => shop.close());

const WANTED = {
  ...{ piece: 'weir-light', of: '', size: '6 1/2', sit: 'easy', hand: 'left', pick: 'best', quantity: '2' },
  ...{
    name: 'Iris Møller',
    email: 'iris@example.org',
    phone: '',
    note: 'By Easter',
    lang: 'de',
    way: 'fair',
  },
  delivery: 'collection',
};
const words = handWords('en');
const page = (sheet: HandSheet): string =>
  renderToString(<HandView sheet={sheet} frame={frame} words={words} />);
const step = (fields: Record<string, string>, wanted: string): Promise<HandStep> =>
  stepHand(new URLSearchParams({ ...fields, do: wanted }), place);
async function sheetOf(fields: Record<string, string>, wanted: string): Promise<HandSheet> {
  const done = await step(fields, wanted);
  if (!('sheet' in done)) throw new Error(`entered ${done.entered}`);
  return done.sheet;
}
/** The form's own fields, as a browser sends them back. */
const sentBack = ({ order }: HandSheet): Record<string, string> => ({
  ...order.fields,
  shown: order.showing,
});

describe('what else a piece offers', () => {
  const ready = { ...WANTED, piece: 'first-frost', made: 'ready', size: '', quantity: '1' };
  const otherwise = { ...WANTED, piece: 'wash-day', size: '18 in', quantity: '1' };
  const parts = { clasp: 'toggle-14-silver', pendant: 'slate-drop-34' };

  it('is asked only of the piece that is chosen', async () => {
    expect(page(await sheetOf(WANTED, 'size'))).not.toContain('name="made"');
    const html = page(await sheetOf({ ...ready, made: 'to-measure' }, 'size'));
    expect(html).toContain('name="made"');
    expect(html).toContain('name="clasp"');
    expect(html).not.toContain('name="pendant"');
    expect(page(await sheetOf(otherwise, 'size'))).toContain('As listed: Porcelain medallion');
  });

  it('goes into the book as it lies there, without a size', async () => {
    const sized = await sheetOf(ready, 'size');
    expect(page(sized)).toContain(words.liesThere);
    const { entered } = (await step(sentBack(sized), 'enter')) as { entered: string };
    const { document } = findEntry(shop.book, entered)!;
    expect(document).toMatchObject({ made: 'ready', measure: { of: 'length', text: '' } });
    expect(orderDetail(shop.book, catalogue, entered, frame)?.now.checked.differences).toEqual([]);
  });

  it.each([
    ['one that doesn’t lie there', { ...ready, piece: 'weir-light' }, 'made', 'not-ready'],
    ['two of it', { ...ready, quantity: '2' }, 'quantity', 'one-ready'],
    ['another clasp on it', { ...ready, clasp: 'toggle-14-silver' }, 'clasp', 'closed-already'],
    ['a part that isn’t offered', { ...otherwise, clasp: 'box-2-silver' }, 'clasp', 'part-not-offered'],
  ] as const)('refuses %s by name', async (_what, fields, field, code) => {
    const sheet = await sheetOf(fields, 'size');
    expect(sheet.problems[field]).toEqual({ code });
    expect(await step(sentBack(sheet), 'enter')).toHaveProperty('sheet');
  });

  it('is sized, priced and kept with other parts, in the buyer’s words, and shown again before it is kept', async () => {
    const listed = await sheetOf(otherwise, 'size');
    const changed = await sheetOf({ ...sentBack(listed), ...parts }, 'enter');
    expect(changed.stage).toBe('look-again');
    const { entered } = (await step(sentBack(changed), 'enter')) as { entered: string };
    const { document } = findEntry(shop.book, entered)!;
    expect(document.instead.clasp).toEqual({ id: 'toggle-14-silver', name: 'Silberknebel, Ring 14 mm' });
    expect(orderDetail(shop.book, catalogue, entered, frame)?.now.checked.differences).toEqual([]);
    const again = beginHand(new URLSearchParams({ again: entered }), place).sheet.order.fields;
    expect(again).toMatchObject(parts);
  });
});
