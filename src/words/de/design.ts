/** Was an einem Entwurf nicht stimmt. */
import type { ComponentKind } from '#core/design/component.ts';
import type { FieldType, FigureUnit, ValidationError } from '#core/design/validationError.ts';
import type { designProblems as english } from '../en/design.ts';
import { formatList, formatNumber } from '../format.ts';

const TYPE: Readonly<Record<FieldType, string>> = {
  flag: 'true oder false',
  text: 'ein Text',
  id: 'ein Name, der nicht leer ist,',
  number: 'eine Zahl',
  whole: 'eine ganze Zahl',
  list: 'eine Liste',
  object: 'eine Gruppe von Feldern',
};

const KIND: Readonly<Record<ComponentKind, string>> = {
  bead: 'eine Perle',
  spacer: 'ein Zwischenteil',
  cap: 'eine Perlkappe',
  crimp: 'eine Quetschperle',
  cover: 'eine Quetschhülle',
  ring: 'ein Ring',
  clasp: 'ein Verschluss',
  pendant: 'ein Anhänger',
};

const UNIT: Readonly<Record<FigureUnit, string>> = {
  ...{ mm: ' mm', g: ' g', N: ' N', 'g/m': ' g/m', none: '' },
  minor: ' Pence oder Cent',
};

export const number = (value: number): string => formatNumber(value, 'de', 4);

export const mm = (value: number): string => `${formatNumber(value, 'de', 2)} mm`;

export const designProblems: typeof english = {
  'wrong-type': ({ wanted }) => `Hier gehört ${TYPE[wanted]} hin.`,
  'not-one-of': ({ options }) => `Hier gehört eines von diesen hin: ${options.join(', ')}.`,
  'text-too-long': ({ length, most }) =>
    `Der Text hat ${number(length)} Zeichen; Platz ist für ${number(most)}.`,
  'out-of-range': ({ value, least, most, unit }) =>
    `${number(value)}${UNIT[unit]} liegt außerhalb des Möglichen: ${number(least)} bis ${number(most)}${UNIT[unit]}.`,
  'too-many-entries': ({ count, most }) =>
    `Hier stehen ${number(count)} Einträge; Platz ist für ${number(most)}.`,
  'id-differs': ({ component, key }) =>
    `Das Teil nennt sich „${component}“, ist aber als „${key}“ eingetragen.`,
  'no-length': ({ component }) =>
    `„${component}“ nimmt auf dem Draht keine Länge ein; das dürfen nur Verschluss, Ring und Anhänger.`,
  'no-width': ({ component }) => `„${component}“ hat keine Breite.`,
  'rounding-too-large': ({ component, roundingMm, mostMm }) =>
    `„${component}“ hat eine Rundung von ${mm(roundingMm)}, mehr als die Hälfte des Teils, die ${mm(mostMm)} misst.`,
  'hole-too-wide': ({ component, holeMm, acrossMm }) =>
    `Ein Loch von ${mm(holeMm)} lässt von „${component}“ nichts übrig, das ${mm(acrossMm)} breit ist.`,
  'unknown-material': ({ component, material }) =>
    `„${component}“ ist aus „${material}“, einem Material, dessen Gewicht nicht bekannt ist.`,
  'unknown-component': ({ component }) => `Das Teil „${component}“ gibt es nicht.`,
  'wrong-kind': ({ component, kind, kinds }) => {
    const able = formatList(
      kinds.map((one) => KIND[one]),
      'de',
      'disjunction',
    );
    return `„${component}“ ist ${KIND[kind]} und kann hier nicht stehen; ${able} kann es.`;
  },
  'no-strand': () => 'Das Stück hat keinen Strang.',
  'strand-empty': () => 'Auf diesem Strang ist nichts.',
  'strand-too-long': ({ count, most }) =>
    `Dieser Strang nimmt bis zu ${number(count)} Teile auf; mehr als ${number(most)} lassen sich nicht berechnen.`,
  'section-twice': ({ section }) => `Den Abschnitt „${section}“ gibt es auf diesem Strang zweimal.`,
  'section-empty': ({ section }) => `Der Abschnitt „${section}“ hat keine Perlen.`,
  'counts-order': ({ section, fewest, usual, most }) =>
    `Im Abschnitt „${section}“ steigen fewest ${number(fewest)}, usual ${number(usual)} und most ${number(most)} nicht an.`,
  'focal-changes': ({ section, fewest, most }) =>
    `Das Mittelstück „${section}“ geht von ${number(fewest)} bis ${number(most)}; ein Mittelstück bleibt aber, wie es ist.`,
  'focal-not-once': ({ section, usual }) =>
    `In der Mitte eines gespiegelten Strangs steht das Mittelstück „${section}“ einmal, nicht ${number(usual)}-mal.`,
  'focal-not-first': ({ section }) =>
    `Das Mittelstück „${section}“ steht in der Mitte eines gespiegelten Strangs, also kommt es zuerst.`,
  'lie-single': ({ strands }) =>
    `Ein Stück mit ${number(strands)} Strängen liegt „side-by-side“ oder „nested“, nicht „single“.`,
  ways: ({ clasp, ways, strands }) =>
    `Der Verschluss „${clasp}“ fasst ${ways === 1 ? 'einen Strang' : `${number(ways)} Stränge`}; das Stück hat ${number(strands)}.`,
  'link-without-chain': ({ linkMm }) => `Ein Glied von ${mm(linkMm)} ist genannt, aber keine Kette.`,
  'chain-too-short': ({ chainMm, linkMm }) =>
    `Die Kette von ${mm(chainMm)} ist kürzer als eines ihrer Glieder, ${mm(linkMm)}.`,
  'chain-not-whole': ({ chainMm, linkMm, links }) =>
    `Die Kette von ${mm(chainMm)} hat keine ganze Zahl von Gliedern zu ${mm(linkMm)}: ${number(links)} sind ${mm(links * linkMm)}, ${number(links + 1)} sind ${mm((links + 1) * linkMm)}.`,
  'hole-too-small': ({ component, holeMm, needMm, wire }) =>
    `Das Loch von „${component}“ misst ${mm(holeMm)}; der Draht „${wire}“ braucht ${mm(needMm)}.`,
  'crimp-too-tight': ({ crimp, insideMm, needMm, wire }) =>
    `Die Quetschperle „${crimp}“ misst innen ${mm(insideMm)}; der doppelte Draht „${wire}“ braucht ${mm(needMm)}.`,
  'cover-too-tight': ({ cover, takesMm, crimp, closedMm }) =>
    `Die Hülle „${cover}“ fasst ${mm(takesMm)}; die Quetschperle „${crimp}“ misst geschlossen ${mm(closedMm)}.`,
  'ring-closed': ({ ring, hangs }) =>
    `„${ring}“ ist ein geschlossener Ring: „${hangs}“ lässt sich nicht einhängen.`,
};

/** How to mend what keeps a design from being strung, where more can be said than to look again. */
export const designMending: Readonly<Partial<Record<ValidationError['code'], string>>> = {
  'wrong-kind': 'Nennen Sie ein Teil, das es kann.',
  'hole-too-small':
    'Nehmen Sie dünneren Draht oder eine Perle mit größerem Loch, oder weiten Sie das Loch und berichtigen Sie das Maß.',
  'crimp-too-tight': 'Nehmen Sie eine größere Quetschperle oder dünneren Draht.',
  'cover-too-tight': 'Nehmen Sie eine größere Hülle oder eine kleinere Quetschperle.',
  'ring-closed':
    'Nehmen Sie einen Ring, der sich öffnen lässt, oder schreiben Sie bei diesem „joint: open“ (Biegering) oder „joint: split“ (Spaltring), wenn er es tut.',
  'link-without-chain':
    'Schreiben Sie als „extender“, wie lang die Kette ist, oder nehmen Sie „link“ heraus.',
  'chain-too-short':
    'Schreiben Sie ein längeres „extender“ oder berichtigen Sie „link“: Es ist das Innenmaß eines Glieds.',
  'chain-not-whole': 'Schreiben Sie eine dieser Längen.',
  'strand-empty': 'Lassen Sie wenigstens einen seiner Abschnitte ein „most“ über 0 haben.',
  'strand-too-long': 'Senken Sie „most“, oder schreiben Sie weniger Perlen für eine Wiederholung.',
  ways: 'Nehmen Sie einen Verschluss mit so vielen Ösen, wie es Stränge gibt.',
};
