/** The headings of the bench card and of the sheets that go with a piece. Steps and checks are in `stringing.ts`. */
import type { HandAdvice } from '#core/sizing/hand/hand.ts';
import type { BoardMark } from '#core/instructions/board.ts';
import type { Format } from '../format.ts';

const END: Readonly<Record<BoardMark['ends'], string>> = {
  section: 'section',
  crimp: 'crimp',
  loop: 'loop',
  clasp: 'clasp',
  ring: 'ring',
};

export const benchCard = {
  title: (number: string): string => `Bench card ${number}`,
  print: 'Print',
  by: {
    now: 'By the piece as it stands now.',
    then: 'By the piece as it stood when the order came in.',
    shown: 'With the counts that the buyer saw.',
  },
  show: {
    now: 'Show it by the piece as it stands now',
    then: 'Show it by the piece as it stood then',
    shown: 'Show it with the counts that the buyer saw',
  },
  cannot: 'Nothing can be strung from this order as it is. Its page says why.',
  check: 'Not as the buyer saw it: settle it with her before you cut the wire.',
  for: (name: string): string => `for ${name}`,
  quantity: (count: number): string => `Make ${count} of these.`,
  facts: { size: 'Size', finished: 'Finished length', girth: 'Inside girth', due: 'Due' },
  picture: 'The piece laid on the bead board',
  pictureText: (side: 'left' | 'right' | null): string =>
    side === null
      ? 'Seen as on another person, zero in the middle; the clasp may lie on either side, drawn left.'
      : `Seen as on another person, zero in the middle; the clasp lies on the ${side}.`,
  pictureRows: 'The piece in stringing order',
  pictureRowsText: 'From the clasp on; the numbers count the components.',
  ends: 'The clasp’s end',
  endsText: 'Wire loop, crimp, cover and the tail run back through the end beads.',
  endLabels: { clasp: 'clasp', loop: 'loop', crimp: 'crimp', cover: 'cover', tail: 'doubled wire' },
  sequence: 'Stringing order, clasp to ring',
  sequenceColumns: { what: 'What', count: 'Strung', running: 'Runs to' },
  strand: (at: number): string => `Strand ${at}`,
  repeat: (times: number): string => `${times} ×`,
  kinds: {
    clasp: 'clasp',
    ring: 'ring',
    loop: 'wire loop',
    end: 'end',
    strung: '',
    pendant: '',
    'other-half': 'other half',
  },
  /** Within a step, where there is but one of each. */
  plain: { clasp: 'clasp', ring: 'ring', crimp: 'crimp', pendant: 'pendant' },
  wire: 'Wire',
  wireText: (name: string, strands: number, diameter: string, how: string): string =>
    `${name}: ${strands} wires, ${diameter}, ${how}`,
  cut: 'Cut',
  cutParts: (f: Format, beads: number, slack: number, loops: number, tails: number, grips: number): string =>
    `beads ${f.number(beads, 1)} + slack ${f.number(slack, 1)} + loops ${f.number(loops, 1)} + tails ${f.number(tails, 1)} + to hold by ${f.number(grips, 1)}`,
  slack: 'Leave free',
  crimp: 'Crimp',
  cover: 'Cover',
  bare: 'none, the crimp stays bare',
  guard: 'Guard',
  doubledEnds: { clasp: 'Clasp end', ring: 'Ring end' },
  chain: 'Chain',
  chainText: (of: string, used: string): string => `${of}, let out ${used} for this size`,
  pendant: 'Pendant',
  pendantRings: (rings: readonly string[]): string =>
    rings.length === 0 ? 'straight on the wire' : `on ${rings.join(', ')}`,
  between: (left: string, right: string): string => `between ${left} and ${right}`,
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
  board: 'Board marks from zero',
  boardSides: { left: 'Left', right: 'Right' },
  boardClasp: 'clasp’s side',
  mark: (mark: BoardMark, section: string | null): string => section ?? END[mark.ends],
  hand: {
    'has-front-and-side': (side: HandAdvice['boardSide']): string => `Clasp on the board’s ${side ?? 'left'}`,
    'no-front': (): string => 'Clasp on either side: the piece has no front',
    'clasp-has-no-side': (): string => 'Clasp on either side: it is worked by either hand',
  },
  handLabel: 'Hand',
  steps: 'Steps',
  packing: {
    title: (number: string): string => `Packing slip ${number}`,
    to: 'For',
    what: 'What is in the parcel',
    thanks: 'Thank you. If anything isn’t as it should be, write to me and I will put it right.',
    columns: { piece: 'Piece', size: 'Size', quantity: 'How many', price: 'Price' },
    total: 'Together',
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
