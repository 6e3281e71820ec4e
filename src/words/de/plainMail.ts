/** Die E-Mails, die die Seite eines Stücks ohne JavaScript anbietet. Die Werkbank liest sie nach denselben Wörtern. */
import type { plainMail as english } from '../en/plainMail.ts';

const labels = {
  size: 'Größe',
  comesOut: 'Wird',
  price: 'Preis',
  hand: 'Die Hand, die den Verschluss bedient',
  name: 'Mein Name',
  sendTo: 'Lieferadresse',
};
const hands = { right: 'rechts', left: 'links' };
const greeting = 'Guten Tag,';
const wish = (name: string): string => `ich möchte ${name} bestellen.`;
const mark = (revision: string): string => `Für die Werkstatt, bitte stehen lassen: (${revision})`;

export const plainMail: typeof english = {
  labels,
  hands,
  greeting,
  wish,
  mark,
  subject: (name, size) => `Bestellung: ${name}, ${size}`,
  askSubject: (name) => `Zu ${name}`,
  body: (args) =>
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
  askBody: (name) => [greeting, '', `ich habe eine Frage zu ${name}.`, ''].join('\n'),
};
