/** Bestellungen von Hand, schlichte E-Mails dafür gelesen, und die Kundschaft. */
import type { hand as english } from '../en/hand.ts';
import type { HandProblem } from '../handProblem.ts';
import type { PlainRemark } from '../plainRemark.ts';
import { sentenceOf, type Sentences } from '../sentence.ts';
import { order } from './order.ts';
import { sized } from './sized.ts';

const problems: Sentences<HandProblem> = {
  'piece-missing': () => 'Wählen Sie das Stück.',
  size: ({ problem }, f) => sentenceOf(sized.unread, problem, f),
  'cannot-be-made': () => 'In dieser Größe lässt es sich nicht machen; was möglich ist, steht unten.',
  'measure-of-kind': ({ kind }) =>
    `${{ necklace: 'Eine Kette', bracelet: 'Ein Armband', anklet: 'Eine Fußkette', collar: 'Ein Halsband' }[kind]} richtet sich nicht danach. Wählen Sie ein anderes Maß oder „wie beim Stück üblich“.`,
  'not-ready': () => 'Nach der Datei des Stücks liegt keines fertig da (status). Wählen Sie „nach Maß“.',
  'one-ready': () =>
    'Eines liegt fertig da. Nehmen Sie nur dieses auf, oder lassen Sie sie nach Maß fertigen.',
  'closed-already': () =>
    'Das Stück, das fertig daliegt, ist schon geschlossen. Wählen Sie „wie gezeigt“ oder „nach Maß“.',
  'part-not-offered': () =>
    'Das bietet die Datei des Stücks nicht an (instead). Wählen Sie etwas anderes oder „wie gezeigt“.',
  buyer: ({ problem }, f) => sentenceOf(order.formProblems, problem, f),
  'no-way-back': () =>
    'Schreiben Sie eine E-Mail-Adresse oder eine Telefonnummer, damit Sie antworten können.',
  'way-missing': () => 'Sagen Sie, wie die Bestellung zu Ihnen kam.',
  'line-missing': () => 'Schreiben Sie Straße und Hausnummer, oder was dafür steht.',
  'town-missing': () => 'Schreiben Sie den Ort.',
  'country-missing': () => 'Wählen Sie das Land.',
  'not-taken': () =>
    'Das ist zu lang oder enthält Zeichen, die sich nicht aufheben lassen. Kürzen Sie es oder schreiben Sie es neu.',
};

const remarks: Sentences<PlainRemark> = {
  empty: () =>
    'Alles: Es war nichts eingefügt. Gehen Sie zurück und fügen Sie die ganze E-Mail ein, oder füllen Sie das Formular aus',
  piece: () => 'Welches Stück gemeint ist',
  size: () => 'Die Größe',
  'two-sizes': ({ first, second }) => `Welche Größe gemeint ist: „${first}“ oder „${second}“`,
  hand: () => 'Welche Hand den Verschluss bedient',
  name: () => 'Der Name',
  email: () => 'Die E-Mail-Adresse',
  revision: () =>
    'Das Stück wurde geändert, seit die E-Mail vorbereitet wurde: Der Preis darin kann ein alter sein',
  address: () => 'Die Adresse, soweit sich ihre Teile trennen ließen',
  quantity: () => 'Wie viele: eins, weil nichts gesagt ist',
  sit: () => 'Der Sitz: bequem, wie in der Größentabelle des Ladens',
};

export const hand: typeof english = {
  title: 'Eine Bestellung von Hand',
  lead: 'Vom Markt, vom Telefon oder aus einer E-Mail ohne Code: nach denselben Regeln berechnet wie im Laden und aufgehoben wie jede andere.',
  piece: 'Stück',
  choosePiece: 'Wählen …',
  made: 'Im Laden',
  past: 'Wird nicht mehr gemacht',
  how: 'Wie es zu haben ist',
  mades: { 'to-measure': 'Nach Maß', ready: 'So, wie es fertig daliegt' },
  parts: { clasp: 'Verschluss', pendant: 'Anhänger' },
  asListed: (name) => `Wie gezeigt: ${name}`,
  liesThere: 'So, wie es daliegt: Ein Maß ist nicht nötig.',
  thePiece: 'Das Stück und seine Größe',
  of: 'Wovon das Maß ist',
  usualOf: 'Wie beim Stück üblich',
  size: 'Größe, wie sie gesagt wurde',
  pick: 'Wenn keine genau passt',
  quantity: 'Wie viele',
  sizeIt: 'Berechnen',
  sizeAgain: 'Neu berechnen',
  shown: 'Was dabei herauskommt',
  changes: 'Anders als das gelistete Stück',
  price: 'Preis für eines',
  together: 'Zusammen',
  postage: 'Davon Porto',
  theBuyer: 'Für wen es ist',
  name: 'Name',
  email: 'E-Mail-Adresse',
  phone: 'Telefon, falls es keine E-Mail gibt',
  phoneLine: (phone) => `Telefon: ${phone}`,
  note: 'Bemerkung',
  lang: 'In welcher Sprache Sie ihr schreiben',
  way: 'Wie sie kam',
  chooseWay: 'Wählen …',
  ways: { fair: 'Auf einem Markt', telephone: 'Am Telefon', mail: 'Mit einer schlichten E-Mail' },
  delivery: 'Wie es zu ihr kommt',
  deliveries: { unsaid: 'Noch nicht gesagt', collection: 'Sie holt es ab', post: 'Mit der Post' },
  later: {
    missing: 'Es gibt noch keine Anschrift. Eine Nachricht, die danach fragt, liegt unten bereit.',
    summary: 'Aufschreiben, wohin es geht',
    post: 'Es geht dorthin',
    collect: 'Es wird abgeholt',
  },
  address: 'Adresse, falls es verschickt wird',
  to: 'Name auf dem Paket, falls ein anderer',
  line1: 'Straße und Hausnummer',
  line2: 'Zweite Zeile, falls es eine gibt',
  town: 'Ort',
  region: 'Region oder Bundesland',
  postcode: 'Postleitzahl',
  country: 'Land',
  chooseCountry: 'Wählen …',
  enter: 'Ins Buch eintragen',
  problem: (one, f) => sentenceOf(problems, one, f),
  wrong: 'Noch nicht eingetragen. Bitte ansehen:',
  look: 'Sehen Sie an, was dabei herauskommt, und tragen Sie es dann ein.',
  lookAgain:
    'Es kommt etwas anderes heraus als vorher gezeigt. Sehen Sie es noch einmal an, und tragen Sie es dann ein.',
  taken: (number) =>
    `Bestellung ${number} steht schon im Buch, mit anderen Worten. Ist dies eine weitere, tragen Sie sie noch einmal ein: Sie hat jetzt ihre eigene Nummer.`,

  restring: 'Neu auffädeln',
  restringing: (number) => `Neu aufgefädelt wird das Stück der Bestellung ${number}`,
  restringTakes: (wire, parts) =>
    `Perlen, Verschluss und Ring werden wieder verwendet. Neu: ${wire} Draht, ${parts}. Zählen Sie die Perlen, wenn das Stück kommt; was abgenutzt oder zerbrochen ist, ist hier nicht gerechnet.`,
  restringPrice:
    'Der Preis folgt Ihrer Regel für neuen Draht, Quetschperlen und ihre Hüllen, Verpackung und die Minuten eines neuen Stücks: eine Schätzung, die zu vereinbaren ist.',
  restringNote: (number) =>
    `Neu aufzufädeln: das Stück der Bestellung ${number}. Die Perlen werden wieder verwendet.`,
  again: 'Noch einmal machen',

  fromMail: 'Aus einer E-Mail',
  fromMailHint:
    'Fügen Sie eine E-Mail ohne Code ein. Was sich darin lesen lässt, kommt ins Formular, und Sie sehen es durch.',
  mailText: 'Der Text der E-Mail',
  readMail: 'Ins Formular lesen',
  mailBeside: 'Die E-Mail, aus der es gelesen ist',
  readHint:
    'Aus der E-Mail gelesen, die auch hier steht, soweit es geht. Eingetragen wird nichts, bevor Sie es angesehen haben.',
  unread: 'Nicht zu lesen, oder stillschweigend angenommen:',
  remark: (one, f) => sentenceOf(remarks, one, f),
  toForm: 'Im Formular durchsehen',

  buyers: {
    title: 'Kundschaft',
    find: 'Suchen',
    findHint: 'Name oder E-Mail-Adresse',
    apply: 'Suchen',
    none: 'Niemand passt dazu.',
    empty: 'Noch keine Kundschaft.',
    count: (count) => (count === 1 ? '1 Käuferin' : `${count} Käuferinnen`),
    more: (count) => `Und ${count} weitere: Suchen Sie nach einem Namen.`,
    columns: { name: 'Name', email: 'E-Mail', orders: 'Bestellungen', last: 'Zuletzt' },
    noEmail: 'keine Adresse',
    orders: 'Was sie bestellt hat',
    orderColumns: {
      number: 'Nummer',
      piece: 'Stück',
      size: 'Größe',
      hand: 'Hand',
      received: 'Eingegangen',
      state: 'Stand',
      do: 'Noch einmal',
    },
    sizes: 'Ihre Maße',
    sizesHint: 'Wie sie sie angab, das neueste von jedem zuerst.',
    hand: 'Die Hand, die den Verschluss bedient',
    hands: { left: 'links', right: 'rechts' },
    when: (size, day) => `${size}, ${day}`,
    againFor: (number) => `Noch einmal machen: das Stück der Bestellung ${number}`,
    restringFor: (number) => `Neu auffädeln: das Stück der Bestellung ${number}`,
    names: 'Auch als',
    erase: 'Alles davon löschen',
    eraseHint: (count) =>
      `Name, Adresse, Bemerkungen und wessen Maße es sind, gehen für immer, in ${count === 1 ? 'ihrer Bestellung' : `allen ${count} Bestellungen`}. Stücke, Zahlen und Daten bleiben.`,
    reallyErase: 'Ja, alles für immer löschen',
    erased: (count) =>
      `Gelöscht: In ${count === 1 ? '1 Bestellung' : `${count} Bestellungen`} steht nirgends mehr, wessen sie war.`,
    page: 'Die Käuferin, und was sie früher bestellte',
    write: 'Eine E-Mail schreiben',
  },
};
