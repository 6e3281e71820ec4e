/** What was changed of the content, as the maker looks at it. */
import type { FieldPath } from '#catalogue/read/problem.ts';
import { changesBetween, isFields, valueAt, type PlainMap } from '#catalogue/write/plain.ts';
import type { Lang } from '#words/lang.ts';
import { contentFormWords, contentHistoryWords } from '#words/words.ts';
import type { SaveRecord } from '../../content/entry.ts';
import { dataIn, sharesFile } from '../../content/locate.ts';
import { labelOf } from './fieldNames.ts';
import { lineDifference, shortened, type Shown } from './lineDifference.ts';

export type HistoryItem = {
  readonly id: number;
  /** ISO 8601. */
  readonly at: string;
  readonly action: SaveRecord['action'];
  /** The entry as its file calls it. */
  readonly name: string;
  readonly file: string;
  /** Fields that are other than before, as a person would count; empty for a whole new entry. */
  readonly fields: readonly string[];
  readonly lines: readonly Shown[];
  readonly undone: boolean;
};

/** Saves on one page. */
const ON_PAGE = 25;

type Sides = readonly [before: PlainMap | null, after: PlainMap | null];

/** The entry before and after, without its neighbours in the file. */
function sidesOf({ file, key, before, after }: SaveRecord): Sides {
  const side = (text: string | null): PlainMap | null => {
    const data = text === null ? undefined : dataIn(file, text)?.data;
    const entry = valueAt(data, sharesFile(key.kind) ? [key.id] : []);
    return isFields(entry) ? entry : null;
  };
  return [side(before), side(after)];
}

function nameOf({ key }: SaveRecord, [before, after]: Sides, lang: Lang): string {
  if (key.kind === 'shop') return contentHistoryWords(lang).shop;
  const { name, title } = after ?? before ?? {};
  const said = name ?? title;
  return typeof said === 'string' || typeof said === 'number' ? String(said) : key.id;
}

/** As the forms call it, with what it belongs to before it. */
function saidOf({ key }: SaveRecord, path: FieldPath, lang: Lang): string {
  const { labels } = contentFormWords(lang);
  const own = labelOf(labels, key.kind, path);
  const whole = labelOf(labels, key.kind, path.slice(0, 1));
  return path.length > 1 && whole !== own ? `${whole}: ${own}` : own;
}

function fieldsOf(record: SaveRecord, [before, after]: Sides, lang: Lang): string[] {
  if (before === null || after === null) return [];
  const body = (text: string | null): string | undefined => dataIn(record.file, text ?? '')?.body;
  const names = changesBetween(before, after).map(({ path }) => saidOf(record, path, lang));
  const { text } = contentHistoryWords(lang);
  return body(record.before) === body(record.after) ? names : [...names, text];
}

/** One save, told. */
export function historyItem(record: SaveRecord, lang: Lang): HistoryItem {
  const { id, at, action, file, before, after, undoneBy } = record;
  const sides = sidesOf(record);
  return {
    ...{ id, at, action, file },
    name: nameOf(record, sides, lang),
    fields: fieldsOf(record, sides, lang),
    lines: shortened(lineDifference(before, after)),
    undone: undoneBy !== null,
  };
}

export type HistoryPage = {
  readonly items: readonly HistoryItem[];
  /** The number that older saves come before; null where there are none. */
  readonly older: number | null;
};

/** One page of the history. `list`: saves newest first, so many and no more. */
export function historyPage(
  list: (options: { most: number; before?: number }) => readonly SaveRecord[],
  before: number | null,
  lang: Lang,
): HistoryPage {
  const records = list({ most: ON_PAGE + 1, ...(before === null ? {} : { before }) });
  const shown = records.slice(0, ON_PAGE);
  return {
    items: shown.map((record) => historyItem(record, lang)),
    older: records.length > ON_PAGE ? (shown.at(-1)?.id ?? null) : null,
  };
}
