/** What the maker reads while she strings with a tablet beside the board. */
import type { Stage } from '#core/instructions/batch.ts';
import type { Format } from '../format.ts';

const orders = (count: number): string => (count === 1 ? '1 order' : `${count} orders`);

export const atBoard = {
  title: 'At the board',
  lead: 'What waits to be strung, the soonest due first. Take up one, or tick several of one piece to string them side by side.',
  nothing: 'Nothing waits to be strung.',
  letTabletIn: 'Let a tablet in, over your network at home',
  string: 'String it',
  goOn: 'Go on stringing',
  card: 'Bench card',
  order: 'The order',
  together: 'String those ticked side by side',
  choose: (number: string): string => `Take ${number} along`,
  begun: (when: string, who: string): string => `begun, last ${when}${who === '' ? '' : ` on ${who}`}`,
  batches: 'Batches begun',
  batch: (count: number): string => `${orders(count)} side by side`,
  due: (day: string): string => `due ${day}`,
  differs: (number: string): string =>
    `${number} is not as the buyer saw it: settle it with her before you cut the wire.`,
  tooMany: (most: number): string =>
    `The order is for more than ${most}. String them one after the other by these steps.`,
  clockBack:
    'This machine’s clock stands before the time of your last step here. Nothing is lost by it; set it right all the same.',

  /** Where she is. */
  where: (at: number, of: number): string => `Step ${at} of ${of}`,
  strand: (at: number, of: number): string => `strand ${at} of ${of}`,
  nth: (at: number, of: number): string => `${at} of ${of}`,
  stages: {
    ready: 'Make ready',
    cut: 'Cut the wires',
    first: 'The clasp’s end',
    beads: 'The beads',
    second: 'The other end',
    done: 'To finish',
  } satisfies Record<Stage, string>,
  cutAll: 'Cut all the wires, and lay each with its piece.',
  clip: 'Clip the free end before you lay it aside, so that nothing runs off.',
  beads: (first: number, last: number): string =>
    first === last ? `bead ${first}` : `beads ${first} to ${last}`,
  repeat: (nth: number, of: number): string => `${nth} of ${of} times`,
  count: (done: string, of: string): string => `${done} of ${of}`,
  next: 'Next',
  back: 'Back',
  all: 'All the steps',
  hint: 'Next by key (Page Down, space, right arrow), foot pedal or tap; back by Page Up or left arrow.',
  done: 'All done',
  doneText:
    'The last step is ticked. Look the piece over once more, then set it to strung on its order’s page.',
  donePiece: 'The last step is ticked.',
  again: 'Begin from the first step',
  picture: (strand: string): string =>
    `The strand, with what is at hand lit${strand === '' ? '' : `: ${strand}`}`,
  pictureText: 'From the clasp on, numbered as in the list.',

  /** The book and the device. */
  saved: 'Kept in the order book.',
  saving: 'Keeping it …',
  lost: 'The bench can’t be reached. Go on: this device keeps your place and hands it in as soon as the bench answers.',
  refused:
    'The bench doesn’t take your place any more. Go on by what stands here, and look at the order’s page when you can.',
  elsewhere: (step: number, of: number, when: string, who: string): string =>
    `In another window or on another device (${who === '' ? 'at the bench' : who}, ${when}) somebody has gone on: step ${step} of ${of}. Nothing was overwritten.`,
  elsewhereDone: (when: string, who: string): string =>
    `In another window or on another device (${who === '' ? 'at the bench' : who}, ${when}) this was strung to its end. Nothing was overwritten.`,
  takeTheirs: 'Go on from there',
  keepMine: 'Stay where I am',
  leftOff: (when: string, who: string): string =>
    `You left off here ${when}${who === '' ? '' : ` on ${who}`}.`,
  changed:
    'The steps are others than when you left off: the order or its piece was changed since. Begin again from the first step, and hold what is strung against it.',
  changedNow:
    'The order or its piece was changed while you strung. Load the page anew to see its steps as they are now.',
  loadAnew: 'Load anew',
  noScript: 'Without JavaScript each step is a page of its own; your place is kept all the same.',

  /** The screen and the clock. */
  awake: 'The screen stays on.',
  notAwake: 'This browser can’t keep the screen on. Set the device so that it doesn’t switch off by itself.',
  start: 'Start the clock',
  pause: 'Pause the clock',
  clock: 'Your clock',
  clockHint: 'Only if you want to know: the minutes are kept with the order, beside your rule’s estimate.',
  minutes: (minutes: string): string => `${minutes} min`,
  /** In an order's history, and on the page of months. */
  timeOn: (day: string, minutes: number, f: Format): string =>
    `${day}: ${f.number(minutes)} ${minutes === 1 ? 'minute' : 'minutes'} at the board by your clock`,

  problems: {
    'no-such-order': 'There is no order with this number in the book.',
    'no-such-piece': 'There is no such piece in the catalogue.',
    'nothing-to-string': 'Nothing can be strung from this as it is. The order’s page says why.',
    'other-piece': 'These orders are of different pieces. A batch is of one piece: its steps are alike.',
    'strung-already': 'One of these orders is strung already, or cancelled. Choose anew.',
    'too-many-pieces': 'That is more than can lie side by side. Choose fewer.',
    'no-batch': 'Nothing is chosen. Tick two orders of one piece or more.',
  },
  title404: 'That can’t be strung so',
};
