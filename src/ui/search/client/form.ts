/** The search form: what it says, and setting it to what the address says. */
import { FITS_OF } from '../marks.ts';
import { FILTERS, SORTS, type Query } from '../query.ts';

export type Form = {
  readonly read: () => Query;
  readonly write: (query: Query) => void;
};

export function findForm(form: HTMLFormElement): Form {
  const field = (name: string): HTMLInputElement | HTMLSelectElement | null => {
    const found = form.elements.namedItem(name);
    return found instanceof HTMLInputElement || found instanceof HTMLSelectElement ? found : null;
  };
  const value = (name: string): string => field(name)?.value.trim() ?? '';
  const set = (name: string, text: string): void => {
    const found = field(name);
    if (found === null) return;
    found.value = text;
    // An address may name a value that the shop no longer has.
    if (found instanceof HTMLSelectElement && found.selectedIndex < 0) found.selectedIndex = 0;
  };
  const fits = field('fits') as HTMLInputElement;

  return {
    read: () => {
      const filters = FILTERS.map((name) => [name, value(name)] as const).filter(([, text]) => text !== '');
      const of = FITS_OF.find((one) => one === value('of'));
      const text = value('size');
      return {
        words: value('q'),
        filters: Object.fromEntries(filters),
        sort: SORTS.find((one) => one === value('sort')) ?? 'best',
        fits: !fits.checked || of === undefined || text === '' ? null : { of, text },
      };
    },
    write: (query) => {
      set('q', query.words);
      for (const name of FILTERS) set(name, query.filters[name] ?? '');
      set('sort', query.sort);
      fits.checked = query.fits !== null;
      if (query.fits !== null) set('of', query.fits.of);
      set('size', query.fits?.text ?? '');
    },
  };
}
