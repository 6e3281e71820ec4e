/** Briefe der Werkstatt an die Kundschaft: Entwürfe, die sie vorher liest und ändert. */
import type { Letter, LetterFacts } from '../benchCodes.ts';
import type { letter as en } from '../en/letter.ts';

const subjects: Readonly<Record<Letter, (facts: LetterFacts) => string>> = {
  question: ({ number, piece }) => `Eine Frage zu Ihrer Bestellung ${number}: ${piece}`,
  agreed: ({ number, piece }) => `Ihre Bestellung ${number} ist vereinbart: ${piece}`,
  ready: ({ number, piece }) => `Ihre Bestellung ${number} ist fertig: ${piece}`,
  sent: ({ number, piece }) => `Ihre Bestellung ${number} ist unterwegs: ${piece}`,
};

const what = ({ piece, size, length, price }: LetterFacts): string =>
  `${piece}, für ${size}, fertige Länge ${length}, ${price}`;

const pay = ({ payment }: LetterFacts): string[] =>
  payment === null ? [] : ['', 'Bezahlen können Sie hier:', payment];

/** Der Tag ist die eigene Schätzung der Werkstatt, und so steht er da. */
const when = ({ due, weeks }: LetterFacts): string =>
  due === null
    ? `In etwa ${weeks === 1 ? 'einer Woche' : `${weeks} Wochen`} ist sie bei Ihnen.`
    : `Bis zum ${due} sollte sie fertig zum Verschicken sein. Das ist meine eigene Schätzung; ändert sich etwas, schreibe ich Ihnen.`;

const bodies: Readonly<Record<Letter, (facts: LetterFacts) => string[]>> = {
  question: (facts) => [
    'vielen Dank für Ihre Bestellung:',
    what(facts),
    '',
    ...(facts.differences.length > 0
      ? [
          'Seit Sie nachgesehen haben, hat sich etwas geändert:',
          ...facts.differences.map((one) => `- ${one}`),
          '',
          'Ist Ihnen das so recht?',
        ]
      : ['Bevor ich auffädele, möchte ich fragen:', '']),
  ],
  agreed: (facts) => [
    'vielen Dank. Ich fädele sie auf wie vereinbart:',
    what(facts),
    '',
    when(facts),
    ...pay(facts),
  ],
  ready: (facts) => ['Ihr Stück ist aufgefädelt und geprüft:', what(facts), ...pay(facts)],
  sent: (facts) => [
    `${facts.piece} ist in der Post.`,
    '',
    'Probieren Sie den Verschluss bitte über einem Tisch, und schreiben Sie mir, wenn etwas nicht stimmt.',
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
