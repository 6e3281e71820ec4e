/** What is wrong with a design, as the maker reads it. English is the contract. */
import type { ComponentKind } from '#core/design/component.ts';
import type { FieldType, FigureUnit, ValidationError } from '#core/design/validationError.ts';
import { formatList, formatNumber } from '../format.ts';
import type { Sentences } from '../sentence.ts';

const TYPE: Readonly<Record<FieldType, string>> = {
  flag: 'True or false',
  text: 'A text',
  id: 'A name that isn’t empty',
  number: 'A number',
  whole: 'A whole number',
  list: 'A list',
  object: 'A group of fields',
};

const KIND: Readonly<Record<ComponentKind, string>> = {
  bead: 'a bead',
  spacer: 'a spacer',
  cap: 'a bead cap',
  crimp: 'a crimp',
  cover: 'a crimp cover',
  ring: 'a ring',
  clasp: 'a clasp',
  pendant: 'a pendant',
};

const UNIT: Readonly<Record<FigureUnit, string>> = {
  ...{ mm: ' mm', g: ' g', N: ' N', 'g/m': ' g/m', none: '' },
  minor: ' pence or cents',
};

/** Finer than any figure that is written. */
export const number = (value: number): string => formatNumber(value, 'en', 4);

/** Holes and wires are told to a hundredth. */
export const mm = (value: number): string => `${formatNumber(value, 'en', 2)} mm`;

export const designProblems: Sentences<ValidationError, []> = {
  'wrong-type': ({ wanted }) => `${TYPE[wanted]} belongs here.`,
  'not-one-of': ({ options }) => `One of these belongs here: ${options.join(', ')}.`,
  'text-too-long': ({ length, most }) =>
    `The text has ${number(length)} characters; there is room for ${number(most)}.`,
  'out-of-range': ({ value, least, most, unit }) =>
    `${number(value)}${UNIT[unit]} is outside what can be: ${number(least)} to ${number(most)}${UNIT[unit]}.`,
  'too-many-entries': ({ count, most }) =>
    `There are ${number(count)} entries here; there is room for ${number(most)}.`,
  'id-differs': ({ component, key }) =>
    `The component calls itself “${component}”, but is listed as “${key}”.`,
  'no-length': ({ component }) =>
    `“${component}” takes no length on the wire; only a clasp, a ring or a pendant may.`,
  'no-width': ({ component }) => `“${component}” has no width.`,
  'rounding-too-large': ({ component, roundingMm, mostMm }) =>
    `“${component}” has a rounding of ${mm(roundingMm)}, more than half of it, which is ${mm(mostMm)}.`,
  'hole-too-wide': ({ component, holeMm, acrossMm }) =>
    `A hole of ${mm(holeMm)} leaves nothing of “${component}”, which is ${mm(acrossMm)} across.`,
  'unknown-material': ({ component, material }) =>
    `“${component}” is made of “${material}”, a material whose weight isn’t known.`,
  'unknown-component': ({ component }) => `There is no component “${component}”.`,
  'wrong-kind': ({ component, kind, kinds }) => {
    const able = formatList(
      kinds.map((one) => KIND[one]),
      'en',
      'disjunction',
    );
    return `“${component}” is ${KIND[kind]}, which can’t stand here; ${able} can.`;
  },
  'no-strand': () => 'The piece has no strand.',
  'strand-empty': () => 'This strand has nothing on it.',
  'strand-too-long': ({ count, most }) =>
    `This strand takes up to ${number(count)} components; more than ${number(most)} can’t be computed.`,
  'section-twice': ({ section }) => `The section “${section}” is there twice on this strand.`,
  'section-empty': ({ section }) => `The section “${section}” has no beads.`,
  'counts-order': ({ section, fewest, usual, most }) =>
    `The section “${section}” has fewest ${number(fewest)}, usual ${number(usual)} and most ${number(most)}, which aren’t in rising order.`,
  'focal-changes': ({ section, fewest, most }) =>
    `The focal section “${section}” goes from ${number(fewest)} to ${number(most)}, but a focal stays as it is.`,
  'focal-not-once': ({ section, usual }) =>
    `In the middle of a mirrored strand the focal section “${section}” stands once, not ${number(usual)} times.`,
  'focal-not-first': ({ section }) =>
    `The focal section “${section}” stands in the middle of a mirrored strand, so it comes first.`,
  'lie-single': ({ strands }) =>
    `A piece of ${number(strands)} strands lies side-by-side or nested, not single.`,
  ways: ({ clasp, ways, strands }) =>
    `The clasp “${clasp}” takes ${ways === 1 ? 'one strand' : `${number(ways)} strands`}; the piece has ${number(strands)}.`,
  'link-without-chain': ({ linkMm }) => `A link of ${mm(linkMm)} is named, but there is no chain.`,
  'chain-too-short': ({ chainMm, linkMm }) =>
    `The chain of ${mm(chainMm)} is shorter than one of its links, ${mm(linkMm)}.`,
  'chain-not-whole': ({ chainMm, linkMm, links }) =>
    `The chain of ${mm(chainMm)} isn’t a whole number of links of ${mm(linkMm)}: ${number(links)} make ${mm(links * linkMm)}, ${number(links + 1)} make ${mm((links + 1) * linkMm)}.`,
  'hole-too-small': ({ component, holeMm, needMm, wire }) =>
    `The hole of “${component}” is ${mm(holeMm)}; the wire “${wire}” needs ${mm(needMm)}.`,
  'crimp-too-tight': ({ crimp, insideMm, needMm, wire }) =>
    `The crimp “${crimp}” is ${mm(insideMm)} inside; the wire “${wire}” doubled needs ${mm(needMm)}.`,
  'cover-too-tight': ({ cover, takesMm, crimp, closedMm }) =>
    `The cover “${cover}” takes ${mm(takesMm)}; the crimp “${crimp}” is ${mm(closedMm)} once closed.`,
  'ring-closed': ({ ring, hangs }) => `“${ring}” is a closed ring: “${hangs}” can’t be hung on it.`,
};

/** How to mend what keeps a design from being strung, where more can be said than to look again. */
export const designMending: Readonly<Partial<Record<ValidationError['code'], string>>> = {
  'wrong-kind': 'Name a component that can.',
  'hole-too-small':
    'Take a thinner wire or a bead with a larger hole, or ream the hole and correct its measure.',
  'crimp-too-tight': 'Take a larger crimp or a thinner wire.',
  'cover-too-tight': 'Take a larger cover or a smaller crimp.',
  'ring-closed':
    'Take a ring that opens, or write “joint: open” (a jump ring) or “joint: split” at this one if it does.',
  'link-without-chain': 'Write how long the chain is as “extender”, or take “link” away.',
  'chain-too-short': 'Write a longer “extender”, or correct “link”: it is what one link measures inside.',
  'chain-not-whole': 'Write one of these lengths.',
  'strand-empty': 'Let at least one of its sections have a “most” above 0.',
  'strand-too-long': 'Lower “most”, or write fewer beads for one repeat.',
  ways: 'Take a clasp with as many loops as there are strands.',
};
