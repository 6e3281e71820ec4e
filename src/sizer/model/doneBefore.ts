/** What somebody did to the form before it was alive, laid over what her device has kept. */
import type { ShownUnit } from '#core/units/unit.ts';
import { formatLengthNumber } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { sliderMm } from './slider.ts';
import { reduce, type SizerAction, type SizerState } from './sizerState.ts';

export type DoneBefore = {
  /** The other unit, null where it stands as built. */
  readonly unit: ShownUnit | null;
  /** Where the slider was pushed to, in steps of the unit that the page was built with; null likewise. */
  readonly step: number | null;
  readonly actions: readonly SizerAction[];
};

export const NOTHING_DONE: DoneBefore = { unit: null, step: null, actions: [] };

/**
 * The state to begin with; `kept` itself where nothing was done.
 *
 * A browser that goes back to a page sets switches and slider as they were left, but not the measure. So beside a
 * kept measure they say nothing: it has its unit, and the slider follows it.
 * @param built the unit that the page was built with
 */
export function startedFrom(
  kept: SizerState,
  { unit, step, actions }: DoneBefore,
  built: ShownUnit,
  lang: Lang,
): SizerState {
  const bare = kept.text === '';
  const inUnit = bare && unit !== null ? { ...kept, unit } : kept;
  const slid =
    bare && step !== null
      ? { ...inUnit, text: formatLengthNumber(sliderMm(built, step), inUnit.unit, lang) }
      : inUnit;
  return actions.reduce(reduce, slid);
}
