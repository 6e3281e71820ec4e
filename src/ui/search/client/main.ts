/** The search page at work: form and address in, results out. */
import { parseLength } from '#core/units/length.ts';
import { browserStore } from '#sizer/adapters/browserStore.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import { keepMeasure, keptMeasure, keptUnit } from '#sizer/model/keptSize.ts';
import { fitsFilter } from '../marks.ts';
import { EMPTY, fromParams, isEmpty, toParams, type Query } from '../query.ts';
import { searchEngine } from './engine.ts';
import { findForm } from './form.ts';
import { resultList } from './results.ts';

/** A pause in typing, ms, before the search answers. */
const PAUSE_MS = 90;

const byId = <Wanted extends Element>(id: string): Wanted => {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`got no element "${id}", expected the search page's`);
  return found as Element as Wanted;
};
const formElement = byId<HTMLFormElement>('find-form');
const status = byId<HTMLElement>('find-said');
const sizeFields = byId<HTMLElement>('find-size');
const sizeProblem = byId<HTMLElement>('find-size-problem');
const results = resultList(
  byId('find-results'),
  byId<HTMLButtonElement>('find-more'),
  byId<HTMLTemplateElement>('find-hit'),
);
const engine = searchEngine(formElement.dataset['index'] ?? '');
const form = findForm(formElement);
let turn = 0;

const unit = (): ShownUnit => keptUnit(browserStore) ?? (formElement.dataset['unit'] === 'cm' ? 'cm' : 'in');

/** Filters of a query; null where its size can't be read. */
function filtersOf({ filters, fits }: Query): Record<string, unknown> | null {
  if (fits === null) return { ...filters };
  const length = parseLength(fits.text, unit());
  return length.ok ? { ...filters, ...fitsFilter(fits.of, length.mm) } : null;
}

function countText(count: number, query: Query): string {
  const said = status.dataset;
  if (count === 1) return said['one'] ?? '';
  if (count > 0) return (said['many'] ?? '').replace('#', String(count));
  return (query.fits === null ? said['none'] : said['noneFits']) ?? '';
}

async function answer(query: Query): Promise<void> {
  turn += 1;
  const mine = turn;
  const filters = filtersOf(query);
  sizeProblem.hidden = filters !== null;
  if (filters === null || isEmpty(query)) {
    results.clear();
    status.textContent = '';
    return;
  }
  try {
    const found = await engine.search(query.words, filters, query.sort);
    if (mine !== turn) return;
    await results.show(found, () => mine === turn);
    if (mine === turn) status.textContent = countText(found.length, query);
  } catch {
    if (mine === turn) status.textContent = status.dataset['failed'] ?? '';
  }
}

function showSizeFields(): void {
  sizeFields.hidden = !byId<HTMLInputElement>('find-fits').checked;
}

function ask(): void {
  const query = form.read();
  const params = toParams(query).toString();
  history.replaceState(null, '', params === '' ? location.pathname : `?${params}`);
  if (query.fits !== null && filtersOf(query) !== null) keepMeasure(browserStore, query.fits, unit());
  showSizeFields();
  void answer(query);
}

/** Fills the size in from what this device remembers. */
function recallSize(of?: string): void {
  const kept = keptMeasure(browserStore, of);
  const ofField = byId<HTMLSelectElement>('find-of');
  if (kept !== null && [...ofField.options].some(({ value }) => value === kept.of)) ofField.value = kept.of;
  byId<HTMLInputElement>('find-size-text').value = kept?.text ?? '';
}

let pause: ReturnType<typeof setTimeout> | undefined;
formElement.addEventListener('focusin', () => void engine.warm().catch(() => undefined), { once: true });
formElement.addEventListener('input', ({ target }) => {
  const id = target instanceof Element ? target.id : '';
  if (id === 'find-fits') recallSize();
  if (id === 'find-of') recallSize(byId<HTMLSelectElement>('find-of').value);
  clearTimeout(pause);
  pause = setTimeout(ask, PAUSE_MS);
});
formElement.addEventListener('submit', (event) => {
  event.preventDefault();
  ask();
});
formElement.addEventListener('reset', (event) => {
  event.preventDefault();
  form.write(EMPTY);
  ask();
});

const first = fromParams(new URLSearchParams(location.search));
form.write(first);
byId<HTMLDetailsElement>('find-narrow').open = Object.keys(first.filters).length > 0;
showSizeFields();
if (!isEmpty(first)) void answer(first);
