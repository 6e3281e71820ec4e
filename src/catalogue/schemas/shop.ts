/** The shop: its name, its rules and how orders reach it. One file. */
import type { z } from 'zod';
import { SHOWN_UNITS } from '#core/units/unit.ts';
import {
  country,
  deskAddress,
  shopAddress,
  email,
  fields,
  httpsAddress,
  listOf,
  money,
  numberPrefix,
  oneOf,
  paymentAddress,
  perHour,
  quantity,
  taxRate,
  text,
  trackAddress,
  whole,
  yesNo,
} from '../fields/field.ts';
import { CURRENCIES } from '../fields/money.ts';

const allowance = quantity('length', 0, 500);
const sits = fields({ snug: allowance, easy: allowance, loose: allowance });
const tolerance = quantity('length', 0, 50);
const minutes = quantity('minutes', 0, 600);

/** What is bought beyond what is needed, and what is kept of wire. */
const stock = fields({
  /** Bought beyond what orders take: some break, some have no hole. */
  spare: quantity('percent', 0, 200).optional(),
  /** An offcut is kept from this length on. */
  offcut: quantity('length', 20, 2000).optional(),
});

/** A price can't be found of which nearly nothing is left. */
const MOST_FEES = 60;

const countries = listOf(country);

/** How the pieces reach a buyer; left out: buyers aren't asked. */
const post = fields({
  /** Box, tissue, card: added to what the pieces weigh. */
  packing: quantity('mass', 0, 5000),
  groups: listOf(
    fields({
      countries,
      bands: listOf(
        fields({
          /** For those who copy a carrier's table; where it is left out, a band begins where the last one ends. */
          from: quantity('mass', 0, 30_000).optional(),
          'up-to': quantity('mass', 1, 30_000),
          price: money,
        }),
      ).optional(),
      'free-from': money.optional(),
    }),
  ).optional(),
  /** Where and when she can come for it, as buyers read it; left out: nothing can be collected. */
  collection: text(120).optional(),
  'collection-de': text(120).optional(),
  /** Printed small on the label. */
  'return-to': text(160).optional(),
});

/** Who issues invoices; left out: none can be issued. */
const seller = fields({
  name: text(120),
  address: listOf(text(80)),
  'tax-number': text(40).optional(),
  /** What is within the prices, or that she isn't registered. */
  tax: taxRate,
  'tax-text': text(200).optional(),
  'tax-text-de': text(200).optional(),
  'invoice-numbers': numberPrefix.optional(),
});

export const shopSchema = fields({
  name: text(60),
  maker: text(60),
  place: text(80),
  since: whole(1900, 2200),
  line: text(120),
  'line-de': text(120).optional(),
  /** Where the shop stands on the web; a path in it is the folder of that host that the shop lies in. */
  address: shopAddress,
  currency: oneOf(CURRENCIES),
  /** What a buyer sees before choosing. */
  unit: oneOf(SHOWN_UNITS),
  orders: fields({
    email,
    /** Path or https address that takes orders; left out: by e-mail only. */
    desk: deskAddress.optional(),
    /** Form service that passes posts on by e-mail; takes the desk's place. */
    form: httpsAddress.optional(),
    payment: paymentAddress.optional(),
    /** Who carries parcels, the usual one first. */
    carriers: listOf(fields({ name: text(40), track: trackAddress.optional() })).optional(),
    ready: quantity('weeks', 0, 104),
    keep: quantity('months', 1, 240),
    /** How long tax rules want invoices kept as they are; left out: they lose name and address with the order. */
    'keep-invoices': quantity('months', 1, 480).optional(),
    /** Hours a week that she strings; left out: nothing is planned by them. */
    hours: quantity('hoursPerWeek', 0.5, 168).optional(),
  }),
  post: post.optional(),
  seller: seller.optional(),
  /** Accepted difference from the wanted size. */
  tolerance: fields({ necklace: tolerance, bracelet: tolerance, anklet: tolerance, collar: tolerance }),
  /** What each sit adds to the measure. */
  ease: fields({ necklace: sits, bracelet: sits, anklet: sits, collar: sits }),
  wire: fields({
    tail: allowance,
    grip: allowance,
    snag: quantity('force', 0, 1000),
    /** The rated break is kept at least this many times over the pull. */
    safety: quantity('percent', 100, 2000),
    'crimp-play': quantity('length', 0, 3),
  }),
  stock: stock.optional(),
  minutes: fields({ piece: minutes, strand: minutes, end: minutes, bead: minutes }),
  price: fields({
    labour: perHour,
    packing: money,
    material: quantity('percent', 0, 5000),
    'round-up-to': money,
    /** Prices end on this much above a step: £0.95. */
    'ends-on': money.optional(),
    'smaller-costs-less': yesNo,
    /** What selling takes: payment, a marketplace. Left out: nothing. */
    fees: fields({ share: quantity('percent', 0, MOST_FEES), each: money.optional() }).optional(),
    /** What shops that sell on pay of the price. */
    wholesale: quantity('percent', 1, 100).optional(),
  }),
});

/** The rules alone, as they stand in the shop's file; the rest of it may be there and isn't needed. */
export const rulesSchema = shopSchema.partial({
  ...{
    name: true,
    maker: true,
    place: true,
    since: true,
    line: true,
    address: true,
    unit: true,
    orders: true,
  },
});

export type AuthoredShop = z.output<typeof shopSchema>;
export type AuthoredRules = z.output<typeof rulesSchema>;
export type AuthoredPost = NonNullable<AuthoredShop['post']>;
