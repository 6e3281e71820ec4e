/** An address as somebody typed it, parted as far as lines tell. She looks it over. */
import { COUNTRIES } from '#core/post/countries.ts';
import { countryName } from '#words/format.ts';
import { LANGS } from '#words/lang.ts';
import { fold } from '../book/open.ts';
import type { HandFields } from './handForm.ts';

type Parts = Pick<
  HandFields,
  'delivery' | 'to' | 'line1' | 'line2' | 'town' | 'region' | 'postcode' | 'country'
>;

/** British postcodes (from memory): a letter or two, figures, a space, a figure and two letters. */
const BRITISH = /\b([A-Z]{1,2}\d[A-Z\d]?)\s*(\d[A-Z]{2})\b/i;
/** Figures before a town, as in most of Europe. */
const BEFORE = /^(?:[A-Z]{1,2}[- ])?(\d{4,6}|\d{3} \d{2}|\d{4} ?[A-Z]{2})\s+(.+)$/;
/** State and figures behind a town, as in America. */
const BEHIND = /^(.+?),?\s+([A-Z]{2})\s+(\d{5}(?:-\d{4})?)$/;

/** What people write who come for it themselves. */
const COLLECTED = /\b(?:collect|pick (?:it |this )?up|abhol|hole)/i;
const NOWHERE: Parts = {
  ...{ delivery: 'unsaid', to: '', line1: '', line2: '' },
  ...{ town: '', region: '', postcode: '', country: '' },
};

/** @param name of the buyer, which needs no line of its own. @returns null where nothing was written */
export function readAddress(text: string, name: string): Parts | null {
  const lines = text
    .split(text.includes('\n') ? '\n' : /[,;]/)
    .map((line) => line.trim().replace(/[,;]$/, ''))
    .filter(Boolean);
  if (lines.length === 0) return null;
  if (lines.length === 1 && COLLECTED.test(lines[0] ?? '')) return { ...NOWHERE, delivery: 'collection' };
  const [first = '', ...others] = lines;
  const unnamed = fold(first) === fold(name) ? others : lines;
  const country = countryOf(unnamed.at(-1) ?? '');
  const rest = country === '' ? unnamed : unnamed.slice(0, -1);
  const { postcode, town, region, used } = placeOf(rest, country);
  const streets = rest.filter((_, at) => !used.includes(at));
  // With three lines or more above the town the first is whose door it is.
  const to = streets.length > 2 ? (streets.shift() ?? '') : '';
  const [line1 = '', ...more] = streets;
  return { delivery: 'post', to, line1, line2: more.join(', '), town, region, postcode, country };
}

type Place = {
  readonly postcode: string;
  readonly town: string;
  readonly region: string;
  readonly used: number[];
};

function placeOf(lines: readonly string[], country: string): Place {
  for (const [at, line] of [...lines.entries()].toReversed()) {
    const british = BRITISH.exec(line);
    if (british !== null && (country === '' || country === 'GB')) {
      const postcode = `${british[1] ?? ''} ${british[2] ?? ''}`.toUpperCase();
      const beside = line
        .replace(BRITISH, '')
        .replace(/[,\s]+$/, '')
        .trim();
      if (beside !== '') return { postcode, town: beside, region: '', used: [at] };
      return { postcode, town: lines[at - 1] ?? '', region: '', used: [at - 1, at] };
    }
    const before = BEFORE.exec(line);
    if (before !== null) return { postcode: before[1] ?? '', town: before[2] ?? '', region: '', used: [at] };
    const behind = BEHIND.exec(line);
    if (behind !== null) {
      const [, town = '', region = '', postcode = ''] = behind;
      return { postcode, town, region, used: [at] };
    }
  }
  const at = lines.length - 1;
  return at < 1
    ? { postcode: '', town: '', region: '', used: [] }
    : { postcode: '', town: lines[at] ?? '', region: '', used: [at] };
}

let names: ReadonlyMap<string, string> | null = null;

/** ISO 3166-1 code of a country's name in any of the shop's languages; '' for none. */
function countryOf(line: string): string {
  names ??= new Map(
    LANGS.flatMap((lang) => {
      return COUNTRIES.map((code) => [fold(countryName(code, lang)), code] as const);
    }),
  );
  const written = fold(line.trim().replace(/\.$/, ''));
  const usual: Readonly<Record<string, string>> = {
    uk: 'GB',
    ...{ 'great britain': 'GB', england: 'GB', scotland: 'GB', wales: 'GB', usa: 'US' },
  };
  return usual[written] ?? names.get(written) ?? '';
}
