/** Was die Kundin liest, bevor und während sie ihr Maß nennt; was dann dabei herauskommt, steht in `sized.ts`. */
import type { HandAdvice } from '#core/sizing/hand/hand.ts';
import type { Hand, Sit } from '#core/design/choice.ts';
import type { PieceKind } from '#core/design/design.ts';
import type { sizing as english } from '../en/sizing.ts';
import { FOR_BODY, ROUND } from './bodyNames.ts';
import { LIKELY } from '../likelyMeasure.ts';

const HAND: Readonly<Record<Hand, string>> = { left: 'linke', right: 'rechte' };

const CLOSE = {
  snug: 'Liegt an und rutscht kaum.',
  easy: 'Bewegt sich etwas; eine Fingerspitze passt darunter.',
  loose: 'Gleitet frei und fällt weich.',
};

const SIT_MEANS: Readonly<Record<PieceKind, Readonly<Record<Sit, string>>>> = {
  bracelet: CLOSE,
  anklet: CLOSE,
  collar: {
    snug: 'Liegt rundum auf der Haut.',
    easy: 'Zwei Finger passen darunter.',
    loose: 'Sinkt bis zum Halsansatz.',
  },
  necklace: {
    snug: 'Liegt am Halsansatz.',
    easy: 'Liegt etwas unter den Schlüsselbeinen.',
    loose: 'Hängt auf der Brust.',
  },
};

const handReasons: Readonly<Record<HandAdvice['reason'], (hand: Hand) => string>> = {
  'has-front-and-side': (hand) =>
    `Der Verschluss kommt dorthin, wo Ihre ${HAND[hand]} Hand ihn bedient, und die Vorderseite bleibt vorn.`,
  'turns-about': () =>
    'Jede Hand: Andersherum angelegt zeigt dieses Stück noch immer sein Gesicht; tragen Sie es, wie es Ihnen liegt.',
  'no-front': () =>
    'Jede Hand: Dieses Stück sieht von beiden Seiten gleich aus; tragen Sie es so herum, wie es Ihnen passt.',
  'clasp-has-no-side': () => 'Jede Hand: Dieser Verschluss lässt sich von beiden Seiten gleich bedienen.',
};

export const sizing: typeof english = {
  title: 'Auf Ihr Maß gefertigt',
  handReasons,
  sitMeans: SIT_MEANS,
  sitLegend: 'Wie soll es sitzen?',
  sits: { snug: 'Anliegend', easy: 'Bequem', loose: 'Locker' },
  sitAdds: (f, mm, kind) =>
    kind === 'necklace'
      ? `Gefertigt für ${f.short(mm)} mehr als den Halsansatz.`
      : `Gefertigt für ${f.short(mm)} mehr als Ihr Maß.`,
  byLegend: 'Wonach richten Sie sich?',
  by: { wrist: 'Handgelenk', ankle: 'Fessel', neck: 'Hals', length: 'Fertige Länge' },
  fieldLabels: {
    wrist: 'Umfang Ihres Handgelenks',
    ankle: 'Umfang Ihrer Fessel',
    neck: 'Umfang Ihres Halses',
    length: 'Fertige Länge mit Verschluss',
  },
  fieldHint: (unit, of) => {
    const { inches, cm } = LIKELY[of];
    return unit === 'in'
      ? `Zoll, wie man sie schreibt: ${inches}½, ${inches} 1/2 oder ${inches},5`
      : `Zentimeter: ${cm},5. Oder mit Einheit: ${cm}5 mm`;
  },
  unitLegend: 'Einheit',
  units: { in: 'Zoll', cm: 'cm' },
  slider: 'Schieben, um Größen zu probieren',
  handLegend: 'Welche Hand bedient den Verschluss?',
  hands: { left: 'Linke Hand', right: 'Rechte Hand' },
  parts: { clasp: 'Verschluss', pendant: 'Anhänger' },
  partListed: (name) => `Wie gezeigt: ${name}`,
  noPendant: 'keiner',
  partOffered: (f, name, differenceMinor) => {
    if (differenceMinor === 0) return `${name} (gleicher Preis)`;
    return `${name} (${f.money(Math.abs(differenceMinor))} ${differenceMinor > 0 ? 'mehr' : 'weniger'})`;
  },
  readyTitle: 'Eines liegt fertig da',
  readyIs: (f, lengths, girthMm, priceMinor) =>
    `Es misst ${f.list(lengths)}, innen herum ${f.length(girthMm)}, und kostet ${f.money(priceMinor)}.`,
  readySuits: (f, kind, { snug, easy, loose }) =>
    `Bequem sitzt es bei ${f.length(easy)} (${ROUND[kind]}), anliegend bei ${f.length(snug)}, locker bei ${f.length(loose)}.`,
  readyHangs: 'Unter „Getragen“ sehen Sie, wo es bei Ihnen hängt.',
  readyLies: (f, lengths) => `Liegt fertig da, ${f.list(lengths)} lang`,
  readyOrder: 'So nehmen, wie es daliegt',
  readyOrSize: 'Oder oben Ihr Maß angeben, dann wird eines für Sie gemacht.',
  readyElse: 'Nicht Ihre Größe? Ihre angeben',
  resultTitle: 'Das bekämen Sie',
  listedTitle: 'So liegt es im Laden',
  finishedLength: 'Fertige Länge',
  finishedLengths: 'Fertige Längen, der kürzeste Strang zuerst',
  lengthOfShortest: 'Fertige Länge des kürzesten Strangs mit Verschluss',
  insideGirth: 'Innenumfang',
  girthOfShortest: 'Innenumfang, kürzester Strang',
  price: 'Preis',
  weight: 'Gewicht',
  count: 'Perlen und Teile',
  grams: (f, massG) => `${f.number(massG, massG < 10 ? 1 : 0)}\u00a0g`,
  madeFrom: (f, limits, of) =>
    `Möglich ${FOR_BODY[of]} ${f.length(limits.leastAskedMm)} bis ${f.length(limits.mostAskedMm)}.`,
  order: 'Stück bestellen',
  orderFirst: 'Geben Sie zuerst ein Maß an, in dem es gemacht werden kann.',
  orderFailed:
    'Das Bestellformular ließ sich nicht laden: Ist ein Netz da? Versuchen Sie es noch einmal, oder schreiben Sie dem Laden.',
  partFailed: 'Dieser Teil der Seite ließ sich nicht laden: Ist ein Netz da?',
  loading: 'Wird ausgerechnet …',
  views: { whole: 'Bild', straight: 'Gerade gelegt', closed: 'Geschlossen', worn: 'Getragen' },
  viewsLegend: 'Bild',
};
