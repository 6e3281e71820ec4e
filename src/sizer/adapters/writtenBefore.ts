/** What somebody set in the form while its code was still on the way: nobody should have to write her size twice. */
import { HANDS, INSTEAD_PARTS, MEASURES, SITS } from '#core/design/choice.ts';
import { isShownUnit } from '#core/units/unit.ts';
import { NOTHING_DONE, type DoneBefore } from '../model/doneBefore.ts';
import type { SizerAction } from '../model/sizerState.ts';

/**
 * Her doings, actions in the order that keeps them all. Call while the first render runs: hydration then puts into
 * the fields what the page was built with. Nothing where there is no page.
 * @param id with which the ids and names of the form's fields begin
 */
export function writtenBefore(id: string): DoneBefore {
  if (typeof document === 'undefined') return NOTHING_DONE;
  const of = MEASURES.find((one) => one === switchedBefore(`${id}-by`));
  const sit = SITS.find((one) => one === switchedBefore(`${id}-sit`));
  const hand = HANDS.find((one) => one === switchedBefore(`${id}-hand`));
  const unit = switchedBefore(`${id}-measure-unit`);
  const text = setIn(`${id}-measure`);
  const step = setIn(`${id}-measure-slider`);
  const actions: SizerAction[] = [
    ...(of === undefined ? [] : [{ type: 'by', of } as const]),
    ...(sit === undefined ? [] : [{ type: 'sit', sit } as const]),
    ...(hand === undefined ? [] : [{ type: 'hand', hand } as const]),
    ...INSTEAD_PARTS.flatMap((part) => {
      const chosen = document.getElementById(`${id}-${part}`);
      const other = chosen instanceof HTMLSelectElement && chosen.value !== '';
      return other ? [{ type: 'part', part, id: chosen.value } as const] : [];
    }),
    ...(text === null ? [] : [{ type: 'write', text } as const]),
  ];
  return { unit: isShownUnit(unit) ? unit : null, step: step === null ? null : Number(step), actions };
}

/** What a field was set to; null where it stands as it was built. */
function setIn(id: string): string | null {
  const field = document.getElementById(id);
  return field instanceof HTMLInputElement && field.value !== field.defaultValue ? field.value : null;
}

/** The choice of a switch that isn't the built one; undefined where it is, and where there is no page. */
export function switchedBefore(name: string): string | undefined {
  if (typeof document === 'undefined') return undefined;
  const inputs = [...document.getElementsByName(name)].filter((one) => one instanceof HTMLInputElement);
  return inputs.find(({ checked, defaultChecked }) => checked && !defaultChecked)?.value;
}
