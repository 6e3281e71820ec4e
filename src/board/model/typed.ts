/** What she types into the search of the trays: how many, and words for which. */

export type Typed = { readonly count: number; readonly words: readonly string[] };

/** "5 slate" is five of what "slate" finds; "slate 6" is one of it. A figure with a unit is a size. */
export function readTyped(text: string): Typed {
  const [, figures = '', rest = ''] = /^\s*(\d{1,3})(?:\s*[x×])?(?:\s+(.*))?$/is.exec(text) ?? [];
  const isCount = figures !== '' && Number(figures) > 0 && !/^(mm|in|\/0)/.test(rest);
  const words = (isCount ? rest : text)
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  return { count: isCount ? Number(figures) : 1, words };
}
