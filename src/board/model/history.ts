/** Steps back and forth without end, of whatever. It knows neither designs nor where they are kept. */

export type History<State, Step> = {
  readonly first: State;
  /** What was done, with what came of it. */
  readonly done: readonly { readonly step: Step; readonly state: State }[];
  /** How many of them stand; the others were taken back and can be done again. */
  readonly at: number;
};

export const begin = <State, Step>(first: State): History<State, Step> => ({ first, done: [], at: 0 });

export function now<State, Step>({ first, done, at }: History<State, Step>): State {
  return done[at - 1]?.state ?? first;
}

/** One step more; what had been taken back is given up. A step that changes nothing isn't one. */
export function did<State, Step>(
  history: History<State, Step>,
  step: Step,
  state: State,
): History<State, Step> {
  if (state === now(history)) return history;
  const done = [...history.done.slice(0, history.at), { step, state }];
  return { ...history, done, at: done.length };
}

export const canUndo = ({ at }: History<unknown, unknown>): boolean => at > 0;
export const canRedo = ({ at, done }: History<unknown, unknown>): boolean => at < done.length;

export const undo = <State, Step>(history: History<State, Step>): History<State, Step> =>
  canUndo(history) ? { ...history, at: history.at - 1 } : history;

export const redo = <State, Step>(history: History<State, Step>): History<State, Step> =>
  canRedo(history) ? { ...history, at: history.at + 1 } : history;

/** The same steps done again from a state, as far as they were done. */
export function replay<State, Step>(
  first: State,
  steps: readonly Step[],
  at: number,
  next: (state: State, step: Step) => State,
): History<State, Step> {
  let state = first;
  const done = steps.map((step) => {
    state = next(state, step);
    return { step, state };
  });
  return { first, done, at: Math.min(done.length, Math.max(0, at)) };
}
