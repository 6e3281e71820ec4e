/**
 * Inches or centimetres, everywhere on the page: the choice is kept on this
 * device, in the same entry as the sizer's, and never sent anywhere.
 */
import { browserStore } from '#sizer/adapters/browserStore.ts';
import { onPageUnit, sendPageUnit } from '#sizer/adapters/pageUnit.ts';
import { isShownUnit, type ShownUnit } from '#core/units/unit.ts';
import { keepUnit, keptUnit } from '#sizer/model/keptSize.ts';

function show(unit: ShownUnit): void {
  document.documentElement.dataset['unit'] = unit;
  for (const button of document.querySelectorAll<HTMLButtonElement>('[data-set-unit]')) {
    button.setAttribute('aria-pressed', String(button.dataset['setUnit'] === unit));
  }
}

const shopUnit = document.documentElement.dataset['unit'];
show(keptUnit(browserStore) ?? (isShownUnit(shopUnit) ? shopUnit : 'in'));

// From the switch below, or from the sizer's.
onPageUnit(show);

document.addEventListener('click', ({ target }) => {
  const button = target instanceof Element ? target.closest<HTMLElement>('[data-set-unit]') : null;
  const unit = button?.dataset['setUnit'];
  if (!isShownUnit(unit)) return;
  keepUnit(browserStore, unit);
  sendPageUnit(unit);
});
