/** The maker's week: what is due, what it takes, what came in and what it earned. */
import { formatDate, type Format } from '../format.ts';

const orders = (count: number): string => (count === 1 ? '1 order' : `${count} orders`);

export const week = {
  title: 'The week',
  /** Minutes as hours and minutes, to the next five. */
  time: (minutes: number, f: Format): string => {
    const rounded = minutes < 5 ? Math.ceil(minutes) : Math.round(minutes / 5) * 5;
    const [hours, rest] = [Math.floor(rounded / 60), rounded % 60];
    if (hours === 0) return `${f.number(rest)} min`;
    return rest === 0 ? `${f.number(hours)} h` : `${f.number(hours)} h ${f.number(rest)} min`;
  },
  nothing: 'Nothing waits to be strung.',
  lead: (count: number, time: string): string =>
    `${orders(count)} still to be strung, about ${time} by your own rule.`,
  hours: (hours: number, f: Format): string =>
    `You give the board ${f.number(hours, 1)} hours a week (under Shop and rules). Work is laid out by due day, the soonest first; of this week only the days that are left count.`,
  noHours:
    'How many hours a week you string isn’t said, so there are no weeks and no proposals. Write it under Shop and rules, Orders: 12 hours a week.',
  pickList: 'Pick list',
  months: 'What it earned, month by month',
  short: 'Can’t be begun for want of beads',
  shortHint:
    'Beads that you count go to the order that is due first. What an order lacks when its turn comes stands here.',
  shortOf: (missing: number, name: string, need: number, f: Format): string =>
    `${f.number(missing)} × ${name} missing of ${f.number(need)}`,
  weekOf: (monday: string, f: Format): string => `Week of ${formatDate(monday, f.lang)}`,
  taken: (takes: string, has: string): string => `${takes} of ${has}`,
  columns: { due: 'Due', order: 'Order', piece: 'Piece', buyer: 'Buyer', time: 'Takes', state: 'State' },
  part: (part: string, whole: string): string => `${part} of its ${whole}`,
  late: 'too late',
  wants: 'wants beads',
  proposed: (day: string): string => `${day}, proposed`,
  take: 'Take it over',
  takeFor: (number: string, day: string): string => `Take it over: ${day} for order ${number}`,
  takeAll: (count: number): string => `Take over all ${count} proposals`,
  proposalHint:
    'A proposal is the first week with room, and no sooner than you tell buyers. Once taken over, it stands in the message that agrees the order, as your own estimate.',
  later: (count: number): string =>
    `Further on: ${count === 1 ? '1 more week' : `${count} more weeks`} of work.`,
  toSend: 'Strung, to be sent',
  leftOut: 'Not in the plan, since nothing can be strung from them as they are:',
  byDue: 'By due day',

  earned: {
    title: (year: string): string => `Month by month, ${year}`,
    lead: 'What came in, what was sent, and what an hour at the board earned.',
    none: (year: string): string => `Nothing in the book for ${year}.`,
    columns: {
      month: 'Month',
      received: 'Came in',
      receivedFor: 'Worth',
      sent: 'Sent',
      sentFor: 'For',
      left: 'Left of it',
      time: 'Took',
      perHour: 'An hour',
    },
    wholeYear: 'The year',
    count: (many: number, pieces: number, f: Format): string =>
      pieces === many ? f.number(many) : `${f.number(many)} (${f.number(pieces)} pieces)`,
    cancelled: (many: number): string => `${many} cancelled`,
    /** Beside the rule's minutes, where her clock ran at the board. */
    timed: (clock: string, many: number, rule: string): string =>
      `by your clock ${clock} for ${orders(many)}, ${rule} by the rule`,
    estimate:
      'An estimate, and no bookkeeping. Prices are those of each piece as it stood when the order came in, without postage. “Left of it” is the price less beads, findings, wire and packing as you pay for them, and the fees of your rule. Hours are your own rule’s minutes; where you let the clock run at the board, what it said stands beside them. Tools, heating, tax and the hours of writing to buyers are not in it.',
    unknown: (many: number): string =>
      `${orders(many)} can’t be reckoned: the piece isn’t as it was, or is gone. They are in no sum here.`,
    otherYears: 'Other years',
  },
};
