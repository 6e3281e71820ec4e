/** What Pagefind is given of a piece: nothing of its page but the words it is found by, and the sizes it can be made to. */
import type { FindRecord } from '../findRecord.ts';

const escaped = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/"/g, '&quot;').replace(/</g, '&lt;');

export function indexedPage({ name, others, sizes }: Pick<FindRecord, 'name' | 'others' | 'sizes'>): string {
  const marks = sizes.map(
    ([filter, value]) => `<span data-pagefind-filter="${escaped(`${filter}:${value}`)}"></span>`,
  );
  return `<!doctype html><html><body><div data-pagefind-body><p data-pagefind-weight="5">${escaped(name.join(' '))}</p><p>${escaped(others.join(' '))}</p></div><div data-pagefind-ignore="index">${marks.join('')}</div></body></html>`;
}
