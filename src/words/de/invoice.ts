/** Was Rechnung und Gutschrift der Kundschaft sagen. */
import type { PaymentKind, PaymentWay } from '../benchCodes.ts';
import type { invoice as en } from '../en/invoice.ts';

const BY: Readonly<Record<PaymentWay, string>> = {
  transfer: 'durch Überweisung',
  card: 'mit Karte',
  cash: 'in bar',
  other: 'auf anderem Weg',
};
const MOVED: Readonly<Record<PaymentKind, string>> = { paid: 'Bezahlt', refunded: 'Zurückgezahlt' };

export const invoice: typeof en = {
  title: (kind, number, paid) =>
    kind === 'credit-note'
      ? `Stornorechnung ${number}`
      : paid
        ? `Rechnung und Quittung ${number}`
        : `Rechnung ${number}`,
  facts: {
    number: 'Nummer',
    issued: 'Ausgestellt am',
    order: 'Bestellung',
    ordered: 'Bestellt am',
    taxNumber: 'Steuernummer',
  },
  seller: 'Von',
  buyer: 'Für',
  erased: 'Name und Adresse wurden gelöscht.',
  takesBack: (number) => `Sie nimmt die Rechnung ${number} ganz zurück.`,
  takenBack: (number) => `Zurückgenommen durch Stornorechnung ${number}.`,
  columns: { what: 'Was', quantity: 'Wie viele', each: 'Je Stück', sum: 'Betrag' },
  item: (piece, size) => `${piece}, für ${size}`,
  postage: 'Versand',
  total: 'Zusammen',
  included: (rate) => `Darin Umsatzsteuer, ${rate} %`,
  net: 'Ohne Steuer',
  notRegistered: 'Nicht umsatzsteuerpflichtig; es wird keine Umsatzsteuer berechnet.',
  moved: (kind, way, day) => `${MOVED[kind]} ${BY[way]} am ${day}`,
  open: 'Noch zu zahlen',
  toPayBack: 'Geht an Sie zurück',
};
