/** Which picture a step is shown by: how the work looks when the step is done. */
import type { End } from './held.ts';
import type { Step } from './step.ts';

/** How an end of a strand looks. */
export type EndLook = {
  /** Led round what it holds and back through the crimp. */
  readonly looped: boolean;
  readonly crimp: 'open' | 'closed' | 'covered';
  /** `loose`: it stands out of the crimp. `within`: it runs through the beads and out of them. `cut`: flush, where it left them, or at the crimp. */
  readonly tail: 'none' | 'loose' | 'within' | 'cut';
  /** Beads stand beside it. */
  readonly strung: boolean;
};

export type Stage =
  | { readonly picture: 'wire'; readonly strand: number; readonly lengthMm: number }
  | { readonly picture: 'end'; readonly strand: number; readonly end: End; readonly look: EndLook }
  /** Rings and pendant joined, before they hang. */
  | { readonly picture: 'joined' }
  | { readonly picture: 'hung'; readonly strand: number }
  | { readonly picture: 'closed' };

const BARE: EndLook = { looped: false, crimp: 'open', tail: 'none', strung: false };

/** How an end looks after a step at it; null where the step does nothing to it. */
function lookAfter({ code, args }: Step, before: EndLook): EndLook | null {
  switch (code) {
    case 'thread-end':
      return { ...BARE, strung: args.end === 'ring' };
    case 'lead-back':
      return { ...before, looped: true, tail: args.beads > 0 ? 'within' : 'loose' };
    case 'crimp':
      return { ...before, crimp: 'closed' };
    case 'close-cover':
      return { ...before, crimp: 'covered' };
    case 'cut-tail':
      return { ...before, tail: 'cut' };
    case 'string-beads':
      return args.overTail ? { ...before, tail: 'within', strung: true } : null;
    default:
      return null;
  }
}

/** The end that a step is at; beads over a tail go over the clasp's. */
function endOf({ code, args }: Step): End | null {
  if ('end' in args) return args.end;
  return code === 'string-beads' && args.overTail ? 'clasp' : null;
}

/** A picture of what isn't an end. */
function otherStage({ code, strand, args }: Step): Stage | null {
  if (code === 'cut-wire') return { picture: 'wire', strand: strand ?? 0, lengthMm: args.lengthMm };
  if (code === 'join-ring') return { picture: 'joined' };
  if (code === 'hang-pendant') return { picture: 'hung', strand: strand ?? 0 };
  return code === 'check-closed' ? { picture: 'closed' } : null;
}

/** A stage for each step; null where nothing is seen to change. */
export function stagesOf(steps: readonly Step[]): readonly (Stage | null)[] {
  const looks = new Map<string, EndLook>();
  let shown = '';
  return steps.map((step) => {
    const end = endOf(step);
    let stage = otherStage(step);
    if (end !== null) {
      const strand = step.strand ?? 0;
      const look = lookAfter(step, looks.get(`${strand} ${end}`) ?? BARE);
      if (look !== null) {
        looks.set(`${strand} ${end}`, look);
        stage = { picture: 'end', strand, end, look };
      }
    }
    const key = JSON.stringify(stage);
    if (stage === null || key === shown) return null;
    shown = key;
    return stage;
  });
}
