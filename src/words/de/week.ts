/** Die Woche der Macherin: was fällig ist, was es braucht, was kam und was es brachte. */
import type { week as english } from '../en/week.ts';
import { formatDate } from '../format.ts';

const orders = (count: number): string => (count === 1 ? '1 Bestellung' : `${count} Bestellungen`);

export const week: typeof english = {
  title: 'Die Woche',
  time: (minutes, f) => {
    const rounded = minutes < 5 ? Math.ceil(minutes) : Math.round(minutes / 5) * 5;
    const [hours, rest] = [Math.floor(rounded / 60), rounded % 60];
    if (hours === 0) return `${f.number(rest)} min`;
    return rest === 0 ? `${f.number(hours)} Std.` : `${f.number(hours)} Std. ${f.number(rest)} min`;
  },
  nothing: 'Nichts wartet darauf, aufgefädelt zu werden.',
  lead: (count, time) => `${orders(count)} noch aufzufädeln, etwa ${time} nach Ihrer eigenen Regel.`,
  hours: (hours, f) =>
    `Sie geben dem Brett ${f.number(hours, 1)} Stunden in der Woche (unter Laden und Regeln). Die Arbeit liegt nach Fälligkeit, das Nächste zuerst; von dieser Woche zählen nur die Tage, die noch bleiben.`,
  noHours:
    'Wie viele Stunden in der Woche Sie auffädeln, steht nirgends, darum gibt es keine Wochen und keine Vorschläge. Schreiben Sie es unter Laden und Regeln, Bestellungen: 12 hours a week.',
  pickList: 'Suchliste',
  months: 'Was es brachte, Monat für Monat',
  short: 'Nicht anzufangen, weil Perlen fehlen',
  shortHint:
    'Perlen, die Sie zählen, bekommt die Bestellung, die zuerst fällig ist. Was einer fehlt, wenn sie an der Reihe ist, steht hier.',
  shortOf: (missing, name, need, f) => `${f.number(missing)} × ${name} fehlen von ${f.number(need)}`,
  weekOf: (monday, f) => `Woche vom ${formatDate(monday, f.lang)}`,
  taken: (takes, has) => `${takes} von ${has}`,
  columns: {
    due: 'Fällig',
    order: 'Bestellung',
    piece: 'Stück',
    buyer: 'Käuferin',
    time: 'Braucht',
    state: 'Stand',
  },
  part: (part, whole) => `${part} von ${whole}`,
  late: 'zu spät',
  wants: 'Perlen fehlen',
  proposed: (day) => `${day}, Vorschlag`,
  take: 'Übernehmen',
  takeFor: (number, day) => `Übernehmen: ${day} für Bestellung ${number}`,
  takeAll: (count) => `Alle ${count} Vorschläge übernehmen`,
  proposalHint:
    'Ein Vorschlag ist die erste Woche mit Platz, und nicht früher, als Sie es den Leuten sagen. Übernommen, steht er in der Nachricht, mit der Sie die Bestellung vereinbaren, als Ihre eigene Schätzung.',
  later: (count) => `Danach: noch ${count === 1 ? '1 Woche' : `${count} Wochen`} Arbeit.`,
  toSend: 'Aufgefädelt, zu verschicken',
  leftOut: 'Nicht im Plan, weil sich aus ihnen so nichts fädeln lässt:',
  byDue: 'Nach Fälligkeit',

  earned: {
    title: (year) => `Monat für Monat, ${year}`,
    lead: 'Was kam, was verschickt wurde und was eine Stunde am Brett brachte.',
    none: (year) => `Für ${year} steht nichts im Buch.`,
    columns: {
      month: 'Monat',
      received: 'Kam',
      receivedFor: 'Wert',
      sent: 'Verschickt',
      sentFor: 'Für',
      left: 'Bleibt davon',
      time: 'Dauerte',
      perHour: 'Je Stunde',
    },
    wholeYear: 'Das Jahr',
    count: (many, pieces, f) =>
      pieces === many ? f.number(many) : `${f.number(many)} (${f.number(pieces)} Stück)`,
    cancelled: (many) => `${many} abgesagt`,
    timed: (clock, many, rule) => `nach Ihrer Uhr ${clock} für ${orders(many)}, nach der Regel ${rule}`,
    estimate:
      'Eine Schätzung und keine Buchführung. Die Preise sind die des Stücks, wie es war, als die Bestellung kam, ohne Porto. „Bleibt davon“ ist der Preis ohne Perlen, Zubehör, Draht und Verpackung, zu dem, was Sie dafür zahlen, und ohne die Gebühren Ihrer Regel. Die Stunden kommen aus Ihrer eigenen Minutenregel; wo Sie am Brett die Uhr laufen ließen, steht daneben, was sie sagte. Werkzeug, Heizung, Steuern und die Stunden am Schreibtisch sind nicht darin.',
    unknown: (many) =>
      `${orders(many)} nicht zu berechnen: Das Stück ist anders geworden oder nicht mehr da. In keiner Summe hier enthalten.`,
    otherYears: 'Andere Jahre',
  },
};
