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
const wish = (name: string, revision: string): string => `ich möchte ${name} (${revision}) bestellen.`;

export const plainMail: typeof english = {
  labels,
  hands,
  greeting,
  wish,
  subject: (name, size) => `Bestellung: ${name}, ${size}`,
  askSubject: (name) => `Zu ${name}`,
  body: (args) =>
    [
      greeting,
      '',
      wish(args.name, args.revision),
      '',
      `${labels.size}: ${args.size}`,
      `${labels.comesOut}: ${args.comesOut}`,
      `${labels.price}: ${args.price}`,
      `${labels.hand}: ${hands.right} / ${hands.left}`,
      '',
      `${labels.name}:`,
      `${labels.sendTo}:`,
      '',
    ].join('\n'),
  askBody: (name) => [greeting, '', `ich habe eine Frage zu ${name}.`, ''].join('\n'),
};
