/** What somebody set in the form while its code was still on the way: nobody should have to write her size twice. */
import { MEASURES, SITS, HANDS } from '#core/design/choice.ts';
import { INSTEAD_PARTS } from '#order/document.ts';
import type { SizerAction } from '../model/sizerState.ts';

/**
 * Her doings as actions, in the order that keeps them all. Call while the first render runs: hydration then puts
 * into the fields what the page was built with. Empty where there is no page.
 * @param id with which the ids and names of the form's fields begin
 */
export function writtenBefore(id: string): readonly SizerAction[] {
  if (typeof document === 'undefined') return [];
  const field = document.getElementById(`${id}-measure`);
  const of = MEASURES.find((one) => one === changedTo(`${id}-by`));
  const sit = SITS.find((one) => one === changedTo(`${id}-sit`));
  const hand = HANDS.find((one) => one === changedTo(`${id}-hand`));
  const wrote = field instanceof HTMLInputElement && field.value !== field.defaultValue;
  return [
    ...(of === undefined ? [] : [{ type: 'by', of } as const]),
    ...(sit === undefined ? [] : [{ type: 'sit', sit } as const]),
    ...(hand === undefined ? [] : [{ type: 'hand', hand } as const]),
    ...INSTEAD_PARTS.flatMap((part) => {
      const chosen = document.getElementById(`${id}-${part}`);
      const other = chosen instanceof HTMLSelectElement && chosen.value !== '';
      return other ? [{ type: 'part', part, id: chosen.value } as const] : [];
    }),
    ...(wrote ? [{ type: 'write', text: field.value } as const] : []),
  ];
}

/** The choice of a switch that isn't the built one; undefined where it is. */
function changedTo(name: string): string | undefined {
  const inputs = [...document.getElementsByName(name)].filter((one) => one instanceof HTMLInputElement);
  return inputs.find(({ checked, defaultChecked }) => checked && !defaultChecked)?.value;
}
