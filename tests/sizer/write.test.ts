/** From the form to the order document, the mail and the slip link. */
import { AS_DESIGNED } from '#core/design/choice.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkOrder } from '#order/check.ts';
import { decode, encode } from '#order/text.ts';
import { MOST_MAILTO, slipLink } from '#order/mail.ts';
import { LANGS } from '#words/lang.ts';
import { orderWords } from '#words/words.ts';
import { listedOf, outcomeOf } from '#sizer/model/answer.ts';
import { chosenPiece } from '#sizer/model/chosen.ts';
import { suitsOf } from '#sizer/model/suits.ts';
import { choiceOf, shownOf } from '#sizer/model/outcome.ts';
import { reduce, startOf } from '#sizer/model/sizerState.ts';
import { checkForm, EMPTY_FORM, quantityOf, type OrderForm } from '#sizer/ordering/model/form.ts';
import { draftOrder, textWithUnit, unitOfOrder, writeMail, writeOrder } from '#sizer/ordering/model/write.ts';
import { readyItem } from '#sizer/ordering/model/readyItem.ts';
import type { OrderItem } from '#sizer/ordering/model/item.ts';
import { readableId } from '#sizer/slip/pieceName.ts';
import { enoughFor } from '#sizer/ordering/model/enough.ts';
import { component, focalBracelet, pendantNecklace, RULES, withComponent } from '#tests/support/workshop.ts';
import { bracelet, pieceOf } from './support.ts';

const SHOP = { name: 'Ninepin Beadwork', email: 'orders@ninepin.example' };
const FORM: OrderForm = {
  ...EMPTY_FORM,
  name: ' Iris Moor ',
  email: 'iris@example.org',
  note: 'By the 3rd,\r\nplease.',
  quantity: '2',
};

function itemFor(text: string, lang: 'en' | 'de' = 'en'): OrderItem {
  const state = { ...startOf('bracelet', 'in'), text, hand: 'left' } as const;
  const choice = choiceOf(state);
  const candidate = shownOf(outcomeOf(bracelet, state));
  if ('code' in choice || candidate === null) throw new Error('expected a piece');
  return {
    made: 'to-measure',
    eitherHand: false,
    parts: AS_DESIGNED,
    piece: bracelet,
    lang,
    choice,
    text,
    unit: 'in',
    candidate,
    post: null,
  };
}

let byte = 0;
/** Every byte in turn: any of them may come. */
const randomByte = (): number => (byte = (byte + 37) % 256);

describe('form', () => {
  test('an empty one lacks name and address', () => {
    expect(checkForm(EMPTY_FORM)).toEqual({
      name: { code: 'name-missing' },
      email: { code: 'email-missing' },
    });
  });

  test('a whole one can go', () => {
    expect(checkForm(FORM)).toEqual({});
  });

  test.each([
    'iris',
    'iris@',
    '@example.org',
    'a b@example.org',
    'a@b',
    'a@b.org\nBcc: c@d.org',
    'a@b.org,c@d.org',
  ])('%s is no address', (email) => {
    expect(checkForm({ ...FORM, email })).toEqual({ email: { code: 'email-wrong' } });
  });

  test.each(['0', '-1', '1.5', '100', 'two', '', '1e1'])('%s is no number of pieces', (quantity) => {
    expect(checkForm({ ...FORM, quantity })).toEqual({ quantity: { code: 'quantity', most: 99 } });
    expect(quantityOf({ ...FORM, quantity })).toBeNull();
  });

  test('too much is said to be too much', () => {
    expect(checkForm({ ...FORM, name: 'x'.repeat(101), note: 'x'.repeat(1001) })).toEqual({
      name: { code: 'name-long', most: 100 },
      note: { code: 'note-long', most: 1000 },
    });
  });
});

test('several pieces need beads for all of them', () => {
  const plenty = itemFor('6½');
  expect(enoughFor(plenty, 50)).toBe(true);
  // One boulder a piece, three in the drawer.
  const scarce = { ...plenty, piece: pieceOf(withComponent(focalBracelet, 'boulder', { stock: 3 })) };
  expect([1, 2, 3, 4].map((quantity) => enoughFor(scarce, quantity))).toEqual([true, true, true, false]);
});

describe('the one that lies finished', () => {
  const item = readyItem(bracelet, listedOf(bracelet), { post: null }, 'en', 'in');
  const order = writeOrder(item, { ...FORM, quantity: '1' }, Date.UTC(2026, 10, 25), randomByte);

  test('is ordered as it lies: its own length, its usual counts, no size and no part but its own', () => {
    expect(checkOrder(order)).toBeNull();
    expect(order).toMatchObject({
      made: 'ready',
      instead: { clasp: { id: '' }, pendant: { id: '' } },
      measure: { of: 'length', text: '' },
      quantity: 1,
      shown: { counts: listedOf(bracelet).counts, priceMinor: bracelet.listedMinor },
    });
    expect(order.measure.mm).toBeCloseTo(listedOf(bracelet).finishedLengthMm, 2);
  });

  test.each(LANGS)('says so in the mail, in %s, and asks for no size, sit or hand', (lang) => {
    const words = orderWords(lang);
    const { body } = writeMail({ ...order, lang }, 'Test Piece', SHOP, words);
    expect(body).toContain(words.asItLies);
    expect(body).toContain(words.mailClosing.ready);
    expect(body).not.toMatch(/Sit:|Sitz:|Clasp worked by|Verschluss für/);
  });

  test('sits on the girths that its inside girth leaves for each sit; a necklace hangs on anybody', () => {
    const { insideGirthMm } = listedOf(bracelet);
    const ease = RULES.easeMm.bracelet;
    expect(suitsOf(bracelet, listedOf(bracelet))).toEqual({
      snug: insideGirthMm - ease.snug,
      easy: insideGirthMm - ease.easy,
      loose: insideGirthMm - ease.loose,
    });
    const necklace = pieceOf(pendantNecklace);
    expect(suitsOf(necklace, listedOf(necklace))).toBeNull();
  });
});

describe('other parts', () => {
  const toggle = { ...component('toggle'), shape: 'toggle' as const, costMinor: 5000 };
  const piece = pieceOf(focalBracelet, {
    alternatives: { clasps: [{ clasp: toggle, ring: null }], pendants: [] },
  });
  const state = reduce(
    { ...startOf('bracelet', 'in'), text: '6½' },
    { type: 'part', part: 'clasp', id: 'toggle' },
  );
  const chosen = chosenPiece(piece, state.parts);

  test('are sized and priced against the piece as listed, and named in the order', () => {
    const candidate = shownOf(outcomeOf(chosen, state));
    const choice = choiceOf(state);
    if (candidate === null || 'code' in choice) throw new Error('expected a piece');
    expect(chosen.design.ends.clasp).toBe('toggle');
    const asListed = shownOf(outcomeOf(piece, state));
    expect(candidate.priceMinor).not.toBe(asListed?.priceMinor);
    const item: OrderItem = {
      ...itemFor('6½'),
      piece: chosen,
      parts: state.parts,
      choice,
      candidate,
    };
    const order = writeOrder(item, FORM, 0, randomByte);
    expect(checkOrder(order)).toBeNull();
    expect(order.instead).toEqual({
      clasp: { id: 'toggle', name: toggle.name },
      pendant: { id: '', name: '' },
    });
    expect(writeMail(order, 'Test Piece', SHOP, orderWords('en')).body).toContain(`Clasp: ${toggle.name}`);
  });

  test('that aren’t offered leave the piece as it is', () => {
    expect(chosenPiece(piece, { clasp: 'no-such', pendant: '' })).toBe(piece);
    expect(chosenPiece(bracelet, state.parts)).toBe(bracelet);
  });
});

describe('order', () => {
  test('holds what was chosen and shown, and is an order document', () => {
    const item = itemFor('6 1/2');
    const order = writeOrder(item, FORM, Date.UTC(2026, 10, 25, 18, 40), randomByte);
    expect(checkOrder(order)).toBeNull();
    expect(order).toMatchObject({
      placedAt: '2026-11-25T18:40:00Z',
      piece: { id: 'test-piece', revision: '0123456789ab' },
      measure: { of: 'wrist', text: '6 1/2 in', mm: 165.1 },
      hand: 'left',
      quantity: 2,
      buyer: { name: 'Iris Moor', email: 'iris@example.org', note: 'By the 3rd,\nplease.' },
      shown: { counts: item.candidate.counts, priceMinor: item.candidate.priceMinor, currency: 'GBP' },
    });
  });

  test.each([
    ['en', 'either hand', 'the left hand'],
    ['de', 'jede Hand', 'die linke Hand'],
  ] as const)('says in %s that either hand will do where she wasn’t asked for one', (lang, either, asked) => {
    const handOf = (eitherHand: boolean): string => {
      const order = writeOrder(
        { ...itemFor('6½', lang), eitherHand },
        FORM,
        Date.UTC(2026, 10, 25),
        randomByte,
      );
      expect(checkOrder(order)).toBeNull();
      const read = decode(encode(order));
      // The slip has nothing but what its address holds.
      const kept = read.ok ? read.document : order;
      expect(kept).toEqual(order);
      return writeMail(kept, 'Test Piece', SHOP, orderWords(lang)).body;
    };
    expect(handOf(true)).toContain(`: ${either}\n`);
    expect(handOf(true)).not.toContain(asked);
    expect(handOf(false)).toContain(`: ${asked}\n`);
  });

  test('any form that passes makes an order document', () => {
    const item = itemFor('6½ in');
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary' }),
        fc.string({ unit: 'binary' }),
        fc.emailAddress(),
        (name, note, email) => {
          const form = { ...FORM, name: `I${name}`, note, email };
          fc.pre(Object.keys(checkForm(form)).length === 0);
          expect(checkOrder(writeOrder(item, form, 0, randomByte))).toBeNull();
        },
      ),
    );
  });

  test('the summary is drawn from what will be sent', () => {
    const item = itemFor('6½');
    const { number: _number, placedAt: _placedAt, ...sent } = writeOrder(item, FORM, 0, randomByte);
    expect(draftOrder(item, FORM)).toMatchObject(sent);
  });

  test('a bare number gets the unit of its field', () => {
    expect([textWithUnit('6½', 'in'), textWithUnit('16,5', 'cm'), textWithUnit(' 165 mm', 'in')]).toEqual([
      '6½ in',
      '16,5 cm',
      '165 mm',
    ]);
    expect(unitOfOrder(writeOrder(itemFor('6½'), FORM, 0, randomByte))).toBe('in');
    expect(unitOfOrder(writeOrder(itemFor('165 mm'), FORM, 0, randomByte))).toBe('cm');
  });
});

describe.each(LANGS)('mail in %s', (lang) => {
  const order = writeOrder(itemFor('6½', lang), FORM, Date.UTC(2026, 10, 25), randomByte);
  const mail = writeMail(order, 'Test Piece', SHOP, orderWords(lang));

  test('can be read by a person and, at its foot, by the order book', () => {
    expect(mail.body).toContain('Ninepin Beadwork');
    expect(mail.body).toContain('Iris Moor');
    expect(mail.body).toContain('6½ in');
    expect(decode(mail.body)).toEqual({ ok: true, document: order });
  });

  test('goes to the shop with everything in it', () => {
    // RFC 6068: address, then subject and body as escaped fields.
    const link = new URL(mail.link);
    expect(link.protocol).toBe('mailto:');
    expect(link.pathname).toBe('orders@ninepin.example');
    expect(link.searchParams.get('subject')).toBe(mail.subject);
    expect(link.searchParams.get('body')?.replaceAll('\r\n', '\n')).toBe(mail.body);
  });

  test('stands in the slip’s address behind the #, where no server sees it', () => {
    const link = new URL(slipLink('https://ninepin.example/slip/', order));
    expect(`${link.pathname}${link.search}`).toBe('/slip/');
    expect(decode(link.hash)).toEqual({ ok: true, document: order });
  });
});

test('copying comes first from one character over 2,000 in the prepared address', () => {
  const words = orderWords('en');
  const order = writeOrder(itemFor('6½'), { ...FORM, note: '' }, Date.UTC(2026, 10, 25), randomByte);
  // The shop's name stands once in the mail, a letter a character.
  const shop = (pad: number) => ({ ...SHOP, name: 'x'.repeat(pad) });
  const shortest = writeMail(order, '', shop(1), words).link.length;
  const at = (length: number) => writeMail(order, '', shop(1 + length - shortest), words);
  expect(MOST_MAILTO).toBe(2000);
  expect([at(2000), at(2001)].map(({ link, long }) => [link.length, long])).toEqual([
    [2000, false],
    [2001, true],
  ]);
});

test('an id reads like a name where the shop can’t be asked', () => {
  expect(readableId('weir-light')).toBe('Weir light');
});
