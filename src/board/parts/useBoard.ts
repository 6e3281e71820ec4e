/** The board's state: the design with its steps, what is in hand, what was said last. */
import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Design } from '#core/design/design.ts';
import { dropDraft, keepDraft, readDraft } from '../adapters/draftStore.ts';
import type { Action } from '../model/action.ts';
import { draftOf, workFrom, type Work } from '../model/draft.ts';
import { begin, canRedo, canUndo, did, now, redo, undo } from '../model/history.ts';
import type { BoardInput } from '../model/input.ts';
import { held, startOf, endOf, type Place, type Span } from '../model/place.ts';
import { reduce } from '../model/reduce.ts';

type State = {
  readonly work: Work;
  /** null: before everything on the strand. */
  readonly span: Span | null;
  readonly strand: number;
  /** For the live region. */
  readonly said: string;
};

export type Board = State & {
  readonly design: Design;
  /** Where the next bead goes. */
  readonly after: Place;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** Does what one move of a hand does, taken back as one, and says so. */
  readonly act: (step: readonly Action[], said?: string) => void;
  readonly undo: (said: string) => void;
  readonly redo: (said: string) => void;
  readonly select: (span: Span | null) => void;
  readonly chooseStrand: (strand: number) => void;
  readonly say: (said: string) => void;
  /** The file has the design as it was `at` that many steps, under this digest. */
  readonly saved: (digest: string, at: number) => void;
  /** Work on another state of the file, kept on this device; null for none. */
  readonly aside: Work | null;
  readonly takeAside: () => void;
  readonly dropAside: () => void;
};

function withVersion({ design, version, trays }: BoardInput): Work['history'] {
  const history: Work['history'] = begin(design);
  if (version === null) return history;
  const step: Action = { type: 'lay', design: version };
  return did(history, [step], reduce(design, step, trays).design);
}

function startWork(input: BoardInput): { work: Work; aside: Work | null } {
  const fresh: Work = { history: withVersion(input), digest: input.digest, saved: 0 };
  const kept = readDraft(input.piece.id);
  const work = kept === null ? null : workFrom(kept, input.trays);
  if (work === null) return { work: fresh, aside: null };
  if (work.digest === input.digest && input.version === null) return { work, aside: null };
  // Steps that the file has already are nothing to go on with.
  return { work: fresh, aside: work.history.at === work.saved ? null : work };
}

export function useBoard(input: BoardInput): Board {
  const { trays } = input;
  const start = useMemo(() => startWork(input), [input]);
  const [aside, setAside] = useState(start.aside);
  const [state, setState] = useState<State>({ work: start.work, span: null, strand: 0, said: '' });
  const { work } = state;
  const design = now(work.history);
  const touched = useRef(false);

  useEffect(() => {
    // An untouched board leaves what is kept of another state alone.
    if (touched.current) keepDraft(input.piece.id, JSON.stringify(draftOf(work)));
  }, [work, input]);

  const change = useCallback((next: (before: State) => State) => {
    touched.current = true;
    setState(next);
  }, []);

  const act = useCallback(
    (step: readonly Action[], said = '') =>
      change((before) => {
        let laid = now(before.work.history);
        let { span } = before;
        for (const action of step) {
          const done = reduce(laid, action, trays);
          laid = done.design;
          span = held(laid, done.span ?? span);
        }
        const history = did(before.work.history, step, laid);
        const strand = Math.min(span?.strand ?? before.strand, laid.strands.length - 1);
        return { work: { ...before.work, history }, span, strand, said };
      }),
    [change, trays],
  );

  const step = useCallback(
    (way: typeof undo | typeof redo, said: string) =>
      change((before) => {
        const history = way(before.work.history);
        const laid = now(history);
        const strand = Math.min(before.strand, laid.strands.length - 1);
        return { work: { ...before.work, history }, span: held(laid, before.span), strand, said };
      }),
    [change],
  );

  return {
    ...state,
    design,
    after: state.span === null ? startOf(state.strand) : endOf(state.span),
    canUndo: canUndo(work.history),
    canRedo: canRedo(work.history),
    act,
    undo: (said) => step(undo, said),
    redo: (said) => step(redo, said),
    select: (span) =>
      setState((before) => ({ ...before, span, strand: span?.strand ?? before.strand, said: '' })),
    chooseStrand: (strand) => setState((before) => ({ ...before, strand, span: null, said: '' })),
    say: (said) => setState((before) => ({ ...before, said })),
    saved: (digest, at) => change((before) => ({ ...before, work: { ...before.work, digest, saved: at } })),
    aside,
    takeAside: () => {
      if (aside === null) return;
      // Saved against the file as it is now; what differs is shown there.
      change((before) => ({ ...before, work: { ...aside, digest: input.digest, saved: -1 }, span: null }));
      setAside(null);
    },
    dropAside: () => {
      dropDraft(input.piece.id);
      setAside(null);
    },
  };
}
