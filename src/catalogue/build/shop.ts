/** From what the maker wrote to the shop and the core's rules. */
import type { Rules } from '#core/design/rules.ts';
import { buildPost } from './post.ts';
import type { Seller, Shop } from '../model/catalogue.ts';
import type { AuthoredRules, AuthoredShop } from '../schemas/shop.ts';

type AuthoredPrice = AuthoredRules['price'];

/** Only what she wrote, so that rules without it are as they ever were. */
function buildSelling({
  fees,
  'ends-on': ending,
}: AuthoredPrice): Pick<Rules['price'], 'fees' | 'endingMinor'> {
  return {
    ...(ending === undefined ? {} : { endingMinor: ending.minor }),
    ...(fees === undefined
      ? {}
      : { fees: { hundredths: Math.round(fees.share * 100), eachMinor: fees.each?.minor ?? 0 } }),
  };
}

export function rulesOf(value: AuthoredRules): Rules {
  return {
    currency: value.currency,
    toleranceMm: value.tolerance,
    easeMm: value.ease,
    wire: {
      tailMm: value.wire.tail,
      gripMm: value.wire.grip,
      snagN: value.wire.snag,
      safetyFactor: value.wire.safety / 100,
      crimpPlayMm: value.wire['crimp-play'],
    },
    minutes: {
      perPiece: value.minutes.piece,
      perStrand: value.minutes.strand,
      perEnd: value.minutes.end,
      perBead: value.minutes.bead,
    },
    price: {
      labourMinorPerHour: value.price.labour.minor,
      packingMinor: value.price.packing.minor,
      materialPercent: value.price.material,
      roundToMinor: value.price['round-up-to'].minor,
      smallerCostsLess: value.price['smaller-costs-less'],
      ...buildSelling(value.price),
    },
  };
}

/** Common practice, no source: one bead in ten breaks, has no hole or is off its colour. */
const USUAL_SPARE_PERCENT = 10;
/** Common practice, no source: about what the shortest bracelet is cut to, both ends to hold by within. */
const USUAL_OFFCUT_MM = 250;

/** A new count every year. */
const USUAL_PREFIX = '{year}-';

function buildSeller(value: NonNullable<AuthoredShop['seller']>): Seller {
  const taxText = value['tax-text'];
  return {
    name: value.name,
    address: value.address,
    taxNumber: value['tax-number'] ?? null,
    taxHundredths: value.tax.hundredths,
    taxText: taxText === undefined ? null : { en: taxText, de: value['tax-text-de'] ?? null },
    numberPrefix: value['invoice-numbers'] ?? USUAL_PREFIX,
  };
}

export function buildShop(value: AuthoredShop): Shop {
  return {
    name: value.name,
    maker: value.maker,
    place: value.place,
    since: value.since,
    line: { en: value.line, de: value['line-de'] ?? null },
    address: value.address,
    unit: value.unit,
    rules: rulesOf(value),
    orders: {
      email: value.orders.email,
      desk: value.orders.desk ?? null,
      form: value.orders.form ?? null,
      payment: value.orders.payment ?? null,
      carriers: (value.orders.carriers ?? []).map(({ name, track }) => ({ name, track: track ?? null })),
      weeks: value.orders.ready,
      keepMonths: value.orders.keep,
      keepInvoicesMonths: value.orders['keep-invoices'] ?? null,
      hoursPerWeek: value.orders.hours ?? null,
    },
    stock: {
      sparePercent: value.stock?.spare ?? USUAL_SPARE_PERCENT,
      offcutMm: value.stock?.offcut ?? USUAL_OFFCUT_MM,
    },
    seller: value.seller === undefined ? null : buildSeller(value.seller),
    post: value.post === undefined ? null : buildPost(value.post),
    wholesalePercent: value.price.wholesale ?? null,
  };
}
