/**
 * When the sizing island comes alive: when somebody turns to it, and at once where this device keeps a size, a form
 * that was begun or an order on its way. Whoever only reads a page spends nothing on it. What was done to its fields
 * before then is taken over by `adapters/writtenBefore.ts`, a button that was pressed is pressed again here.
 */
import type { Lang } from '#words/lang.ts';
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
const isSet = (field: HTMLInputElement | HTMLSelectElement): boolean => {
  if (field instanceof HTMLSelectElement) return field.value !== '';
  return field.type === 'radio' ? field.checked !== field.defaultChecked : field.value !== field.defaultValue;
};

type Parts = {
  readonly form: () => Promise<typeof import('./SizerEn.tsx')>;
  readonly answer: () => Promise<unknown>;
};

/** By the page's language: the form and what answers a size. */
const PARTS: Readonly<Record<Lang, Parts>> = {
  en: { form: () => import('./SizerEn.tsx'), answer: () => import('./AnswerEn.ts') },
  de: { form: () => import('./SizerDe.tsx'), answer: () => import('./AnswerDe.ts') },
};

/** Fetches them beside the form and not after it, in the order in which they are wanted; the form asks again where one fails. */
function fetchAhead(answer: Parts['answer']): void {
  answer().catch(() => null);
  import('./drawing/drawPiece.ts').catch(() => null);
}

/** Somebody is there: the page is moved, or about to be used. */
const SIGNS = ['scroll', 'pointermove', 'pointerdown', 'keydown'] as const;

/**
 * Has the form's files in the browser's cache at the first sign of somebody at the page, and reads none of them.
 * Fetched with the page, in whatever way, they take a tenth of what it takes of a phone's main thread.
 */
function fetchAtSign({ dataset }: HTMLElement): void {
  const fetchAll = (): void => {
    for (const sign of SIGNS) removeEventListener(sign, fetchAll);
    for (const file of dataset['scripts']?.split(' ') ?? [])
      fetch(file, { priority: 'low' }).catch(() => null);
  };
  for (const sign of SIGNS) addEventListener(sign, fetchAll, { passive: true });
}

/**
 * @param island its element, marked with its language as asleep
 * @param json what it comes alive with
 */
function wake(island: HTMLElement, json: string): void {
  let pressed: HTMLButtonElement | null = null;
  const isTurnedTo = (): boolean =>
    island.contains(document.activeElement) ||
    [...island.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input, select')].some(isSet);
  const note = ({ target }: Event): void => {
    pressed = target instanceof Element ? target.closest('button') : null;
  };
  const look = (): void => {
    if (isTurnedTo()) void turn();
  };
  let deaf = (): void => undefined;
  const turn = async (): Promise<void> => {
    deaf();
    removeEventListener('pageshow', look);
    for (const one of TURNS) island.removeEventListener(one, turn);
    const parts = PARTS[island.dataset['asleep'] === 'de' ? 'de' : 'en'];
    const fetched = parts.form().catch(() => null);
    fetchAhead(parts.answer);
    const form = await fetched;
    // Without a network: it is tried again when she turns to it again.
    if (form === null) {
      listen();
      return;
    }
    form.bringAlive(form.default, island, json);
    delete island.dataset['asleep'];
    island.removeEventListener('click', note);
    pressed?.click();
  };
  const listen = (): void => {
    deaf = onPageUnit(() => turn());
    for (const one of TURNS) island.addEventListener(one, turn);
    addEventListener('pageshow', look);
  };
  island.addEventListener('click', note);
  listen();
  if (keepsAnything() || isTurnedTo()) void turn();
  else fetchAtSign(island);
}

const island = document.getElementById('sizer');
const data = document.getElementById('sizer-data');
if (island !== null && data !== null) wake(island, data.textContent);
