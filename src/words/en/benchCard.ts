/** The headings of the bench card and of the sheets that go with a piece. Steps and checks are in `stringing.ts`. */
import type { Hand } from '#core/design/choice.ts';
import type { HandAdvice } from '#core/sizing/hand/hand.ts';
import type { BoardMark } from '#core/instructions/board.ts';
import type { Format } from '../format.ts';
import { ordinal } from '../englishOrdinal.ts';

const END: Readonly<Record<BoardMark['ends'], string>> = {
  section: 'section',
  crimp: 'crimp',
  loop: 'loop',
  clasp: 'clasp',
  ring: 'ring',
};

const HAND: Readonly<Record<Hand, string>> = { left: 'The left hand', right: 'The right hand' };

export const benchCard = {
  title: (number: string): string => `Bench card ${number}`,
  print: 'Print',
  by: {
    agreed: 'By the piece as you agreed on it.',
    now: 'By the piece as it stands now.',
    then: 'By the piece as it stood when the order came in.',
    shown: 'With the counts that the buyer saw.',
  },
  show: {
    agreed: 'Show it by the piece as you agreed on it',
    now: 'Show it by the piece as it stands now',
    then: 'Show it by the piece as it stood then',
    shown: 'Show it with the counts that the buyer saw',
  },
  agreedNote:
    'You have changed the piece since you agreed to this order. Card and steps go by the piece as you agreed on it, and so does what it takes out of the trays.',
  cannot: 'Nothing can be strung from this order as it is. Its page says why.',
  check: 'Not as the buyer saw it: settle it with her before you cut the wire.',
  for: (name: string): string => `for ${name}`,
  quantity: (count: number): string => `Make ${count} of these.`,
  facts: { size: 'Size', hand: 'Hand', due: 'Due' },
  instead: { clasp: 'Clasp instead', pendant: 'Pendant instead' },
  notes: { buyer: 'From the buyer:', maker: 'Your note:' },
  picture: 'The piece laid on the bead board',
  pictureText: (side: 'left' | 'right' | null): string =>
    side === null
      ? 'Seen as on another person, zero in the middle; the clasp may lie on either side, drawn left.'
      : `Seen as on another person, zero in the middle; the clasp lies on the ${side}.`,
  pictureRows: 'The piece in stringing order',
  pictureRowsText: 'From the clasp on, numbered as in the list.',
  ends: 'The clasp’s end',
  endsText: 'Wire loop, crimp, cover and the tail run back through the end beads.',
  endLabels: { clasp: 'clasp', loop: 'loop', crimp: 'crimp', cover: 'cover', tail: 'doubled wire' },
  sequence: 'Stringing order, clasp first',
  listColumns: { number: 'Bead', what: 'What', runsTo: 'Reaches' },
  strandOf: (at: number, of: number): string => `Strand ${at} of ${of}`,
  repeat: (times: number): string => `${times} ×`,
  loop: 'wire loop',
  halves: {
    first: (clasp: string): string => `One half of the ${clasp}`,
    other: (clasp: string): string => `The other half of the ${clasp}`,
  },
  hangs: (pendant: string, rings: readonly string[]): string =>
    rings.length === 0 ? `${pendant}, by its own loop` : `${pendant} on ${rings.join(', ')}`,
  /** Within a step, where there is but one of each. */
  plain: { clasp: 'clasp', ring: 'ring', crimp: 'crimp', cover: 'cover', pendant: 'pendant' },
  wire: 'Wire',
  wireText: (name: string, strands: number, diameter: string, how: string): string =>
    `${name}: ${strands} wires, ${diameter}, ${how}`,
  cut: 'Cut',
  cutParts: (f: Format, beads: number, slack: number, loops: number, tails: number, grips: number): string =>
    `beads ${f.number(beads, 1)} + slack ${f.number(slack, 1)} + loops ${f.number(loops, 1)} + tails ${f.number(tails, 1)} + to hold by ${f.number(grips, 1)}`,
  slack: 'Slack',
  crimp: 'Crimp',
  cover: 'Cover',
  bare: 'none, the crimp stays bare',
  guard: 'Guard',
  doubledEnds: { clasp: 'Clasp end', ring: 'Ring end' },
  chain: 'Chain',
  chainText: (of: string, used: string): string => `${of}, let out ${used} for this size`,
  /** `link`: the one that this size closes in, 0 for none. */
  chainLinks: (f: Format, links: number, of: string, link: number, used: string): string =>
    link === 0
      ? `${f.number(links)} links, ${of}; this size closes before it`
      : `${f.number(links)} links, ${of}; this size closes in the ${ordinal(link)}, ${used} down it`,
  pendant: 'Pendant',
  balance: 'Balance',
  strength: 'Strength',
  strengthText: (
    f: Format,
    breakN: number,
    basis: 'rated' | 'estimated',
    factor: number,
    wanted: number,
  ): string =>
    `${basis === 'rated' ? 'rated' : 'about'} ${f.number(breakN)} N, ${f.number(factor, 1)} times pull and snag; your rule asks for ${f.number(wanted, 1)}`,
  weak: 'Too weak by your own rule.',
  board: 'Marks on the board',
  boardText: 'Zero in the middle; each figure is the whole length between its two marks, as the board reads.',
  boardSides: { both: 'Both sides', left: 'Left', right: 'Right' },
  mark: (mark: BoardMark, section: string | null): string => section ?? END[mark.ends],
  hand: {
    'has-front-and-side': (hand: Hand, side: HandAdvice['boardSide']): string =>
      `${HAND[hand]} works the clasp: it lies on the board’s ${side ?? 'left'}`,
    'turns-about': (hand: Hand): string =>
      `${HAND[hand]} works the clasp; turned end for end it still shows its face, so it may lie on either side`,
    'no-front': (hand: Hand): string =>
      `${HAND[hand]} works the clasp; with no front it may lie on either side`,
    'clasp-has-no-side': (): string => 'Either hand works the clasp: it may lie on either side',
  },
  exact: 'The exact figures',
  phases: {
    ready: 'Make ready',
    first: 'The clasp’s end',
    beads: 'The beads',
    second: 'The other end',
    done: 'To finish',
  },
  packing: {
    title: (number: string): string => `Packing slip ${number}`,
    to: 'For',
    what: 'What is in the parcel',
    thanks: 'Thank you. If anything isn’t as it should be, write to me and I will put it right.',
    columns: { piece: 'Piece', size: 'Size', quantity: 'How many', price: 'Price' },
    total: 'Together',
    postage: 'Postage',
    free: 'free',
    collected: 'To be collected',
  },
  label: {
    title: (number: string): string => `Address label ${number}`,
    from: 'Sender:',
    hint: 'Printed at the top left of the sheet, 99 by 68 mm: on a sheet of labels, or on plain paper to cut out.',
    collected: 'This order will be collected, so there is nothing to address.',
    missing: 'There is no address for this order yet. Its page has a message ready that asks for it.',
  },
  care: {
    title: (piece: string): string => `Care of ${piece}`,
    how: 'Keeping it',
    safety: 'Please mind',
    rules: 'Rules on what children may wear differ by country; where in doubt, ask your own authority.',
    restring: (shop: string, number: string): string =>
      `${shop} strings it anew, also to another size. Its number is ${number}.`,
  },
};
