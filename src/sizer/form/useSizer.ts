/** The state of one sizing island: model and memory joined to Preact. */
import { useEffect, useLayoutEffect, useMemo, useReducer, useRef, useState } from 'preact/hooks';
import { formatLengthNumber } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import type { SizedWords } from '#words/words.ts';
import { onShownAgain } from '../adapters/shownAgain.ts';
import { onPageUnit, sendPageUnit } from '../adapters/pageUnit.ts';
import { writtenBefore } from '../adapters/writtenBefore.ts';
import { startedFrom } from '../model/doneBefore.ts';
import type { Outcome } from '../model/outcome.ts';
import type { Store } from '../model/ports.ts';
import { recall, remember } from '../model/remember.ts';
import { sliderMm } from '../model/slider.ts';
import { reduce, startOf, type SizerAction, type SizerState } from '../model/sizerState.ts';
import type { PieceForSizer, ShopForSizer } from '../model/input.ts';
import { useLoaded, type Loader } from '../controls/useLoaded.ts';

export type SizerHandle = {
  readonly state: SizerState;
  /** Null until it is fetched. */
  readonly engine: Engine | null;
  /** With the clasp and pendant she has chosen. */
  readonly chosen: PieceForSizer;
  /** True where fetching it failed. */
  readonly failed: boolean;
  readonly outcome: Outcome;
  readonly dispatch: (action: SizerAction) => void;
  /** Writes a measure of the model into the field, in the buyer's unit. */
  readonly take: (mm: number) => void;
  /** The same for a finished length, whatever the buyer went by. */
  readonly takeLength: (mm: number) => void;
  readonly slide: (step: number) => void;
  readonly changeUnit: (unit: SizerState['unit']) => void;
};

/** The computation, what shows its answer, and its words. */
export type Engine = typeof import('./answering.ts') & { readonly words: SizedWords };

const WAITING: Outcome = { kind: 'waiting' };

/** `id`: begins those of the form's fields. `load`: fetches what answers. */
export function useSizer(
  piece: PieceForSizer,
  shop: ShopForSizer,
  lang: Lang,
  store: Store,
  id: string,
  load: Loader<Engine>,
): SizerHandle {
  const [before] = useState(() => writtenBefore(id));
  const [state, dispatch] = useReducer(reduce, startOf(piece.design.kind, shop.unit));
  const { parts } = state;
  // Whoever brought the island alive is about to write.
  const { module: engine, failed } = useLoaded(load, true);
  const chosen = useMemo(() => engine?.chosenPiece(piece, parts) ?? piece, [engine, piece, parts]);
  const outcome = useMemo(() => engine?.outcomeOf(chosen, state) ?? WAITING, [engine, chosen, state]);
  const unit = useRef(state.unit);
  unit.current = state.unit;
  const act = (action: SizerAction) => {
    const next = reduce(state, action);
    dispatch(action);
    remember(store, piece, next);
    if (next.unit === unit.current) return;
    // Before announcing it: the event comes back here too.
    unit.current = next.unit;
    sendPageUnit(next.unit);
  };
  const take = (mm: number) => act({ type: 'write', text: formatLengthNumber(mm, state.unit, lang) });
  const takeLength = (mm: number) => act({ type: 'length', text: formatLengthNumber(mm, state.unit, lang) });
  const textIn = (to: SizerState['unit']) =>
    engine === null ? state.text : engine.rewrite(chosen, state, to, lang);
  const changeUnit = (to: SizerState['unit']) => {
    if (to !== unit.current) act({ type: 'unit', unit: to, text: textIn(to) });
  };
  // The listener is set once and must see the latest state.
  const latest = useRef(changeUnit);
  latest.current = changeUnit;
  useLayoutEffect(() => {
    // After the first render: what the page was built with must be what hydration finds.
    const kept = recall(store, piece, state);
    const started = startedFrom(kept, before, shop.unit, lang);
    dispatch({ type: 'restore', state: started });
    if (started !== kept) {
      remember(store, piece, started);
      if (started.unit !== unit.current) sendPageUnit(started.unit);
    }
    return onPageUnit((to) => latest.current(to));
  }, []);
  // Its fields are rendered anew, and nothing in it changes.
  useEffect(() => onShownAgain(() => dispatch({ type: 'restore', state: {} })), []);
  return {
    state,
    engine,
    chosen,
    failed,
    outcome,
    dispatch: act,
    take,
    takeLength,
    slide: (step) => take(sliderMm(state.unit, step)),
    changeUnit,
  };
}
