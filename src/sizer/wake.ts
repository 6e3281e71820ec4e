/**
 * When the sizing island comes alive: when somebody turns to it, and at once where this device keeps a size, a form
 * that was begun or an order on its way. Whoever only reads a page spends nothing on it. What was done to its fields
 * before then is taken over by `adapters/writtenBefore.ts`, a button that was pressed is pressed again here.
 * Bundled into the page by Astro as the directive `client:turn`.
 */
import { browserStore } from './adapters/browserStore.ts';
import { onPageUnit } from './adapters/pageUnit.ts';
import { SIZE_KEY } from './model/keptSize.ts';
import { DRAFT_KEY } from './ordering/model/draftText.ts';
import { OUTBOX_KEY } from './ordering/model/outboxText.ts';

/** Keyboard, pointer and finger, and readers of the screen, which may do nothing but click. */
const TURNS = ['focusin', 'pointerover', 'pointerdown', 'input', 'change', 'click'] as const;

/** Whether this device keeps anything that the island shows or sends. */
const keepsAnything = (): boolean =>
  [SIZE_KEY, DRAFT_KEY, OUTBOX_KEY].some((key) => browserStore.read(key) !== null);

/** Whether a field isn't as the page was built: set before this listened, or by a browser that goes back to a page. */
const isSet = (field: HTMLInputElement): boolean =>
  field.type === 'radio' ? field.checked !== field.defaultChecked : field.value !== field.defaultValue;

/**
 * @param load fetches the code; what it gives brings the island alive
 * @param island its element
 */
export default function wake(
  load: () => Promise<() => Promise<void>>,
  _options: unknown,
  island: HTMLElement,
): void {
  let pressed: HTMLButtonElement | null = null;
  const isTurnedTo = (): boolean =>
    island.contains(document.activeElement) || [...island.querySelectorAll('input')].some(isSet);
  const note = ({ target }: Event): void => {
    pressed = target instanceof Element ? target.closest('button') : null;
  };
  const look = (): void => {
    if (isTurnedTo()) turn();
  };
  const deaf = onPageUnit(() => turn());
  const turn = async (): Promise<void> => {
    deaf();
    removeEventListener('pageshow', look);
    for (const one of TURNS) island.removeEventListener(one, turn);
    const start = await load();
    await start();
    island.removeEventListener('click', note);
    pressed?.click();
  };
  island.addEventListener('click', note);
  for (const one of TURNS) island.addEventListener(one, turn);
  addEventListener('pageshow', look);
  if (keepsAnything()) void turn();
}
