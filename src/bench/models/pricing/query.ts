/** What she tries out on the page of a price: a cost, a wage, fees, as she typed them. */
import type { Costed } from '#core/sizing/price/tried.ts';
import { readSum } from '../../intake/readSum.ts';

export const PRICE_FIELDS = ['of', 'by', 'wage', 'share', 'each'] as const;
export type PriceField = (typeof PRICE_FIELDS)[number];

export type Tried = {
  /** null: material costs what it does. */
  readonly cost: { readonly which: Costed; readonly percent: number } | null;
  /** null, as below: as it is. */
  readonly labourMinorPerHour: number | null;
  readonly feeHundredths: number | null;
  readonly feeEachMinor: number | null;
};

/** Fields that can't be read, or lack what belongs to them. */
export type PriceProblem = 'unreadable' | 'missing';

export type PriceQuery = {
  readonly typed: Readonly<Record<PriceField, string>>;
  readonly problems: Readonly<Partial<Record<PriceField, PriceProblem>>>;
  /** null where nothing is tried, or something can't be read. */
  readonly tried: Tried | null;
};

/** Longest text of a field that is looked at. */
const MOST_TYPED = 60;
/** A cost may fall to a tenth and rise to ten times; fees are what the shop's file lets them be. */
const COST_PERCENT = { least: -90, most: 900 };
const FEE_PERCENT = { least: 0, most: 60 };

/** A percentage as people type it: `20`, `+20 %`, `−7,5`; null where it is none, or beyond the bounds. */
function percentOf(typed: string, { least, most }: typeof COST_PERCENT): number | null {
  const [, sign = '', figures] = /^([+−-]?)\s*(\d{1,4}(?:[.,]\d{1,2})?)\s*%?$/.exec(typed) ?? [];
  if (figures === undefined) return null;
  const percent = Number(figures.replace(',', '.')) * (sign === '' || sign === '+' ? 1 : -1);
  return percent >= least && percent <= most ? percent : null;
}

/** `all`, `beads`, `findings`, `wire`, `material:silver`, `component:ember-20`; null for anything else. */
export function costedOf(value: string): Costed | null {
  if (value === 'all' || value === 'beads' || value === 'findings' || value === 'wire')
    return { code: value };
  const [, code, id = ''] = /^(material|component):([a-z0-9-]{1,60})$/.exec(value) ?? [];
  if (code === 'material') return { code, material: id };
  return code === 'component' ? { code, id } : null;
}

/** A sum of nothing is one too: no fee, no wage. */
function sumOf(typed: string, currency: string): number | null {
  if (/^0+(?:[.,]0+)?$/.test(typed)) return 0;
  const read = readSum(typed, currency);
  return read.ok ? read.minor : null;
}

/** Reads the address; unknown choices are left out, texts that can't be read are told. */
export function readPriceQuery(query: URLSearchParams, currency: string): PriceQuery {
  const text = (name: PriceField): string => (query.get(name) ?? '').slice(0, MOST_TYPED).trim();
  const which = costedOf(text('of'));
  const typed = {
    ...{ by: text('by'), wage: text('wage'), share: text('share'), each: text('each') },
    of: which === null ? '' : text('of'),
  };
  const problems: Partial<Record<PriceField, PriceProblem>> = {};
  const read = (name: Exclude<PriceField, 'of'>, by: (typed: string) => number | null): number | null => {
    if (typed[name] === '') return null;
    const value = by(typed[name]);
    if (value === null) problems[name] = 'unreadable';
    return value;
  };
  const percent = read('by', (one) => percentOf(one, COST_PERCENT));
  const tried: Tried = {
    cost: which === null || percent === null ? null : { which, percent },
    labourMinorPerHour: read('wage', (one) => sumOf(one, currency)),
    feeHundredths: hundredths(read('share', (one) => percentOf(one, FEE_PERCENT))),
    feeEachMinor: read('each', (one) => sumOf(one, currency)),
  };
  if (which === null && typed.by !== '' && problems.by === undefined) problems.of = 'missing';
  if (which !== null && typed.by === '') problems.by = 'missing';
  const isTried = Object.values(tried).some((value) => value !== null);
  return { typed, problems, tried: isTried && Object.keys(problems).length === 0 ? tried : null };
}

const hundredths = (percent: number | null): number | null =>
  percent === null ? null : Math.round(percent * 100);
