/** Sentences about what only the shop's own file says: addresses of services, tax, numbers of invoices. */
import type { CatalogueSentences } from '../catalogueCodes.ts';

export const shopFile: Pick<
  CatalogueSentences,
  | 'not-https'
  | 'not-a-shop-address'
  | 'place-missing'
  | 'not-a-tax'
  | 'not-a-prefix'
  | 'money-marks'
  | 'sits-order'
  | 'ending-beyond-step'
> = {
  'not-https': ({ value }) => ({
    what: `“${value}” isn’t an https address.`,
    fix: 'Copy the whole address, as your browser or the service shows it; it begins with https://.',
  }),
  'not-a-shop-address': ({ value }) => ({
    what: `The shop can’t stand at “${value}”.`,
    fix: 'Write https://, the host and, if there is one, the folder, in plain letters, figures and hyphens: https://ninepin.example/ or https://ninepin.example/shop/.',
  }),
  'place-missing': ({ value, place }) => ({
    what: `“${value}” has no ${place} in it.`,
    fix: `Write ${place} where the number belongs in the address.`,
  }),
  'not-a-tax': ({ value }) => ({
    what: `“${value}” says nothing about tax.`,
    fix: 'Write “not registered”, or the rate that is within your prices, such as 20 %.',
  }),
  'not-a-prefix': ({ value }) => ({
    what: `“${value}” can’t begin an invoice’s number.`,
    fix: 'Write letters, figures, dots and hyphens, {year} for the year, and at its end no figure: {year}- or NB-{year}-.',
  }),
  'money-marks': ({ value, meant }) => ({
    what: `“${value}” has marks between the thousands, or a comma for a point.`,
    fix: `Write it as “${meant}”.`,
  }),
  'sits-order': ({ sit, before }) => ({
    what: `“${sit}” adds less than “${before}”.`,
    fix: 'Let snug add least and loose most; check the figures and their units.',
  }),
  'ending-beyond-step': ({ ending, step }) => ({
    what: `Prices can’t end on ${ending} where they go up by ${step}.`,
    fix: 'Write less than “round-up-to”: £0.95 with steps of £1.00, £4.00 with steps of £5.00.',
  }),
};
