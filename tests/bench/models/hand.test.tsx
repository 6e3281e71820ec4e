/** An order entered by hand, step by step, into a book of its own. */
import { renderToString } from 'preact-render-to-string';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { findEntry, history } from '#bench/book/entry.ts';
import { erase } from '#bench/book/erase.ts';
import { receive } from '#bench/book/receive.ts';
import { allEntries } from '#bench/book/search.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { newParts } from '#bench/check/restring.ts';
import { answerOrder } from '#bench/desk/desk.ts';
import { readForm } from '#bench/http/readForm.ts';
import { gather } from '#bench/models/gather.ts';
import { frameIn } from '#bench/models/frame.ts';
import type { HandSheet } from '#bench/models/handSheet.ts';
import { beginHand, stepHand, type HandPlace, type HandStep } from '#bench/models/handSteps.ts';
import { monthsOf } from '#bench/models/months.ts';
import { orderDetail } from '#bench/models/orderDetail.ts';
import { HandView } from '#bench/views/HandView.tsx';
import { adviseHand } from '#core/sizing/hand/hand.ts';
import { checkOrder } from '#order/check.ts';
import { EITHER_HAND } from '#order/document.ts';
import { makeNumber } from '#order/number.ts';
import { handWords } from '#words/words.ts';
import { catalogue, frame, openShop, orderFor, post, randomByte, type Shop } from '../shop.ts';

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

describe('by hand', () => {
  it('is sized by the shop’s rules and goes into the book like any other', async () => {
    const sized = await sheetOf(WANTED, 'size');
    const { document } = sized.order;
    const same = orderFor(catalogue, 'weir-light', 165.1);
    expect(document?.shown).toEqual(same.shown);
    expect(page(sized)).toContain('What it comes to');
    const done = await step(sentBack(sized), 'enter');
    if (!('entered' in done)) throw new Error('not entered');
    const entry = findEntry(shop.book, done.entered);
    expect(entry).toMatchObject({ way: 'fair', state: 'new' });
    expect(entry?.document).toMatchObject({
      ...{ lang: 'de', quantity: 2, hand: 'left', delivery: { by: 'collection' } },
      measure: { of: 'wrist', text: '6 1/2 in', mm: 165.1 },
      buyer: { name: 'Iris Møller', email: 'iris@example.org', note: 'By Easter' },
    });
    expect(history(shop.book, done.entered)).toMatchObject([{ kind: 'received', text: 'fair' }]);
    expect(orderDetail(shop.book, catalogue, done.entered, frame)?.now.checked.differences).toEqual([]);
  });

  it('says that either hand will do where it doesn’t matter, whatever the form said', async () => {
    const chosen = async (piece: string): Promise<unknown> => {
      const sized = await sheetOf({ ...WANTED, piece }, 'size');
      const { document } = sized.order;
      if (document === null) throw new Error(JSON.stringify(sized.problems));
      return document.choices;
    };
    const { pieces } = catalogue;
    const bracelets = pieces.filter(({ design }) => design.kind === 'bracelet');
    const handed = bracelets.find(({ design }) => adviseHand(design, 'left').boardSide !== null);
    const free = bracelets.find(({ design }) => adviseHand(design, 'left').reason === 'clasp-has-no-side');
    expect(await chosen(free?.id ?? '')).toEqual(EITHER_HAND);
    expect(await chosen(handed?.id ?? '')).toEqual({});
  });

  it('is entered once, however often it is sent, and as another order where its words were changed', async () => {
    const fields = sentBack(await sheetOf(WANTED, 'size'));
    const first = await step(fields, 'enter');
    expect(await step(fields, 'enter')).toEqual(first);
    expect(allEntries(shop.book)).toHaveLength(1);
    const other = await sheetOf({ ...fields, note: 'Another' }, 'enter');
    expect(other).toMatchObject({ stage: 'taken', takenNumber: fields.number });
    expect(other.order.fields).toMatchObject({ note: 'Another', name: 'Iris Møller' });
    expect(page(other)).toContain('is in the book already');
    expect('entered' in (await step(sentBack(other), 'enter'))).toBe(true);
    expect(allEntries(shop.book)).toHaveLength(2);
  });

  it('is entered only as it was shown', async () => {
    const unseen = await sheetOf(WANTED, 'enter');
    expect(unseen.stage).toBe('look');
    const changed = await sheetOf({ ...sentBack(unseen), size: '7' }, 'enter');
    expect(changed.stage).toBe('look-again');
    expect(page(changed)).toContain('something else than was shown');
    expect(allEntries(shop.book)).toEqual([]);
    expect('entered' in (await step(sentBack(changed), 'enter'))).toBe(true);
  });

  it('names everything that is wrong at its field, and loses nothing', async () => {
    const wrong = {
      ...{ piece: '', size: 'a bit', quantity: '0', name: ' ', email: 'iris', way: '', note: '<b>kept</b>' },
      ...{ delivery: 'post', line1: '', town: '', country: '' },
    };
    const sheet = await sheetOf({ ...WANTED, ...wrong }, 'enter');
    expect(Object.keys(sheet.problems).toSorted()).toEqual(
      ['country', 'email', 'line1', 'name', 'piece', 'quantity', 'size', 'town', 'way'].toSorted(),
    );
    const html = page(sheet);
    for (const name of Object.keys(sheet.problems)) {
      expect(html).toContain(`href="#hand-${name}"`);
      expect(html).toContain(`id="hand-${name}-wrong"`);
    }
    expect(html).toContain('&lt;b>kept&lt;/b>');
    expect(sheet.order.fields).toMatchObject(wrong);
    expect(allEntries(shop.book)).toEqual([]);
  });

  it('says of a size that can’t be made what can, and of a measure that it isn’t the piece’s', async () => {
    const large = await sheetOf({ ...WANTED, size: '14 in' }, 'enter');
    expect(large.problems).toEqual({ size: { code: 'cannot-be-made' } });
    expect(page(large)).toContain('class="warning" role="status"');
    const neck = await sheetOf({ ...WANTED, of: 'neck' }, 'size');
    expect(neck.problems).toEqual({ of: { code: 'measure-of-kind', kind: 'bracelet' } });
  });

  it('keeps to what the document takes, whatever is typed', async () => {
    for (const bad of ['x'.repeat(3000), '\u0000', '\ud800']) {
      for (const field of ['name', 'note', 'line1', 'town', 'phone', 'email', 'piece', 'size', 'number']) {
        const fields = {
          ...WANTED,
          delivery: 'post',
          line1: 'Mill Lane',
          town: 'X',
          country: 'GB',
          [field]: bad,
        };
        const { order } = await sheetOf(fields, 'size');
        expect(
          order.document === null || checkOrder(order.document) === null,
          `${field} ${bad.slice(0, 4)}`,
        ).toBe(true);
      }
    }
    const { order } = await sheetOf({ ...WANTED, phone: '\u0007' }, 'size');
    expect(order.problems.note).toMatchObject({ code: 'not-taken', field: 'buyer.note' });
  });

  it('goes by a telephone number alone, but the desk takes no order without an address', async () => {
    const sized = await sheetOf({ ...WANTED, email: '', phone: '01632 960983' }, 'size');
    const { document } = sized.order;
    expect(document?.buyer).toMatchObject({ email: '', note: 'Telephone: 01632 960983\nBy Easter' });
    const response = await answerOrder(shop.desk, post(JSON.stringify(document)), '127.0.0.1');
    expect(response.status).toBe(422);
    expect(await response.text()).toContain('buyer.email');
    expect('entered' in (await step(sentBack(sized), 'enter'))).toBe(true);
    const neither = await sheetOf({ ...WANTED, email: '', phone: '' }, 'enter');
    expect(neither.problems).toEqual({ email: { code: 'no-way-back' } });
  });

  it('reckons postage by the shop’s rules', async () => {
    const to = {
      delivery: 'post',
      line1: '3 Mill Lane',
      town: 'Tenterholm',
      postcode: 'TE1 2XY',
      country: 'GB',
    };
    const { order } = await sheetOf({ ...WANTED, ...to }, 'size');
    expect(order.document?.shown.postageMinor).toBeGreaterThan(0);
    expect(order.document?.delivery).toMatchObject({
      by: 'post',
      to: { name: 'Iris Møller', country: 'GB' },
    });
    expect(page(await sheetOf({ ...WANTED, ...to }, 'size'))).toContain('Postage within that');
  });
});

describe('from an e-mail', () => {
  it('fills the form in, shows the text beside it, and says what couldn’t be read', async () => {
    const mail = 'From: Zoë <zoe@example.org>\n\nThe Weir Light, please. <b>\nSize: 6½ in (165 mm)\n';
    const sheet = await sheetOf({ mail }, 'read');
    expect(sheet).toMatchObject({ stage: 'read', problems: {} });
    const html = page(sheet);
    expect(html).toContain('Which hand works the clasp');
    expect(html).toContain('The Weir Light, please. &lt;b>');
    expect(html).toContain('What it comes to');
    expect(allEntries(shop.book)).toEqual([]);
    // The text stays beside the form at the next step, and nothing is entered that she hasn't looked at.
    const next = await sheetOf({ ...sentBack(sheet), hand: 'left' }, 'size');
    expect(page(next)).toContain('The Weir Light, please. &lt;b>');
    expect('entered' in (await step(sentBack(next), 'enter'))).toBe(true);
    expect(allEntries(shop.book)).toMatchObject([{ way: 'mail', document: { buyer: { name: 'Zoë' } } }]);
  });
});

it('what is carried from step to step fits into a form, however it is escaped', async () => {
  const sheet = await sheetOf({ mail: '字'.repeat(50_000), ...{ note: '字', name: '字' } }, 'read');
  expect(sheet.order.fields.mail).toHaveLength(10_000);
  const full = Object.fromEntries(
    Object.entries({ name: 100, note: 1000, line1: 100, town: 100 }).map(([name, most]) => [
      name,
      '字'.repeat(most),
    ]),
  );
  const body = new URLSearchParams({ ...sentBack(sheet), ...full }).toString();
  const type = 'application/x-www-form-urlencoded';
  const request = new Request('http://x/', { method: 'POST', body, headers: { 'content-type': type } });
  expect((await readForm(request))?.get('mail')).toBe(sheet.order.fields.mail);
});

describe('from an order of before', () => {
  const before = orderFor(catalogue, 'weir-light', 165.1, { note: 'a gift' });
  const take = (): void => {
    receive(shop.book, [
      { document: before, way: 'desk', at: frame.now, now: pieceNow(catalogue, 'weir-light') },
    ]);
  };

  it('makes it again', async () => {
    take();
    const { sheet } = beginHand(new URLSearchParams({ again: before.number }), place);
    expect(sheet.order.fields).toMatchObject({
      ...{ piece: 'weir-light', of: 'wrist', size: '165.1 mm', hand: 'left', name: 'Iris Møller', note: '' },
      ...{ email: 'iris@example.org', way: '', restring: '' },
    });
    expect(sheet.order.fields.number).not.toBe(before.number);
    const done = await step({ ...sentBack(sheet), way: 'telephone' }, 'enter');
    if (!('entered' in done)) throw new Error('not entered');
    expect(findEntry(shop.book, done.entered)?.document.shown).toEqual(before.shown);
  });

  it('restrings it with new wire and crimps alone, at the rule’s price, with the old beads', async () => {
    take();
    const { sheet } = beginHand(new URLSearchParams({ restring: before.number }), place);
    expect(page(sheet)).toMatch(/New: 0\.\d+ m of wire, 2 × .*crimp/i);
    const done = await step({ ...sentBack(sheet), way: 'mail' }, 'enter');
    if (!('entered' in done)) throw new Error('not entered');
    const entry = findEntry(shop.book, done.entered);
    expect(entry?.document.buyer.note).toContain(`the piece of order ${before.number}`);
    expect(entry?.document.shown.priceMinor).toBeLessThan(before.shown.priceMinor);
    const detail = orderDetail(shop.book, catalogue, done.entered, frame);
    expect(detail?.now.checked.differences).toEqual([]);
    expect(detail?.then?.checked.differences).toEqual([]);
    const design = pieceNow(catalogue, 'weir-light')!.design;
    const { parts, wires } = gather(shop.book, catalogue, frame, { number: done.entered });
    expect(new Set(parts.map(({ id }) => id))).toEqual(newParts(design));
    expect(wires).toHaveLength(1);
    // It earned what restringing earns, erased or not.
    const months = monthsOf(shop.book, catalogue, '2026');
    expect(erase(shop.book, [done.entered], frame.now).count).toBe(1);
    expect(monthsOf(shop.book, catalogue, '2026')).toEqual(months);
    expect(months.all.received.priceMinor).toBe(
      before.shown.priceMinor + (entry?.document.shown.priceMinor ?? 0),
    );
  });

  it('believes no buyer who says that hers is to be restrung', () => {
    const cheap = { ...before, choices: { work: 'restring' } };
    receive(shop.book, [
      { document: cheap, way: 'desk', at: frame.now, now: pieceNow(catalogue, 'weir-light') },
    ]);
    const detail = orderDetail(shop.book, catalogue, cheap.number, frame);
    expect(detail?.now.checked.candidate?.priceMinor).toBe(before.shown.priceMinor);
    expect(gather(shop.book, catalogue, frame, { number: cheap.number }).parts.length).toBeGreaterThan(3);
  });
});

it('begins with the piece of an address, and speaks German', () => {
  const german = frameIn('de', frame);
  const { sheet } = beginHand(new URLSearchParams({ piece: 'weir-light' }), {
    ...place,
    lang: 'de',
    frame: german,
  });
  const html = renderToString(<HandView sheet={sheet} frame={german} words={handWords('de')} />);
  expect(html).toContain('Ins Buch eintragen');
  expect(html).toMatch(/<option value="weir-light" selected/);
});

it('a pasted mailto address and the source of a page are read as the mail they hold', async () => {
  const text = 'Size: 6½ in\nThe hand that works the clasp: left\nMy name: Zoë Quill\n';
  const link = `mailto:orders@ninepin.example?subject=Order&body=${encodeURIComponent(text)}`;
  const html = `<html><body><div>${text.trim().replaceAll('\n', '</div><div>')}</div></body></html>`;
  for (const mail of [link, html]) {
    const { fields } = (await sheetOf({ mail }, 'read')).order;
    expect(fields).toMatchObject({ size: '6½ in', hand: 'left', name: 'Zoë Quill' });
  }
});
