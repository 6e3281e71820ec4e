/** Letters that the maker sends to a buyer. Drafts: she reads and changes them first. */
import type { Letter, LetterFacts } from '../benchCodes.ts';
import { formatList } from '../format.ts';

const subjects: Readonly<Record<Letter, (facts: LetterFacts) => string>> = {
  question: ({ number, piece }) => `A question about your order ${number}: ${piece}`,
  address: ({ number, piece }) => `Where shall I send your order ${number}: ${piece}?`,
  agreed: ({ number, piece }) => `Your order ${number} is agreed: ${piece}`,
  ready: ({ number, piece }) => `Your order ${number} is ready: ${piece}`,
  sent: ({ number, piece, delivery }) =>
    delivery.by === 'collection'
      ? `Thank you for your order ${number}: ${piece}`
      : `Your order ${number} is on its way: ${piece}`,
};

const counted = ({ quantity, piece }: Pick<LetterFacts, 'quantity' | 'piece'>): string =>
  quantity > 1 ? `${quantity} × ${piece}` : piece;

const measuring = (lengths: readonly string[]): string =>
  lengths.length > 1
    ? `${formatList(lengths, 'en')} from the shortest strand to the longest`
    : (lengths[0] ?? '');

const what = ({ quantity, piece, asItLies, size, lengths, price, withPostage }: LetterFacts): string =>
  [
    `${counted({ quantity, piece })}, ${asItLies ? size : `for ${size}`}, measuring ${measuring(lengths)}`,
    `${price}${quantity > 1 ? ' together' : ''}${withPostage ? ', postage included' : ''}`,
  ].join(', ');

/** Only while something is open. */
const pay = ({ price, paid, open, payment }: LetterFacts): string[] => {
  if (open === null) return [];
  const rest =
    paid === null ? `To pay: ${open}.` : `${paid} of ${price} has come in, thank you. Still to pay: ${open}.`;
  return payment === null ? ['', rest] : ['', `${rest} You can pay here:`, payment];
};

/** Where it goes, so that the buyer can put it right. */
const goes = ({ delivery }: LetterFacts): string[] => {
  if (delivery.by === 'unsaid') return [];
  if (delivery.by === 'post') return ['', 'It goes to:', ...delivery.lines];
  return [
    '',
    delivery.where === null ? 'You come for it yourself.' : `You come for it yourself: ${delivery.where}`,
  ];
};

const travels = ({ parcel }: LetterFacts): string[] => {
  if (parcel === null) return [];
  const { carrier, tracking, link } = parcel;
  const parts = [
    carrier === '' ? '' : `with ${carrier}`,
    tracking === '' ? '' : `tracking number ${tracking}`,
  ];
  const how = `It travels ${parts.filter((part) => part !== '').join(', ')}`;
  return link === null ? [`${carrier === '' ? `Its ${parts[1]}` : how}.`] : [`${how}:`, link];
};

/** The day is the shop's own estimate, and says so. */
const when = ({ due, weeks, asItLies }: LetterFacts): string => {
  if (asItLies && due === null) return 'It lies here finished and is put by for you.';
  return due === null
    ? `It will be with you in about ${weeks === 1 ? 'a week' : `${weeks} weeks`}.`
    : `I expect to have it ready to send by ${due}. That is my own estimate; I will write if anything changes.`;
};

/** Who asked second is told so, and what can be done. */
const second = ({ standing }: LetterFacts): string[] => [
  standing === 'gone'
    ? 'The one that lay here finished has gone to somebody who asked before you, so I can’t promise it to you.'
    : 'Somebody asked for the one that lies here finished before you did. It isn’t settled yet; should it stay here, it is yours.',
  '',
  'I am happy to make one like it, in your own size. If you would like that, tell me your measure, and where you took it.',
];

const bodies: Readonly<Record<Letter, (facts: LetterFacts) => string[]>> = {
  question: (facts) => [
    'Thank you for your order:',
    what(facts),
    '',
    ...(facts.standing === 'gone' || facts.standing === 'asked-before' ? [...second(facts), ''] : []),
    ...(facts.differences.length > 0
      ? [
          'Since you looked, something has changed:',
          ...facts.differences.map((one) => `- ${one}`),
          '',
          'Is that all right for you?',
        ]
      : facts.standing === null || facts.standing === 'lies'
        ? ['Before I string it I would like to ask:', '']
        : []),
  ],
  address: (facts) => [
    'Thank you for your order:',
    what(facts),
    '',
    'Where shall I send it? Please answer with the name on the door, street and number, town, postcode and country. I will then tell you what the postage comes to.',
    ...(facts.collection === null ? [] : ['', `Or come for it yourself: ${facts.collection}`]),
  ],
  agreed: (facts) => [
    facts.asItLies ? 'Thank you. It is yours, as it lies there:' : 'Thank you. I will string it as agreed:',
    what(facts),
    '',
    when(facts),
    ...goes(facts),
    ...pay(facts),
  ],
  ready: (facts) => ['Your piece is strung and checked:', what(facts), ...goes(facts), ...pay(facts)],
  sent: (facts) => [
    facts.delivery.by === 'collection'
      ? `Thank you for coming for ${counted(facts)}.`
      : `${counted(facts)} is in the post.`,
    ...travels(facts),
    ...(facts.delivery.by === 'post' ? goes(facts) : []),
    '',
    'When you have it, try the clasp over a table, and tell me if anything isn’t as it should be.',
    ...pay(facts),
  ],
};

export const letter = {
  subject: (one: Letter, facts: LetterFacts): string => subjects[one](facts),
  body: (one: Letter, facts: LetterFacts): string =>
    [`Dear ${facts.name},`, '', ...bodies[one](facts), '', 'With kind regards', facts.maker, facts.shop].join(
      '\n',
    ),
};
