/** Was für die Bestellungen herauszusuchen und zu kaufen ist, die noch aufzufädeln sind. */
import type { gather as english } from '../en/gather.ts';

export const gather: typeof english = {
  title: 'Was bereitzulegen ist',
  forOrders: (count) =>
    count === 0
      ? 'Keine Bestellung wartet aufs Auffädeln.'
      : count === 1
        ? 'Für 1 Bestellung, die noch aufzufädeln ist, nach dem Stück, wie es jetzt ist.'
        : `Für ${count} Bestellungen, die noch aufzufädeln sind, nach den Stücken, wie sie jetzt sind.`,
  leftOut: 'Nicht dabei, weil sich aus ihnen so nichts auffädeln lässt:',
  buy: 'Zu kaufen',
  pick: 'Suchliste',
  pickHint: 'Die Liste geht von Fach zu Fach. Abgehakt wird auf Papier oder hier.',
  onlyAgreed: 'Nur was vereinbart ist',
  allOpen: 'Alles, was noch aufzufädeln ist',
  columns: {
    tray: 'Fach',
    what: 'Was',
    need: 'Gebraucht',
    have: 'Gezählt',
    buy: 'Zu kaufen',
    orders: 'Für',
  },
  uncounted: '–',
  fromOffcut: (cut, offcut, order) => `${cut} mm für ${order}: aus dem Reststück von ${offcut} mm`,
  metres: (metres, f) => `${f.number(metres, 2)} m`,
};
