/** An address as it is written on a parcel. */

export type AddressFacts = {
  readonly name: string;
  readonly line1: string;
  readonly line2: string;
  readonly town: string;
  readonly region: string;
  readonly postcode: string;
  readonly country: string;
};

/** The postcode on a line of its own after the town (from memory). */
const POSTCODE_LAST = ['GB', 'IM', 'JE', 'GG', 'GI', 'FK', 'SH', 'IE', 'KE', 'ZA', 'LK'];
/** Town, region and postcode on one line (from memory). */
const POSTCODE_AFTER = [
  'US',
  'PR',
  'GU',
  'VI',
  'CA',
  'AU',
  'NZ',
  'IN',
  'PK',
  'SG',
  'HK',
  'TH',
  'KR',
  'TW',
  'SA',
];

/**
 * The lines of an address, none empty, in the order of its country: postcode
 * before the town as in most of the world, after it, or last of all.
 * @param country its name as it is to be read; left out where ''
 */
export function addressLines(to: AddressFacts, country: string): string[] {
  return [to.name, to.line1, to.line2, ...placeLines(to), country].filter((line) => line !== '');
}

function placeLines({ country, town, region, postcode }: AddressFacts): string[] {
  if (POSTCODE_LAST.includes(country)) return [town, region, postcode];
  if (POSTCODE_AFTER.includes(country)) return [joined(town, region, postcode)];
  return [joined(postcode, town), region];
}

const joined = (...parts: readonly string[]): string => parts.filter((part) => part !== '').join(' ');
