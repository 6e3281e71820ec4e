/** The search page at work: form and address in, results out. */
import { parseLength } from '#core/units/length.ts';
import { browserStore } from '#sizer/adapters/browserStore.ts';
import { onShownAgain } from '#sizer/adapters/shownAgain.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import { keepMeasure, keptMeasure, keptUnit } from '#sizer/model/keptSize.ts';
import { EMPTY, FILTERS, fromParams, isEmpty, toParams, type Query } from '../query.ts';
import { without } from '../reading/reading.ts';
import { chipList, type Chip } from './chips.ts';
import { findForm } from './form.ts';
import { nearList, resultList } from './results.ts';
import { shopSearch, type Answer, type SetByHand } from './search.ts';

/** A pause in typing, ms, before the search answers. */
const PAUSE_MS = 90;

const byId = <Wanted extends Element>(id: string): Wanted => {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`got no element "${id}", expected the search page's`);
  return found as Element as Wanted;
};
const formElement = byId<HTMLFormElement>('find-form');
const status = byId<HTMLElement>('find-said');
const notes = byId<HTMLElement>('find-notes');
const sizeFields = byId<HTMLElement>('find-size');
const sizeProblem = byId<HTMLElement>('find-size-problem');
const nearBox = byId<HTMLElement>('find-near');
const template = byId<HTMLTemplateElement>('find-hit');
const results = resultList(byId('find-results'), byId<HTMLButtonElement>('find-more'), template);
const near = nearList(nearBox, template);
const chips = chipList(byId('find-marks'), byId('find-words'));
const { index = '', vocabulary = '', unit: pageUnit } = formElement.dataset;
const search = shopSearch(index, vocabulary);
const form = findForm(formElement);
let turn = 0;

const unit = (): ShownUnit => keptUnit(browserStore) ?? (pageUnit === 'cm' ? 'cm' : 'in');

/** Filters set by hand; null where the size can't be read. */
function filtersOf({ filters, fits }: Query): SetByHand | null {
  if (fits === null) return { filters, size: null };
  const length = parseLength(fits.text, unit());
  if (!length.ok) return null;
  return {
    filters,
    size: { by: 'fits', of: fits.of, leastMm: length.mm, mostMm: length.mm },
  };
}

function countText({ found, tooLittle }: Answer, query: Query): string {
  const said = status.dataset;
  if (tooLittle) return said['tooLittle'] ?? '';
  if (found.length === 1) return said['one'] ?? '';
  if (found.length > 0) return (said['many'] ?? '').replace('#', String(found.length));
  return (query.fits === null ? said['none'] : said['noneFits']) ?? '';
}

function clear(): void {
  results.clear();
  near.clear();
  chips.show([]);
  notes.replaceChildren();
  status.textContent = '';
}

/** What the words were understood as, and what is set by hand: each can be taken away. */
function chipsOf(query: Query, { reading }: Answer): Chip[] {
  const said = reading.parts.flatMap(({ label, at }) =>
    label === null
      ? []
      : [
          {
            label,
            remove: () => set({ ...query, words: without(query.words, at) }),
          },
        ],
  );
  const byHand = FILTERS.flatMap((name) => {
    const value = query.filters[name];
    if (value === undefined) return [];
    const { [name]: _, ...filters } = query.filters;
    return [{ label: value, remove: () => set({ ...query, filters }) }];
  });
  return [...said, ...byHand];
}

function note(text: string): HTMLElement {
  const item = document.createElement('li');
  item.textContent = text;
  return item;
}

/** @param live true while somebody is typing */
async function answer(query: Query, live: boolean): Promise<void> {
  turn += 1;
  const mine = turn;
  const isCurrent = (): boolean => mine === turn;
  const filters = filtersOf(query);
  sizeProblem.hidden = filters !== null;
  if (filters === null || isEmpty(query)) {
    clear();
    return;
  }
  try {
    const answered = await search.answer(query, filters, unit(), live);
    if (!isCurrent()) return;
    chips.show(chipsOf(query, answered));
    notes.replaceChildren(...answered.reading.said.map(({ text }) => note(text)));
    byId('find-near-title').textContent = nearBox.dataset[answered.tooLittle ? 'newest' : 'near'] ?? '';
    await Promise.all([results.show(answered.found, isCurrent), near.show(answered.near, isCurrent)]);
    if (isCurrent()) status.textContent = countText(answered, query);
  } catch {
    if (isCurrent()) status.textContent = status.dataset['failed'] ?? '';
  }
}

function showSizeFields(): void {
  sizeFields.hidden = !byId<HTMLInputElement>('find-fits').checked;
}

function ask(live = false): void {
  const query = form.read();
  const params = toParams(query).toString();
  history.replaceState(null, '', params === '' ? location.pathname : `?${params}`);
  if (query.fits !== null && filtersOf(query) !== null) keepMeasure(browserStore, query.fits, unit());
  showSizeFields();
  void answer(query, live);
}

function set(query: Query): void {
  form.write(query);
  ask();
}

/** Fills the size in from what this device remembers. */
function recallSize(of?: string): void {
  const kept = keptMeasure(browserStore, of);
  const ofField = byId<HTMLSelectElement>('find-of');
  if (kept !== null && [...ofField.options].some(({ value }) => value === kept.of)) ofField.value = kept.of;
  byId<HTMLInputElement>('find-size-text').value = kept?.text ?? '';
}

let pause: ReturnType<typeof setTimeout> | undefined;
formElement.addEventListener('focusin', () => void search.warm().catch(() => undefined), { once: true });
formElement.addEventListener('input', ({ target }) => {
  const id = target instanceof Element ? target.id : '';
  if (id === 'find-fits') recallSize();
  if (id === 'find-of') recallSize(byId<HTMLSelectElement>('find-of').value);
  clearTimeout(pause);
  pause = setTimeout(() => ask(true), PAUSE_MS);
});
formElement.addEventListener('submit', (event) => {
  event.preventDefault();
  clearTimeout(pause);
  ask();
});
formElement.addEventListener('reset', (event) => {
  event.preventDefault();
  set(EMPTY);
});

const addressed = fromParams(new URLSearchParams(location.search));
// On a slow phone somebody types before this script is there; those words are kept where the address has none.
const early = isEmpty(addressed);
if (!early) form.write(addressed);
byId<HTMLDetailsElement>('find-narrow').open = Object.keys(form.read().filters).length > 0;
onShownAgain(() => form.write(fromParams(new URLSearchParams(location.search))));
showSizeFields();
if (!early) void answer(addressed, false);
else if (!isEmpty(form.read())) ask();
