/** Die Überschriften der Werkkarte und der Blätter, die mit dem Stück gehen. */
import type { HandAdvice } from '#core/sizing/hand/hand.ts';
import type { BoardMark } from '#core/instructions/board.ts';
import type { benchCard as en } from '../en/benchCard.ts';
import type { Format } from '../format.ts';

const END: Readonly<Record<BoardMark['ends'], string>> = {
  section: 'Abschnitt',
  crimp: 'Quetschperle',
  loop: 'Schlaufe',
  clasp: 'Verschluss',
  ring: 'Ring',
};
const SIDE = { left: 'links', right: 'rechts' };

export const benchCard: typeof en = {
  title: (number: string): string => `Werkkarte ${number}`,
  print: 'Drucken',
  by: {
    now: 'Nach dem Stück, wie es jetzt ist.',
    then: 'Nach dem Stück, wie es bei Eingang war.',
    shown: 'Mit den Anzahlen, die gezeigt wurden.',
  },
  show: {
    now: 'Nach dem Stück zeigen, wie es jetzt ist',
    then: 'Nach dem Stück zeigen, wie es damals war',
    shown: 'Mit den Anzahlen zeigen, die gezeigt wurden',
  },
  cannot: 'Aus dieser Bestellung lässt sich so nichts auffädeln. Auf ihrer Seite steht, warum.',
  check: 'Nicht, wie es gezeigt wurde: Klären Sie es, bevor Sie den Draht schneiden.',
  for: (name: string): string => `für ${name}`,
  quantity: (count: number): string => `Davon ${count} machen.`,
  facts: { size: 'Größe', finished: 'Fertige Länge', girth: 'Innenumfang', due: 'Fällig' },
  picture: 'Das Stück auf dem Perlenbrett',
  pictureText: (side: 'left' | 'right' | null): string =>
    side === null
      ? 'Gesehen wie an einem Gegenüber, Null in der Mitte; der Verschluss darf auf jede Seite, gezeichnet ist er links.'
      : `Gesehen wie an einem Gegenüber, Null in der Mitte; der Verschluss liegt ${SIDE[side]}.`,
  pictureRows: 'Das Stück in der Reihenfolge des Auffädelns',
  pictureRowsText: 'Vom Verschluss an; die Zahlen zählen, was aufgefädelt wird.',
  ends: 'Das Verschlussende',
  endsText: 'Drahtschlaufe, Quetschperle, Abdeckung und der Draht, der durch die Endperlen zurückläuft.',
  endLabels: {
    clasp: 'Verschluss',
    loop: 'Schlaufe',
    crimp: 'Quetschperle',
    cover: 'Abdeckung',
    tail: 'doppelter Draht',
  },
  sequence: 'Reihenfolge, vom Verschluss zum Ring',
  sequenceColumns: {
    what: 'Was',
    count: 'Gefädelt',
    running: 'Reicht bis',
  },
  strand: (at: number): string => `Strang ${at}`,
  repeat: (times: number): string => `${times} ×`,
  kinds: {
    clasp: 'Verschluss',
    ring: 'Ring',
    loop: 'Drahtschlaufe',
    end: 'Ende',
    strung: '',
    pendant: '',
    'other-half': 'andere Hälfte',
  },
  plain: { clasp: 'Verschluss', ring: 'Ring', crimp: 'Quetschperle', pendant: 'Anhänger' },
  wire: 'Draht',
  wireText: (name: string, strands: number, diameter: string, how: string): string =>
    `${name}: ${strands} Drähte, ${diameter}, ${how}`,
  cut: 'Abschneiden',
  cutParts: (f: Format, beads: number, slack: number, loops: number, tails: number, grips: number): string =>
    `Perlen ${f.number(beads, 1)} + Spiel ${f.number(slack, 1)} + Schlaufen ${f.number(loops, 1)} + Enden ${f.number(tails, 1)} + zum Halten ${f.number(grips, 1)}`,
  slack: 'Frei lassen',
  crimp: 'Quetschperle',
  cover: 'Abdeckung',
  bare: 'keine, die Quetschperle bleibt bloß',
  guard: 'Drahtschutz',
  doubledEnds: { clasp: 'Verschlussende', ring: 'Ringende' },
  chain: 'Kette',
  chainText: (of: string, used: string): string => `${of}, für diese Größe ${used} ausgelassen`,
  pendant: 'Anhänger',
  pendantRings: (rings: readonly string[]): string =>
    rings.length === 0 ? 'gerade auf dem Draht' : `an ${rings.join(', ')}`,
  between: (left: string, right: string): string => `zwischen ${left} und ${right}`,
  balance: 'Gleichgewicht',
  strength: 'Festigkeit',
  strengthText: (
    f: Format,
    breakN: number,
    basis: 'rated' | 'estimated',
    factor: number,
    wanted: number,
  ): string =>
    `${basis === 'rated' ? 'angegeben' : 'etwa'} ${f.number(breakN)} N, das ${f.number(factor, 1)}-fache von Zug und Ruck; Ihre Regel verlangt das ${f.number(wanted, 1)}-fache`,
  weak: 'Nach Ihrer eigenen Regel zu schwach.',
  board: 'Marken auf dem Brett, von Null',
  boardSides: { left: 'Links', right: 'Rechts' },
  boardClasp: 'Verschlussseite',
  mark: (mark: BoardMark, section: string | null): string => section ?? END[mark.ends],
  hand: {
    'has-front-and-side': (side: HandAdvice['boardSide']): string =>
      `Verschluss auf dem Brett ${SIDE[side ?? 'left']}`,
    'no-front': (): string => 'Verschluss auf beliebiger Seite: Das Stück hat keine Vorderseite',
    'clasp-has-no-side': (): string =>
      'Verschluss auf beliebiger Seite: Er lässt sich mit jeder Hand bedienen',
  },
  handLabel: 'Hand',
  steps: 'Schritte',
  packing: {
    title: (number: string): string => `Packzettel ${number}`,
    to: 'Für',
    what: 'Was im Paket ist',
    thanks:
      'Vielen Dank. Ist etwas nicht, wie es sein soll, schreiben Sie mir, und ich bringe es in Ordnung.',
    columns: { piece: 'Stück', size: 'Größe', quantity: 'Anzahl', price: 'Preis' },
    total: 'Zusammen',
  },
  care: {
    title: (piece: string): string => `Pflege: ${piece}`,
    how: 'Damit es lange hält',
    safety: 'Bitte beachten',
    rules:
      'Was Kinder tragen dürfen, regelt jedes Land selbst; fragen Sie im Zweifel die zuständige Behörde.',
    restring: (shop: string, number: string): string =>
      `${shop} fädelt es neu auf, auch in anderer Größe. Seine Nummer ist ${number}.`,
  },
};
