/** Die Überschriften der Werkkarte und der Blätter, die mit dem Stück gehen. */
import type { Hand } from '#core/design/choice.ts';
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
const HAND: Readonly<Record<Hand, string>> = { left: 'Die linke Hand', right: 'Die rechte Hand' };
const SIDE = { left: 'links', right: 'rechts' };

export const benchCard: typeof en = {
  title: (number: string): string => `Werkkarte ${number}`,
  print: 'Drucken',
  by: {
    agreed: 'Nach dem Stück, wie es vereinbart ist.',
    now: 'Nach dem Stück, wie es jetzt ist.',
    then: 'Nach dem Stück, wie es bei Eingang war.',
    shown: 'Mit den Anzahlen, die gezeigt wurden.',
  },
  show: {
    agreed: 'Nach dem Stück zeigen, wie es vereinbart ist',
    now: 'Nach dem Stück zeigen, wie es jetzt ist',
    then: 'Nach dem Stück zeigen, wie es damals war',
    shown: 'Mit den Anzahlen zeigen, die gezeigt wurden',
  },
  agreedNote:
    'Sie haben das Stück geändert, seit diese Bestellung vereinbart ist. Karte und Schritte gehen nach dem Stück, wie es vereinbart ist, und auch, was sie aus den Schalen nimmt.',
  cannot: 'Aus dieser Bestellung lässt sich so nichts auffädeln. Auf ihrer Seite steht, warum.',
  check: 'Nicht, wie es gezeigt wurde: Klären Sie es, bevor Sie den Draht schneiden.',
  for: (name: string): string => `für ${name}`,
  quantity: (count: number): string => `Davon ${count} machen.`,
  facts: { size: 'Größe', hand: 'Hand', due: 'Fällig' },
  instead: { clasp: 'Anderer Verschluss', pendant: 'Anderer Anhänger' },
  notes: { buyer: 'Aus der Bestellung:', maker: 'Eigene Notiz:' },
  picture: 'Das Stück auf dem Perlenbrett',
  pictureText: (side: 'left' | 'right' | null): string =>
    side === null
      ? 'Gesehen wie an einem Gegenüber, Null in der Mitte; der Verschluss darf auf jede Seite, gezeichnet ist er links.'
      : `Gesehen wie an einem Gegenüber, Null in der Mitte; der Verschluss liegt ${SIDE[side]}.`,
  pictureRows: 'Das Stück in der Reihenfolge des Auffädelns',
  pictureRowsText: 'Vom Verschluss an, gezählt wie in der Liste.',
  ends: 'Das Verschlussende',
  endsText: 'Drahtschlaufe, Quetschperle, Hülle und der Draht, der durch die Endperlen zurückläuft.',
  endLabels: {
    clasp: 'Verschluss',
    loop: 'Schlaufe',
    crimp: 'Quetschperle',
    cover: 'Hülle',
    tail: 'doppelter Draht',
  },
  sequence: 'Reihenfolge, Verschluss zuerst',
  listColumns: { number: 'Perle', what: 'Was', runsTo: 'Reicht bis' },
  strandOf: (at: number, of: number): string => `Strang ${at} von ${of}`,
  repeat: (times: number): string => `${times} ×`,
  loop: 'Drahtschlaufe',
  halves: {
    first: (clasp: string): string => `${clasp}, die eine Hälfte`,
    other: (clasp: string): string => `${clasp}, die andere Hälfte`,
  },
  hangs: (pendant: string, rings: readonly string[]): string =>
    rings.length === 0 ? `${pendant}, an der eigenen Öse` : `${pendant} an ${rings.join(', ')}`,
  plain: { clasp: 'Verschluss', ring: 'Ring', crimp: 'Quetschperle', cover: 'Hülle', pendant: 'Anhänger' },
  wire: 'Draht',
  wireText: (name: string, strands: number, diameter: string, how: string): string =>
    `${name}: ${strands} Drähte, ${diameter}, ${how}`,
  cut: 'Abschneiden',
  cutParts: (f: Format, beads: number, slack: number, loops: number, tails: number, grips: number): string =>
    `Perlen ${f.number(beads, 1)} + Spiel ${f.number(slack, 1)} + Schlaufen ${f.number(loops, 1)} + Enden ${f.number(tails, 1)} + zum Halten ${f.number(grips, 1)}`,
  slack: 'Spiel',
  crimp: 'Quetschperle',
  cover: 'Hülle',
  bare: 'keine, die Quetschperle bleibt bloß',
  guard: 'Drahtschutz',
  doubledEnds: { clasp: 'Verschlussende', ring: 'Ringende' },
  chain: 'Kette',
  chainText: (of: string, used: string): string => `${of}, für diese Größe ${used} ausgelassen`,
  chainLinks: (f, links, of, link, used) =>
    link === 0
      ? `${f.number(links)} Glieder, ${of}; diese Größe schließt davor`
      : `${f.number(links)} Glieder, ${of}; diese Größe schließt im ${link}., ${used} weiter am Kettchen`,
  pendant: 'Anhänger',
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
  board: 'Marken auf dem Brett',
  boardText:
    'Null in der Mitte; jede Zahl ist die ganze Länge zwischen ihren beiden Marken, wie das Brett sie zeigt.',
  boardSides: { both: 'Beide Seiten', left: 'Links', right: 'Rechts' },
  mark: (mark: BoardMark, section: string | null): string => section ?? END[mark.ends],
  hand: {
    'has-front-and-side': (hand: Hand, side: HandAdvice['boardSide']): string =>
      `${HAND[hand]} bedient den Verschluss: Er liegt auf dem Brett ${SIDE[side ?? 'left']}`,
    'turns-about': (hand: Hand): string =>
      `${HAND[hand]} bedient den Verschluss; andersherum zeigt es noch sein Gesicht, also darf er auf jede Seite`,
    'no-front': (hand: Hand): string =>
      `${HAND[hand]} bedient den Verschluss; ohne Vorderseite darf er auf jede Seite`,
    'clasp-has-no-side': (): string => 'Jede Hand bedient den Verschluss: Er darf auf jede Seite',
  },
  exact: 'Die genauen Zahlen',
  phases: {
    ready: 'Bereitlegen',
    first: 'Das Verschlussende',
    beads: 'Die Perlen',
    second: 'Das andere Ende',
    done: 'Zum Schluss',
  },
  packing: {
    title: (number: string): string => `Packzettel ${number}`,
    to: 'Für',
    what: 'Was im Paket ist',
    thanks:
      'Vielen Dank. Ist etwas nicht, wie es sein soll, schreiben Sie mir, und ich bringe es in Ordnung.',
    columns: { piece: 'Stück', size: 'Größe', quantity: 'Anzahl', price: 'Preis' },
    total: 'Zusammen',
    postage: 'Versand',
    free: 'kostenlos',
    collected: 'Wird abgeholt',
  },
  label: {
    title: (number: string): string => `Adressaufkleber ${number}`,
    from: 'Absender:',
    hint: 'Gedruckt wird links oben auf dem Blatt, 99 mal 68 mm: auf einen Bogen Etiketten, oder auf Papier zum Ausschneiden.',
    collected: 'Diese Bestellung wird abgeholt; zu adressieren ist nichts.',
    missing:
      'Für diese Bestellung gibt es noch keine Anschrift. Auf ihrer Seite liegt eine Nachricht bereit, die danach fragt.',
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
