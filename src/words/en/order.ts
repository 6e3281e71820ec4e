/** What is said on an order's road: the form, where the order stands, the e-mail and the slip. */
import type { Measure } from '#core/design/choice.ts';
import { orderTotalMinor } from '#core/sizing/price/total.ts';
import { addressLines } from '../address.ts';
import { formatList, type Format } from '../format.ts';
import {
  handIn,
  type FormProblem,
  type MeasuredFacts,
  type OrderFacts,
  type OrderRow,
  type SendProblem,
  type SizeFacts,
} from '../orderFacts.ts';
import type { Sentences } from '../sentence.ts';
import { strandLengthsText, strandsDiffer } from '../strandLengths.ts';

const BY: Readonly<Record<Measure['of'], (text: string) => string>> = {
  wrist: (text) => `${text} round the wrist`,
  ankle: (text) => `${text} round the ankle`,
  neck: (text) => `${text} round the neck`,
  length: (text) => `${text} finished length`,
};
const AS_IT_LIES = 'as it lies there';
const OF_SHORTEST = (text: string): string => `${text} finished length of the shortest strand`;
const HAND = { left: 'the left hand', right: 'the right hand', either: 'either hand' };
const SIT = { snug: 'snug', easy: 'easy', loose: 'loose' };

/** What was asked for: the measure as written, of what it is, and of which strand. */
const sizeText = (f: Format, { measure, made, shown }: SizeFacts): string => {
  if (made === 'ready') return AS_IT_LIES;
  const say = measure.of === 'length' && strandsDiffer(f, shown) ? OF_SHORTEST : BY[measure.of];
  return say(measure.text);
};

/** How long it comes out, every strand where they differ. */
const lengthRow = (f: Pick<Format, 'length'>, shown: MeasuredFacts): OrderRow => {
  const { lengthMm, strandsMm } = shown;
  if (!strandsDiffer(f, shown)) return { label: 'Finished length', value: f.length(lengthMm) };
  return strandsMm.length === 0
    ? { label: 'Longest strand', value: f.length(lengthMm) }
    : { label: 'Finished lengths, the shortest strand first', value: strandLengthsText(f, strandsMm) };
};

/** Its figures as a tape shows them, on slip, e-mail and bench card alike. */
const measured = (f: Pick<Format, 'length'>, shown: MeasuredFacts): OrderRow[] => [
  lengthRow(f, shown),
  {
    label: strandsDiffer(f, shown) ? 'Inside girth, shortest strand' : 'Inside girth',
    value: f.length(shown.insideGirthMm),
  },
];

/** Parts chosen instead of the listed ones. */
const insteadRows = ({ instead: { clasp, pendant } }: OrderFacts): OrderRow[] => [
  ...(clasp.name === '' ? [] : [{ label: 'Clasp', value: clasp.name }]),
  ...(pendant.name === '' ? [] : [{ label: 'Pendant', value: pendant.name }]),
];

/** Where it goes, and what that costs with it. */
const delivered = (f: Format, { delivery, shown, quantity }: OrderFacts): OrderRow[] => [
  ...(delivery.by === 'collection' ? [{ label: 'Delivery', value: 'collected' }] : []),
  ...(delivery.by === 'post'
    ? [
        { label: 'Posted to', value: addressLines(delivery.to, f.country(delivery.to.country)).join(', ') },
        { label: 'Postage', value: shown.postageMinor === 0 ? 'free' : f.money(shown.postageMinor) },
      ]
    : []),
  ...(quantity > 1 || shown.postageMinor > 0
    ? [{ label: 'Together', value: f.money(orderTotalMinor(shown, quantity)) }]
    : []),
];

const formProblems: Sentences<FormProblem> = {
  'name-missing': () => 'Write your name, so that the maker knows whom it is for.',
  'name-long': ({ most }, f) => `A name of at most ${f.number(most)} characters, please.`,
  'email-missing': () => 'Write your e-mail address, so that the maker can answer.',
  'email-wrong': () => 'That isn’t an e-mail address. One looks like name@example.org.',
  'note-long': ({ most }, f) => `At most ${f.number(most)} characters, please; more can follow by e-mail.`,
  quantity: ({ most }, f) => `A whole number from 1 to ${f.number(most)}, please.`,
  'line1-missing': () => 'Write the street and number, or the house.',
  'town-missing': () => 'Write the town.',
  'postcode-missing': () => 'Write the postcode.',
  'country-missing': () => 'Choose the country.',
  'part-long': ({ most }, f) => `At most ${f.number(most)} characters, please.`,
  'parcel-heavy': ({ mostG }, f) =>
    `That many weigh more than one parcel takes (${f.number(mostG)} g). Order fewer, and ask in your note.`,
  stock: () =>
    'There aren’t enough beads for that many of exactly this piece. Order fewer, and ask in your note.',
};

const sendProblems: Sentences<SendProblem> = {
  offline: () => 'There is no network at the moment.',
  'no-answer': () => 'The shop did not answer.',
  'shop-trouble': () => 'The shop can’t take orders at the moment.',
  'too-many': () => 'The shop is getting many orders at once.',
  'ready-gone': () =>
    'The one that lay finished has been promised to somebody in the meantime, so it can’t be yours. Another can be made like it: order it in your size.',
  'turned-down': ({ reason }) =>
    reason === '' ? 'The shop could not take it as it is.' : `The shop said: “${reason}”`,
};

export const order = {
  formProblems,
  sendProblems,
  askInstead: 'Ask about this piece by e-mail',
  title: 'Your order',
  name: 'Your name',
  email: 'Your e-mail address',
  note: 'A note to the maker (if you like)',
  noteHint: 'A date you need it by, who it is for, anything she should know.',
  quantity: 'How many',
  delivery: {
    title: 'How it comes to you',
    ways: { post: 'By post', collection: 'I collect it' },
    parts: {
      name: 'For whom, if not for you',
      line1: 'Street and number',
      line2: 'Flat, building (if any)',
      town: 'Town',
      region: 'County, state (if needed)',
      postcode: 'Postcode',
      country: 'Country',
    },
    collect: (where: string): string => `You collect it ${where}.`,
    /** What posting comes to, and all of it together. */
    postage: (f: Format, country: string, postageMinor: number, totalMinor: number): string =>
      `Postage, ${f.country(country)}: ${postageMinor === 0 ? 'free' : f.money(postageMinor)}. Together ${f.money(totalMinor)}.`,
  },
  trap: 'Leave this field empty',
  delivered,
  summary: 'What you are ordering',
  send: 'Send the order',
  prepare: 'Prepare the order',
  sendHint: 'Nothing is paid yet. The maker reads it, writes to you and agrees it with you first.',
  draftKept: 'What you write here stays on this device until you order.',
  clearForm: 'Clear the form',
  privacy: 'Your name, address and note go to the maker and to nobody else.',
  privacyForm: (host: string): string =>
    `Your name, address and note go to the maker by way of the form service ${host}, which passes them on.`,
  total: 'Together',
  orders: 'Your orders on this device',
  numberIs: (number: string): string => `Order ${number}`,
  states: {
    sending: (): string => 'Being sent…',
    waiting: (why: string): string =>
      `Not sent yet. ${why} It is kept on this device and tried again by itself, even if you close this page and come back.`,
    refused: (why: string): string => `Not taken. ${why} Please send it by e-mail instead; nothing is lost.`,
    mail: (): string =>
      'Ready to go by e-mail: open it, read it over and send it from your own mailbox. It has not been sent yet.',
    silent: (): string =>
      'No answer came, so it may or may not have arrived. Please send it by e-mail as well: it bears the same number, and counts once.',
    handed: (): string =>
      'Handed to the shop’s form service, which passes it on. The maker hasn’t confirmed it yet; if you hear nothing in a few days, send it by e-mail as well. It counts once.',
    received: (date: string): string => `The maker has it, ${date}. She will write to you.`,
    mailed: (): string => 'You sent it by e-mail. The maker will write to you.',
  },
  differs:
    'The piece or its price has changed since this page was made; she will tell you before anything is strung.',
  askedBefore:
    'Somebody asked for the one that lies finished before you did. If they don’t take it, it is yours; the maker will tell you.',
  notKept:
    'This browser keeps nothing once the page is closed. Leave it open until the order is received, or send it by e-mail.',
  tryNow: 'Try again now',
  openMail: 'Open as an e-mail',
  longMail: (email: string): string =>
    `This order is long, and some mail programs cut off an e-mail that is opened from a page. Better copy its text into an e-mail to ${email}, or download the order and attach it.`,
  copyMail: 'Copy the e-mail’s text',
  copied: 'Copied.',
  copyByHand: 'Copy this text into an e-mail to the shop:',
  download: 'Download the order',
  /** Leads to the size field, where the one that lay finished has gone. */
  inMySize: 'Have one made in my size',
  slip: 'Slip to keep',
  iSentIt: 'I have sent it',
  remove: 'Remove from this device',
  reallyRemove: 'Remove it: it has not reached the maker',
  mailSubject: (number: string, piece: string): string => `Order ${number}: ${piece}`,
  mailGreeting: (shop: string): string => `An order for ${shop}`,
  mailClosing: {
    'to-measure': 'Please write to me before you string it.',
    ready: 'Please write to me before you send it.',
  },
  mailFoot: 'The lines below hold the whole order for the maker’s order book. Please leave them as they are.',
  size: sizeText,
  measured,
  /** In the size's place, for a piece that lies finished. */
  asItLies: AS_IT_LIES,
  /** The piece's name, with the parts chosen instead of the listed ones. */
  withParts: (name: string, parts: readonly string[]): string =>
    parts.length === 0 ? name : `${name} (with ${formatList(parts, 'en')})`,
  rows: (f: Format, order: OrderFacts, pieceName: string): OrderRow[] => {
    const { measure, sit, quantity, shown, buyer } = order;
    const ready = order.made === 'ready';
    return [
      { label: 'Piece', value: pieceName },
      {
        label: 'Size',
        value: sizeText(f, order),
      },
      ...insteadRows(order),
      ...(ready || measure.of === 'length' ? [] : [{ label: 'Sit', value: SIT[sit] }]),
      ...(ready ? [] : [{ label: 'Clasp worked by', value: HAND[handIn(order)] }]),
      ...measured(f, shown),
      { label: 'Price', value: f.money(shown.priceMinor) },
      { label: 'How many', value: f.number(quantity) },
      ...delivered(f, order),
      ...(buyer.name === '' ? [] : [{ label: 'Name', value: buyer.name }]),
      ...(buyer.email === '' ? [] : [{ label: 'E-mail', value: buyer.email }]),
      ...(buyer.note === '' ? [] : [{ label: 'Note', value: buyer.note }]),
    ];
  },
};
