/** From what the maker wrote about posting to its rules. */
import type { PostGroup } from '#core/post/rules.ts';
import { EVERYWHERE_ELSE } from '../fields/field.ts';
import type { Shop } from '../model/catalogue.ts';
import type { AuthoredPost } from '../schemas/shop.ts';

type AuthoredGroup = NonNullable<AuthoredPost['groups']>[number];

function groupOf({ countries, bands, 'free-from': freeFrom }: AuthoredGroup): PostGroup {
  return {
    countries: countries.filter((one) => one !== EVERYWHERE_ELSE),
    elsewhere: countries.includes(EVERYWHERE_ELSE),
    freeFromMinor: freeFrom?.minor ?? null,
    bands: (bands ?? []).map((band) => ({ upToG: band['up-to'], priceMinor: band.price.minor })),
  };
}

export function buildPost(value: AuthoredPost): NonNullable<Shop['post']> {
  const { collection } = value;
  return {
    rules: {
      packingG: value.packing,
      groups: (value.groups ?? []).map(groupOf),
      collection: collection !== undefined,
    },
    collection: collection === undefined ? null : { en: collection, de: value['collection-de'] ?? null },
    returnTo: value['return-to'] ?? null,
  };
}
