/** The steps at the bench, as the maker would say them to herself. */
import type { Step, StepArgs } from '#core/instructions/step.ts';
import type { Format } from '../format.ts';
import { sentenceOf, type Sentences } from '../sentence.ts';
import { ordinal } from '../englishOrdinal.ts';

/** The name of a component or wire by its id, as the maker wrote it. */
export type NameOf = (id: string) => string;

/** What a loop is led round, with its article; '' where it is nothing. */
export function round(
  { held, finding }: StepArgs['check-loop'] | StepArgs['join-chain'],
  name: NameOf,
): string {
  const what = finding === null ? '' : name(finding);
  return {
    whole: `the ${what}`,
    'first-half': `one half of the ${what}`,
    'other-half': `the other half of the ${what}`,
    chain: 'the chain’s last link',
    nothing: '',
  }[held];
}

const WAYS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'] as const;
const wayOf = (way: number, f: Format): string => WAYS[way - 1] ?? `number ${f.number(way)}`;

const beadsOf = (count: number, f: Format): string =>
  count === 1 ? 'the last bead' : `the last ${f.number(count)} beads`;

/** Slack below this can't be seen, let alone set by eye (common practice, no source). */
export const SEEN_MM = 1;

const steps: Sentences<Step, [f: Format, name: NameOf]> = {
  'wear-eye-protection': () => 'Eye protection on, and it stays on: cut ends of steel wire fly.',
  'try-clasp': ({ args: { clasp, inHalves } }, _, name) => {
    const tried = `Work the ${name(clasp)} a few times: a stiff one can’t be changed later.`;
    return inHalves ? `${tried} Then part it: one half goes to each end.` : tried;
  },
  'join-chain': ({ args }, f, name) =>
    `Take ${args.links === null ? '' : `${f.number(args.links)} links, `}${f.ruler(args.chainMm)} of chain. Open the link at one end front to back, never apart; hang it on ${round(args, name)} and close it.`,
  'join-ring': ({ args: { ring, joint, above, below } }, f, name) => {
    const taken = [below, above].filter((id) => id !== null).map((id) => `the ${name(id)}`);
    return joint === 'open'
      ? `Open the ${name(ring)} front to back, never apart. Put ${f.list(taken)} on it; close it till its ends click.`
      : `Work ${f.list(taken)} onto the ${name(ring)} till both its turns hold.`;
  },
  'check-facing': ({ args: { pendant, addRings } }, _, name) =>
    addRings === 0
      ? `Hold it up as it will hang: the ${name(pendant)} faces front.`
      : `As planned the ${name(pendant)} turns sideways: one more ring makes it face front.`,
  'lay-out': ({ args: { claspSide } }) => {
    const side = claspSide === null ? '' : `, the clasp on the ${claspSide}`;
    return `Lay everything out on the board from zero both ways${side}, and look at it.`;
  },
  'cut-wire': ({ args: { wire, lengthMm } }, f, name) => `Cut ${f.ruler(lengthMm, 'up')} of ${name(wire)}.`,
  'thread-end': ({ args: { crimp, guard, way, ...args } }, f, name) => {
    const held = round(args, name);
    const eye = way === null ? '' : ` (its ${wayOf(way, f)} eye)`;
    const things = [
      `the ${name(crimp)}`,
      guard === null ? '' : `the ${name(guard)}`,
      held === '' ? '' : `${held}${eye}`,
    ];
    return `Thread ${things.filter((one) => one !== '').join(', then ')}.`;
  },
  'lead-back': ({ args: { loopMm, beads, outMm, ...args } }, f, name) => {
    const held = round(args, name);
    const through = beads === 0 ? 'the crimp' : `the crimp and ${beadsOf(beads, f)}`;
    const out = outMm === null ? '' : ` till ${f.ruler(outMm)} stand out`;
    const loop = `${f.ruler(loopMm)} ${held === '' ? 'for the clasp to close in' : `round ${held}`}`;
    return `Back through ${through}${out}. Loop: ${loop}, a little larger for now, since crimping closes it.`;
  },
  'check-loop': ({ args }, _, name) => {
    const held = round(args, name);
    const wires = 'In the crimp both wires lie side by side, not crossed';
    return held === '' ? `${wires}.` : `${wires}; ${held} swings freely.`;
  },
  crimp: () => 'Crimp in two squeezes, the crease first, then round, and no more. Pull to try it.',
  'close-cover': ({ args: { cover } }, _, name) =>
    `Close the ${name(cover)} over it, opened a little first if it is tight, its seam to the back.`,
  'cut-tail': ({ args: { bead } }, f) =>
    bead === null
      ? 'Away from your face, cut the tail flush at the crimp: no bead here takes it, so it can’t be hidden.'
      : `Away from your face, cut the tail flush where it leaves bead ${f.number(bead)}, without touching the wire inside. Tuck the stub in.`,
  'string-beads': ({ args: { first, last, overTail } }, f) => {
    const which =
      first === last ? `bead ${f.number(first)}` : `beads ${f.number(first)} to ${f.number(last)}`;
    return overTail ? `String ${which} over wire and tail together, right up.` : `String ${which}.`;
  },
  'hang-pendant': ({ args: { pendant, rings } }, _, name) => {
    const by = rings === 0 ? 'its own loop' : rings === 1 ? 'its ring' : 'its top ring';
    return `Hang the ${name(pendant)} here: thread ${by}.`;
  },
  'draw-up': ({ args: { slackMm, roomMm } }, f) => {
    const slack =
      slackMm < SEEN_MM
        ? 'no slack that you can see. Bent in a ring, neighbours touch and none stands off'
        : `${f.ruler(slackMm)} bare at the last bead. Bent in a ring, none stands off and nothing pulls`;
    const room = roomMm === 0 ? '' : ' The open cover, held over the crimp, just touches the last bead.';
    return `Draw the wire up: ${slack}.${room}`;
  },
  measure: ({ args: { lengthMm, chained } }, f) =>
    `Measure it straight, with everything on, from where one end bears to where the other does${chained ? ', the chain not counted' : ''}: ${f.ruler(lengthMm)}.`,
  'check-pattern': ({ args: { count } }, f) =>
    `Count ${f.number(count)} and read the pattern once more from both ends: now it can still be mended.`,
  'check-closed': ({ args: { lengthMm, chainMm, chainUsedMm, links, link } }, f) => {
    if (chainMm === 0) return `Close it: ${f.ruler(lengthMm)}, and no sharp end stands out.`;
    const used =
      chainUsedMm === 0
        ? ', as this size asks'
        : link !== null
          ? `; in the ${ordinal(link)} link, as this size asks: ${f.ruler(lengthMm + chainUsedMm)}`
          : `; by the link nearest to ${f.ruler(chainUsedMm)} down it, as this size asks: about ${f.ruler(lengthMm + chainUsedMm)}`;
    const last = links === null ? 'by the last link' : `in the last link, the ${ordinal(links)}`;
    return `Close it before the chain: ${f.ruler(lengthMm)}${used}; ${last}: ${f.ruler(lengthMm + chainMm)}. Every link takes the clasp, and no sharp end stands out.`;
  },
};

/** The sentence of a step. */
export const step = (one: Step, f: Format, name: NameOf): string => sentenceOf(steps, one, f, name);
