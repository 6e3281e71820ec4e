/** What is being looked for, to and from the page's address. */
import { FITS_OF } from './marks.ts';

export const FILTERS = [
  'kind',
  'material',
  'colour',
  'closing',
  'price',
  'length',
  'year',
  'status',
] as const;
export type FilterName = (typeof FILTERS)[number];

export const SORTS = ['best', 'newest', 'cheapest', 'dearest', 'shortest'] as const;
export type Sort = (typeof SORTS)[number];

export type Query = {
  readonly words: string;
  /** One value each; missing for any. */
  readonly filters: Readonly<Partial<Record<FilterName, string>>>;
  readonly sort: Sort;
  /** A size as it was written; null where none is asked for. */
  readonly fits: { readonly of: (typeof FITS_OF)[number]; readonly text: string } | null;
};

/** Longer words than this find nothing and only burden the address. */
const MOST_WORDS = 120;
const MOST_SIZE = 40;

export const EMPTY: Query = { words: '', filters: {}, sort: 'best', fits: null };

export function fromParams(params: URLSearchParams): Query {
  const filters = FILTERS.flatMap((name) => {
    const value = params.get(name);
    return value === null || value === '' ? [] : [[name, value.slice(0, MOST_WORDS)] as const];
  });
  const of = FITS_OF.find((one) => one === params.get('of'));
  const text = params.get('size')?.slice(0, MOST_SIZE).trim() ?? '';
  return {
    words: params.get('q')?.slice(0, MOST_WORDS) ?? '',
    filters: Object.fromEntries(filters),
    sort: SORTS.find((one) => one === params.get('sort')) ?? 'best',
    fits: of === undefined || text === '' ? null : { of, text },
  };
}

export function toParams({ words, filters, sort, fits }: Query): URLSearchParams {
  const params = new URLSearchParams();
  if (words.trim() !== '') params.set('q', words.trim());
  for (const name of FILTERS) {
    const value = filters[name];
    if (value !== undefined) params.set(name, value);
  }
  if (sort !== 'best') params.set('sort', sort);
  if (fits !== null) {
    params.set('of', fits.of);
    params.set('size', fits.text);
  }
  return params;
}

/** True where nothing at all is asked for. */
export function isEmpty(query: Query): boolean {
  return toParams({ ...query, sort: 'best' }).size === 0;
}
