/** Briefe der Werkstatt an die Kundschaft: Entwürfe, die sie vorher liest und ändert. */
import type { Letter, LetterFacts } from '../benchCodes.ts';
import { formatList } from '../format.ts';
import type { letter as en } from '../en/letter.ts';

const subjects: Readonly<Record<Letter, (facts: LetterFacts) => string>> = {
  question: ({ number, piece }) => `Eine Frage zu Ihrer Bestellung ${number}: ${piece}`,
  address: ({ number, piece }) => `Wohin darf Ihre Bestellung ${number} gehen: ${piece}?`,
  agreed: ({ number, piece }) => `Ihre Bestellung ${number} ist vereinbart: ${piece}`,
  ready: ({ number, piece }) => `Ihre Bestellung ${number} ist fertig: ${piece}`,
  sent: ({ number, piece, delivery }) =>
    delivery.by === 'collection'
      ? `Vielen Dank für Ihre Bestellung ${number}: ${piece}`
      : `Ihre Bestellung ${number} ist unterwegs: ${piece}`,
};

const counted = ({ quantity, piece }: Pick<LetterFacts, 'quantity' | 'piece'>): string =>
  quantity > 1 ? `${quantity} × ${piece}` : piece;

const measuring = (lengths: readonly string[]): string =>
  lengths.length > 1
    ? `${formatList(lengths, 'de')} vom kürzesten bis zum längsten Strang`
    : (lengths[0] ?? '');

const what = ({ quantity, piece, asItLies, size, lengths, price, withPostage }: LetterFacts): string =>
  [
    `${counted({ quantity, piece })}, ${asItLies ? size : `für ${size}`}, gemessen ${measuring(lengths)}`,
    `${quantity > 1 ? 'zusammen ' : ''}${price}${withPostage ? ', Versand inbegriffen' : ''}`,
  ].join(', ');

/** Nur, solange etwas offen ist. */
const pay = ({ price, paid, open, payment }: LetterFacts): string[] => {
  if (open === null) return [];
  const rest =
    paid === null
      ? `Zu zahlen: ${open}.`
      : `${paid} von ${price} sind angekommen, vielen Dank. Noch zu zahlen: ${open}.`;
  return payment === null ? ['', rest] : ['', `${rest} Bezahlen können Sie hier:`, payment];
};

/** Wohin es geht, damit sie es richtigstellen kann. */
const goes = ({ delivery }: LetterFacts): string[] => {
  if (delivery.by === 'unsaid') return [];
  if (delivery.by === 'post') return ['', 'Es geht an:', ...delivery.lines];
  return [
    '',
    delivery.where === null ? 'Sie holen es selbst ab.' : `Sie holen es selbst ab: ${delivery.where}`,
  ];
};

const travels = ({ parcel }: LetterFacts): string[] => {
  if (parcel === null) return [];
  const { carrier, tracking, link } = parcel;
  const number = tracking === '' ? '' : `Sendungsnummer ${tracking}`;
  const how = [carrier === '' ? '' : `Es reist mit ${carrier}`, number]
    .filter((part) => part !== '')
    .join(', ');
  return link === null ? [`${how}.`] : [`${how}:`, link];
};

/** Der Tag ist die eigene Schätzung der Werkstatt, und so steht er da. */
const when = ({ due, weeks, asItLies }: LetterFacts): string => {
  if (asItLies && due === null) return 'Das Stück liegt hier fertig und ist für Sie zurückgelegt.';
  return due === null
    ? `In etwa ${weeks === 1 ? 'einer Woche' : `${weeks} Wochen`} ist Ihre Bestellung bei Ihnen.`
    : `Bis zum ${due} sollte Ihre Bestellung fertig zum Verschicken sein. Das ist meine eigene Schätzung; ändert sich etwas, schreibe ich Ihnen.`;
};

/** Wer als Zweite gefragt hat, erfährt es, und was möglich ist. */
const second = ({ standing }: LetterFacts): string[] => [
  standing === 'gone'
    ? 'Das Stück, das hier fertig lag, ist an jemanden gegangen, der vor Ihnen gefragt hat; Ihnen kann ich es nicht mehr versprechen.'
    : 'Nach dem Stück, das hier fertig liegt, hat vor Ihnen schon jemand gefragt. Abgemacht ist noch nichts; bleibt es hier, gehört es Ihnen.',
  '',
  'Gern fertige ich Ihnen ein gleiches, in Ihrer eigenen Größe. Schreiben Sie mir dann bitte Ihr Maß, und wo Sie es genommen haben.',
];

const bodies: Readonly<Record<Letter, (facts: LetterFacts) => string[]>> = {
  question: (facts) => [
    'vielen Dank für Ihre Bestellung:',
    what(facts),
    '',
    ...(facts.standing === 'gone' || facts.standing === 'asked-before' ? [...second(facts), ''] : []),
    ...(facts.differences.length > 0
      ? [
          'Seit Sie nachgesehen haben, hat sich etwas geändert:',
          ...facts.differences.map((one) => `- ${one}`),
          '',
          'Ist Ihnen das so recht?',
        ]
      : facts.standing === null || facts.standing === 'lies'
        ? ['Bevor ich auffädele, möchte ich fragen:', '']
        : []),
  ],
  address: (facts) => [
    'vielen Dank für Ihre Bestellung:',
    what(facts),
    '',
    'Wohin darf ich sie schicken? Bitte antworten Sie mit dem Namen an der Tür, Straße und Hausnummer, Postleitzahl, Ort und Land. Dann schreibe ich Ihnen, was der Versand kostet.',
    ...(facts.collection === null ? [] : ['', `Oder holen Sie es selbst ab: ${facts.collection}`]),
  ],
  agreed: (facts) => [
    facts.asItLies
      ? 'vielen Dank. Das Stück gehört Ihnen, so wie es daliegt:'
      : 'vielen Dank. Ich fädele auf wie vereinbart:',
    what(facts),
    '',
    when(facts),
    ...goes(facts),
    ...pay(facts),
  ],
  ready: (facts) => ['Ihr Stück ist aufgefädelt und geprüft:', what(facts), ...goes(facts), ...pay(facts)],
  sent: (facts) => [
    facts.delivery.by === 'collection'
      ? `vielen Dank, dass Sie ${counted(facts)} abgeholt haben.`
      : `${counted(facts)} ist in der Post.`,
    ...travels(facts),
    ...(facts.delivery.by === 'post' ? goes(facts) : []),
    '',
    'Probieren Sie den Verschluss bitte über einem Tisch, und schreiben Sie mir, wenn etwas nicht stimmt.',
    ...pay(facts),
  ],
};

export const letter: typeof en = {
  subject: (one: Letter, facts: LetterFacts): string => subjects[one](facts),
  body: (one: Letter, facts: LetterFacts): string =>
    [
      `Guten Tag ${facts.name},`,
      '',
      ...bodies[one](facts),
      '',
      'Herzliche Grüße',
      facts.maker,
      facts.shop,
    ].join('\n'),
};
