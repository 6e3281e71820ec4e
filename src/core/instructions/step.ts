/** One step at the bench: a code and what its sentence needs. `words/` makes the sentences. */
import type { Joint } from '../design/component.ts';
import type { End, Held } from './held.ts';

type Nothing = Readonly<Record<never, never>>;
type AtEnd = { readonly end: End };
/** What the loop of an end is led round. */
type Round = { readonly held: Held['what']; readonly finding: string | null };

/** Ids of components, lengths in mm, counts; numbers of components are those of the list, 1 next to the clasp. */
export type StepArgs = {
  readonly 'wear-eye-protection': Nothing;
  readonly 'try-clasp': { readonly clasp: string; readonly inHalves: boolean };
  /** The extender's last link is opened for the finding that the chain hangs from. `links`: whole ones, null where their length isn't known. */
  readonly 'join-chain': Round & { readonly chainMm: number; readonly links: number | null };
  /** A ring is opened and takes what hangs below it, above it, or both. `place`: from the wire down, 1 on the wire. */
  readonly 'join-ring': {
    readonly ring: string;
    readonly place: number;
    readonly joint: Exclude<Joint, 'closed'>;
    readonly above: string | null;
    readonly below: string | null;
  };
  /** `addRings` more rings for it to face front; 0 where it will. */
  readonly 'check-facing': { readonly pendant: string; readonly addRings: number };
  readonly 'lay-out': { readonly claspSide: 'left' | 'right' | null };
  readonly 'cut-wire': { readonly wire: string; readonly lengthMm: number };
  /** Crimp, guard and finding, in this order. `way`: which of the finding's eyes, where it has several. */
  readonly 'thread-end': AtEnd &
    Round & { readonly crimp: string; readonly guard: string | null; readonly way: number | null };
  /** Back through the crimp and so many components. `outMm`: wire to be left standing out of the crimp; null where it is drawn up later. */
  readonly 'lead-back': AtEnd &
    Round & { readonly loopMm: number; readonly beads: number; readonly outMm: number | null };
  /** Both wires side by side in the crimp, the finding free in its loop. */
  readonly 'check-loop': AtEnd & Round;
  readonly crimp: AtEnd & { readonly crimp: string };
  readonly 'close-cover': AtEnd & { readonly cover: string };
  /** Flush where the tail leaves the last of so many components, whose number in the list `bead` is; 0 and null: at the crimp. */
  readonly 'cut-tail': AtEnd & { readonly beads: number; readonly bead: number | null };
  readonly 'string-beads': { readonly first: number; readonly last: number; readonly overTail: boolean };
  readonly 'hang-pendant': { readonly pendant: string; readonly rings: number; readonly overTail: boolean };
  /** `roomMm`: what the cover will need beside the crimp, 0 without one. */
  readonly 'draw-up': { readonly slackMm: number; readonly roomMm: number };
  /** `chained`: a chain hangs from the end, and isn't in the length. */
  readonly measure: { readonly lengthMm: number; readonly chained: boolean };
  readonly 'check-pattern': { readonly count: number };
  /** Closed without its chain; `chainMm` is the whole chain, 0 for none, `chainUsedMm` how far down it this size closes. `link`: in which of its `links`, 0 for none; null where their length isn't known. */
  readonly 'check-closed': {
    readonly lengthMm: number;
    readonly chainMm: number;
    readonly chainUsedMm: number;
    readonly links: number | null;
    readonly link: number | null;
  };
};

export type StepCode = keyof StepArgs;

export type Step = {
  readonly [Code in StepCode]: {
    readonly code: Code;
    /** Strand index; null where it is for the whole piece. */
    readonly strand: number | null;
    readonly args: StepArgs[Code];
  };
}[StepCode];

/** Steps that guard hands, eyes or whoever stands near. */
export function isCaution(code: StepCode): boolean {
  return code === 'wear-eye-protection' || code === 'cut-tail';
}
