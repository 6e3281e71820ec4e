/** Die Einkaufsliste. */
import type { shopping as english } from '../en/shopping.ts';
import type { SoldUnit } from '../stockCodes.ts';

const units: Readonly<Record<SoldUnit, readonly [string, string]>> = {
  piece: ['Stück', 'Stück'],
  strand: ['Strang', 'Stränge'],
  pack: ['Packung', 'Packungen'],
  bag: ['Beutel', 'Beutel'],
  spool: ['Rolle', 'Rollen'],
  m: ['Meter', 'Meter'],
};

export const shopping: typeof english = {
  title: 'Einkaufsliste',
  lead: (percent) =>
    `Was Bestellungen brauchen und was zur Neige geht, ohne das, was da ist${percent === 0 ? '' : `, und ${percent} % mehr für das, was bricht`}. Aufgerundet auf das, was verkauft wird.`,
  of: 'Für',
  ofs: { open: 'alle Bestellungen, die noch aufzufädeln sind', agreed: 'nur zugesagte Bestellungen' },
  marks: 'Auch, was unter seine Marke fiele',
  make: 'Außerdem will ich machen',
  piece: 'Stück',
  noPiece: 'nichts weiter',
  size: 'In Größe',
  sizeHint: 'wie angeboten, oder 16,5 cm',
  many: 'Wie viele',
  look: 'Ausrechnen',
  print: 'Drucken',
  makeProblems: {
    'no-piece': 'Dieses Stück gibt es im Laden nicht.',
    size: 'Das ist keine Größe. Schreiben Sie 16,5 cm oder 6 1/2 in.',
    many: 'Schreiben Sie, wie viele: eine ganze Zahl bis 999.',
    'cannot-be-made': 'In dieser Größe lässt es sich nicht machen.',
  },
  nothing: 'Es ist nichts zu kaufen: Von allem, was gezählt wird, ist genug da.',
  noSupplier: 'Wo Sie es finden',
  columns: {
    what: 'Was',
    number: 'Nummer',
    need: 'Gebraucht',
    have: 'Da',
    buy: 'Zu kaufen',
    price: 'Preis',
    sum: 'Zusammen',
    came: 'Gekommen',
  },
  unit: (count, unit, f) => `${f.number(count)} ${units[unit][count === 1 ? 0 : 1]}`,
  holds: (holds, estimated) => (estimated ? `etwa ${holds}` : holds),
  andMark: (keep) => `und ${keep} als Rest`,
  sum: 'Alles davon',
  total: 'Alle Händler zusammen',
  received: 'Das alles ist gekommen',
  receivedHint:
    'Wenn es kommt, drücken Sie den Knopf darunter. Kam etwas anderes, berichtigen Sie zuerst die Zahlen; leer bleibt, was nicht gekommen ist.',
  came: (name, unit) => `Gekommen von ${name}, ${unit}`,
  done: 'Es ist als eingegangen eingetragen.',
  uncounted: 'Gebraucht und nicht gezählt',
  uncountedLead: 'Sehen Sie selbst nach, ob genug da ist, oder zählen Sie es.',
  leftOut: 'Ausgelassen, weil sich danach so nichts auffädeln lässt:',
  toList: 'Zur Einkaufsliste',
  forPiece: 'Was fünf davon brauchen',
};
