/** From what the maker wrote to the shop and the core's rules. */
import type { Rules } from '#core/design/rules.ts';
import { buildPost } from './post.ts';
import type { Shop } from '../model/catalogue.ts';
import type { AuthoredRules, AuthoredShop } from '../schemas/shop.ts';

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
    },
  };
}

export function buildShop(value: AuthoredShop): Shop {
  return {
    name: value.name,
    maker: value.maker,
    place: value.place,
    since: value.since,
    line: { en: value.line, de: value['line-de'] ?? null },
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
      hoursPerWeek: value.orders.hours ?? null,
    },
    post: value.post === undefined ? null : buildPost(value.post),
  };
}
