/**
 * The e-mails that a piece's page offers without JavaScript. The bench reads
 * them by the same labels, so that what is changed here is still understood.
 */
const labels = {
  size: 'Size',
  comesOut: 'Comes out at',
  price: 'Price',
  hand: 'The hand that works the clasp',
  name: 'My name',
  sendTo: 'Send it to',
};
const hands = { right: 'right', left: 'left' };
const greeting = 'Hello,';
const wish = (name: string): string => `I should like to order ${name}.`;
/** The piece's mark, without which a changed piece would pass unseen. */
const mark = (revision: string): string => `For the maker, please leave this line: (${revision})`;

export const plainMail = {
  labels,
  hands,
  greeting,
  wish,
  mark,
  subject: (name: string, size: string): string => `Order: ${name}, ${size}`,
  askSubject: (name: string): string => `About ${name}`,
  /** `ready`: for the one that lies finished, of which no hand is asked. */
  body: (args: {
    name: string;
    revision: string;
    size: string;
    comesOut: string;
    price: string;
    ready?: boolean;
  }): string =>
    [
      greeting,
      '',
      wish(args.name),
      '',
      `${labels.size}: ${args.size}`,
      `${labels.comesOut}: ${args.comesOut}`,
      `${labels.price}: ${args.price}`,
      ...(args.ready ? [] : [`${labels.hand}: ${hands.right} / ${hands.left}`]),
      '',
      mark(args.revision),
      '',
      `${labels.name}:`,
      `${labels.sendTo}:`,
      '',
    ].join('\n'),
  askBody: (name: string): string => [greeting, '', `I have a question about ${name}.`, ''].join('\n'),
};
