/** The shopping list. */
import type { Format } from '../format.ts';
import type { SoldUnit } from '../stockCodes.ts';

const units: Readonly<Record<SoldUnit, readonly [string, string]>> = {
  piece: ['piece', 'pieces'],
  strand: ['strand', 'strands'],
  pack: ['pack', 'packs'],
  bag: ['bag', 'bags'],
  spool: ['spool', 'spools'],
  m: ['metre', 'metres'],
};

export const shopping = {
  title: 'Shopping list',
  lead: (percent: number): string =>
    `What orders take and what runs low, less what there is${percent === 0 ? '' : `, and ${percent} % more for what breaks`}. Rounded up to what is sold.`,
  of: 'For',
  ofs: { open: 'all orders still to be strung', agreed: 'agreed orders alone' },
  marks: 'Also what would fall below its mark',
  make: 'I want to make besides',
  piece: 'Piece',
  noPiece: 'nothing more',
  size: 'In size',
  sizeHint: 'as listed, or 6 1/2',
  many: 'How many',
  look: 'Work it out',
  print: 'Print',
  makeProblems: {
    'no-piece': 'There is no such piece in the shop.',
    size: 'That is no size. Write 6 1/2 in or 16.5 cm.',
    many: 'Write how many: a whole number up to 999.',
    'cannot-be-made': 'It can’t be made in that size.',
  },
  nothing: 'Nothing is to be bought: there is enough of all that is counted.',
  noSupplier: 'Wherever you find it',
  columns: {
    what: 'What',
    number: 'Number',
    need: 'Needed',
    have: 'There',
    buy: 'To buy',
    price: 'Price',
    sum: 'Together',
    came: 'Came',
  },
  unit: (count: number, unit: SoldUnit, f: Format): string =>
    `${f.number(count)} ${units[unit][count === 1 ? 0 : 1]}`,
  holds: (holds: string, estimated: boolean): string => (estimated ? `about ${holds}` : holds),
  andMark: (keep: string): string => `and ${keep} to keep`,
  sum: 'All of it',
  total: 'All suppliers together',
  received: 'All of this came',
  receivedHint:
    'When it comes, press the button under it. If something else came, correct the figures first; leave empty what didn’t come.',
  came: (name: string, unit: string): string => `Came of ${name}, ${unit}`,
  done: 'It is entered as received.',
  uncounted: 'Needed, and not counted',
  uncountedLead: 'Look yourself whether there is enough, or count it.',
  leftOut: 'Left out, since nothing can be strung from them as they are:',
  toList: 'To the shopping list',
  forPiece: 'What five of these take',
};
