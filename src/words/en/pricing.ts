/** What a piece's price is made of, as the maker reads it at her bench. */
import type { Rules } from '#core/design/rules.ts';
import type { StackLine } from '#core/sizing/price/stack.ts';
import type { Format } from '../format.ts';

const LINES: Readonly<Record<StackLine, string>> = {
  beads: 'Beads',
  findings: 'Findings',
  wire: 'Wire',
  'mark-up': 'Mark-up on material',
  labour: 'Your work',
  packing: 'Packing',
  fees: 'Fees',
  rounding: 'Rounding',
  own: 'Set by you',
};

/** Hundredths of a percent as a percentage. */
const share = (hundredths: number, f: Format): string => `${f.number(hundredths / 100, 2)} %`;

export const pricing = {
  title: (piece: string): string => `Price of ${piece}`,
  lead: 'What the price is made of, what of it is left for your hours, and what it would be if something cost otherwise. Nothing here changes the shop.',
  stack: 'What the price is made of',
  columns: { line: 'Line', how: 'How it comes', now: 'Now', tried: 'If so', more: 'Difference' },
  lines: LINES,
  how: {
    findings: 'clasp, crimps, covers, rings, pendant',
    wire: (f: Format, mm: number): string => `${f.length(mm)} cut, tails and all`,
    'mark-up': (f: Format, percent: number): string =>
      percent === 0 ? 'none by your rule' : `${f.number(percent)} % on top of what material costs you`,
    labour: (time: string, hour: string): string => `${time} at ${hour} an hour`,
    packing: 'by your rule',
    fees: (f: Format, fees: Rules['price']['fees']): string => {
      if (fees === undefined || (fees.hundredths === 0 && fees.eachMinor === 0)) {
        return 'none; say what selling takes under Shop and rules, Prices';
      }
      const parts = [
        ...(fees.hundredths === 0 ? [] : [`${share(fees.hundredths, f)} of the price`]),
        ...(fees.eachMinor === 0 ? [] : [`${f.money(fees.eachMinor)} each time`]),
      ];
      return parts.join(' and ');
    },
    rounding: (f: Format, step: number, ending: number): string =>
      ending === 0
        ? `up to the next ${f.money(step)}`
        : `up to the next ${f.money(ending)} above a multiple of ${f.money(step)}`,
    own: {
      above: 'what you ask above your rule',
      below: 'what you ask below your rule',
      none: 'just your rule',
    },
  },
  ruled: 'By your rule',
  asked: 'In your shop',
  drawn: (parts: string): string => `The price as a bar: ${parts}`,
  time: (minutes: number, f: Format): string => {
    const hours = Math.floor(minutes / 60);
    const rest = `${f.number(minutes - 60 * hours, 1)} min`;
    return hours === 0 ? rest : `${f.number(hours)} h ${rest}`;
  },
  earned: {
    title: 'What it earns',
    columns: {
      where: 'Sold',
      price: 'Price',
      material: 'Material',
      packing: 'Packing',
      fees: 'Fees',
      left: 'Left of it',
      perHour: 'An hour',
    },
    where: { shop: 'in your shop', wholesale: (percent: string): string => `wholesale, at ${percent} %` },
    tried: 'if so',
    estimate: (time: string): string =>
      `An estimate. The hours are your own rule’s, ${time} for this piece, not a clock’s; tools, heating, tax and the hours of writing to buyers aren’t in it.`,
    noWholesale:
      'To see wholesale beside it, say under Shop and rules, Prices, what shops that sell on pay of your price.',
    wholesaleShort: 'At the wholesale price an hour earns less than you set for it.',
    wholesaleNothing: 'The wholesale price doesn’t even pay for material and packing.',
  },
  sizes: {
    title: 'Each size',
    lead: 'Other sizes cost what you ask for the piece as listed, and what their material and work are more.',
    columns: {
      size: 'Size',
      changes: 'Changes',
      ruled: 'By your rule',
      price: 'Price',
      left: 'Left of it',
      perHour: 'An hour',
    },
    tried: { price: 'Price, if so', perHour: 'An hour, if so' },
  },
  tryOut: {
    title: 'What if',
    lead: 'Silver a fifth dearer, a better wage, a marketplace that takes its share: leave empty what stays as it is.',
    of: 'This costs otherwise',
    by: 'By so many percent more, or less',
    byHint: '20, or −10',
    wage: 'Your hour',
    share: 'Fees, percent of the price',
    each: 'Fees, each time',
    now: (value: string): string => `now ${value}`,
    nothing: 'Nothing',
    groups: { kinds: 'Material', materials: 'By what it is made of', components: 'One of them' },
    kinds: { all: 'All material', beads: 'Beads', findings: 'Findings', wire: 'Wire' },
    costing: (name: string, cost: string): string => `${name}, ${cost} of it`,
    show: 'Reckon it',
    clear: 'As it is',
    problems: {
      of: { missing: 'Choose what costs otherwise.', unreadable: 'Choose what costs otherwise.' },
      by: {
        missing: 'Write by how many percent.',
        unreadable: 'Write it as a percentage, like 20 or −10: from −90 up to 900.',
      },
      wage: { missing: '', unreadable: 'Write it as a sum in your shop’s currency, like 18.50.' },
      share: { missing: '', unreadable: 'Write it as a percentage from 0 to 60, like 6.5.' },
      each: { missing: '', unreadable: 'Write it as a sum in your shop’s currency, like 0.30.' },
    },
    wrong: 'This can’t be reckoned yet:',
    result: (
      f: Format,
      now: { rule: number; hour: number | null },
      then: { rule: number; hour: number | null },
    ): string => {
      const hour = (minor: number | null): string => (minor === null ? '–' : f.money(minor));
      const rule =
        now.rule === then.rule
          ? `By your rule it would still come to ${f.money(then.rule)}.`
          : `By your rule it would come to ${f.money(then.rule)}, not ${f.money(now.rule)}.`;
      return now.hour === then.hour
        ? `${rule} Sold at today’s price an hour still earns ${hour(then.hour)}.`
        : `${rule} Sold at today’s price an hour earns ${hour(then.hour)}, not ${hour(now.hour)}.`;
    },
  },
};
