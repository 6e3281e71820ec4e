/** Was die Macherin liest, wenn sie eine Tabelle über Eingegangenes oder Gezähltes einliest. */
import type { stockTable as english } from '../en/stockTable.ts';
import { sentenceOf, type Sentences } from '../sentence.ts';
import type { RowProblem, StockProblem, TableProblem } from '../stockCodes.ts';
import { stock } from './stock.ts';

type OwnProblem = Exclude<RowProblem, StockProblem>;

const problems: Sentences<TableProblem> = {
  'table-empty': () =>
    'Darin ist keine Tabelle. Fügen Sie ihre Zeilen ein, die Kopfzeile zuerst, oder wählen Sie eine Datei.',
  'table-too-large': ({ most }) => `Eine Tabelle hat höchstens ${most} Zeilen. Lesen Sie sie in Teilen ein.`,
  'table-broken': ({ line }) =>
    `Ab Zeile ${line} ist es keine Tabelle mehr: ein Anführungszeichen bleibt offen, oder Felder stehen außerhalb der Spalten. Speichern Sie sie noch einmal als CSV.`,
  'table-not-utf8': () => 'Die Buchstaben lassen sich nicht lesen. Speichern Sie sie als CSV in UTF-8.',
  'heading-missing': ({ names }) =>
    `Die erste Zeile muss die Spalten nennen. Es fehlt: ${names.join(', ')}. Spalten, die hier nicht bekannt sind, werden übergangen.`,
  'heading-twice': ({ name }) => `Die Spalte „${name}“ gibt es zweimal. Lassen Sie eine stehen.`,
};

const rows: Sentences<OwnProblem> = {
  'row-unnamed': () =>
    'Hier steht kein Name. Schreiben Sie den Kurznamen unter „thing“ oder die Nummer auf dem Beutel unter „number“.',
  'row-unknown': ({ text, near }) =>
    `Nichts heißt „${text}“. ${near === '' ? 'Legen Sie es zuerst unter Fächer an.' : `Ist es „${near}“?`}`,
  'row-differs': ({ thing, number }) =>
    `„${thing}“ und die Nummer ${number} sind zweierlei. Lassen Sie eines davon weg.`,
  'row-kind': ({ text }) =>
    `„${text}“ ist nichts, was mit Vorrat geschieht. Schreiben Sie received, counted, broken oder sold, oder eingegangen, gezählt, zerbrochen oder verkauft.`,
  'row-twice': ({ line }) => `Das ist schon in Zeile ${line} gezählt. Lassen Sie eine der beiden weg.`,
};

const isOwn = (one: RowProblem): one is OwnProblem => one.code in rows;

export const stockTable: typeof english = {
  title: 'Tabelle einlesen',
  lead: 'Eine Tabelle über Eingegangenes oder Gezähltes als CSV: von Ihrem Händler, oder die Vorratstabelle mit ausgefüllter Spalte „amount“. Zuerst sehen Sie, was eingetragen würde. Eingetragen wird erst, wenn Sie es sagen.',
  columns:
    'Spalten: „thing“ (Kurzname) oder „number“ (Nummer auf dem Beutel), und „amount“ (wie viel). Dazu „kind“ (received, counted, broken, sold), „unit“ (piece, strand, pack, bag, g; m, cm, ft, in, spool) und „note“. Auch auf Deutsch: Kurzname, Nummer, Menge, Vorgang, Einheit, Notiz. Zeilen ohne Menge werden übergangen.',
  text: 'Tabelle einfügen',
  file: 'Oder eine Datei',
  kind: 'Zeilen ohne Vorgang sind',
  look: 'Zeigen, was geschähe',
  problem: (one, f) => sentenceOf(problems, one, f),
  good: (count) => (count === 1 ? '1 Zeile lässt sich eintragen' : `${count} Zeilen lassen sich eintragen`),
  bad: (count) =>
    count === 1 ? '1 Zeile lässt sich nicht eintragen' : `${count} Zeilen lassen sich nicht eintragen`,
  skipped: (count) =>
    count === 1 ? '1 Zeile ohne Menge wird übergangen.' : `${count} Zeilen ohne Menge werden übergangen.`,
  line: (line) => `Zeile ${line}`,
  heads: {
    line: 'Zeile',
    what: 'Was',
    kind: 'Was geschehen ist',
    amount: 'Wie viel',
    after: 'Danach da',
    note: 'Notiz',
  },
  enterAll: (count) => (count === 1 ? 'Diese Zeile eintragen' : `Alle ${count} Zeilen eintragen`),
  enterGood: (count) =>
    count === 1
      ? 'Die gute Zeile eintragen, die anderen lassen'
      : `Die ${count} guten Zeilen eintragen, die anderen lassen`,
  mend: 'Oder bessern Sie die Tabelle hier oder in Ihrem Programm aus und sehen Sie noch einmal nach.',
  again: 'Noch einmal nachsehen',
  done: (count) => (count === 1 ? '1 Zeile ist eingetragen.' : `${count} Zeilen sind eingetragen.`),
  row: (one, f) => (isOwn(one) ? sentenceOf(rows, one, f) : stock.problem(one, f)),
};
