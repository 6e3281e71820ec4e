/** Orders entered by hand, plain e-mails read for them, and buyers. */
import type { HandWay } from '../benchCodes.ts';
import type { Format } from '../format.ts';
import type { HandProblem } from '../handProblem.ts';
import type { PlainRemark } from '../plainRemark.ts';
import { sentenceOf, type Sentences } from '../sentence.ts';
import { order } from './order.ts';
import { sized } from './sized.ts';

const problems: Sentences<HandProblem> = {
  'piece-missing': () => 'Choose the piece.',
  size: ({ problem }, f) => sentenceOf(sized.unread, problem, f),
  'cannot-be-made': () => 'It can’t be made in that size; what is possible stands below.',
  'measure-of-kind': ({ kind }) =>
    `${{ necklace: 'A necklace', bracelet: 'A bracelet', anklet: 'An anklet', collar: 'A collar' }[kind]} isn’t sized by that. Choose another measure, or “as usual for the piece”.`,
  'not-ready': () => 'None of it lies finished, by the piece’s file (status). Choose “to her measure”.',
  'one-ready': () => 'One of it lies finished. Order that one alone, or have them made to measure.',
  'closed-already': () =>
    'The one that lies finished is closed already. Choose “as listed”, or “to her measure”.',
  'part-not-offered': () => 'This piece’s file doesn’t offer that (instead). Choose another, or “as listed”.',
  buyer: ({ problem }, f) => sentenceOf(order.formProblems, problem, f),
  'no-way-back': () => 'Write an e-mail address or a telephone number, so that you can answer.',
  'way-missing': () => 'Say how the order came to you.',
  'line-missing': () => 'Write street and number, or what stands for them.',
  'town-missing': () => 'Write the town.',
  'country-missing': () => 'Choose the country.',
  'not-taken': () => 'This is too long, or holds characters that can’t be kept. Shorten it or write it anew.',
};

const remarks: Sentences<PlainRemark> = {
  empty: () => 'Anything at all: nothing was pasted. Go back and paste the whole e-mail, or fill in the form',
  piece: () => 'Which piece is meant',
  size: () => 'The size',
  'two-sizes': ({ first, second }) => `Which size is meant: “${first}” or “${second}”`,
  hand: () => 'Which hand works the clasp',
  name: () => 'The name',
  email: () => 'The e-mail address',
  revision: () =>
    'The piece has been changed since the e-mail was prepared: the price in it may be an old one',
  address: () => 'The address, as far as its parts could be told apart',
  quantity: () => 'How many: one, since nothing is said',
  sit: () => 'The sit: easy, as in the shop’s table of sizes',
};

export const hand = {
  title: 'An order by hand',
  lead: 'From a fair, the telephone or an e-mail without code: sized by the same rules as in the shop, and kept like any other.',
  piece: 'Piece',
  choosePiece: 'Choose…',
  made: 'In the shop',
  past: 'Not made any more',
  how: 'How it is had',
  mades: { 'to-measure': 'To her measure', ready: 'As it lies there, finished' },
  parts: { clasp: 'Clasp', pendant: 'Pendant' },
  asListed: (name: string): string => `As listed: ${name}`,
  liesThere: 'As it lies there: no size is needed.',
  thePiece: 'The piece and its size',
  of: 'What the size is of',
  usualOf: 'As usual for the piece',
  size: 'Size, as it was said',
  pick: 'Where none fits exactly',
  quantity: 'How many',
  sizeIt: 'Size it',
  sizeAgain: 'Size it again',
  shown: 'What it comes to',
  changes: 'Changed from the piece as listed',
  price: 'Price of one',
  together: 'Together',
  postage: 'Postage within that',
  theBuyer: 'Who it is for',
  name: 'Name',
  email: 'E-mail address',
  phone: 'Telephone, if there is no e-mail',
  phoneLine: (phone: string): string => `Telephone: ${phone}`,
  note: 'Note',
  lang: 'Language to write to her in',
  way: 'How it came',
  chooseWay: 'Choose…',
  ways: { fair: 'At a fair', telephone: 'By telephone', mail: 'By a plain e-mail' } satisfies Record<
    HandWay,
    string
  >,
  delivery: 'How it reaches her',
  deliveries: { unsaid: 'Not said yet', collection: 'She collects it', post: 'By post' },
  later: {
    missing: 'There is no address yet. A message that asks for it lies ready below.',
    summary: 'Write down where it goes',
    post: 'It goes there',
    collect: 'It is collected',
  },
  address: 'Address, if it is posted',
  to: 'Name on the parcel, if another',
  line1: 'Street and number',
  line2: 'Second line, if there is one',
  town: 'Town',
  region: 'County or state',
  postcode: 'Postcode',
  country: 'Country',
  chooseCountry: 'Choose…',
  enter: 'Put it into the book',
  problem: (one: HandProblem, f: Format): string => sentenceOf(problems, one, f),
  wrong: 'Not entered yet. Please look at:',
  look: 'Look at what it comes to, then put it into the book.',
  lookAgain: 'It comes to something else than was shown before. Look again, then put it into the book.',
  taken: (number: string): string =>
    `Order ${number} is in the book already, with other words. If this is a further order, put it into the book once more: it has its own number now.`,

  restring: 'Restring',
  restringing: (number: string): string => `Restringing the piece of order ${number}`,
  restringTakes: (wire: string, parts: string): string =>
    `Beads, clasp and ring are used again. New: ${wire} of wire, ${parts}. Count the beads when the piece comes in; what is worn or broken is not reckoned here.`,
  restringPrice:
    'The price is your rule’s for new wire, crimps and their covers, packing and the minutes of a new piece: an estimate to agree.',
  restringNote: (number: string): string =>
    `To restring: the piece of order ${number}. Beads are used again.`,
  again: 'Make it again',

  fromMail: 'From an e-mail',
  fromMailHint:
    'Paste an e-mail without code. What can be read in it goes into the form, for you to look over.',
  mailText: 'The e-mail’s text',
  readMail: 'Read it into the form',
  mailBeside: 'The e-mail it was read from',
  readHint:
    'Read from the e-mail that stands here too, as far as it goes. Nothing is entered before you have looked.',
  unread: 'Couldn’t be read, or was taken for granted:',
  remark: (one: PlainRemark, f: Format): string => sentenceOf(remarks, one, f),
  toForm: 'Look it over in the form',

  buyers: {
    title: 'Buyers',
    find: 'Find',
    findHint: 'Name or e-mail address',
    apply: 'Look',
    none: 'No buyer matches.',
    empty: 'No buyers yet.',
    count: (count: number): string => (count === 1 ? '1 buyer' : `${count} buyers`),
    more: (count: number): string => `And ${count} more: look for a name.`,
    columns: { name: 'Name', email: 'E-mail', orders: 'Orders', last: 'Last order' },
    noEmail: 'no address',
    orders: 'What she ordered',
    orderColumns: {
      number: 'Number',
      piece: 'Piece',
      size: 'Size',
      hand: 'Hand',
      received: 'Received',
      state: 'State',
      do: 'Once more',
    },
    sizes: 'Her sizes',
    sizesHint: 'As she gave them, the newest of each first.',
    hand: 'The hand that works the clasp',
    hands: { left: 'left', right: 'right' },
    when: (size: string, day: string): string => `${size}, ${day}`,
    againFor: (number: string): string => `Make it again: the piece of order ${number}`,
    restringFor: (number: string): string => `Restring: the piece of order ${number}`,
    names: 'Also as',
    erase: 'Erase all of it',
    eraseHint: (count: number): string =>
      `Name, address, notes and sizes’ owner go for good, in ${count === 1 ? 'her order' : `all ${count} orders`}. Pieces, figures and dates stay.`,
    reallyErase: 'Yes, erase all of it for good',
    erased: (count: number): string =>
      `Erased: nothing in ${count === 1 ? '1 order' : `${count} orders`} says whose it was.`,
    page: 'The buyer, and what she ordered before',
    write: 'Write an e-mail',
  },
};
