/**
 * Inches or centimetres, everywhere on the page: the choice is kept on this
 * device, in the same entry as the sizer's, and never sent anywhere.
 */
import { browserStore } from '#sizer/adapters/browserStore.ts';
import { onPageUnit, tellPageUnit } from '#sizer/adapters/pageUnit.ts';
import { isUnit, keepUnit, keptUnit, type Unit } from './keptSize.ts';

function show(unit: Unit): void {
  document.documentElement.dataset['unit'] = unit;
  for (const button of document.querySelectorAll<HTMLButtonElement>('[data-set-unit]')) {
    button.setAttribute('aria-pressed', String(button.dataset['setUnit'] === unit));
  }
}

const shopUnit = document.documentElement.dataset['unit'];
show(keptUnit(browserStore) ?? (isUnit(shopUnit) ? shopUnit : 'in'));

// From the switch below, or from the sizer's.
onPageUnit(show);

document.addEventListener('click', ({ target }) => {
  const button = target instanceof Element ? target.closest<HTMLElement>('[data-set-unit]') : null;
  const unit = button?.dataset['setUnit'];
  if (!isUnit(unit)) return;
  keepUnit(browserStore, unit);
  tellPageUnit(unit);
});
