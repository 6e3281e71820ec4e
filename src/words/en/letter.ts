/** Letters that the maker sends to a buyer. Drafts: she reads and changes them first. */
import type { Letter, LetterFacts } from '../benchCodes.ts';

const subjects: Readonly<Record<Letter, (facts: LetterFacts) => string>> = {
  question: ({ number, piece }) => `A question about your order ${number}: ${piece}`,
  agreed: ({ number, piece }) => `Your order ${number} is agreed: ${piece}`,
  ready: ({ number, piece }) => `Your order ${number} is ready: ${piece}`,
  sent: ({ number, piece }) => `Your order ${number} is on its way: ${piece}`,
};

const what = ({ piece, size, length, price }: LetterFacts): string =>
  `${piece}, for ${size}, finished length ${length}, ${price}`;

const pay = ({ payment }: LetterFacts): string[] =>
  payment === null ? [] : ['', 'You can pay here:', payment];

/** The day is the shop's own estimate, and says so. */
const when = ({ due, weeks }: LetterFacts): string =>
  due === null
    ? `It will be with you in about ${weeks === 1 ? 'a week' : `${weeks} weeks`}.`
    : `I expect to have it ready to send by ${due}. That is my own estimate; I will write if anything changes.`;

const bodies: Readonly<Record<Letter, (facts: LetterFacts) => string[]>> = {
  question: (facts) => [
    'Thank you for your order:',
    what(facts),
    '',
    ...(facts.differences.length > 0
      ? [
          'Since you looked, something has changed:',
          ...facts.differences.map((one) => `- ${one}`),
          '',
          'Is that all right for you?',
        ]
      : ['Before I string it I would like to ask:', '']),
  ],
  agreed: (facts) => ['Thank you. I will string it as agreed:', what(facts), '', when(facts), ...pay(facts)],
  ready: (facts) => ['Your piece is strung and checked:', what(facts), ...pay(facts)],
  sent: (facts) => [
    `${facts.piece} is in the post.`,
    '',
    'When it arrives, try the clasp over a table, and tell me if anything isn’t as it should be.',
  ],
};

export const letter = {
  subject: (one: Letter, facts: LetterFacts): string => subjects[one](facts),
  body: (one: Letter, facts: LetterFacts): string =>
    [`Dear ${facts.name},`, '', ...bodies[one](facts), '', 'With kind regards', facts.maker, facts.shop].join(
      '\n',
    ),
};
