/** The kinds of field an entry may have, as zod schemas that fail with a code and not a sentence. */
import { z } from 'zod';
import type { ComponentKind } from '#core/design/component.ts';
import { COUNTRIES } from '#core/post/countries.ts';
import { invisibleSign } from './invisible.ts';
import { fieldKinds, type FieldKind } from './kind.ts';
import { parseMoney, parseRate } from './money.ts';
import type { CatalogueError } from '#words/catalogueCodes.ts';
import { parseQuantity, UNIT_OF, type Dimension } from './quantity.ts';
import { refuse, type Parsed } from './parsed.ts';

const scalar = z.union([z.string(), z.number(), z.boolean()]);
type Scalar = z.infer<typeof scalar>;

/** Carries what is wrong with a field through zod, so that it comes out with its type. */
export class FieldError {
  readonly error: CatalogueError;
  constructor(error: CatalogueError) {
    this.error = error;
  }
}

/** A field of a kind, read by `parse` from what YAML made of it. */
function field<T>(kind: FieldKind, parse: (written: Scalar) => Parsed<T>) {
  const schema = scalar.transform((written, context): T => {
    // Quoted YAML can write them as escapes, which don't show in the file.
    const hidden = invisibleSign(String(written));
    const parsed = hidden === null ? parse(written) : refuse({ code: 'invisible-sign', sign: hidden.sign });
    if (parsed.ok) return parsed.value;
    context.issues.push({
      code: 'custom',
      input: written,
      params: { error: new FieldError(parsed.error) },
    });
    return z.NEVER;
  });
  return schema.register(fieldKinds, kind);
}

/** Fields of an entry, no others. The message carries the names, so that a mistake can be put right. */
export function fields<Shape extends z.core.$ZodLooseShape>(shape: Shape) {
  return z.strictObject(shape, { error: () => Object.keys(shape).join(', ') });
}

/** A quantity with its unit, `least` to `most` in the core's unit. */
export function quantity(dimension: Dimension, least: number, most: number) {
  const unit = UNIT_OF[dimension];
  return field({ kind: 'quantity', dimension, least, most, unit }, (written): Parsed<number> => {
    const parsed = parseQuantity(written, dimension);
    if (!parsed.ok || (parsed.value >= least && parsed.value <= most)) return parsed;
    return refuse({ code: 'out-of-range', value: String(written), least, most, unit });
  });
}

export const money = field({ kind: 'money' }, parseMoney);
export const perHour = field({ kind: 'rate', per: 'hour' }, (written) => parseRate(written, 'hour'));
export const perMetre = field({ kind: 'rate', per: 'm' }, (written) => parseRate(written, 'm'));

/** A text of one or more lines; what YAML took for a number is text again. */
export function text(most: number) {
  return field({ kind: 'text', most }, (written) => parseText(written, most));
}

/** A material's name; whether it is known is asked where names can be told apart from one another. */
export const material = field({ kind: 'material' }, (written) => parseText(written, 40));

function parseText(written: Scalar, most: number): Parsed<string> {
  const value = String(written).trim();
  if (value === '') return refuse({ code: 'empty-field', field: '' });
  if (value.length > most) return refuse({ code: 'text-too-long', length: value.length, most });
  return { ok: true, value };
}

export const yesNo = field({ kind: 'yesNo' }, (written): Parsed<boolean> => {
  const value = String(written).toLowerCase();
  if (value === 'yes' || value === 'true') return { ok: true, value: true };
  if (value === 'no' || value === 'false') return { ok: true, value: false };
  return refuse({ code: 'not-yes-or-no', value: String(written) });
});

export function whole(least: number, most: number) {
  return field({ kind: 'whole', least, most }, (written): Parsed<number> => {
    const value =
      typeof written === 'number' ? written : /^\d{1,9}$/.test(String(written)) ? Number(written) : NaN;
    if (Number.isInteger(value) && value >= least && value <= most) return { ok: true, value };
    return refuse({ code: 'not-whole', value: String(written), least, most });
  });
}

export function oneOf<const Options extends readonly [string, ...string[]]>(options: Options) {
  return field({ kind: 'oneOf', options }, (written): Parsed<Options[number]> => {
    const value = options.find((option) => option === written);
    if (value !== undefined) return { ok: true, value };
    return refuse({ code: 'not-one-of', value: String(written), options: options.join(', ') });
  });
}

// Long enough for any name worth having, short enough for an order's compact form.
const longestId = 48;

/** True for a short name: small letters, figures, single hyphens. */
export const isId = (value: string): boolean =>
  /^[a-z0-9]+(-[a-z0-9]+)*$/.test(value) && value.length <= longestId;

function parseId(written: Scalar): Parsed<string> {
  const value = String(written);
  return isId(value) ? { ok: true, value } : refuse({ code: 'not-an-id', value });
}

/** The short name of a component of one of some kinds, or of a wire. */
export const idOf = (of: readonly ComponentKind[] | 'wire') => field({ kind: 'idOf', of }, parseId);

/** What stands for every country that no group names. */
export const EVERYWHERE_ELSE = 'everywhere else';

/** A country by its two letters (ISO 3166-1), or everywhere else. */
export const country = field({ kind: 'country' }, (written): Parsed<string> => {
  const value = String(written).trim();
  const known = value === EVERYWHERE_ELSE || COUNTRIES.includes(value);
  return known ? { ok: true, value } : refuse({ code: 'not-a-country', value });
});

/** An address that a browser may post to: https, no name or password in it. */
export const httpsAddress = field({ kind: 'address' }, (written): Parsed<string> => {
  const value = String(written).trim();
  const url = URL.canParse(value) ? new URL(value) : null;
  const fits =
    url?.protocol === 'https:' && url.username === '' && url.password === '' && value.length <= 200;
  return fits ? { ok: true, value: url.href } : refuse({ code: 'not-https', value });
});

/** An https address with places in braces, of which `place` must be there. */
function addressWith(place: string | null, mostLength: number) {
  return field({ kind: 'address' }, (written): Parsed<string> => {
    const value = String(written).trim();
    if (place !== null && !value.includes(place)) return refuse({ code: 'place-missing', value, place });
    const tried = value.replaceAll(/\{[a-z]+\}/g, '1');
    const fits = URL.canParse(tried) && new URL(tried).protocol === 'https:' && value.length <= mostLength;
    return fits ? { ok: true, value } : refuse({ code: 'not-https', value });
  });
}

/** A carrier's page for a parcel, with the place of its number. */
export const trackAddress = addressWith('{tracking}', 200);

/** Where an order is paid; number, amount and currency may have their places in it. */
export const paymentAddress = addressWith(null, 300);

/** What takes orders: a path of the shop's own, or an https address. */
export const deskAddress = field({ kind: 'address' }, (written): Parsed<string> => {
  const value = String(written).trim();
  const url = /^\/(?![/\\])/.test(value) ? new URL(value, 'https://shop.example') : null;
  const own = url?.host === 'shop.example';
  const elsewhere = URL.canParse(value) && new URL(value).protocol === 'https:';
  return (own || elsewhere) && value.length <= 200
    ? { ok: true, value }
    : refuse({ code: 'not-https', value });
});

/** Folders of a shop's address: what stands in links as it is written, so that no browser spells it otherwise. */
const FOLDERS = /^\/([a-z0-9][\w.~-]*\/)*$/i;

/** The shop's own address: https, a host, perhaps a folder; a slash at its end. */
export const shopAddress = field({ kind: 'address' }, (written): Parsed<string> => {
  const value = String(written).trim();
  const url = URL.canParse(value) ? new URL(value) : null;
  if (url?.protocol !== 'https:' || value.length > 200) return refuse({ code: 'not-https', value });
  const path = url.pathname.endsWith('/') ? url.pathname : `${url.pathname}/`;
  return `${url.origin}${path}` === `${url.href}${url.href.endsWith('/') ? '' : '/'}` && FOLDERS.test(path)
    ? { ok: true, value: `${url.origin}${path}` }
    : refuse({ code: 'not-a-shop-address', value });
});

/** Tax within the prices, in hundredths of a percent; null where the seller isn't registered for it. */
export const taxRate = field({ kind: 'taxRate' }, (written): Parsed<{ hundredths: number | null }> => {
  const value = String(written).trim();
  if (value.toLowerCase() === 'not registered') return { ok: true, value: { hundredths: null } };
  const [, whole = '', part = ''] = /^(\d{1,2})(?:\.(\d{1,2}))?\s*%$/.exec(value) ?? [];
  if (whole === '') return refuse({ code: 'not-a-tax', value });
  return { ok: true, value: { hundredths: Number(whole + part.padEnd(2, '0')) } };
});

/** What stands before an invoice's count. No figure may touch the count: 1-10001 and 11-0001 have to differ. */
export const numberPrefix = field({ kind: 'numberPrefix' }, (written): Parsed<string> => {
  const value = String(written).trim();
  const fits = /^(?:[A-Za-z0-9.-]|\{year\})*[A-Za-z.-]$/.test(value) && value.length <= 20;
  return fits ? { ok: true, value } : refuse({ code: 'not-a-prefix', value });
});

export const colour = field({ kind: 'colour' }, (written): Parsed<string> => {
  const value = String(written).toLowerCase();
  return /^#[0-9a-f]{6}$/.test(value)
    ? { ok: true, value }
    : refuse({ code: 'not-a-colour', value: String(written) });
});

export const email = field({ kind: 'email' }, (written): Parsed<string> => {
  const value = String(written);
  return /^[^\s@<>"]+@[^\s@<>"]+\.[^\s@<>".]+$/.test(value)
    ? { ok: true, value }
    : refuse({ code: 'not-an-email', value });
});

export const date = field({ kind: 'date' }, (written): Parsed<string> => {
  const value = String(written);
  const [, year, month, day] = /^(\d{4})(?:-(\d\d)(?:-(\d\d))?)?$/.exec(value) ?? [];
  const real = new Date(`${year}-${month ?? '01'}-${day ?? '01'}T00:00:00Z`);
  if (Number.isNaN(real.valueOf()) || (day !== undefined && real.getUTCDate() !== Number(day))) {
    return refuse({ code: 'not-a-date', value });
  }
  return { ok: true, value };
});

/** One line of a motif: `2 slate-6`, or `slate-6` for one. */
export const beadLine = field(
  { kind: 'beadLine' },
  (written): Parsed<{ component: string; count: number }> => {
    const [, count = '1', component = ''] =
      /^(?:(\d{1,3})\s+(?:[x×]\s+)?)?(\S+)$/.exec(String(written).trim()) ?? [];
    if (!isId(component) || Number(count) === 0)
      return refuse({ code: 'not-a-bead-line', value: String(written) });
    return { ok: true, value: { component, count: Number(count) } };
  },
);

/** A list, or one thing alone where a list of one is meant. */
export function listOf<Item extends z.ZodType>(item: Item) {
  const schema = z.preprocess(
    (written) => (scalar.safeParse(written).success ? [written] : written),
    z.array(item).min(1),
  );
  return schema.register(fieldKinds, { kind: 'list', item });
}
