/** Where the shop posts to. Apart from the reckoning, which goes to every phone and needs no list of the world. */
import { COUNTRIES } from './countries.ts';
import type { PostRules } from './rules.ts';

/** Every country that the shop posts to, by code. */
export function servedCountries({ groups }: PostRules): readonly string[] {
  if (groups.some(({ elsewhere }) => elsewhere)) return COUNTRIES;
  return groups.flatMap(({ countries }) => countries).toSorted();
}
