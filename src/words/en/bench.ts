/** What the maker reads at her bench. */
import type { ArrivalProblem, Arrived, BenchProblem, OrderState, OrderWay } from '../benchCodes.ts';
import type { Difference } from '../difference.ts';
import { formatMoney, type Format } from '../format.ts';
import type { Sentences } from '../sentence.ts';
import { sentenceOf } from '../sentence.ts';
import { problems } from './benchProblems.ts';
import { gather } from './gather.ts';
import { keep } from './keep.ts';
import { sized } from './sized.ts';

const STATE: Readonly<Record<OrderState, string>> = {
  new: 'New',
  asked: 'Asked',
  agreed: 'Agreed',
  strung: 'Strung',
  sent: 'Sent',
  cancelled: 'Cancelled',
};
const WAY: Readonly<Record<OrderWay, string>> = {
  desk: 'through the shop',
  paste: 'pasted from an e-mail',
  file: 'from a file',
  link: 'from a link',
  fair: 'at a fair, entered by hand',
  telephone: 'by telephone, entered by hand',
  mail: 'from a plain e-mail, entered by hand',
};

const differences: Sentences<Difference> = {
  'no-such-piece': ({ piece }) => `There is no piece “${piece}” in the catalogue now.`,
  revision: () => 'The piece has been changed since the buyer looked at it.',
  price: ({ shownMinor, nowMinor, shownIn }, f) =>
    `Price: the buyer saw ${formatMoney(shownMinor, shownIn, f.lang)}, it comes to ${f.money(nowMinor)}.`,
  postage: ({ shownMinor, nowMinor, shownIn }, f) =>
    `Postage: the buyer saw ${formatMoney(shownMinor, shownIn, f.lang)}, it comes to ${f.money(nowMinor)}.`,
  'post-too-heavy': ({ weightG, mostG }, f) =>
    `The parcel weighs about ${f.number(weightG)} g, more than the ${f.number(mostG)} g that postage is set for there.`,
  'post-not-served': ({ country }, f) =>
    `${f.country(country)} is not among the countries that the shop posts to now.`,
  'no-collection': () => 'The buyer wants to collect it, which the shop doesn’t offer now.',
  currency: ({ shown, now }) => `Currency: the buyer saw ${shown}, the shop reckons in ${now}.`,
  length: ({ shownMm, nowMm }, f) =>
    `Finished length: the buyer saw ${both(shownMm, f)}, it comes to ${both(nowMm, f)}.`,
  girth: ({ shownMm, nowMm }, f) =>
    `Inside girth: the buyer saw ${both(shownMm, f)}, it comes to ${both(nowMm, f)}.`,
  counts: () => 'The number of beads: not as the buyer saw it.',
  outside: ({ side, leastMm, mostMm }, f) =>
    `The size is too ${side === 'below' ? 'small' : 'large'} for this piece, which can be made for ${both(leastMm, f)} to ${both(mostMm, f)}. What follows is the nearest that can be made.`,
  refused: ({ problem }, f) => `It can’t be sized: ${sentenceOf(sized.problems, problem, f)}`,
  'not-offered': ({ part, name }) =>
    `The buyer chose the ${part} “${name}”, which this piece’s file doesn’t offer (instead, ${part}s).`,
  'ready-gone': ({ number }) =>
    number === ''
      ? 'The buyer wants the one that lies finished, and the piece’s file says that none does (status). You can offer to make one like it.'
      : `The one that lay finished is promised with order ${number}. You can offer to make one like it.`,
  'asked-before': ({ number }) =>
    `Somebody asked for the one that lies finished before: order ${number}, not agreed yet.`,
  'hand-unasked': () =>
    'The buyer wasn’t asked which hand works the clasp, for either would do. As the piece is now, it matters: ask before you string it.',
  'ready-several': ({ quantity }, f) =>
    `One lies finished, and the buyer ordered ${f.number(quantity)} of it as it lies.`,
  written: ({ text, mm }, f) =>
    `The buyer wrote “${text}”, but the order says ${both(mm, f)}. Ask which is meant.`,
  clock: () => 'The order is dated in the future: the buyer’s clock is wrong, or this one is.',
};

/** The reader's unit, and millimetres to work by. */
function both(mm: number, f: Format): string {
  return `${f.length(mm)} (${f.number(mm, 1)} mm)`;
}

const arrivalProblems: Sentences<ArrivalProblem> = {
  'no-order': () =>
    'There is no order in it. It begins with “claspwise4.” (older ones with “claspwise3.”, “claspwise2.” or “claspwise1.”) and ends with “.end”.',
  'empty-file': () =>
    'The file is empty. Save the e-mail once more, or open it, copy its text and paste it here.',
  'empty-form': () => 'There is nothing in it yet. Paste the e-mail or choose its file, then take it in.',
  plain: () => 'a plain e-mail without code. It can be looked over and entered by hand.',
  'not-utf8': () =>
    'Its letters are in another encoding than UTF-8, so a name could be lost. Save it as UTF-8 and take it in again.',
  'cut-off': () => 'The order is cut off before its “.end”. Copy the whole message.',
  'too-long': () => 'What stands between “claspwise4.” and “.end” is longer than any order.',
  'newer-version': ({ version }) =>
    `The order is written in version ${version}, newer than this bench. Bring the bench up to date, then take it in.`,
  'unknown-version': ({ version }) => `The order names a version “${version}” that there never was.`,
  damaged: () => 'Letters of the order were lost or changed on the way. Ask the buyer to send it again.',
  'not-an-order': () => 'It is whole, but it is no order.',
  'wrong-field': ({ field }) => `The order’s field “${field}” is missing or can’t be read.`,
  'file-too-large': ({ mostMb }) => `The file is larger than ${mostMb} MB.`,
  'too-many-mails': ({ most }) =>
    `There are more than ${most} messages in it. Take them in by smaller files.`,
};

const arrived: Sentences<Arrived> = {
  received: ({ number, source }) => `${number} from ${source}: taken in.`,
  same: ({ number, source }) => `${number} from ${source}: it was in the book already.`,
  'number-taken': ({ number, source }) =>
    `${number} from ${source}: not taken in. The book has another order with this number; compare the two and ask the buyer.`,
  refused: ({ source, why }, f) => `${source}: ${sentenceOf(arrivalProblems, why, f)}`,
};

export const bench = {
  title: 'Bench',
  skip: 'Skip to the content',
  nav: {
    label: 'Bench',
    /** What she does at the bench; each has a row of places of its own. */
    groups: {
      orders: 'Orders',
      making: 'Making',
      stock: 'Stock',
      design: 'Pieces',
      selling: 'Selling',
      safety: 'Safety',
    },
    places: {
      book: 'Order book',
      byHand: 'By hand',
      takeIn: 'Take in',
      buyers: 'Buyers',
      months: 'Months',
      week: 'Week',
      gather: 'To gather',
      steps: 'At the board',
      stock: 'What there is',
      count: 'Count sheet',
      stockIn: 'Bring in a table',
      shopping: 'Shopping list',
      pieces: 'All pieces',
      newPiece: 'New piece',
      trays: 'Trays',
      publish: 'Publish',
      rules: 'Shop and rules',
      guides: 'Guides',
      history: 'What was changed',
      keep: 'Safe-keeping',
      access: 'Who may come in',
      tablets: 'Tablets',
    },
    shop: 'To the shop',
  },
  leave: 'Leave',
  states: STATE,
  ways: WAY,
  both,
  difference: (one: Difference, f: Format): string => sentenceOf(differences, one, f),
  arrived: (one: Arrived, f: Format): string => sentenceOf(arrived, one, f),
  problem: (one: BenchProblem, f: Format): string => sentenceOf(problems, one, f),
  problemTitle: 'That didn’t work',
  back: 'Back to the order book',
  damagedTitle: 'This order is damaged',
  remains: 'What is left of it, as text',
  mend: 'Put it right, under “Safe-keeping”',

  book: {
    title: 'Order book',
    find: 'Find',
    findHint: 'Number, name, address, piece, words of a note',
    show: 'Show',
    all: 'All',
    open: 'To do',
    late: 'Late',
    apply: 'Look',
    none: 'No order matches.',
    empty: 'No orders yet. They come in through the shop; e-mailed ones under “Take in”.',
    count: (count: number): string => (count === 1 ? '1 order' : `${count} orders`),
    columns: {
      number: 'Number',
      piece: 'Piece',
      size: 'Size',
      buyer: 'Buyer',
      due: 'Due',
      received: 'Received',
      state: 'State',
    },
    differs: 'differs from what the buyer saw',
    late1: 'late',
    noDue: 'none',
    erased: 'erased',
    damaged: 'damaged',
    unreadable: 'These orders can’t be read any more, since their bytes were changed on the disk:',
    unreadableHint:
      'Take their e-mails in once more, if you have them, or restore a backup. And move to another disk: one that changes bytes goes on doing so.',
    earlier: 'Earlier',
    later: 'Later',
    turnedAway: (when: string): string =>
      `Since ${when} the desk could not take an order in. It is not lost: it waits with its buyer, who was told so, and is sent again. What stands in the way:`,
    clockBack:
      'This machine’s clock stands before the last entry in the book. Set it right, or new entries will be dated wrong.',
  },

  order: {
    title: (number: string): string => `Order ${number}`,
    received: (when: string, way: OrderWay): string => `Received ${when}, ${WAY[way]}.`,
    placed: (when: string): string => `Placed ${when} by the buyer’s clock.`,
    same: 'Checked: all figures are those that the buyer saw.',
    differs: 'This differs from what the buyer saw',
    damaged:
      'Something in this order was changed on the disk: it is not, byte for byte, what came in. Hold it against the buyer’s e-mail before you string it. Taken in once more, that e-mail makes it whole again.',
    ready: (file: string): string =>
      `It goes as it lies finished: nothing is strung. Once you have agreed it, the desk gives it to nobody else, and the next build of the shop shows the piece as made to order. Write “status: to-order” or “past” in ${file} when you get to it.`,
    differsHint: 'Nothing has been decided for you. Write to the buyer before you string it.',
    asked: 'What was asked for',
    pick: 'Where none fits exactly',
    picks: { best: 'the nearest', below: 'the smaller one', above: 'the larger one' },
    noThen: 'The piece was changed before the order came in, so how it stood then is not in the book.',
    figures: 'Figures',
    columns: { what: '', shown: 'Buyer saw', then: 'As it stood then', now: 'As it stands now' },
    figureRows: {
      price: 'Price',
      counts: 'Counts by section',
      error: 'Off the wanted size by',
    },
    card: 'Bench card',
    packing: 'Packing slip',
    label: 'Address label',
    care: 'Care card',
    gather: 'What to gather',
    document: 'Order as JSON',
    state: 'State',
    plan: 'Day and notes',
    due: 'Due',
    setDue: 'Set the day',
    addNote: 'Add the note',
    noteLabel: 'Note to yourself',
    history: 'History',
    events: {
      received: (way: OrderWay): string => `Received ${WAY[way]}`,
      state: (state: OrderState): string => `Set to ${STATE[state].toLowerCase()}`,
      due: (text: string): string => (text === '' ? 'Due day taken away' : `Due ${text}`),
      note: (text: string): string => (text === '' ? 'Note, erased' : `Note: ${text}`),
      message: (text: string): string => `Wrote to the buyer: ${text}`,
      erased: (): string => 'The buyer’s data was erased',
      lookedOver: 'You went through it all and found it right',
    },
    letters: 'Write to the buyer',
    letterNames: {
      question: 'A question',
      address: 'Where shall it go?',
      agreed: 'Agreed',
      ready: 'Ready',
      sent: 'On its way',
    },
    subject: 'Subject',
    text: 'Text',
    openMail: 'Open as an e-mail',
    iSent: 'I have sent it',
    payment: 'Payment link',
    erase: 'Erase the buyer’s data',
    eraseHint:
      'Name, address, note and your own notes on this order go for good. Piece, size, figures and dates stay.',
    reallyErase: 'Yes, erase it for good',
    erasedOn: (when: string): string => `The buyer’s data was erased ${when}.`,
  },

  gather,

  pieces: {
    title: 'Pieces, past ones too',
    findHint: 'Name, year, bead, words of its line',
    count: (count: number): string => (count === 1 ? '1 piece' : `${count} pieces`),
    columns: { piece: 'Piece', kind: 'Kind', length: 'As listed', made: 'Made', status: 'Now' },
    listed: 'as listed',
    size: 'Size',
    show: 'Make the card',
    inShop: 'Its page in the shop',
    /** States of the piece that somebody ordered and that it isn't in any more. */
    versions: {
      shown: (day: string): string =>
        `The piece as it was when it was last ordered like this, on ${day}. It is sized by your rules of today.`,
      now: 'As it is now',
      lay: 'Lay it on the board',
      others: (count: number): string =>
        count === 1 ? 'It was ordered when it was another' : `It was ordered in ${count} earlier states`,
      one: (day: string, orders: number): string =>
        `as of ${day}, ${orders === 1 ? 'one order' : `${orders} orders`}`,
    },
  },

  takeIn: {
    title: 'Take orders in',
    hint: 'Paste the whole e-mail, the link to a slip, or the lines that begin with “claspwise”. Quote marks and broken lines do no harm.',
    text: 'E-mail, link or order',
    files: 'Or files: an e-mail (.eml), a mailbox (.mbox), a downloaded order (.json)',
    drop: 'Files can be dropped anywhere on this page.',
    button: 'Take in',
    result: 'What came of it',
    pasted: 'the pasted text',
  },

  keep,

  access: {
    title: 'Who may come in',
    here: 'At this machine the bench opens by itself.',
    without: 'From elsewhere nobody can open it, since no passphrase is set.',
    with: 'From elsewhere it opens over https with the passphrase.',
    passphrase: 'Passphrase',
    set: 'Set the passphrase',
    change: 'Set another passphrase',
    remove: 'Take the passphrase away',
    hint: '12 to 200 characters. It is kept only as a hash; if you forget it, set another one here. Setting it ends every visit from elsewhere.',
    onlyHere: 'The passphrase is set at the machine itself.',
    enter: 'Come in',
    enterTitle: 'Bench',
    saved: 'Saved.',
  },
};
