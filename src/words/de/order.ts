/** Was auf dem Weg einer Bestellung gesagt wird: Formular, Stand, E-Mail und Zettel. */
import type { Measure } from '#core/design/choice.ts';
import { formatList, type Format } from '../format.ts';
import { orderTotalMinor } from '#core/sizing/price/total.ts';
import { addressLines } from '../address.ts';
import type { order as english } from '../en/order.ts';
import {
  handIn,
  type FormProblem,
  type MeasuredFacts,
  type OrderFacts,
  type OrderRow,
  type SendProblem,
  type SizeFacts,
} from '../orderFacts.ts';
import type { Sentences } from '../sentence.ts';
import { strandLengthsText, strandsDiffer } from '../strandLengths.ts';

const BY: Readonly<Record<Measure['of'], (text: string) => string>> = {
  wrist: (text) => `${text} ums Handgelenk`,
  ankle: (text) => `${text} um die Fessel`,
  neck: (text) => `${text} um den Hals`,
  length: (text) => `${text} fertige Länge`,
};
const AS_IT_LIES = 'so, wie es daliegt';
const OF_SHORTEST = (text: string): string => `${text} fertige Länge des kürzesten Strangs`;
const HAND = { left: 'die linke Hand', right: 'die rechte Hand', either: 'jede Hand' };
const SIT = { snug: 'anliegend', easy: 'bequem', loose: 'locker' };

/** What was asked for: the measure as written, of what it is, and of which strand. */
const sizeText = (f: Format, { measure, made, shown }: SizeFacts): string => {
  if (made === 'ready') return AS_IT_LIES;
  const say = measure.of === 'length' && strandsDiffer(f, shown) ? OF_SHORTEST : BY[measure.of];
  return say(measure.text);
};

/** How long it comes out, every strand where they differ. */
const lengthRow = (f: Pick<Format, 'length'>, shown: MeasuredFacts): OrderRow => {
  const { lengthMm, strandsMm } = shown;
  if (!strandsDiffer(f, shown)) return { label: 'Fertige Länge', value: f.length(lengthMm) };
  return strandsMm.length === 0
    ? { label: 'Längster Strang', value: f.length(lengthMm) }
    : { label: 'Fertige Längen, der kürzeste Strang zuerst', value: strandLengthsText(f, strandsMm) };
};

/** Its figures as a tape shows them, on slip, e-mail and bench card alike. */
const measured = (f: Pick<Format, 'length'>, shown: MeasuredFacts): OrderRow[] => [
  lengthRow(f, shown),
  {
    label: strandsDiffer(f, shown) ? 'Innenumfang, kürzester Strang' : 'Innenumfang',
    value: f.length(shown.insideGirthMm),
  },
];

/** Parts chosen instead of the listed ones. */
const insteadRows = ({ instead: { clasp, pendant } }: OrderFacts): OrderRow[] => [
  ...(clasp.name === '' ? [] : [{ label: 'Verschluss', value: clasp.name }]),
  ...(pendant.name === '' ? [] : [{ label: 'Anhänger', value: pendant.name }]),
];

/** Where it goes, and what that costs with it. */
const delivered = (f: Format, { delivery, shown, quantity }: OrderFacts): OrderRow[] => [
  ...(delivery.by === 'collection' ? [{ label: 'Lieferung', value: 'wird abgeholt' }] : []),
  ...(delivery.by === 'post'
    ? [
        { label: 'Geht an', value: addressLines(delivery.to, f.country(delivery.to.country)).join(', ') },
        { label: 'Versand', value: shown.postageMinor === 0 ? 'kostenlos' : f.money(shown.postageMinor) },
      ]
    : []),
  ...(quantity > 1 || shown.postageMinor > 0
    ? [{ label: 'Zusammen', value: f.money(orderTotalMinor(shown, quantity)) }]
    : []),
];

const formProblems: Sentences<FormProblem> = {
  'name-missing': () => 'Bitte schreiben Sie Ihren Namen, damit klar ist, für wen es ist.',
  'name-long': ({ most }, f) => `Bitte höchstens ${f.number(most)} Zeichen für den Namen.`,
  'email-missing': () => 'Bitte schreiben Sie Ihre E-Mail-Adresse, damit die Werkstatt antworten kann.',
  'email-wrong': () => 'Das ist keine E-Mail-Adresse. Eine sieht aus wie name@example.org.',
  'note-long': ({ most }, f) => `Bitte höchstens ${f.number(most)} Zeichen; mehr geht danach per E-Mail.`,
  quantity: ({ most }, f) => `Bitte eine ganze Zahl von 1 bis ${f.number(most)}.`,
  'line1-missing': () => 'Bitte Straße und Hausnummer oder das Haus.',
  'town-missing': () => 'Bitte den Ort.',
  'postcode-missing': () => 'Bitte die Postleitzahl.',
  'country-missing': () => 'Bitte das Land.',
  'part-long': ({ most }, f) => `Bitte höchstens ${f.number(most)} Zeichen.`,
  'parcel-heavy': ({ mostG }, f) =>
    `So viele wiegen mehr, als ein Paket fasst (${f.number(mostG)} g). Bestellen Sie weniger und fragen Sie in Ihrer Nachricht.`,
  stock: () =>
    'Für so viele von genau diesem Stück reichen die Perlen nicht. Bestellen Sie weniger und fragen Sie in Ihrer Nachricht.',
};

const sendProblems: Sentences<SendProblem> = {
  offline: () => 'Im Augenblick ist kein Netz da.',
  'no-answer': () => 'Der Laden hat nicht geantwortet.',
  'shop-trouble': () => 'Der Laden kann gerade keine Bestellungen annehmen.',
  'too-many': () => 'Beim Laden kommen gerade viele Bestellungen auf einmal an.',
  'ready-gone': () =>
    'Das Stück, das fertig dalag, ist inzwischen jemandem versprochen und kann nicht mehr Ihres werden. Ein gleiches lässt sich fertigen: Bestellen Sie es in Ihrer Größe.',
  'turned-down': ({ reason }) =>
    reason === '' ? 'Der Laden konnte sie so nicht annehmen.' : `Der Laden sagt: „${reason}“`,
};

export const order: typeof english = {
  formProblems,
  sendProblems,
  askInstead: 'Per E-Mail nach diesem Stück fragen',
  title: 'Ihre Bestellung',
  name: 'Ihr Name',
  email: 'Ihre E-Mail-Adresse',
  note: 'Eine Nachricht an die Werkstatt (wenn Sie mögen)',
  noteHint: 'Bis wann Sie es brauchen, für wen es ist, was sonst zu wissen wäre.',
  quantity: 'Wie viele',
  delivery: {
    title: 'Wie es zu Ihnen kommt',
    ways: { post: 'Mit der Post', collection: 'Ich hole es ab' },
    parts: {
      name: 'Für wen, wenn nicht für Sie',
      line1: 'Straße und Hausnummer',
      line2: 'Wohnung, Gebäude (falls nötig)',
      town: 'Ort',
      region: 'Region, Bundesstaat (falls nötig)',
      postcode: 'Postleitzahl',
      country: 'Land',
    },
    collect: (where) => `Sie holen es ab ${where}.`,
    postage: (f, country, postageMinor, totalMinor) =>
      `Versand, ${f.country(country)}: ${postageMinor === 0 ? 'kostenlos' : f.money(postageMinor)}. Zusammen ${f.money(totalMinor)}.`,
  },
  trap: 'Dieses Feld leer lassen',
  delivered,
  summary: 'Das bestellen Sie',
  send: 'Bestellung senden',
  prepare: 'Bestellung vorbereiten',
  sendHint:
    'Noch wird nichts bezahlt. Die Werkstatt liest die Bestellung, schreibt Ihnen und spricht sie erst mit Ihnen ab.',
  draftKept: 'Was Sie hier schreiben, bleibt auf diesem Gerät, bis Sie bestellen.',
  clearForm: 'Formular leeren',
  privacy: 'Name, Adresse und Nachricht gehen an die Werkstatt und an niemanden sonst.',
  privacyForm: (host) =>
    `Name, Adresse und Nachricht gehen über den Formulardienst ${host}, der sie weiterreicht, an die Werkstatt.`,
  total: 'Zusammen',
  orders: 'Ihre Bestellungen auf diesem Gerät',
  numberIs: (number) => `Bestellung ${number}`,
  states: {
    sending: () => 'Wird gesendet …',
    waiting: (why) =>
      `Noch nicht gesendet. ${why} Sie bleibt auf diesem Gerät und wird von selbst noch einmal versucht, auch wenn Sie diese Seite schließen und wiederkommen.`,
    refused: (why) =>
      `Nicht angenommen. ${why} Bitte senden Sie sie stattdessen per E-Mail; verloren ist nichts.`,
    mail: () =>
      'Bereit für die E-Mail: Öffnen Sie sie, lesen Sie sie durch und senden Sie sie aus Ihrem Postfach. Noch ist sie nicht gesendet.',
    silent: () =>
      'Es kam keine Antwort; vielleicht ist sie angekommen, vielleicht nicht. Bitte senden Sie sie auch per E-Mail: Sie trägt dieselbe Nummer und zählt einmal.',
    handed: () =>
      'Dem Formulardienst des Ladens übergeben, der sie weiterreicht. Bestätigt ist sie noch nicht; hören Sie ein paar Tage nichts, senden Sie sie auch per E-Mail. Sie zählt einmal.',
    received: (date) => `Die Werkstatt hat sie, ${date}. Sie bekommen Antwort.`,
    mailed: () => 'Sie haben sie per E-Mail gesendet. Sie bekommen Antwort.',
  },
  differs:
    'Das Stück oder sein Preis hat sich geändert, seit diese Seite entstand; Sie hören davon, bevor etwas gefädelt wird.',
  askedBefore:
    'Nach dem Stück, das fertig daliegt, hat vor Ihnen schon jemand gefragt. Nimmt es dort niemand, gehört es Ihnen; die Werkstatt schreibt Ihnen.',
  notKept:
    'Dieser Browser behält nichts, sobald die Seite zu ist. Lassen Sie sie offen, bis die Bestellung angekommen ist, oder senden Sie sie per E-Mail.',
  tryNow: 'Jetzt noch einmal versuchen',
  openMail: 'Als E-Mail öffnen',
  longMail: (email) =>
    `Diese Bestellung ist lang, und manche Mailprogramme schneiden eine E-Mail ab, die von einer Seite aus geöffnet wird. Kopieren Sie lieber ihren Text in eine E-Mail an ${email}, oder laden Sie die Bestellung herunter und hängen Sie sie an.`,
  copyMail: 'Text der E-Mail kopieren',
  copied: 'Kopiert.',
  copyByHand: 'Kopieren Sie diesen Text in eine E-Mail an den Laden:',
  download: 'Bestellung herunterladen',
  inMySize: 'Eines in meiner Größe fertigen lassen',
  slip: 'Zettel zum Aufheben',
  iSentIt: 'Ich habe sie gesendet',
  remove: 'Von diesem Gerät löschen',
  reallyRemove: 'Löschen: Die Werkstatt hat sie noch nicht',
  mailSubject: (number, piece) => `Bestellung ${number}: ${piece}`,
  mailGreeting: (shop) => `Eine Bestellung für ${shop}`,
  mailClosing: {
    'to-measure': 'Bitte schreiben Sie mir, bevor Sie es fädeln.',
    ready: 'Bitte schreiben Sie mir, bevor Sie es abschicken.',
  },
  mailFoot:
    'Die Zeilen unten enthalten die ganze Bestellung für das Auftragsbuch. Bitte lassen Sie sie, wie sie sind.',
  size: sizeText,
  measured,
  /** In the size's place, for a piece that lies finished. */
  asItLies: AS_IT_LIES,
  /** The piece's name, with the parts chosen instead of the listed ones. */
  withParts: (name, parts) => (parts.length === 0 ? name : `${name} (mit ${formatList(parts, 'de')})`),
  rows: (f, order, pieceName) => {
    const { measure, sit, quantity, shown, buyer } = order;
    const ready = order.made === 'ready';
    return [
      { label: 'Stück', value: pieceName },
      {
        label: 'Maß',
        value: sizeText(f, order),
      },
      ...insteadRows(order),
      ...(ready || measure.of === 'length' ? [] : [{ label: 'Sitz', value: SIT[sit] }]),
      ...(ready ? [] : [{ label: 'Verschluss für', value: HAND[handIn(order)] }]),
      ...measured(f, shown),
      { label: 'Preis', value: f.money(shown.priceMinor) },
      { label: 'Wie viele', value: f.number(quantity) },
      ...delivered(f, order),
      ...(buyer.name === '' ? [] : [{ label: 'Name', value: buyer.name }]),
      ...(buyer.email === '' ? [] : [{ label: 'E-Mail', value: buyer.email }]),
      ...(buyer.note === '' ? [] : [{ label: 'Nachricht', value: buyer.note }]),
    ];
  },
};
