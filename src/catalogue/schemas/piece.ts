/** A finished piece as the maker writes it, one in a file named after it. */
import type { z } from 'zod';
import { STATUSES } from '../model/catalogue.ts';
import type { StepCode } from '#core/instructions/step.ts';
import { LEAST_LINK_MM } from '#core/design/caps.ts';
import { TEACH_STEPS } from '#words/teachStep.ts';
import { LIES, PIECE_KINDS, ROLES } from '#core/design/design.ts';
import {
  beadLine,
  date,
  fields,
  idOf,
  listOf,
  money,
  oneOf,
  quantity,
  text,
  whole,
  yesNo,
} from '../fields/field.ts';

// Room for a long story, and an end to a pasted book.
const longestStory = 4000;
const mostRepeats = 999;

const [, ...LIES_OF_SEVERAL] = LIES;

const clasp = idOf(['clasp']);
/** What a clasp closes into. */
const closesInto = idOf(['ring', 'clasp', 'bead', 'spacer']);
const pendant = idOf(['pendant']);

const section = fields({
  name: text(40),
  role: oneOf(ROLES).default('body'),
  /** One repeat: components in order, from the centre outwards. */
  beads: listOf(beadLine),
  usual: whole(0, mostRepeats).default(1),
  fewest: whole(0, mostRepeats).optional(),
  most: whole(0, mostRepeats).optional(),
  /** The greater, the later this section is changed. */
  cost: whole(0, 1_000_000).optional(),
});

const strand = fields({
  name: text(40),
  mirrored: yesNo.default(true),
  sections: listOf(section),
});

const german = fields({ name: text(60).optional(), summary: text(200), story: text(longestStory) });

/** Room for a step told at length. */
const longestStep = 900;
const ownStep = text(longestStep).optional();
const ownSteps = fields(
  Object.fromEntries(TEACH_STEPS.map((step) => [step, ownStep])) as Record<StepCode, typeof ownStep>,
);

/** Her own words in one language; what she leaves out is said as usual. */
const taught = { lead: text(longestStory).optional(), steps: ownSteps.optional() };

export const pieceSchema = fields({
  name: text(60),
  kind: oneOf(PIECE_KINDS),
  status: oneOf(STATUSES),
  made: date,
  /** Since when the one that lies finished does: what was sold before was another. */
  'lies-since': date.optional(),
  price: money,
  summary: text(200),
  story: text(longestStory),
  de: german.optional(),
  pictures: listOf(
    fields({
      file: text(120),
      alt: text(250),
      'alt-de': text(250).optional(),
      /** The part that is shown, in percent: from the left, from the top, width, height. */
      crop: text(40).optional(),
    }),
  ).optional(),
  /** The piece as a tutorial. */
  teach: fields({
    /** Whether the shop has a page of it. */
    offered: yesNo.default(false),
    ...taught,
    de: fields(taught).optional(),
  }).optional(),
  /** Why it can't be had in every size that is often asked for. */
  gaps: text(300).optional(),
  wire: idOf('wire'),
  closing: fields({
    clasp,
    ring: closesInto.optional(),
    crimp: idOf(['crimp']),
    cover: idOf(['cover']).optional(),
    guard: idOf(['spacer', 'cover', 'crimp']).optional(),
    /** One wire loop, from crimp to bearing point. */
    loop: quantity('length', 0.5, 30),
    /** Chain that the ring end may be let out by. */
    extender: quantity('length', 1, 200).optional(),
    /** What one of its links adds, its inside length; the clasp hooks into one of them. */
    link: quantity('length', LEAST_LINK_MM, 30).optional(),
  }),
  pendant: fields({ hangs: pendant, rings: listOf(idOf(['ring'])).optional() }).optional(),
  /** What a buyer may choose instead of clasp and pendant. */
  instead: fields({
    clasps: listOf(fields({ clasp, ring: closesInto.optional() })).optional(),
    pendants: listOf(pendant).optional(),
  }).optional(),
  /** It has a front although both sides are alike. */
  'one-sided': yesNo.default(false),
  /** Its better side has a top and a bottom; only said of a piece that has one. */
  upright: yesNo.optional(),
  mirrored: yesNo.optional(),
  sections: listOf(section).optional(),
  strands: listOf(strand).optional(),
  lie: oneOf(LIES_OF_SEVERAL).optional(),
  /** Nested strands: clear gap between them. */
  gap: quantity('length', 0, 200).optional(),
});

export type AuthoredPiece = z.output<typeof pieceSchema>;
export type AuthoredSection = z.output<typeof section>;
