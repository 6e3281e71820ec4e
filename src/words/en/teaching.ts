/** A piece as a tutorial: steps told to somebody who strings for the first time, tools, amounts, cautions. */
import type { Step, StepCode } from '#core/instructions/step.ts';
import type { PhaseName } from '#core/instructions/phase.ts';
import type { Tool } from '#core/instructions/tools.ts';
import type { Format } from '../format.ts';
import { sentenceOf, type Sentences } from '../sentence.ts';
import { teachSentence, type OwnSteps, type TeachPhrases } from '../teachStep.ts';
import { round, SEEN_MM, type NameOf } from './steps.ts';
import { ordinal } from '../englishOrdinal.ts';

const WAYS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'] as const;

const NOTHING = (): TeachPhrases => ({});

/** What the size decides in each step. */
const phrases: Sentences<Step, [f: Format, name: NameOf], TeachPhrases> = {
  'wear-eye-protection': NOTHING,
  'try-clasp': ({ args: { clasp, inHalves } }, _, name) => ({
    clasp: name(clasp),
    halves: inHalves ? 'Then part it: one half goes to each end.' : '',
  }),
  'join-chain': ({ args }, f, name) => ({
    length: `${args.links === null ? '' : `${f.number(args.links)} links, `}${f.ruler(args.chainMm)}`,
    held: round(args, name),
  }),
  'join-ring': ({ args: { ring, above, below } }, f, name) => ({
    ring: name(ring),
    things: f.list([below, above].filter((id) => id !== null).map((id) => `the ${name(id)}`)),
  }),
  'check-facing': ({ args: { pendant, addRings } }, _, name) => ({
    facing:
      addRings === 0
        ? `the ${name(pendant)} faces front`
        : `the ${name(pendant)} turns sideways, and one more ring makes it face front`,
  }),
  'lay-out': ({ args: { claspSide } }) => ({
    side: claspSide === null ? '' : `, the clasp on the ${claspSide}`,
  }),
  'cut-wire': ({ args: { wire, lengthMm } }, f, name) => ({
    length: f.ruler(lengthMm, 'up'),
    wire: name(wire),
  }),
  'thread-end': ({ args: { crimp, guard, way, ...args } }, f, name) => {
    const held = round(args, name);
    const eye = way === null ? '' : ` (its ${WAYS[way - 1] ?? `number ${f.number(way)}`} eye)`;
    const things = [
      `the ${name(crimp)}`,
      guard === null ? '' : `the ${name(guard)}`,
      held === '' ? '' : `${held}${eye}`,
    ];
    return { things: things.filter((one) => one !== '').join(', then ') };
  },
  'lead-back': ({ args: { loopMm, beads, outMm, ...args } }, f, name) => {
    const held = round(args, name);
    const back = beads === 1 ? 'the last bead' : `the last ${f.number(beads)} beads`;
    return {
      through: beads === 0 ? 'the crimp' : `the crimp and ${back}`,
      loop: `${f.ruler(loopMm)} ${held === '' ? 'for the clasp to close in' : `round ${held}`}`,
      out: outMm === null ? '' : `, till ${f.ruler(outMm)} stand out`,
    };
  },
  'check-loop': ({ args }, _, name) => {
    const held = round(args, name);
    return { free: held === '' ? '' : `, and ${held} swings freely` };
  },
  crimp: NOTHING,
  'close-cover': ({ args: { cover } }, _, name) => ({ cover: name(cover) }),
  'cut-tail': ({ args: { bead } }, f) => ({
    where:
      bead === null ? 'at the crimp, since no bead here takes it' : `where it leaves bead ${f.number(bead)}`,
  }),
  'string-beads': ({ args: { first, last, overTail } }, f) => ({
    beads: first === last ? `bead ${f.number(first)}` : `beads ${f.number(first)} to ${f.number(last)}`,
    over: overTail ? 'over wire and tail together, each right up against the last' : '',
  }),
  'hang-pendant': ({ args: { pendant, rings } }, _, name) => ({
    pendant: name(pendant),
    by: rings === 0 ? 'its own loop' : rings === 1 ? 'its ring' : 'its top ring',
  }),
  'draw-up': ({ args: { slackMm, roomMm } }, f) => ({
    slack:
      slackMm < SEEN_MM
        ? 'leave no slack that you can see'
        : `leave ${f.ruler(slackMm)} bare at the last bead`,
    room: roomMm === 0 ? '' : 'The open cover, held over the crimp, should just touch the last bead.',
  }),
  measure: ({ args: { lengthMm, chained } }, f) => ({
    length: f.ruler(lengthMm),
    chain: chained ? ', the chain not counted' : '',
  }),
  'check-pattern': ({ args: { count } }, f) => ({ count: f.number(count) }),
  'check-closed': ({ args: { lengthMm, chainMm, chainUsedMm, links, link } }, f) => {
    if (chainMm === 0) return { closed: f.ruler(lengthMm) };
    const used =
      chainUsedMm === 0
        ? ', as this size asks'
        : link !== null
          ? `; in its ${ordinal(link)} link, as this size asks: ${f.ruler(lengthMm + chainUsedMm)}`
          : `; ${f.ruler(chainUsedMm)} down the chain, as this size asks: ${f.ruler(lengthMm + chainUsedMm)}`;
    const last = links === null ? 'by the last link' : `in the last link, the ${ordinal(links)}`;
    return {
      closed: `${f.ruler(lengthMm)} before the chain${used}; ${last}: ${f.ruler(lengthMm + chainMm)}`,
    };
  },
};

/** The usual words of each step, with places for the phrases above. */
const usual: Sentences<Step, []> = {
  'wear-eye-protection': () =>
    'Put eye protection on before you take up the cutters, and keep it on: cut ends of steel wire fly. Whoever watches needs it too.',
  'try-clasp': () =>
    'Open and close the {clasp} a few times. If it is stiff, take another now; later it can’t be changed. {halves}',
  'join-chain': () =>
    'Take {length} of chain. Hold the link at one end between two pliers and turn it open front to back, never apart; hang it on {held} and turn it shut.',
  'join-ring': ({ args: { joint } }) =>
    joint === 'open'
      ? 'Take the {ring} between two pliers and turn it open front to back, never apart, or it won’t be round again. Put {things} on it and turn it shut till its ends click.'
      : 'Lift an end of the {ring} with the split-ring pliers and work {things} round it till both turns hold.',
  'check-facing': () => 'Hold it up as it will hang and look: {facing}.',
  'lay-out': () =>
    'Lay all the beads out on the board as in the picture, from zero both ways{side}. Look at it from a step back: now is the time to change your mind.',
  'cut-wire': () => 'Cut {length} of {wire}. Hold both sides of the cut, so that no end flies.',
  'thread-end': () => 'Thread {things}, in this order.',
  'lead-back': () =>
    'Lead the wire back through {through}{out}. The loop is to be {loop}; leave it a little larger for now, since crimping draws it in.',
  'check-loop': () =>
    'Look into the crimp: both wires lie side by side and don’t cross{free}. If not, pull it open again and start this end over.',
  crimp: () =>
    'Squeeze the crimp twice: first in the hollow of the pliers that has a tooth, so that each wire lies in a channel of its own; then, turned a quarter, in the round hollow, so that it folds. No more, or it cracks. Pull at the wire to try it.',
  'close-cover': () =>
    'Set the {cover} over the crimp, opened a little first if it is tight, and press it round with a light hand, its seam to the back.',
  'cut-tail': () =>
    'Away from your face, cut the tail flush {where}, without touching the wire that runs on. Tuck the stub in: a cut end scratches.',
  'string-beads': () => 'String {beads} {over}.',
  'hang-pendant': () => 'Here the {pendant} hangs: thread {by}, then go on with the beads.',
  'draw-up': () =>
    'Draw the wire up: {slack}. Bend the strand into a ring; no bead may stand off, and nothing may pull. {room}',
  measure: () =>
    'Lay it straight and measure all of it, from where one end bears to where the other does{chain}: {length}. If it isn’t, count again before you crimp.',
  'check-pattern': () =>
    'Count {count} and read the pattern once more from both ends. Until the crimp is closed everything can be mended.',
  'check-closed': () =>
    'Close it: {closed}. Run a finger along it: no sharp end may stand out, and every bead lies close.',
};

/** What each step is about, as a heading for the maker. */
const NAMES: Readonly<Record<StepCode, string>> = {
  'wear-eye-protection': 'Eye protection',
  'try-clasp': 'Trying the clasp',
  'join-chain': 'Joining the chain',
  'join-ring': 'Joining rings and pendant',
  'check-facing': 'Looking which way it faces',
  'lay-out': 'Laying out',
  'cut-wire': 'Cutting the wire',
  'thread-end': 'Threading an end',
  'lead-back': 'Leading the wire back',
  'check-loop': 'Looking at the loop',
  crimp: 'Crimping',
  'close-cover': 'Closing the cover',
  'cut-tail': 'Cutting the tail',
  'string-beads': 'Stringing beads',
  'hang-pendant': 'Hanging the pendant',
  'draw-up': 'Drawing up',
  measure: 'Measuring',
  'check-pattern': 'Counting',
  'check-closed': 'Closing it',
};

const TOOLS: Readonly<Record<Tool, (count: number) => string>> = {
  'eye-protection': () => 'Eye protection, for you and whoever watches',
  cutters: () => 'Flush cutters for steel wire',
  'crimping-pliers': () => 'Crimping pliers of the crimp’s size',
  pliers: (count) => (count === 1 ? 'Pliers with smooth jaws' : 'Two pliers with smooth jaws'),
  'split-ring-pliers': () => 'Split-ring pliers',
  board: () => 'A bead board, or a towel that nothing rolls from',
  ruler: () => 'A ruler',
  clip: () => 'A clip or a bit of tape for the wire’s free end, for when you lay it aside',
};

const PHASES: Readonly<Record<PhaseName, string>> = {
  ready: 'Make ready',
  first: 'The clasp’s end',
  beads: 'The beads',
  second: 'The other end',
  done: 'To finish',
};

export const teaching = {
  title: (piece: string): string => `String ${piece} yourself`,
  /** Of the page of one size. */
  titleFor: (piece: string, size: string): string => `String ${piece} yourself, ${size}`,
  description: (piece: string, size: string): string =>
    `How ${piece} is strung on steel wire, step by step with a drawing of each: tools, beads and wire for ${size}, and what to take care of.`,
  asShown: 'as shown',
  for: {
    length: (length: string): string => `${length} long`,
    wrist: (length: string): string => `a wrist of ${length}`,
    ankle: (length: string): string => `an ankle of ${length}`,
    neck: (length: string): string => `a neck of ${length}`,
  },
  linkFromPiece: 'String it yourself: the tutorial',
  sizes: 'Your size',
  sizesLead: {
    length: 'Its length when it is finished.',
    girth: 'Measure close, without pulling. The sizes sit easy.',
  },
  sits: (less: string, more: string): string =>
    `For a snug sit take a size ${less} smaller than you measured, for a loose one ${more} larger.`,
  comesOut: 'Comes out',
  print: 'Print this size',
  tools: 'Tools',
  materials: 'What you need',
  columns: { part: 'What', count: 'For the piece', spares: 'To spare' },
  wire: (name: string): string => `Wire: ${name}`,
  cuts: (f: Format, cutsMm: readonly number[]): string => f.list(cutsMm.map((mm) => f.ruler(mm, 'up'))),
  have: (length: string): string => `have ${length}, so that one end may go wrong`,
  chain: 'Chain',
  links: (f: Format, links: number, length: string): string => `${f.number(links)} links, ${length}`,
  cautions: 'Before you begin',
  always: [
    'Cut ends of steel wire fly and go into eyes. Wear eye protection, hold both sides of the cut, and sweep up the ends.',
    'Beads, crimps and wire ends are small parts: keep young children away from the table, and what you make from children under three.',
  ],
  local:
    'Rules for jewellery, and for what children may wear, differ by country: if you give it away or sell it, look up those where you live.',
  picture: 'The piece laid out',
  pictureText: 'In stringing order from the clasp on, numbered as in the list.',
  order: 'Stringing order, from the clasp',
  strandOf: (at: number, of: number): string => `Strand ${at} of ${of}`,
  repeat: (times: number): string => `${times} ×`,
  loop: 'wire loop',
  halves: {
    first: (clasp: string): string => `one half of the ${clasp}`,
    other: (clasp: string): string => `the other half of the ${clasp}`,
  },
  hangs: (pendant: string, rings: readonly string[]): string =>
    rings.length === 0 ? `${pendant}, by its own loop` : `${pendant} on ${rings.join(', ')}`,
  plain: { clasp: 'clasp', ring: 'ring', crimp: 'crimp', cover: 'cover', pendant: 'pendant' },
  steps: 'Step by step',
  phases: PHASES,
  otherHand: {
    left: 'Laid out for a right hand that works the clasp. For the left hand lay the clasp on the other side; all else stays.',
    right:
      'Laid out for a left hand that works the clasp. For the right hand lay the clasp on the other side; all else stays.',
  },
  estimate: (time: string): string => `About ${time} for practised hands; give yourself twice that.`,
  stages: {
    wire: 'The wire to cut',
    end: 'The end as it looks now',
    joined: 'Rings and pendant joined',
    hung: 'The pendant on the wire',
    closed: 'The finished piece, closed',
  },
  backToPiece: (piece: string): string => `${piece} in the shop`,
  bench: {
    title: (piece: string): string => `${piece} as a tutorial`,
    lead: 'For learners, in the order of your own card, made of the same piece. Say in your words what you would tell someone at your table; what you leave empty is told as usual. It isn’t in the shop until you offer it.',
    isOffered: 'It has a page in the shop, in every size of its table.',
    show: 'Show it',
    shownIn: 'Shown for',
    places: (places: readonly string[]): string =>
      places.length === 0
        ? ''
        : ` Keep ${places.map((one) => `{${one}}`).join(', ')}: the shop puts in what the size asks for.`,
    usually: (text: string): string => `As usual: “${text}”`,
  },
  ownLead: 'From the maker',
  names: NAMES,
  /** With its places still in braces. */
  usual: (step: Step): string => sentenceOf(usual, step),
  toolName: (tool: Tool, count: number): string => TOOLS[tool](count),
  /** @param name of components and wire; findings by their kind */
  step: (step: Step, f: Format, name: NameOf, own: OwnSteps): string =>
    teachSentence(
      step,
      own,
      (one) => sentenceOf(usual, one),
      (one) => sentenceOf(phrases, one, f, name),
    ),
};
