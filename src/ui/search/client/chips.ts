/** What was understood, as buttons that take it away again. */

export type Chip = { readonly label: string; readonly remove: () => void };

export type Chips = { readonly show: (chips: readonly Chip[]) => void };

/**
 * @param box hidden while there is nothing to show; its list takes the buttons
 * @param field what the keyboard goes back to when the last is gone
 */
export function chipList(box: HTMLElement, field: HTMLElement): Chips {
  const list = box.querySelector('ul') ?? box;
  const template = box.dataset['remove'] ?? '{what}';
  /** Place of the button that was pressed: the one that takes its place gets the keyboard. */
  let pressed: number | null = null;

  return {
    show: (chips) => {
      const items = chips.map(({ label, remove }, place) => {
        const item = document.createElement('li');
        const button = document.createElement('button');
        button.type = 'button';
        button.textContent = label;
        button.setAttribute('aria-label', template.replace('{what}', label));
        button.addEventListener('click', () => {
          pressed = place;
          remove();
        });
        item.append(button);
        return item;
      });
      list.replaceChildren(...items);
      box.hidden = items.length === 0;
      if (pressed === null) return;
      const buttons = list.querySelectorAll('button');
      (buttons.item(Math.min(pressed, buttons.length - 1)) ?? field).focus();
      pressed = null;
    },
  };
}
