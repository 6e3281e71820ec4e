/** What the maker reads of what she has: counted, received, reserved, to buy. */
import type { MovementKind, StockHand } from '../benchCodes.ts';
import type { Format } from '../format.ts';
import { sentenceOf, type Sentences } from '../sentence.ts';
import type { StockProblem, StockUnit } from '../stockCodes.ts';

const metres = (mm: number, f: Format): string => `${f.number(mm / 1000, 2)} m`;

const units: Readonly<Record<StockUnit, string>> = {
  ...{ piece: 'pieces', strand: 'strands', pack: 'packs', bag: 'bags', g: 'g, weighed' },
  ...{ m: 'm', cm: 'cm', ft: 'ft', in: 'in', spool: 'spools' },
};

const kinds: Readonly<Record<MovementKind, string>> = {
  received: 'Received',
  counted: 'Counted',
  strung: 'Strung',
  broken: 'Broken or lost',
  sold: 'Sold as it is',
  'put-aside': 'Put aside as an offcut',
  struck: 'Taken back',
};

const problems: Sentences<StockProblem> = {
  'amount-missing': () => 'Write how many.',
  'amount-unreadable': ({ text }) => `“${text}” is no number. Write figures alone: 64, 2.5, 1 1/2.`,
  'amount-not-whole': ({ text }) => `“${text}” isn’t a whole number of pieces. Write it without a fraction.`,
  'amount-nothing': () => 'That comes to nothing. Write how many.',
  'amount-too-much': () => 'That is more than any tray holds. Look at figure and unit again.',
  'unit-unknown': ({ text, units: known }) =>
    `“${text}” isn’t what this is counted in. Write one of: ${known.join(', ')}.`,
  'not-there': ({ have, wire }, f) =>
    `There aren’t so many: ${wire ? metres(have, f) : f.number(have)}. Count first if there are.`,
  'note-too-long': ({ most }) => `A note has ${most} letters at the most.`,
  'stock-changed': () =>
    'Something moved here since you opened the page: in another window, by an order, or by this very form, sent twice. Nothing more was entered: look at the figures as they are now, and where yours is still missing, enter it again.',
  'line-used': () =>
    'What this brought is used since, so it can’t be taken back. Count what there is instead.',
  'no-such-line': () => 'That line isn’t there, or it was taken back already.',
};

export const stock = {
  title: 'Stock',
  lead: 'What you count here is kept in the order book. An agreed order reserves what it takes, and once it is strung it has taken it. What nobody counts is taken to be there.',
  nothing: 'Nothing is counted here yet. Open a thing and enter what there is, or fill in the count sheet.',
  before:
    'Orders that were strung before a thing was counted take nothing after the fact: what was counted is what there was without them.',
  amount: (amount: number, wire: boolean, f: Format): string => (wire ? metres(amount, f) : f.number(amount)),
  withUnit: (amount: number, wire: boolean, f: Format): string =>
    wire ? metres(amount, f) : amount === 1 ? '1 piece' : `${f.number(amount)} pieces`,
  units,
  kinds,
  who: (who: StockHand): string => (who === 'visit' ? 'from elsewhere' : 'at this machine'),
  problem: (one: StockProblem, f: Format): string => sentenceOf(problems, one, f),
  find: 'Find',
  findHint: 'Name, number, tray',
  show: 'Show',
  shows: { all: 'All', counted: 'What is counted', low: 'What runs low' },
  look: 'Look',
  none: 'Nothing is like that.',
  columns: {
    tray: 'Tray',
    what: 'What',
    there: 'There',
    reserved: 'Promised',
    free: 'Free',
    mark: 'Buy below',
    file: 'In its file',
  },
  uncounted: 'not counted',
  low: 'runs low',
  short: 'promised more than there is',
  countAgain: 'count again',
  countAgainHint: 'More was strung than was there, so there must have been more. Count what lies there now.',
  toCsv: 'Stock as a table (CSV)',
  toLinesCsv: 'All that came and went (CSV)',
  clockBack:
    'This machine’s clock stands before the last line here. Lines stay in the order in which they were entered; set the clock right, or their days will be wrong.',
  begin: {
    title: 'Begin with what the files say',
    lead: (count: number): string =>
      count === 1
        ? 'One thing has a number in its file, and nobody has counted it here. Taken over, it is your first count.'
        : `${count} things have a number in their files, and nobody has counted them here. Taken over, they are your first count.`,
    button: 'Take them over',
  },
  differs: {
    title: 'Changed by hand',
    lead: 'These files say something else than was written into them last. The shop sizes with what they say until you decide.',
    says: (file: number | null, free: number, f: Format): string =>
      file === null
        ? `its file says nothing, by the book ${f.number(free)} are free`
        : `its file says ${f.number(file)}, by the book ${f.number(free)} are free`,
    count: (file: number, f: Format): string => `It is so: ${f.number(file)} are free`,
    ours: (free: number, f: Format): string => `Write ${f.number(free)} into the file`,
  },
  toPublish: (count: number): string =>
    count === 1
      ? 'The shop still sizes with another number for one thing. It is written out when you publish.'
      : `The shop still sizes with other numbers for ${count} things. They are written out when you publish.`,
  publish: 'Publish',
  notWritten: 'The number could not be written into its file. Look at the file in the trays.',
  thing: {
    toTray: 'What it is',
    toList: 'All stock',
    there: 'There',
    reserved: 'Promised to agreed orders',
    free: 'Free',
    mark: 'Buy more below',
    noMark: 'no mark',
    bought: 'Bought',
    boughtAs: (unit: string, holds: string, estimated: boolean, price: string): string =>
      `by the ${unit} of ${estimated ? 'about ' : ''}${holds}, ${price}`,
    supplier: 'From',
    notCounted: 'Nobody counts it here yet, so it is taken to be there.',
    inFile: (count: number, f: Format): string =>
      `Its file says ${f.number(count)}. Whatever you enter first goes on from there, unless you count.`,
    enter: 'Enter',
    what: 'What happened',
    many: 'How many',
    howMuch: 'How much',
    unit: 'In',
    note: 'Note',
    noteHint: 'For you alone: which lot, what was wrong',
    button: 'Enter it',
    done: 'It is entered.',
    estimate:
      'Strands, bags and grams are turned into pieces by length and weight of one. That is an estimate; count when it matters.',
    reel: 'A count is of the reel alone; offcuts are listed below.',
    offcuts: 'Offcuts',
    offcutsLead: 'Put aside from the reel. The next order that fits into one is cut from it.',
    offcutGone: (length: string): string => `Offcut of ${length}: thrown away`,
    offcutGoneShort: 'Thrown away',
    lines: 'What came and went',
    columns: { when: 'When', what: 'What', amount: 'How many', after: 'Then there', note: 'Note' },
    order: (number: string): string => `Order ${number}`,
    counted: (found: string): string => `found ${found}`,
    takenBack: 'taken back since',
    offcut: (length: string): string => `offcut of ${length}`,
    strike: 'Take back',
    strikeLine: (what: string): string => `Take back: ${what}`,
  },
  strung: {
    title: 'Strung without an order',
    lead: 'For the shelf or a fair: what it takes is taken out of the trays, as far as it is counted.',
    many: 'How many',
    button: 'I have strung it',
    note: (many: number, name: string): string => `${many} × ${name}`,
    done: (many: number): string =>
      many === 1 ? 'What it took is out of the trays.' : `What ${many} of them took is out of the trays.`,
    nothing: 'Nothing of it is counted, so nothing was taken.',
    wrong: 'Write how many: a whole number up to 99.',
  },
  count: {
    title: 'Count sheet',
    lead: 'From tray to tray. Print it and count with a pencil, or fill it in here; what you leave empty stays as it is. Of wire, the reel alone.',
    print: 'Print',
    only: 'Only tray',
    all: 'all trays',
    columns: { tray: 'Tray', what: 'What', there: 'By the book', found: 'Counted', unit: 'In' },
    button: 'Enter what was counted',
    done: (count: number): string => (count === 1 ? '1 count is entered.' : `${count} counts are entered.`),
    empty: 'Nothing was filled in.',
    look: 'Look at what is marked. Nothing was entered yet, and what you typed is still there.',
    seen: (name: string): string => `Counted: ${name}`,
  },
};
