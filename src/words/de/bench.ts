/** Was die Macherin an ihrer Werkbank liest. */
import type { ArrivalProblem, Arrived, BenchProblem, OrderState, OrderWay } from '../benchCodes.ts';
import type { Difference } from '../difference.ts';
import type { bench as en } from '../en/bench.ts';
import { formatMoney, type Format } from '../format.ts';
import type { Sentences } from '../sentence.ts';
import { sentenceOf } from '../sentence.ts';
import { problems } from './benchProblems.ts';
import { gather } from './gather.ts';
import { orders } from './counts.ts';
import { keep } from './keep.ts';
import { sized } from './sized.ts';

const STATE: Readonly<Record<OrderState, string>> = {
  new: 'Neu',
  asked: 'Nachgefragt',
  agreed: 'Vereinbart',
  strung: 'Aufgefädelt',
  sent: 'Verschickt',
  cancelled: 'Abgesagt',
};
const WAY: Readonly<Record<OrderWay, string>> = {
  desk: 'über den Laden',
  paste: 'aus einer E-Mail eingefügt',
  file: 'aus einer Datei',
  link: 'aus einem Link',
  fair: 'auf einem Markt, von Hand eingetragen',
  telephone: 'am Telefon, von Hand eingetragen',
  mail: 'aus einer schlichten E-Mail, von Hand eingetragen',
};

const differences: Sentences<Difference> = {
  'no-such-piece': ({ piece }) => `Ein Stück „${piece}“ gibt es im Katalog nicht.`,
  revision: () => 'Das Stück wurde geändert, seit die Käuferin es ansah.',
  price: ({ shownMinor, nowMinor, shownIn }, f) =>
    `Preis: gezeigt wurden ${formatMoney(shownMinor, shownIn, f.lang)}, es sind ${f.money(nowMinor)}.`,
  postage: ({ shownMinor, nowMinor, shownIn }, f) =>
    `Versand: gezeigt wurden ${formatMoney(shownMinor, shownIn, f.lang)}, es sind ${f.money(nowMinor)}.`,
  'post-too-heavy': ({ weightG, mostG }, f) =>
    `Das Paket wiegt etwa ${f.number(weightG)} g, mehr als die ${f.number(mostG)} g, bis zu denen es dorthin einen Preis gibt.`,
  'post-not-served': ({ country }, f) =>
    `${f.country(country)} gehört zurzeit nicht zu den Ländern, in die der Laden versendet.`,
  'no-collection': () => 'Es soll abgeholt werden; das bietet der Laden zurzeit nicht an.',
  currency: ({ shown, now }) => `Währung: gezeigt wurde ${shown}, der Laden rechnet in ${now}.`,
  length: ({ shownMm, nowMm }, f) =>
    `Fertige Länge: gezeigt wurden ${both(shownMm, f)}, es sind ${both(nowMm, f)}.`,
  girth: ({ shownMm, nowMm }, f) =>
    `Innenumfang: gezeigt wurden ${both(shownMm, f)}, es sind ${both(nowMm, f)}.`,
  counts: () => 'Die Zahl der Perlen: nicht so, wie gezeigt wurde.',
  outside: ({ side, leastMm, mostMm }, f) =>
    `Die Größe ist zu ${side === 'below' ? 'klein' : 'groß'} für dieses Stück; es lässt sich für ${both(leastMm, f)} bis ${both(mostMm, f)} machen. Unten steht, was dem am nächsten kommt.`,
  refused: ({ problem }, f) => `Es lässt sich nicht bemessen: ${sentenceOf(sized.problems, problem, f)}`,
  'not-offered': ({ part, name }) =>
    `Gewählt wurde ${part === 'clasp' ? 'der Verschluss' : 'der Anhänger'} „${name}“, den die Datei des Stücks nicht anbietet (instead, ${part}s).`,
  'ready-gone': ({ number }) =>
    number === ''
      ? 'Gewünscht ist das Stück, das fertig daliegt, und nach seiner Datei liegt keines da (status). Sie können anbieten, ein gleiches zu fertigen.'
      : `Das Stück, das fertig dalag, ist mit Bestellung ${number} versprochen. Sie können anbieten, ein gleiches zu fertigen.`,
  'asked-before': ({ number }) =>
    `Nach dem fertigen Stück wurde schon vorher gefragt: Bestellung ${number}, noch nicht vereinbart.`,
  'hand-unasked': () =>
    'Nach der Hand, die den Verschluss bedient, wurde nicht gefragt, denn beide waren recht. So, wie das Stück jetzt ist, kommt es darauf an: Fragen Sie vor dem Auffädeln.',
  'ready-several': ({ quantity }, f) =>
    `Ein Stück liegt fertig da, und bestellt sind ${f.number(quantity)}, so wie es daliegt.`,
  written: ({ text, mm }, f) =>
    `Geschrieben wurde „${text}“, in der Bestellung stehen ${both(mm, f)}. Fragen Sie nach, was gemeint ist.`,
  clock: () => 'Die Bestellung liegt in der Zukunft: Eine der beiden Uhren geht falsch.',
};

function both(mm: number, f: Format): string {
  return `${f.length(mm)} (${f.number(mm, 1)} mm)`;
}

const arrivalProblems: Sentences<ArrivalProblem> = {
  'no-order': () =>
    'Darin ist keine Bestellung. Sie beginnt mit „claspwise4.“ (ältere mit „claspwise3.“, „claspwise2.“ oder „claspwise1.“) und endet mit „.end“.',
  'empty-file': () =>
    'Die Datei ist leer. Speichern Sie die E-Mail noch einmal, oder kopieren Sie ihren Text hierher.',
  'empty-form': () =>
    'Da steht noch nichts. Fügen Sie die E-Mail ein oder wählen Sie ihre Datei, dann nehmen Sie sie an.',
  plain: () => 'eine schlichte E-Mail ohne Code. Sie lässt sich durchsehen und von Hand eintragen.',
  'not-utf8': () =>
    'Die Zeichen sind anders kodiert als in UTF-8; ein Name könnte verloren gehen. Als UTF-8 speichern und noch einmal aufnehmen.',
  'cut-off': () => 'Die Bestellung bricht vor ihrem „.end“ ab. Kopieren Sie die ganze Nachricht.',
  'too-long': () => 'Was zwischen „claspwise4.“ und „.end“ steht, ist länger als jede Bestellung.',
  'newer-version': ({ version }) =>
    `Die Bestellung ist in Version ${version} geschrieben, neuer als diese Werkbank. Erneuern Sie sie zuerst.`,
  'unknown-version': ({ version }) => `Die Bestellung nennt eine Version „${version}“, die es nie gab.`,
  damaged: () =>
    'Unterwegs sind Zeichen verloren gegangen oder verändert worden. Lassen Sie die Bestellung noch einmal schicken.',
  'not-an-order': () => 'Es ist vollständig, aber keine Bestellung.',
  'wrong-field': ({ field }) => `Das Feld „${field}“ der Bestellung fehlt oder ist nicht lesbar.`,
  'file-too-large': ({ mostMb }) => `Die Datei ist größer als ${mostMb} MB.`,
  'too-many-mails': ({ most }) =>
    `Darin sind mehr als ${most} Nachrichten. Nehmen Sie sie in kleineren Dateien an.`,
};

const arrived: Sentences<Arrived> = {
  received: ({ number, source }) => `${number} aus ${source}: angenommen.`,
  same: ({ number, source }) => `${number} aus ${source}: stand schon im Buch.`,
  'number-taken': ({ number, source }) =>
    `${number} aus ${source}: nicht angenommen. Im Buch steht eine andere Bestellung mit dieser Nummer; vergleichen Sie beide und fragen Sie nach.`,
  refused: ({ source, why }, f) => `${source}: ${sentenceOf(arrivalProblems, why, f)}`,
};

export const bench: typeof en = {
  title: 'Werkbank',
  skip: 'Zum Inhalt',
  nav: {
    label: 'Werkbank',
    /** What she does at the bench; each has a row of places of its own. */
    groups: {
      orders: 'Aufträge',
      making: 'Arbeit',
      stock: 'Vorrat',
      design: 'Stücke',
      selling: 'Verkauf',
      safety: 'Sicherheit',
    },
    places: {
      book: 'Auftragsbuch',
      byHand: 'Von Hand',
      takeIn: 'Annehmen',
      buyers: 'Kundschaft',
      months: 'Monate',
      week: 'Woche',
      gather: 'Bereitlegen',
      steps: 'Am Brett',
      stock: 'Was da ist',
      count: 'Zählliste',
      stockIn: 'Tabelle einlesen',
      shopping: 'Einkaufsliste',
      pieces: 'Alle Stücke',
      newPiece: 'Neues Stück',
      trays: 'Fächer',
      publish: 'Veröffentlichen',
      rules: 'Laden und Regeln',
      guides: 'Ratgeber',
      history: 'Was geändert wurde',
      keep: 'Aufbewahren',
      access: 'Wer herein darf',
      tablets: 'Tablets',
    },
    shop: 'Zum Laden',
  },
  leave: 'Hinausgehen',
  states: STATE,
  ways: WAY,
  both,
  difference: (one: Difference, f: Format): string => sentenceOf(differences, one, f),
  arrived: (one: Arrived, f: Format): string => sentenceOf(arrived, one, f),
  problem: (one: BenchProblem, f: Format): string => sentenceOf(problems, one, f),
  problemTitle: 'Das ging nicht',
  back: 'Zurück zum Auftragsbuch',
  damagedTitle: 'Diese Bestellung ist beschädigt',
  remains: 'Was davon übrig ist, als Text',
  mend: 'Unter „Aufbewahren“ in Ordnung bringen',

  book: {
    title: 'Auftragsbuch',
    find: 'Suchen',
    findHint: 'Nummer, Name, Adresse, Stück, Wörter einer Notiz',
    show: 'Zeigen',
    all: 'Alle',
    open: 'Zu tun',
    late: 'Überfällig',
    apply: 'Nachsehen',
    none: 'Keine Bestellung passt dazu.',
    empty: 'Noch keine Bestellungen. Sie kommen über den Laden; solche aus E-Mails unter „Annehmen“.',
    count: orders,
    columns: {
      number: 'Nummer',
      piece: 'Stück',
      size: 'Größe',
      buyer: 'Käuferin',
      due: 'Fällig',
      received: 'Eingegangen',
      state: 'Stand',
    },
    differs: 'weicht ab von dem, was gezeigt wurde',
    late1: 'überfällig',
    noDue: 'offen',
    erased: 'gelöscht',
    damaged: 'beschädigt',
    unreadable:
      'Diese Bestellungen lassen sich nicht mehr lesen, weil sich ihre Bytes auf dem Datenträger geändert haben:',
    unreadableHint:
      'Nehmen Sie ihre E-Mails noch einmal an, wenn Sie sie haben, oder stellen Sie eine Sicherung wieder her. Und ziehen Sie auf einen anderen Datenträger um: Einer, der Bytes ändert, tut es wieder.',
    earlier: 'Frühere',
    later: 'Spätere',
    turnedAway: (when: string): string =>
      `Seit ${when} konnte eine Bestellung nicht ins Buch. Verloren ist sie nicht: Sie wartet bei ihrer Käuferin, der das gesagt wurde, und wird wieder geschickt. Im Weg steht:`,
    clockBack:
      'Die Uhr dieses Geräts steht vor dem letzten Eintrag im Buch. Stellen Sie sie, sonst werden neue Einträge falsch datiert.',
  },

  order: {
    title: (number: string): string => `Bestellung ${number}`,
    received: (when: string, way: OrderWay): string => `Eingegangen ${when}, ${WAY[way]}.`,
    placed: (when: string): string => `Aufgegeben ${when} nach der Uhr der Käuferin.`,
    same: 'Geprüft: Alle Zahlen sind die, die gezeigt wurden.',
    differs: 'Das weicht ab von dem, was gezeigt wurde',
    damaged:
      'Etwas in dieser Bestellung hat sich auf dem Datenträger geändert: Sie ist nicht Byte für Byte, was eingegangen ist. Vergleichen Sie sie mit der E-Mail, bevor Sie auffädeln. Noch einmal angenommen, macht die E-Mail sie wieder ganz.',
    ready: (file: string): string =>
      `Es geht, wie es fertig daliegt: Aufgefädelt wird nichts. Sobald es vereinbart ist, gibt die Annahme es niemandem sonst, und beim nächsten Bauen zeigt der Laden das Stück als auf Bestellung gefertigt. Schreiben Sie bei Gelegenheit „status: to-order“ oder „past“ in ${file}.`,
    differsHint: 'Nichts ist für Sie entschieden. Schreiben Sie der Käuferin, bevor Sie auffädeln.',
    asked: 'Was bestellt wurde',
    pick: 'Wo keines genau passt',
    picks: { best: 'das nächste', below: 'das kleinere', above: 'das größere' },
    noThen: 'Das Stück war schon vor Eingang geändert; wie es gezeigt wurde, steht nicht im Buch.',
    figures: 'Zahlen',
    columns: { what: '', shown: 'Gezeigt', then: 'Wie es damals war', now: 'Wie es jetzt ist' },
    figureRows: {
      price: 'Preis',
      counts: 'Anzahlen je Abschnitt',
      error: 'Neben der gewünschten Größe',
    },
    card: 'Werkkarte',
    packing: 'Packzettel',
    label: 'Adressaufkleber',
    care: 'Pflegekarte',
    gather: 'Was bereitzulegen ist',
    document: 'Bestellung als JSON',
    state: 'Stand',
    plan: 'Tag und Notizen',
    due: 'Fällig',
    setDue: 'Tag setzen',
    addNote: 'Notiz dazu',
    noteLabel: 'Notiz für Sie selbst',
    history: 'Verlauf',
    events: {
      received: (way: OrderWay): string => `Eingegangen ${WAY[way]}`,
      state: (state: OrderState): string => `Gesetzt auf „${STATE[state]}“`,
      due: (text: string): string => (text === '' ? 'Tag weggenommen' : `Fällig ${text}`),
      note: (text: string): string => (text === '' ? 'Notiz, gelöscht' : `Notiz: ${text}`),
      message: (text: string): string => `Der Käuferin geschrieben: ${text}`,
      erased: (): string => 'Die Daten der Käuferin wurden gelöscht',
      lookedOver: 'Sie haben alles durchgesehen und für richtig befunden',
    },
    letters: 'Der Käuferin schreiben',
    letterNames: {
      question: 'Eine Frage',
      address: 'Wohin?',
      agreed: 'Vereinbart',
      ready: 'Fertig',
      sent: 'Unterwegs',
    },
    subject: 'Betreff',
    text: 'Text',
    openMail: 'Als E-Mail öffnen',
    iSent: 'Ist abgeschickt',
    payment: 'Zahlungslink',
    erase: 'Daten der Käuferin löschen',
    eraseHint:
      'Name, Adresse, Notiz und Ihre eigenen Notizen zu dieser Bestellung verschwinden endgültig. Stück, Größe, Zahlen und Tage bleiben.',
    reallyErase: 'Ja, endgültig löschen',
    erasedOn: (when: string): string => `Die Daten der Käuferin wurden am ${when} gelöscht.`,
  },

  gather,

  pieces: {
    title: 'Stücke, auch vergangene',
    findHint: 'Name, Jahr, Perle, Wörter aus der Beschreibung',
    count: (count) => (count === 1 ? '1 Stück' : `${count} Stücke`),
    columns: { piece: 'Stück', kind: 'Art', length: 'Wie gelistet', made: 'Gemacht', status: 'Jetzt' },
    listed: 'wie gelistet',
    size: 'Größe',
    show: 'Karte machen',
    inShop: 'Seine Seite im Laden',
    versions: {
      shown: (day) =>
        `Das Stück, wie es war, als es zuletzt so bestellt wurde, am ${day}. Die Größe rechnet sich nach Ihren heutigen Regeln.`,
      now: 'Wie es jetzt ist',
      lay: 'Auf das Brett legen',
      others: (count) =>
        count === 1
          ? 'Es wurde bestellt, als es noch anders war'
          : `Es wurde in ${count} früheren Fassungen bestellt`,
      one: (day, orders) => `vom ${day}, ${orders === 1 ? 'eine Bestellung' : `${orders} Bestellungen`}`,
    },
  },

  takeIn: {
    title: 'Bestellungen annehmen',
    hint: 'Fügen Sie die ganze E-Mail ein, den Link zu einem Zettel oder die Zeilen, die mit „claspwise“ beginnen. Zitatzeichen und gebrochene Zeilen schaden nicht.',
    text: 'E-Mail, Link oder Bestellung',
    files: 'Oder Dateien: eine E-Mail (.eml), ein Postfach (.mbox), eine gespeicherte Bestellung (.json)',
    drop: 'Dateien lassen sich überall auf diese Seite ziehen.',
    button: 'Annehmen',
    result: 'Was daraus wurde',
    pasted: 'dem eingefügten Text',
  },

  keep,

  access: {
    title: 'Wer herein darf',
    here: 'An diesem Gerät öffnet sich die Werkbank von selbst.',
    without: 'Von anderswo kann sie niemand öffnen, denn es ist keine Passphrase gesetzt.',
    with: 'Von anderswo öffnet sie sich über https mit der Passphrase.',
    passphrase: 'Passphrase',
    set: 'Passphrase setzen',
    change: 'Andere Passphrase setzen',
    remove: 'Passphrase wegnehmen',
    hint: '12 bis 200 Zeichen. Aufgehoben wird nur ihr Hash; haben Sie sie vergessen, setzen Sie hier eine neue. Damit endet jeder Besuch von anderswo.',
    onlyHere: 'Gesetzt wird die Passphrase am Gerät selbst.',
    enter: 'Herein',
    enterTitle: 'Werkbank',
    saved: 'Gespeichert.',
  },
};
