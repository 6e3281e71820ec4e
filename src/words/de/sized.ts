/** Was die Kundin liest, sobald sie ein Maß genannt hat. */
import type { SizingProblem } from '#core/sizing/sizing.ts';
import type { LengthProblem } from '#core/units/length.ts';
import type { NamedHelp, sized as english } from '../en/sized.ts';
import type { Sentences } from '../sentence.ts';
import { BODY, FOR_BODY, ROUND } from './bodyNames.ts';

const problems: Sentences<SizingProblem> = {
  'measure-not-positive': () =>
    'Ein Maß muss größer als null sein. Schreiben Sie, was das Band zeigt, zum Beispiel 16,5 cm oder 6½ Zoll.',
  'measure-absurd': ({ mm, leastMm, mostMm }, f) =>
    `${f.length(mm)} kann nicht stimmen: Dieses Maß liegt zwischen ${f.length(leastMm)} und ${f.length(mostMm)}. Bitte Zahl und Einheit prüfen.`,
  'measure-wrong-kind': ({ of }) => `Dieses Stück wird nicht nach ${BODY[of]} bemessen.`,
  quantity: () => 'Bestellen Sie eine ganze Zahl von Stücken, mindestens eines.',
  choice: () => 'Die Auswahl ist unvollständig. Bitte wählen Sie Maß, Sitz und Hand neu.',
  'strands-apart': ({ leastMm, mostMm, short }, f) =>
    short.length > 0
      ? 'Es sind nicht genug Perlen da, um alle Stränge dieses Stücks auf eine Größe zu bringen. Bitte schreiben Sie der Werkstatt.'
      : `Die Stränge dieses Stücks kommen auf keine gemeinsame Größe: Einer ist nie unter ${f.length(leastMm)}, ein anderer nie über ${f.length(mostMm)}. Bitte schreiben Sie der Werkstatt.`,
  stock: ({ have, need }, f) =>
    `Für dieses Stück sind nicht genug Perlen da: ${f.number(have)} von mindestens ${f.number(need)}. Bitte schreiben Sie der Werkstatt.`,
  'search-limit': () =>
    'Für dieses Stück gibt es mehr Möglichkeiten, als sich hier durchsehen lassen. Bitte schreiben Sie der Werkstatt.',
  design: () =>
    'Der Plan dieses Stücks hat einen Fehler, darum lässt es sich hier nicht bemessen. Bitte schreiben Sie der Werkstatt.',
};

const unread: Sentences<LengthProblem> = {
  empty: () => 'Schreiben Sie Ihr Maß, dann sehen Sie das Stück in Ihrer Größe.',
  'text-too-long': () =>
    'Das ist zu lang für ein Maß. Schreiben Sie eine Zahl, zum Beispiel 16,5 cm oder 6½ Zoll.',
  'not-a-number': ({ text }) =>
    `„${text}“ lässt sich nicht als Maß lesen. Schreiben Sie es in Ziffern, zum Beispiel 16,5 cm oder 6½ Zoll.`,
  'unknown-unit': ({ unit }) =>
    `Die Einheit „${unit}“ gibt es hier nicht. Schreiben Sie cm, mm oder Zoll, oder lassen Sie sie weg.`,
  'two-measures': ({ text }) =>
    `„${text}“ enthält zwei Maße. Schreiben Sie eines, bei Schwankungen das größere.`,
  'not-positive': () =>
    'Ein Maß muss größer als null sein. Schreiben Sie, was das Band zeigt, zum Beispiel 16,5 cm oder 6½ Zoll.',
  'too-large': ({ mostMm }, f) => `Das ist mehr als ${f.length(mostMm)}. Bitte Zahl und Einheit prüfen.`,
};

const help: Sentences<NamedHelp> = {
  'add-component': ({ count, sides, name, offMm }, f) =>
    `Mit ${f.number(count)} × „${name}“ mehr${sides === 2 ? ' auf jeder Seite' : ''} käme es bis auf ${f.fine(Math.abs(offMm))} an Ihre Größe heran.`,
  'widen-section': ({ repeats, name, offMm }, f) =>
    `Mit etwas ${repeats > 0 ? 'mehr' : 'weniger'} von ${name}, als die Werkstatt sonst auffädelt, käme es bis auf ${f.fine(Math.abs(offMm))} an Ihre Größe heran.`,
  'more-stock': ({ count, name }, f) =>
    `Wenn die Werkstatt noch ${f.number(count)} × „${name}“ bekommt, geht es.`,
};

export const sized: typeof english = {
  problems,
  unread,
  help,
  helpTitle: 'Was helfen würde',
  onStrand: (f, name, strand) => `${name} (Strang ${f.number(strand)})`,
  helpAsk: 'Die Werkstatt darum bitten',
  helpAskHint:
    'Öffnet eine E-Mail, die sagt, was Sie brauchen. Die Werkstatt entscheidet und antwortet Ihnen.',
  helpMail: {
    subject: (piece) => `${piece} in meiner Größe`,
    body: (piece, size, helps) =>
      [
        'Guten Tag,',
        '',
        `ich hätte gern ${piece} für ${size}. Ganz so geht es im Laden nicht; er sagt, was helfen würde:`,
        ...helps.map((one) => `- ${one}`),
        '',
        'Könnten Sie es so machen?',
        '',
      ].join('\n'),
  },
  asked: (f, of, mm, sit) =>
    of === 'length'
      ? `eine fertige Länge von ${f.length(mm)}`
      : `${{ wrist: 'ein Handgelenk', ankle: 'eine Fessel', neck: 'einen Hals' }[of]} von ${f.length(mm)}, ${{ snug: 'anliegend', easy: 'bequem', loose: 'locker' }[sit]}`,
  outOfStock: (f, names) => `Von ${f.list(names)} ist nichts mehr da.`,
  chainUsed: (f, mm, wholeMm) =>
    `Am Verlängerungskettchen von ${f.short(wholeMm)} bei etwa ${f.short(mm)} geschlossen, im nächstgelegenen Glied.`,
  chainLink: (f, link, links) =>
    link === links
      ? `Im letzten der ${f.number(links)} Glieder des Verlängerungskettchens geschlossen.`
      : `Im ${link}. der ${f.number(links)} Glieder des Verlängerungskettchens geschlossen; was darüber hinausgeht, hängt frei.`,
  chainIdle: (f, wholeMm) =>
    `Ohne das Verlängerungskettchen geschlossen, das bis zu ${f.short(wholeMm)} zugibt.`,
  leftOver: (f, overMm, sitMm) =>
    overMm < 0
      ? `Es misst ${f.short(-overMm)} weniger als Ihr Maß.`
      : `In diesem Stück bleiben ${f.short(overMm)} übrig, von den ${f.short(sitMm)}, die der Sitz verlangt: Perlen gibt es nur ganz.`,
  unchanged: 'Perle für Perle wie im Laden.',
  added: 'Dazu',
  leftOut: 'Weggelassen',
  part: (f, count, name) => `${f.number(count)} × ${name}`,
  centreKept: 'Die Mitte bleibt, wie sie ist.',
  bothSides: 'Auf beiden Seiten gleich.',
  fits: (f, targetMm, toleranceMm, shortest = false) =>
    `${shortest ? 'Der kürzeste Strang liegt höchstens' : 'Höchstens'} ${f.short(toleranceMm)} neben den ${f.length(targetMm)}, die Sie brauchen.`,
  near: (f, targetMm, toleranceMm) =>
    `Mit ganzen Perlen geht es nicht näher als ${f.short(toleranceMm)} an die ${f.length(targetMm)}, die Sie brauchen. Das sind die nächsten Stücke; wählen Sie eines.`,
  nearLegend: 'Nächste Stücke',
  nearOption: (f, targetMm, errorMm) =>
    `${f.apart(targetMm, targetMm + errorMm)} ${errorMm < 0 ? 'kleiner' : 'größer'} als die ${f.length(targetMm)}`,
  outside: (f, side, of, limits) => {
    const askedMm = side === 'below' ? limits.leastAskedMm : limits.mostAskedMm;
    const fittedMm = side === 'below' ? limits.leastMm : limits.mostMm;
    const size = of === 'length' ? fittedMm : askedMm;
    const reach = side === 'below' ? 'kleinste' : 'größte';
    return `So ${side === 'below' ? 'klein' : 'groß'} lässt sich dieses Stück nicht machen. Das ${reach} ist ${FOR_BODY[of]} ${f.length(size)}.`;
  },
  outsideWhy: (side) =>
    `Mit ${side === 'below' ? 'weniger' : 'mehr'} Perlen wäre es nicht mehr dieses Stück.`,
  takeNearest: (f, askedMm) => `Bei ${f.length(askedMm)} zeigen`,
  didYouMean: (written) => `Meinten Sie ${written}?`,
  announce: (f, lengthMm, girthMm, priceMinor) =>
    `Fertige Länge ${f.length(lengthMm)}, Innenumfang ${f.length(girthMm)}, ${f.money(priceMinor)}.`,
  pictureTitle: (name) => `${name} in Ihrer Größe`,
  pictureDescription: (f, lengthMm, parts) =>
    `${f.number(parts)} Perlen und Teile der Reihe nach, ${f.length(lengthMm)} von Ende zu Ende.`,
  measureScreen: 'Den Bildschirm neu messen',
  lifeSize: 'Echte Größe',
  firstInFront: 'Längs des Arms gesehen, stehen die Stränge hintereinander; der erste ist vorn.',
  wristLabels: (f, kind, girthMm, easeMm, airMm) => ({
    girth: `${ROUND[kind]} ${f.length(girthMm)}`,
    ease: `${f.short(easeMm)} übrig`,
    air: `${f.number(airMm)}\u00a0mm Luft`,
  }),
};
