/** Geld und Stand einer Bestellung, wie die Macherin sie an ihrer Werkbank liest. */
import type {
  ChangeProblem,
  Letter,
  MoneyStanding,
  OrderState,
  PaymentKind,
  PaymentWay,
} from '../benchCodes.ts';
import type { money as en } from '../en/money.ts';
import { formatDate, formatMoney, type Format } from '../format.ts';
import { sentenceOf, type Sentences } from '../sentence.ts';

const WAY: Readonly<Record<PaymentWay, string>> = {
  transfer: 'Überweisung',
  card: 'Karte',
  cash: 'bar',
  other: 'auf anderem Weg',
};
const BY: Readonly<Record<PaymentWay, string>> = {
  transfer: 'durch Überweisung',
  card: 'mit Karte',
  cash: 'in bar',
  other: 'auf anderem Weg',
};
const KIND: Readonly<Record<PaymentKind, string>> = { paid: 'Bezahlt', refunded: 'Zurückgezahlt' };
const STANDING: Readonly<Record<MoneyStanding, string>> = {
  unpaid: 'Noch nichts bezahlt',
  'part-paid': 'Teils bezahlt',
  settled: 'Nichts offen',
  'to-pay-back': 'Zurückzuzahlen',
};

const problems: Sentences<ChangeProblem> = {
  'sum-missing': () => 'Schreiben Sie den Betrag.',
  'sum-nothing': () => 'Das ergibt nichts. Schreiben Sie den Betrag, der geflossen ist.',
  'sum-too-large': () => 'Das ist mehr, als das Buch für eine Bestellung fasst. Prüfen Sie den Betrag.',
  'sum-unreadable': ({ text }) => `„${text}“ ist nicht als Betrag zu lesen. Schreiben Sie ihn wie 64,50.`,
  'sum-ambiguous': ({ text }) =>
    `„${text}“ lässt sich auf zwei Arten lesen. Schreiben Sie ${text.replace(/\D/g, '')} für die Tausender oder zwei Ziffern nach dem Komma.`,
  'sum-too-fine': ({ text, digits }) =>
    digits === 0
      ? `„${text}“ hat Ziffern nach dem Komma, die diese Währung nicht kennt.`
      : `„${text}“ hat mehr als ${digits} Ziffern nach dem Komma.`,
  'sum-other-currency': ({ text, currency }) =>
    `„${text}“ ist in einer anderen Währung. Diese Bestellung rechnet in ${currency}.`,
  'day-unreadable': ({ text }) => `„${text}“ ist kein Tag des Kalenders. Schreiben Sie ihn wie 2026-12-20.`,
  'day-ahead': ({ text }, f) =>
    `Der ${formatDate(text, f.lang)} kommt erst noch. Schreiben Sie den Tag, an dem das Geld floss.`,
  'more-than-open': ({ openMinor, currency }, f) =>
    openMinor === 0
      ? 'An dieser Bestellung ist nichts offen. Kam es trotzdem, so sagen Sie es unten.'
      : `An dieser Bestellung sind nur ${formatMoney(openMinor, currency, f.lang)} offen. Kam trotzdem mehr, so sagen Sie es unten.`,
  'more-than-paid': ({ hereMinor, currency }, f) =>
    hereMinor === 0
      ? 'Es wurde nichts bezahlt, das zurückgezahlt werden könnte.'
      : `Mehr als ${formatMoney(hereMinor, currency, f.lang)} lassen sich nicht zurückzahlen: So viel kam und ist noch da.`,
  'refund-rests-on-it': () =>
    'Von dieser Zahlung wurde etwas zurückgezahlt. Streichen Sie zuerst das, wenn auch das ein Versehen war.',
  'reason-missing': () => 'Schreiben Sie, warum. Es steht dann im Verlauf, wo Sie eines Tages danach suchen.',
  'address-incomplete': () =>
    'Schreiben Sie, für wen, die Straße oder das Haus, und das Land; das Übrige, soweit der Ort es hat.',
  'parcel-empty': () => 'Schreiben Sie, wer es bringt, oder die Sendungsnummer.',
  'invoice-stands': ({ invoice }) =>
    `Für diese Bestellung gilt die Rechnung ${invoice}. Nehmen Sie sie zuerst zurück, dann stellen Sie eine neue aus.`,
  'not-agreed': () => 'Vereinbaren Sie die Bestellung zuerst: Bis dahin kann sich der Betrag noch ändern.',
  'no-seller': () =>
    'Ihr Laden sagt noch nicht, wer Rechnungen ausstellt. Schreiben Sie es unter Laden und Regeln, Rechnungen.',
  'buyer-erased': () =>
    'Die Daten der Käuferin sind gelöscht; es gibt niemanden mehr, auf den die Rechnung lauten könnte.',
  'changed-meanwhile': () =>
    'Diese Bestellung wurde in einem anderen Fenster oder an einer anderen Werkbank geändert. Nichts wurde überschrieben, und was Sie schrieben, steht noch hier: Sehen Sie die Bestellung an, wie sie jetzt ist, und tun Sie es dann noch einmal.',
};

const NEXT: Readonly<Record<OrderState, string>> = {
  new: 'Als neu nehmen',
  asked: 'Nachfragen',
  agreed: 'Vereinbaren',
  strung: 'Ist aufgefädelt',
  sent: 'Ist verschickt',
  cancelled: 'Absagen',
};
const LETTER: Readonly<Record<Letter, string>> = {
  question: 'mit der Frage',
  address: 'mit der Frage, wohin es gehen soll',
  agreed: 'dass es vereinbart ist',
  ready: 'dass es fertig ist',
  sent: 'dass es unterwegs ist',
};

export const money: typeof en = {
  problem: (one: ChangeProblem, f: Format): string => sentenceOf(problems, one, f),

  next: {
    title: 'Was als Nächstes kommt',
    step: (state) => NEXT[state],
    letter: (letter) =>
      letter === 'question'
        ? `Dann liegt die Nachricht ${LETTER[letter]} bereit.`
        : `Dann liegt die Nachricht bereit, ${LETTER[letter]}.`,
    doubts: {
      differs: 'Die Bestellung weicht ab von dem, was gezeigt wurde; darum kommt zuerst eine Frage.',
      'no-address': 'Die Bestellung sagt nicht, wohin sie soll; darum wird das zuerst gefragt.',
    },
    back: (state) => `Zurück auf „${state}“`,
    parcel: 'Wie es reist',
    carrier: 'Zusteller',
    tracking: 'Sendungsnummer',
    sentOn: 'Verschickt am',
    parcelHint: 'Beides kann wegbleiben. Steht es da, sagt die Nachricht, wo sich das Paket verfolgen lässt.',
    parcelLater: 'Ein Paket eintragen',
    parcelButton: 'Eintragen',
    parcels: 'Pakete',
    parcelLine: (day, carrier, tracking) => [day, carrier, tracking].filter((part) => part !== '').join(', '),
    follow: 'Verfolgen',
    finished: 'Nichts mehr zu tun.',
    stillToPay: (sum) => `Sie ist verschickt; ${sum} sind noch zu zahlen.`,
    stillToPayBack: (sum) => `${sum} sind noch zurückzuzahlen.`,
    cancelled: 'Diese Bestellung ist abgesagt.',
    else: 'Etwas anderes',
    reason: 'Warum',
    reasonHint: 'Gefragt, wo die Bestellung einen Schritt zurückgeht. Es steht dann im Verlauf.',
    reasonGiven: (text) => (text === '' ? 'Der Grund, gelöscht' : `Weil: ${text}`),
    written: (letter) => `Die Nachricht liegt bereit: ${letter}`,
  },

  title: 'Geld',
  ways: WAY,
  standing: STANDING,
  total: 'Macht zusammen',
  totalBasis: {
    agreed: 'wie vereinbart',
    now: 'nach den Zahlen von heute, bis Sie es vereinbaren',
    then: 'nach dem Stück, wie es damals war',
    shown: 'nach dem, was gezeigt wurde, weil es sich jetzt nicht rechnen lässt',
  },
  paid: 'Bezahlt',
  refunded: 'Zurückgezahlt',
  open: 'Noch zu zahlen',
  toPayBack: 'Zurückzuzahlen',
  nothingDue: 'nichts, denn sie ist abgesagt',
  notKept: 'Als diese Bestellung verschickt wurde, führte das Buch noch kein Geld.',
  list: 'Was kam und was zurückging',
  line: (kind, way) => `${KIND[kind]} ${BY[way]}`,
  otherCurrency: 'in anderer Währung, darum nicht gezählt',
  struck: 'gestrichen',
  strike: 'Aus Versehen eingetragen',
  strikeButton: 'Streichen',
  record: 'Eine Zahlung eintragen',
  recordMore: 'Noch eine Zahlung eintragen',
  recordRefund: 'Zurückgezahltes eintragen',
  sum: 'Betrag',
  day: 'Tag',
  way: 'Weg',
  recordButton: 'Als bezahlt eintragen',
  refundButton: 'Als zurückgezahlt eintragen',
  really: 'Es war wirklich mehr',

  months: {
    month: 'Geld vom',
    download: 'Als CSV herunterladen',
    none: 'Zahlungen und Rechnungen nach Monaten stehen hier, sobald es welche gibt.',
  },

  book: {
    owing: 'Geld offen',
    open: 'Zu zahlen',
    nothing: 'nichts',
    back: (sum) => `${sum} zurückzuzahlen`,
    card: 'Auffädeln',
  },

  invoices: {
    title: 'Rechnung oder Quittung',
    names: { invoice: 'Rechnung', 'credit-note': 'Stornorechnung' },
    line: (name, number, day) => `${name} ${number}, ${day}`,
    takesBack: (number) => `nimmt ${number} zurück`,
    issue: 'Rechnung ausstellen',
    hint: 'Einmal ausgestellt, bleibt sie, wie sie ist, mit einer eigenen Nummer; was bis dahin kam, steht darauf. Ganz bezahlt, ist sie auch Quittung.',
    rules:
      'Was darauf stehen muss und wie lange sie aufzuheben ist, bestimmt das Steuerrecht an Ihrem Ort; Ihre Angaben kommen aus Laden und Regeln, Rechnungen.',
    differs: (was, now) =>
      `Auf der Rechnung stehen ${was}, die Bestellung macht inzwischen ${now}. Nehmen Sie sie zurück und stellen Sie eine neue aus.`,
    takeBack: 'Zurücknehmen',
    takeBackHint:
      'Eine Stornorechnung mit eigener Nummer nimmt sie ganz zurück; danach lässt sich eine neue ausstellen.',
    takeBackButton: 'Stornorechnung ausstellen',
    missing: (numbers) =>
      `Ausgestellte Rechnungen, die nicht in diesem Buch stehen: ${numbers}. Sie wurden nach der Sicherung ausgestellt, die zurückgespielt wurde; ihre Nummern werden nicht noch einmal vergeben.`,
    eraseHint: 'Die Rechnungen dazu verlieren damit Name und Adresse.',
    eraseKept: (months) =>
      `Die Rechnungen dazu behalten Name und Adresse, bis sie ${months % 12 === 0 ? `${months / 12} Jahre` : `${months} Monate`} alt sind, wie „keep-invoices“ Ihres Ladens sagt; dann führt „Aufbewahren“ sie auf.`,
  },

  events: {
    invoice: (number) => `${number} ausgestellt`,
    payment: (kind, sum, way, day) => `${KIND[kind]}: ${sum} ${BY[way]} am ${day}`,
    address: 'Aufgeschrieben, wohin es geht',
    parcel: (day, carrier) =>
      carrier === '' ? `Paket verschickt am ${day}` : `Paket verschickt am ${day} mit ${carrier}`,
    struck: (sum) => `Gestrichen, aus Versehen eingetragen: ${sum}`,
  },
};
