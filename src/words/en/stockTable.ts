/** What the maker reads where she brings in a table of what came or was counted. */
import type { Format } from '../format.ts';
import { sentenceOf, type Sentences } from '../sentence.ts';
import type { RowProblem, StockProblem, TableProblem } from '../stockCodes.ts';
import { stock } from './stock.ts';

type OwnProblem = Exclude<RowProblem, StockProblem>;

const problems: Sentences<TableProblem> = {
  'table-empty': () => 'There is no table in it. Paste its lines, its heading first, or choose a file.',
  'table-too-large': ({ most }) => `A table has ${most} lines at the most. Bring it in by halves.`,
  'table-broken': ({ line }) =>
    `From line ${line} on it is no table any more: a quotation mark that isn’t closed, or cells outside of any column. Save it as CSV once more.`,
  'table-not-utf8': () => 'Its letters can’t be read. Save it as CSV in UTF-8.',
  'heading-missing': ({ names }) =>
    `Its first line has to name the columns. Missing: ${names.join(', ')}. Columns that aren’t known are passed over.`,
  'heading-twice': ({ name }) => `The column “${name}” is there twice. Leave one.`,
};

const rows: Sentences<OwnProblem> = {
  'row-unnamed': () =>
    'It names nothing. Write its short name under “thing”, or the number on the bag under “number”.',
  'row-unknown': ({ text, near }) =>
    `Nothing is called “${text}”. ${near === '' ? 'Add it under Trays first.' : `Is it “${near}”?`}`,
  'row-differs': ({ thing, number }) =>
    `“${thing}” and the number ${number} are two different things. Leave one of them out.`,
  'row-kind': ({ text }) =>
    `“${text}” is nothing that happens to stock. Write received, counted, broken or sold.`,
  'row-twice': ({ line }) => `It is counted in line ${line} already. Leave one of the two.`,
};

const isOwn = (one: RowProblem): one is OwnProblem => one.code in rows;

export const stockTable = {
  title: 'Bring in a table',
  lead: 'A table of what came or was counted, as CSV: from your supplier, or the table of stock with its column “amount” filled in. First you see what would be entered. Nothing is, until you say so.',
  columns:
    'Columns: “thing” (its short name) or “number” (on the bag), and “amount”. Also “kind” (received, counted, broken, sold), “unit” (piece, strand, pack, bag, g; m, cm, ft, in, spool) and “note”. Lines without an amount are passed over.',
  text: 'Paste the table',
  file: 'Or a file',
  kind: 'Lines without a kind are',
  look: 'See what it would do',
  problem: (one: TableProblem, f: Format): string => sentenceOf(problems, one, f),
  good: (count: number): string => (count === 1 ? '1 line can be entered' : `${count} lines can be entered`),
  bad: (count: number): string =>
    count === 1 ? '1 line can’t be entered' : `${count} lines can’t be entered`,
  skipped: (count: number): string =>
    count === 1
      ? '1 line without an amount is passed over.'
      : `${count} lines without an amount are passed over.`,
  line: (line: number): string => `Line ${line}`,
  heads: {
    line: 'Line',
    what: 'What',
    kind: 'What happened',
    amount: 'How many',
    after: 'Then there',
    note: 'Note',
  },
  enterAll: (count: number): string => (count === 1 ? 'Enter this line' : `Enter all ${count} lines`),
  enterGood: (count: number): string =>
    count === 1 ? 'Enter the good line, leave the others' : `Enter the ${count} good lines, leave the others`,
  mend: 'Or mend the table here or in your program, and look again.',
  again: 'Look again',
  done: (count: number): string => (count === 1 ? '1 line is entered.' : `${count} lines are entered.`),
  row: (one: RowProblem, f: Format): string =>
    isOwn(one) ? sentenceOf(rows, one, f) : stock.problem(one, f),
};
