/** The rules of posting leave no parcel without a price, and give none two. */
import { parcelWeightG } from '#core/post/postage.ts';
import { pieceMass } from '#core/design/mass/pieceMass.ts';
import { EVERYWHERE_ELSE } from '../fields/field.ts';
import type { Piece } from '../model/catalogue.ts';
import type { Entry } from '../read/entry.ts';
import type { FieldPath, Problem } from '../read/problem.ts';
import type { AuthoredPost, AuthoredShop } from '../schemas/shop.ts';

type ShopEntry = Pick<Entry<Pick<AuthoredShop, 'post'>>, 'value' | 'problemAt'>;
type Group = NonNullable<AuthoredPost['groups']>[number];
type Band = NonNullable<Group['bands']>[number];

const at = (group: number, ...rest: FieldPath): FieldPath => ['post', 'groups', group, ...rest];

/** Problems of the rules by themselves. */
export function assertPost(entry: ShopEntry): Problem[] {
  const { post } = entry.value;
  if (post === undefined) return [];
  const { groups } = post;
  if (groups === undefined) {
    return post.collection === undefined ? [entry.problemAt(['post'], { code: 'post-nothing' })] : [];
  }
  return [
    ...assertOwnCountries(entry, groups),
    ...groups.flatMap((group, place) => assertBands(entry, group, place)),
  ];
}

function assertOwnCountries(entry: ShopEntry, groups: readonly Group[]): Problem[] {
  const firstIn = new Map<string, number>();
  return groups.flatMap(({ countries }, group) =>
    countries.flatMap((country, place) => {
      const other = firstIn.get(country);
      firstIn.set(country, other ?? group);
      if (other === undefined) return [];
      const error = { code: 'country-twice', country, group: group + 1, other: other + 1 } as const;
      return [entry.problemAt(at(group, 'countries', place), error)];
    }),
  );
}

function assertBands(entry: ShopEntry, { bands }: Group, group: number): Problem[] {
  if (bands === undefined) return [entry.problemAt(at(group), { code: 'no-bands' })];
  return bands.flatMap((band, place) => assertBand(entry, bands[place - 1], band, at(group, 'bands', place)));
}

/** A band beside the one before it; before the first comes nothing. */
function assertBand(entry: ShopEntry, before: Band | undefined, band: Band, path: FieldPath): Problem[] {
  const endG = before?.['up-to'] ?? 0;
  const fromG = band.from ?? endG;
  const toG = band['up-to'];
  const problems: Problem[] = [];
  if (toG <= endG || fromG < endG) {
    problems.push(entry.problemAt(path, { code: 'bands-overlap', fromG, toG, endG }));
  } else if (fromG >= toG) {
    problems.push(entry.problemAt(path, { code: 'band-empty', fromG, toG }));
  } else if (fromG > endG) {
    problems.push(entry.problemAt([...path, 'from'], { code: 'bands-gap', endG, fromG }));
  }
  if (before !== undefined && band.price.minor < before.price.minor) {
    const { minor, currency } = band.price;
    const error = { code: 'band-cheaper', minor, beforeMinor: before.price.minor, currency } as const;
    problems.push(entry.problemAt([...path, 'price'], error));
  }
  return problems;
}

/** Problems of groups whose last band the heaviest piece is too heavy for, at its most beads and packed. */
export function assertBandsReach(entry: ShopEntry, pieces: readonly Piece[]): Problem[] {
  const { post } = entry.value;
  if (post?.groups === undefined) return [];
  const heaviest = pieces
    .filter(({ status }) => status !== 'past')
    .map(({ id, design }) => ({ piece: id, massG: pieceMass(design, mostCounts(design)).massG }))
    .reduce((most, one) => (one.massG > most.massG ? one : most), { piece: '', massG: 0 });
  const weightG = parcelWeightG({ packingG: post.packing }, { massG: heaviest.massG, quantity: 1 });
  return post.groups.flatMap(({ bands, countries }, group) => {
    const place = (bands?.length ?? 0) - 1;
    const mostG = bands?.[place]?.['up-to'] ?? Infinity;
    if (weightG <= mostG) return [];
    const where = countries.includes(EVERYWHERE_ELSE) ? EVERYWHERE_ELSE : countries.join(', ');
    const error = {
      code: 'bands-end',
      piece: heaviest.piece,
      weightG: Math.ceil(weightG),
      mostG,
      countries: where,
    } as const;
    return [entry.problemAt(at(group, 'bands', place, 'up-to'), error)];
  });
}

const mostCounts = ({ strands }: Piece['design']): number[][] =>
  strands.map(({ sections }) => sections.map(({ most }) => most));
