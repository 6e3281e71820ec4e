/** What the desk answers where it takes no order: read by a buyer, or by whoever joins a form to it. */
import type { DeskProblem } from '../deskProblem.ts';
import { sentenceOf, type Sentences } from '../sentence.ts';

const KEPT = 'Your order is kept on your device; it is not with the maker yet.';

const sentences: Sentences<DeskProblem, []> = {
  'origin-not-allowed': () => 'Orders are not taken from that website.',
  'method-not-allowed': () => 'An order is sent by POST.',
  'content-type': () => 'An order is sent as application/json.',
  'too-large': ({ mostBytes }) => `An order takes at most ${mostBytes} bytes.`,
  'not-utf8': () =>
    'What came holds letters in another encoding than UTF-8, so a name could be lost. Send it again as UTF-8.',
  'not-json': () => 'What came is not JSON.',
  'not-an-order': () => 'What came is not an order.',
  'newer-version': ({ version }) =>
    `The order is written in version ${version}, which is newer than this desk.`,
  'unknown-version': ({ version }) =>
    `The order says that its version is “${version}”, which there never was.`,
  'wrong-field': ({ field }) => `The order’s field “${field}” is missing or can’t be read.`,
  robot: () =>
    'A field that people don’t see was filled in, as robots do. If you are a person, please send the order by e-mail.',
  'number-taken': ({ number }) =>
    `Another order has the number ${number} already. Please order again, so that yours gets a new one.`,
  'ready-gone': () =>
    'The one that lay finished has been promised to somebody in the meantime. The maker can make one like it: order it in your size.',
  'too-many': ({ seconds }) => `Many orders came from your network. Please try again in ${seconds} seconds.`,
  'book-locked': () => `The order book is in use. ${KEPT} It can be sent again in a moment.`,
  'book-full': () => `The shop’s disk is full. ${KEPT} Please send it by e-mail, or try again later.`,
  'book-closed': () =>
    `The order book can’t be opened. ${KEPT} Please send it by e-mail, or try again later.`,
};

export const desk = {
  title: 'The order was not taken',
  sentence: (problem: DeskProblem): string => sentenceOf(sentences, problem),
};
