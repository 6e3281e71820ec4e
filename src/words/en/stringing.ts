/** What the maker reads while she strings: steps, checks and their doubts. English is the contract. */
import type { AssumptionCode } from '#core/body/assumptions.ts';
import type { FigureProblem } from '#core/body/figure.ts';
import type { MassBasis } from '#core/design/mass/mass.ts';
import type { CoverFit, CrimpFit } from '#core/design/ends/crimp.ts';
import type { GuardCheck } from '#core/design/ends/guard.ts';
import type { Flexibility, StrengthCaveat } from '#core/instructions/strength.ts';
import type { TailCheck } from '#core/instructions/tail.ts';
import type { Facing } from '#core/sizing/hand/facing.ts';
import type { Balance } from '#core/instructions/balance.ts';
import type { HungPendant } from '#core/instructions/hungPendant.ts';
import type { Format } from '../format.ts';
import type { Sentences } from '../sentence.ts';
import { step, type NameOf } from './steps.ts';

const caveats: Readonly<Record<StrengthCaveat, string>> = {
  'no-crimp-loss': 'What the crimp takes away is not in it.',
  'bare-metal-estimate':
    'An estimate for bare steel strand; no published figure is known for coated wire this fine.',
  'coating-assumed': 'The thickness of the coating is assumed.',
  'strands-assumed': 'The make of the strand is not known, so the weakest known one stands in.',
};

const assumptions: Readonly<Record<AssumptionCode, string>> = {
  'chest-slope': 'The chest is taken to slope 20° from upright.',
  'zero-at-pit': 'A strand as long as the foot of the neck is round is taken to lie at the pit of the neck.',
  'mean-neck': 'The neck is the mean of the group: a measure would be surer.',
  'mean-height': 'The height is the mean of the group.',
  pooled: 'Women and men are taken together.',
  'adult-lines': 'The proportions are those of adults.',
};

const figureProblems: Sentences<FigureProblem> = {
  'under-two': () =>
    'Nothing is suggested for a child under two. Cords, wires and small parts round a baby’s neck or wrist can kill.',
  'no-child': ({ mostYears }, f) => `Children’s measures end at ${f.number(mostYears)} years.`,
  'girth-absurd': ({ mm, leastMm, mostMm }, f) =>
    `${f.length(mm)} can’t be a neck: it lies between ${f.length(leastMm)} and ${f.length(mostMm)}.`,
  'height-absurd': ({ mm, leastMm, mostMm }, f) =>
    `${f.length(mm)} can’t be a height: it lies between ${f.length(leastMm)} and ${f.length(mostMm)}.`,
};

function crimpSentence({ crimp, fit, insideMm, needMm, wires }: CrimpFit, f: Format, name: NameOf): string {
  const need = needMm === null ? '' : `; ${f.number(wires)} wires need ${f.number(needMm, 2)} mm`;
  const inside = `${name(crimp)}, ${f.number(insideMm, 2)} mm inside${need}`;
  if (fit === 'fits') return `${inside}.`;
  return fit === 'tight' ? `${inside}: too tight.` : `${inside}: loose, it may not grip.`;
}

function coverSentence({ cover, fit, takesMm, closedMm }: CoverFit, f: Format, name: NameOf): string {
  const what = `${name(cover)}, for crimps of ${f.number(takesMm, 2)} mm; this one closes to ${f.number(closedMm, 2)} mm`;
  if (fit === 'fits') return `${what}.`;
  return fit === 'tight' ? `${what}: it won’t close.` : `${what}: it will sit loose.`;
}

function tailSentence(tail: TailCheck, f: Format, name: NameOf): string {
  const { blockedBy, fitsWireMm, needMm, reachMm } = tail;
  if (blockedBy === null) return `The doubled wire goes in for ${f.ruler(reachMm)}.`;
  const bead = `${name(blockedBy.component)} (number ${f.number(blockedBy.position)} from the crimp, hole ${f.number(blockedBy.holeMm, 2)} mm)`;
  const wouldFit = `a hole of ${f.number(needMm, 2)} mm, or wire of ${f.number(fitsWireMm ?? 0, 2)} mm`;
  return `${bead} is in the way after ${f.ruler(reachMm)}: it would take ${wouldFit}.`;
}

/** Below this no scale at the bench tells the sides apart. */
const EVEN_G = 0.05;

function balanceSentence({ offMm, heavierG }: Balance, f: Format): string {
  const side = (value: number) => (value > 0 ? 'clasp’s' : 'other');
  const length = `The middle lies ${f.ruler(Math.abs(offMm))} towards the ${side(-offMm)} side`;
  if (Math.abs(heavierG) < EVEN_G) return `${length}; both sides weigh the same.`;
  return `${length}; the ${side(heavierG)} side is heavier by ${f.number(Math.abs(heavierG), 1)} g.`;
}

export const stringing = {
  step,
  caveats,
  assumptions,
  figureProblems,
  crimp: crimpSentence,
  cover: coverSentence,
  tail: tailSentence,
  balance: balanceSentence,
  guard: ({ guard, holeMm, needMm, passes }: GuardCheck, f: Format, name: NameOf): string =>
    `${name(guard)}, hole ${f.number(holeMm, 2)} mm: ${passes ? 'takes the wire' : `too small for wire of ${f.number(needMm, 2)} mm`}.`,
  facing: ({ rings, faces, addRings }: Facing, f: Format): string =>
    faces === 'front'
      ? `On ${f.number(rings)} ${rings === 1 ? 'ring' : 'rings'} the pendant faces front.`
      : `On ${f.number(rings)} ${rings === 1 ? 'ring' : 'rings'} the pendant turns sideways: add ${f.number(addRings)}.`,
  centred: ({ centred, offMiddleMm }: HungPendant, f: Format): string => {
    if (offMiddleMm !== 0)
      return `A bead lies in the middle: the pendant hangs ${f.ruler(Math.abs(offMiddleMm))} beside it.`;
    return centred
      ? 'It hangs between two equal components, so it centres and swings free.'
      : 'The components on either side differ: it will lean to one.';
  },
  flexibility: { stiff: 'stiff', supple: 'supple', softest: 'the softest' } satisfies Record<
    Flexibility,
    string
  >,
  massBasis: {
    weighed: 'as weighed',
    volume: 'estimated from size and material, to some percent',
    rough: 'a rough estimate: shape or material is guessed',
  } satisfies Record<MassBasis, string>,
};
