/** Order documents for tests: one plain sample, and random ones up to every cap. */
import fc from 'fast-check';
import { isInstant, EMAIL, NAME } from '#order/fields.ts';
import { HANDS, MEASURES, PICKS, SITS } from '#core/design/choice.ts';
import { AS_LISTED, CAPS, FORMAT, MADE, VERSION } from '#order/document.ts';
import type { OrderDocument } from '#order/document.ts';
import { makeNumber } from '#order/number.ts';
import { LANGS } from '#words/lang.ts';

export const sample: OrderDocument = {
  format: FORMAT,
  version: VERSION,
  number: 'TX2-FYF-HTV',
  placedAt: '2026-11-25T18:40:00Z',
  lang: 'en',
  piece: { id: 'weir-light', revision: '0123456789ab' },
  made: 'to-measure',
  instead: AS_LISTED,
  measure: { of: 'wrist', text: '6 1/2 in', mm: 165.1 },
  sit: 'easy',
  hand: 'left',
  pick: 'best',
  quantity: 1,
  choices: {},
  buyer: {
    name: 'Iris Møller',
    email: 'iris.moeller@example.org',
    note: 'For my sister’s birthday on the 3rd; please leave off the tag.\nThank you!',
  },
  delivery: { by: 'unsaid' },
  shown: {
    lengthMm: 201.35,
    strandsMm: [],
    insideGirthMm: 175.02,
    counts: [[1, 8, 2, 3]],
    priceMinor: 6450,
    postageMinor: 0,
    currency: 'GBP',
  },
};

/** The same, to be posted to her sister. */
export const posted: OrderDocument = {
  ...sample,
  delivery: {
    by: 'post',
    to: {
      name: 'Solveig Møller',
      line1: 'Reepschlägergasse 7',
      line2: 'Hinterhaus',
      town: 'Stapelmünde',
      region: '',
      postcode: '24999',
      country: 'DE',
    },
  },
  shown: { ...sample.shown, postageMinor: 820 },
};

/** The same with another clasp and another drop, as version 3 first had them. */
export const swapped: OrderDocument = {
  ...posted,
  instead: {
    clasp: { id: 'toggle-14-silver', name: 'Silver toggle, ring 14 mm' },
    pendant: { id: 'river-drop-26', name: 'River-green glass drop' },
  },
};

/** Three strands, one within another, asked for by the length of the shortest. */
export const nested: OrderDocument = {
  ...posted,
  piece: { id: 'forty-days', revision: 'abcdef012345' },
  measure: { of: 'length', text: '17 in', mm: 431.8 },
  shown: {
    ...posted.shown,
    lengthMm: 533.42,
    insideGirthMm: 418.9,
    strandsMm: [432.5, 482.61, 533.42],
    counts: [[9], [11], [13]],
  },
};

/** A piece as it lies finished. */
export const ready: OrderDocument = {
  ...posted,
  made: 'ready',
  measure: { of: 'length', text: '', mm: 201.35 },
  hand: 'right',
};

const plainText = (most: number) =>
  fc.string({ unit: 'grapheme', maxLength: most }).filter((text) => text.length <= most);
const line = (most: number) => plainText(most).map((text) => text.replace(/[\p{Cc}\p{Cs}]/gu, ' '));
const note = fc
  .array(plainText(60), { maxLength: 12 })
  .map((lines) => lines.join('\n').replace(/(?![\n\t])[\p{Cc}\p{Cs}]/gu, ' '))
  .filter((text) => text.length <= CAPS.note);
const seen = (most: number) => line(most).filter((text) => NAME.test(text));
const id = fc.stringMatching(/^[a-z0-9][a-z0-9-]{0,63}$/);
const chosen = fc.oneof(fc.constant({ id: '', name: '' }), fc.record({ id, name: line(CAPS.part) }));
const mm = fc.double({ min: 1, max: CAPS.mm, noNaN: true });
const counts = fc.array(
  fc.array(fc.integer({ min: 0, max: CAPS.repeats }), { minLength: 1, maxLength: 12 }),
  { minLength: 1, maxLength: 4 },
);
const choices = fc
  .array(fc.tuple(fc.stringMatching(/^[a-z][a-z0-9-]{0,23}$/), line(CAPS.choiceValue)), {
    maxLength: CAPS.choices,
  })
  .map((entries) => Object.fromEntries(entries));

/** Any legal document. */
export const anyOrder: fc.Arbitrary<OrderDocument> = fc.record({
  format: fc.constant(FORMAT),
  version: fc.constant(VERSION),
  number: fc
    .infiniteStream(fc.integer({ min: 0, max: 255 }))
    .map((bytes) => makeNumber(() => bytes.next().value as number)),
  placedAt: fc
    .date({ min: new Date('2000-01-01'), max: new Date('2999-12-31'), noInvalidDate: true })
    .map((date) => date.toISOString().slice(0, 19) + 'Z')
    .filter(isInstant),
  lang: fc.constantFrom(...LANGS),
  piece: fc.record({ id, revision: id }),
  made: fc.constantFrom(...MADE),
  instead: fc.record({ clasp: chosen, pendant: chosen }),
  measure: fc.record({ of: fc.constantFrom(...MEASURES), text: line(CAPS.text), mm }),
  sit: fc.constantFrom(...SITS),
  hand: fc.constantFrom(...HANDS),
  pick: fc.constantFrom(...PICKS),
  quantity: fc.integer({ min: 1, max: CAPS.quantity }),
  choices,
  buyer: fc.record({
    name: seen(CAPS.name),
    email: fc.emailAddress().filter((email) => EMAIL.test(email) && email.length <= CAPS.email),
    note,
  }),
  delivery: fc.oneof(
    fc.constantFrom({ by: 'unsaid' } as const, { by: 'collection' } as const),
    fc.record({
      by: fc.constant('post' as const),
      to: fc.record({
        name: seen(CAPS.name),
        line1: seen(CAPS.addressLine),
        line2: line(CAPS.addressLine),
        town: line(CAPS.addressLine),
        region: line(CAPS.addressLine),
        postcode: line(CAPS.postcode),
        country: fc.stringMatching(/^[A-Z]{2}$/),
      }),
    }),
  ),
  shown: fc.record({
    lengthMm: mm,
    strandsMm: fc.array(mm, { maxLength: CAPS.strands }),
    insideGirthMm: mm,
    counts,
    priceMinor: fc.integer({ min: 0, max: CAPS.minor }),
    postageMinor: fc.integer({ min: 0, max: CAPS.minor }),
    currency: fc.stringMatching(/^[A-Z]{3}$/),
  }),
});
