/** Was die Macherin über ihren Vorrat liest: gezählt, eingegangen, versprochen, zu kaufen. */
import type { MovementKind } from '../benchCodes.ts';
import type { stock as english } from '../en/stock.ts';
import type { Format } from '../format.ts';
import { sentenceOf, type Sentences } from '../sentence.ts';
import type { StockProblem, StockUnit } from '../stockCodes.ts';

const metres = (mm: number, f: Format): string => `${f.number(mm / 1000, 2)} m`;

const units: Readonly<Record<StockUnit, string>> = {
  ...{ piece: 'Stück', strand: 'Stränge', pack: 'Packungen', bag: 'Beutel', g: 'g, gewogen' },
  ...{ m: 'm', cm: 'cm', ft: 'ft', in: 'Zoll', spool: 'Rollen' },
};

const kinds: Readonly<Record<MovementKind, string>> = {
  received: 'Eingegangen',
  counted: 'Gezählt',
  strung: 'Aufgefädelt',
  broken: 'Zerbrochen oder verloren',
  sold: 'So verkauft, wie es ist',
  'put-aside': 'Als Reststück aufgehoben',
  struck: 'Zurückgenommen',
};

const problems: Sentences<StockProblem> = {
  'amount-missing': () => 'Schreiben Sie, wie viele.',
  'amount-unreadable': ({ text }) =>
    `„${text}“ ist keine Zahl. Schreiben Sie nur Ziffern: 64, 2,5 oder 1 1/2.`,
  'amount-not-whole': ({ text }) => `„${text}“ ist keine ganze Stückzahl. Schreiben Sie sie ohne Bruch.`,
  'amount-nothing': () => 'Das ergibt nichts. Schreiben Sie, wie viele.',
  'amount-too-much': () => 'Das ist mehr, als in ein Fach passt. Sehen Sie Zahl und Einheit noch einmal an.',
  'unit-unknown': ({ text, units: known }) =>
    `In „${text}“ wird das nicht gezählt. Schreiben Sie eines von: ${known.join(', ')}.`,
  'not-there': ({ have, wire }, f) =>
    `So viel ist nicht da: ${wire ? metres(have, f) : f.number(have)}. Zählen Sie zuerst, wenn doch.`,
  'note-too-long': ({ most }) => `Eine Notiz hat höchstens ${most} Buchstaben.`,
  'stock-changed': () =>
    'Hier hat sich etwas geändert, seit Sie die Seite geöffnet haben: in einem anderen Fenster, durch eine Bestellung oder weil dieses Formular zweimal abgeschickt wurde. Weiter wurde nichts eingetragen: Sehen Sie sich die Zahlen an, wie sie jetzt sind, und tragen Sie Ihre noch einmal ein, wenn sie fehlt.',
  'line-used': () =>
    'Was damit kam, ist inzwischen verbraucht; es lässt sich nicht zurücknehmen. Zählen Sie stattdessen, was da ist.',
  'no-such-line': () => 'Diese Zeile gibt es nicht, oder sie wurde schon zurückgenommen.',
};

export const stock: typeof english = {
  title: 'Vorrat',
  lead: 'Was Sie hier zählen, steht im Auftragsbuch. Eine zugesagte Bestellung legt zurück, was sie braucht; ist sie aufgefädelt, hat sie es verbraucht. Was niemand zählt, gilt als vorhanden.',
  nothing:
    'Hier ist noch nichts gezählt. Öffnen Sie etwas und tragen Sie ein, was da ist, oder füllen Sie die Zählliste aus.',
  before:
    'Bestellungen, die aufgefädelt wurden, ehe etwas gezählt war, nehmen nachträglich nichts: Gezählt wurde, was ohne sie da war.',
  amount: (amount, wire, f) => (wire ? metres(amount, f) : f.number(amount)),
  withUnit: (amount, wire, f) => (wire ? metres(amount, f) : `${f.number(amount)} Stück`),
  units,
  kinds,
  who: (who) => (who === 'visit' ? 'von anderswo' : 'an diesem Rechner'),
  problem: (one, f) => sentenceOf(problems, one, f),
  find: 'Suchen',
  findHint: 'Name, Nummer, Fach',
  show: 'Zeigen',
  shows: { all: 'Alles', counted: 'Was gezählt wird', low: 'Was zur Neige geht' },
  look: 'Ansehen',
  none: 'Nichts ist so.',
  columns: {
    tray: 'Fach',
    what: 'Was',
    there: 'Da',
    reserved: 'Versprochen',
    free: 'Frei',
    mark: 'Nachkaufen unter',
    file: 'In seiner Datei',
  },
  uncounted: 'nicht gezählt',
  low: 'geht zur Neige',
  short: 'mehr versprochen als da ist',
  countAgain: 'neu zählen',
  countAgainHint:
    'Es wurde mehr aufgefädelt, als da war; es muss also mehr gewesen sein. Zählen Sie, was jetzt da liegt.',
  toCsv: 'Vorrat als Tabelle (CSV)',
  toLinesCsv: 'Alles, was kam und ging (CSV)',
  clockBack:
    'Die Uhr dieses Rechners steht vor der letzten Zeile hier. Die Zeilen bleiben in der Reihenfolge, in der sie eingetragen wurden; stellen Sie die Uhr, sonst stimmen ihre Tage nicht.',
  begin: {
    title: 'Mit dem anfangen, was in den Dateien steht',
    lead: (count) =>
      count === 1
        ? 'Bei einem steht eine Zahl in seiner Datei, und hier hat es niemand gezählt. Übernommen ist das Ihre erste Zählung.'
        : `Bei ${count} steht eine Zahl in der Datei, und hier hat sie niemand gezählt. Übernommen ist das Ihre erste Zählung.`,
    button: 'Übernehmen',
  },
  differs: {
    title: 'Von Hand geändert',
    lead: 'In diesen Dateien steht etwas anderes, als zuletzt hineingeschrieben wurde. Bis Sie entscheiden, rechnet der Laden mit dem, was da steht.',
    says: (file, free, f) =>
      file === null
        ? `in seiner Datei steht nichts, nach dem Buch sind ${f.number(free)} frei`
        : `in seiner Datei steht ${f.number(file)}, nach dem Buch sind ${f.number(free)} frei`,
    count: (file, f) => `So ist es: ${f.number(file)} sind frei`,
    ours: (free, f) => `${f.number(free)} in die Datei schreiben`,
  },
  toPublish: (count) =>
    count === 1
      ? 'Bei einem rechnet der Laden noch mit einer anderen Zahl. Sie wird beim Veröffentlichen hineingeschrieben.'
      : `Bei ${count} rechnet der Laden noch mit anderen Zahlen. Sie werden beim Veröffentlichen hineingeschrieben.`,
  publish: 'Veröffentlichen',
  notWritten:
    'Die Zahl ließ sich nicht in ihre Datei schreiben. Sehen Sie sich die Datei unter den Fächern an.',
  thing: {
    toTray: 'Was es ist',
    toList: 'Der ganze Vorrat',
    there: 'Da',
    reserved: 'Zugesagten Bestellungen versprochen',
    free: 'Frei',
    mark: 'Nachkaufen unter',
    noMark: 'keine Marke',
    bought: 'Gekauft',
    boughtAs: (unit, holds, estimated, price) =>
      `als ${unit} zu ${estimated ? 'etwa ' : ''}${holds}, ${price}`,
    supplier: 'Von',
    notCounted: 'Hier zählt es noch niemand, also gilt es als vorhanden.',
    inFile: (count, f) =>
      `In seiner Datei steht ${f.number(count)}. Was Sie zuerst eintragen, geht von da aus weiter, außer Sie zählen.`,
    enter: 'Eintragen',
    what: 'Was geschehen ist',
    many: 'Wie viele',
    howMuch: 'Wie viel',
    unit: 'In',
    note: 'Notiz',
    noteHint: 'Nur für Sie: welche Lieferung, was nicht stimmte',
    button: 'Eintragen',
    done: 'Es ist eingetragen.',
    estimate:
      'Stränge, Beutel und Gramm werden nach Länge und Gewicht von einem in Stück umgerechnet. Das ist eine Schätzung; zählen Sie, wo es darauf ankommt.',
    reel: 'Gezählt wird nur die Rolle; Reststücke stehen darunter.',
    offcuts: 'Reststücke',
    offcutsLead:
      'Von der Rolle aufgehoben. Die nächste Bestellung, die hineinpasst, wird daraus geschnitten.',
    offcutGone: (length) => `Reststück von ${length}: weggeworfen`,
    offcutGoneShort: 'Weggeworfen',
    lines: 'Was kam und ging',
    columns: { when: 'Wann', what: 'Was', amount: 'Wie viel', after: 'Danach da', note: 'Notiz' },
    order: (number) => `Bestellung ${number}`,
    counted: (found) => `gefunden: ${found}`,
    takenBack: 'seither zurückgenommen',
    offcut: (length) => `Reststück von ${length}`,
    strike: 'Zurücknehmen',
    strikeLine: (what) => `Zurücknehmen: ${what}`,
  },
  strung: {
    title: 'Ohne Bestellung aufgefädelt',
    lead: 'Fürs Regal oder einen Markt: Was es braucht, wird aus den Fächern genommen, soweit es gezählt ist.',
    many: 'Wie viele',
    button: 'Ich habe es aufgefädelt',
    note: (many, name) => `${many} × ${name}`,
    done: (many) =>
      many === 1
        ? 'Was es gebraucht hat, ist aus den Fächern genommen.'
        : `Was ${many} davon gebraucht haben, ist aus den Fächern genommen.`,
    nothing: 'Nichts davon ist gezählt, also wurde nichts genommen.',
    wrong: 'Schreiben Sie, wie viele: eine ganze Zahl bis 99.',
  },
  count: {
    title: 'Zählliste',
    lead: 'Von Fach zu Fach. Drucken Sie sie und zählen Sie mit dem Bleistift, oder füllen Sie sie hier aus; was leer bleibt, bleibt, wie es ist. Vom Draht nur die Rolle.',
    print: 'Drucken',
    only: 'Nur das Fach',
    all: 'alle Fächer',
    columns: { tray: 'Fach', what: 'Was', there: 'Nach dem Buch', found: 'Gezählt', unit: 'In' },
    button: 'Gezähltes eintragen',
    done: (count) => (count === 1 ? '1 Zählung ist eingetragen.' : `${count} Zählungen sind eingetragen.`),
    empty: 'Es war nichts ausgefüllt.',
    look: 'Sehen Sie sich an, was markiert ist. Noch wurde nichts eingetragen, und was Sie getippt haben, steht noch da.',
    seen: (name) => `Gezählt: ${name}`,
  },
};
