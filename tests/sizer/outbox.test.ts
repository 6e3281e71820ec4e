/** An order is never lost and never sent as two: the outbox, what answers mean, and the sender. */
import { describe, expect, test } from 'vitest';
import { readDeskAnswer, readFormAnswer } from '#sizer/ordering/model/sendResult.ts';
import { keepingStore } from '#sizer/ordering/model/keepingStore.ts';
import { dropEntry, newEntry, putEntry, readOutbox, type Entry } from '#sizer/ordering/model/outbox.ts';
import { writeText } from '#sizer/ordering/model/outboxText.ts';
import { createSender } from '#sizer/ordering/model/sender.ts';
import { endpointOf } from '#sizer/ordering/model/endpoint.ts';
import { orderWords } from '#words/words.ts';
import { decode } from '#order/text.ts';
import type { Answer, Post, Store } from '#sizer/model/ports.ts';
import { makeNumber } from '#order/number.ts';
import { sample } from '#tests/order/orders.ts';
import { memoryStore, noAnswer, receipt, settle, shopAnswering, tellableClock, trouble } from './support.ts';

const first = newEntry(sample, 'Weir Light', 'waiting');
const second: Entry = { ...first, order: { ...sample, number: makeNumber(() => 5) } };
const DESK = endpointOf({ kind: 'desk', address: '/desk/orders' }, orderWords('en'));
const stateOf = (store: Store, at = 0): string | undefined => readOutbox(store)[at]?.state;

describe('outbox', () => {
  test('keeps entries in order, each number once', () => {
    const store = memoryStore();
    putEntry(store, first);
    putEntry(store, { ...first, tries: 3 });
    expect(readOutbox(store)).toEqual([{ ...first, tries: 3 }]);
    dropEntry(store, 'not there');
    dropEntry(store, sample.number);
    expect(readOutbox(store)).toEqual([]);
  });

  test('an order kept by an older version of the shop goes on its way in this one', () => {
    const store = memoryStore();
    const { delivery: _unasked, ...old } = sample;
    const { postageMinor: _none, ...shown } = sample.shown;
    writeText(store, JSON.stringify([{ ...first, order: { ...old, version: 1, shown } }]));
    expect(readOutbox(store)).toEqual([first]);
  });

  test.each(['', '{', '{}', 'null', '[1,null,{}]', '[{"order":{},"state":"waiting"}]'])(
    'rubbish in the store (%s) is passed over',
    (text) => {
      const store = memoryStore();
      writeText(store, text);
      expect(readOutbox(store)).toEqual([]);
    },
  );

  test('on a device that keeps nothing the order lasts as long as the page, and that is known', () => {
    const store = keepingStore(memoryStore(0));
    expect(store.lasts()).toBe(true);
    putEntry(store, first);
    expect(readOutbox(store)).toEqual([first]);
    expect(store.lasts()).toBe(false);
  });
});

describe('an answer', () => {
  const answer = (status: number, json: unknown): Answer => ({ kind: 'answer', status, json });
  const good = { number: sample.number, receivedAt: '2026-11-25T18:41:00Z', checked: 'same' };

  test('is a receipt only with this order’s number and a time', () => {
    expect(readDeskAnswer(sample.number, answer(201, good))).toMatchObject({
      kind: 'received',
      differs: false,
      askedBefore: false,
    });
    expect(readDeskAnswer(sample.number, answer(200, { ...good, checked: 'differs' }))).toMatchObject({
      kind: 'received',
      differs: true,
    });
    const second = { ...good, checked: 'differs', differences: ['asked-before'] };
    expect(readDeskAnswer(sample.number, answer(201, second))).toMatchObject({
      differs: false,
      askedBefore: true,
    });
    const both = { ...second, differences: ['asked-before', 'price'] };
    expect(readDeskAnswer(sample.number, answer(201, both))).toMatchObject({
      differs: true,
      askedBefore: true,
    });
    // A hotel's sign-in page, another order's receipt, a receipt without a time.
    for (const json of [
      null,
      '<html>',
      { ...good, number: 'K7M-4PX-9RC' },
      { ...good, receivedAt: 'soon' },
    ]) {
      expect(readDeskAnswer(sample.number, answer(200, json))).toEqual({
        kind: 'later',
        problem: { code: 'no-answer' },
      });
    }
  });

  test('says by its own name that what lay finished is promised', () => {
    const gone = { type: '/schema/desk-openapi.json#ready-gone', status: 409, detail: 'It has gone.' };
    expect(readDeskAnswer(sample.number, answer(409, gone))).toEqual({
      kind: 'refused',
      problem: { code: 'ready-gone' },
    });
  });

  test.each([
    [503, 'later', 'shop-trouble'],
    [500, 'later', 'shop-trouble'],
    [408, 'later', 'shop-trouble'],
    [429, 'later', 'too-many'],
    [409, 'refused', 'turned-down'],
    [422, 'refused', 'turned-down'],
  ])('%d is taken as %s, %s', (status, kind, code) => {
    expect(readDeskAnswer(sample.number, answer(status, null))).toMatchObject({ kind, problem: { code } });
  });

  test.each([403, 404, 405, 501])(
    '%d from a host of mere files sends the order the way of mail',
    (status) => {
      expect(readDeskAnswer(sample.number, answer(status, null))).toEqual({ kind: 'no-desk' });
      // The desk itself answers in JSON, and is listened to.
      expect(readDeskAnswer(sample.number, answer(status, { title: 'No' }))).toHaveProperty('problem');
    },
  );

  test('a refusal passes on the shop’s own sentence, at a readable length', () => {
    const told = readDeskAnswer(sample.number, answer(422, { title: 'Short', detail: 'x'.repeat(1000) }));
    expect(
      told.kind === 'refused' && told.problem.code === 'turned-down' && told.problem.reason,
    ).toHaveLength(300);
  });
});

describe('sender', () => {
  function scene(...answers: ((number: string) => Answer)[]) {
    const store = memoryStore();
    const clock = tellableClock();
    const shop = shopAnswering(...answers);
    const sendings: (string | null)[] = [];
    const world = {
      store,
      clock,
      post: shop.post,
      onChange: (number: string | null) => sendings.push(number),
    };
    return { store, clock, shop, sendings, sender: createSender(DESK, world) };
  }

  test('sends what waits and keeps the receipt', async () => {
    const { store, shop, sendings, sender } = scene(receipt);
    putEntry(store, first);
    await sender.go();
    expect(shop.sent).toEqual([{ address: '/desk/orders', type: 'application/json', number: sample.number }]);
    expect(readOutbox(store)[0]).toMatchObject({ state: 'received', receivedAt: '2026-11-25T18:41:00.000Z' });
    expect(sendings).toEqual([sample.number, null]);
  });

  test('tries again by itself, later and later, under the same number', async () => {
    const { store, clock, shop, sender } = scene(noAnswer, trouble, receipt);
    putEntry(store, first);
    await sender.go();
    expect(readOutbox(store)[0]).toMatchObject({
      state: 'waiting',
      tries: 1,
      problem: { code: 'no-answer' },
    });
    clock.pass(4_999);
    await settle();
    expect(shop.sent).toHaveLength(1);
    clock.pass(1);
    await settle();
    expect(shop.sent).toHaveLength(2);
    expect(readOutbox(store)[0]).toMatchObject({ tries: 2, problem: { code: 'shop-trouble', status: 503 } });
    clock.pass(15_000);
    await settle();
    expect(stateOf(store)).toBe('received');
    expect(new Set(shop.sent.map(({ number }) => number))).toEqual(new Set([sample.number]));
    expect(clock.waiting()).toBe(0);
  });

  test('a closed page loses nothing: a new one sends what the old one could not', async () => {
    const { store, sender } = scene(noAnswer);
    putEntry(store, first);
    await sender.go();
    sender.stop();
    const later = tellableClock(2_000_000);
    const shop = shopAnswering(receipt);
    const next = createSender(DESK, {
      store,
      clock: later,
      post: shop.post,
      onChange: () => undefined,
    });
    await next.go();
    expect(stateOf(store)).toBe('received');
  });

  test('one refused order does not hold up another', async () => {
    const refused = (): Answer => ({ kind: 'answer', status: 409, json: { detail: 'Not made any more.' } });
    const { store, sender } = scene(refused, receipt);
    putEntry(store, first);
    putEntry(store, second);
    await sender.go();
    expect(readOutbox(store).map(({ state }) => state)).toEqual(['refused', 'received']);
    expect(readOutbox(store)[0]?.problem).toEqual({ code: 'turned-down', reason: 'Not made any more.' });
  });

  test('where nothing takes orders, the order is ready to be mailed', async () => {
    const { store, sender } = scene(() => ({ kind: 'answer', status: 405, json: null }));
    putEntry(store, first);
    await sender.go();
    expect(readOutbox(store)[0]).toMatchObject({ state: 'mail', problem: null });
  });

  test('an order that another tab has the receipt for is left as it is', async () => {
    const { store, sender } = scene(() => {
      putEntry(store, { ...first, state: 'received', receivedAt: '2026-01-01T00:00:00Z' });
      return trouble();
    });
    putEntry(store, first);
    await sender.go();
    expect(readOutbox(store)[0]).toMatchObject({ state: 'received', receivedAt: '2026-01-01T00:00:00Z' });
  });

  test('an order that was taken out while it was being sent is not put back as waiting', async () => {
    const { store, sender } = scene(() => {
      dropEntry(store, sample.number);
      return noAnswer();
    });
    putEntry(store, first);
    await sender.go();
    expect(readOutbox(store)).toEqual([]);
  });

  test('orders for e-mail are never posted', async () => {
    const { store, shop, sender } = scene(receipt);
    putEntry(store, { ...first, state: 'mail' });
    await sender.go(true);
    expect(shop.sent).toEqual([]);
    expect(stateOf(store)).toBe('mail');
  });

  test('asked to try now, it does not wait for the time that was set', async () => {
    const { store, shop, sender } = scene(noAnswer, receipt);
    putEntry(store, first);
    await sender.go();
    await sender.go();
    expect(shop.sent).toHaveLength(1);
    await sender.go(true);
    expect(stateOf(store)).toBe('received');
  });

  test('an order put in while another is being sent goes too', async () => {
    const { store, clock, sender } = scene((number) => {
      if (number === sample.number) putEntry(store, second);
      return receipt(number);
    });
    putEntry(store, first);
    await sender.go();
    clock.pass(0);
    await settle();
    expect(readOutbox(store).map(({ state }) => state)).toEqual(['received', 'received']);
  });
});

describe('a form service', () => {
  const FORM = endpointOf({ kind: 'form', address: 'https://forms.example/ninepin' }, orderWords('en'));
  const page = (status: number): Answer => ({ kind: 'answer', status, json: null });

  function scene(...answers: Answer[]) {
    const store = memoryStore();
    const clock = tellableClock();
    const sent: { address: string; type: string; text: string }[] = [];
    const post: Post = async (address, type, text) => {
      sent.push({ address, type, text });
      return answers[Math.min(sent.length, answers.length) - 1] ?? noAnswer();
    };
    putEntry(store, first);
    return {
      store,
      clock,
      sent,
      sender: createSender(FORM, { store, post, clock, onChange: () => undefined }),
    };
  }

  test('gets a form post that a person can read and that holds the whole order', async () => {
    const { store, sent, sender } = scene(page(200));
    await sender.go();
    expect(sent).toHaveLength(1);
    expect(sent[0]).toMatchObject({
      address: 'https://forms.example/ninepin',
      type: 'application/x-www-form-urlencoded',
    });
    const fields = new URLSearchParams(sent[0]?.text);
    expect([...fields.keys()]).toEqual(['subject', 'email', 'summary', 'order']);
    expect(fields.get('email')).toBe(sample.buyer.email);
    expect(fields.get('summary')).toContain('Piece: Weir Light');
    expect(decode(fields.get('order') ?? '')).toEqual({ ok: true, document: sample });
    expect(readOutbox(store)[0]).toMatchObject({ state: 'handed', receivedAt: null, problem: null });
  });

  test('has it with any 2xx, and is never asked again', async () => {
    for (const status of [200, 201, 202, 204]) {
      expect(readFormAnswer(sample.number, page(status))).toEqual({ kind: 'handed' });
    }
    const { sent, sender } = scene(page(204));
    await sender.go();
    await sender.go(true);
    expect(sent).toHaveLength(1);
  });

  test.each([
    [302, 'refused'],
    [404, 'no-desk'],
    [422, 'refused'],
    [429, 'later'],
    [500, 'later'],
  ])('%d is no taking: %s', (status, kind) => {
    expect(readFormAnswer(sample.number, page(status)).kind).toBe(kind);
  });

  test('that stays silent three times is left for the e-mail, and without network it waits', async () => {
    const { store, sent, sender } = scene({ kind: 'offline' }, noAnswer(), noAnswer(), noAnswer());
    await sender.go(true);
    expect(readOutbox(store)[0]).toMatchObject({ state: 'waiting', problem: { code: 'offline' } });
    for (let turn = 0; turn < 4; turn += 1) await sender.go(true);
    expect(readOutbox(store)[0]).toMatchObject({ state: 'mail', problem: { code: 'no-answer' } });
    expect(sent.length).toBeLessThanOrEqual(4);
  });
});
