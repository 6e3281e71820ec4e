import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { COUNTRIES, needsPostcode } from '#core/post/countries.ts';
import { postage, postageMinor, type Parcel } from '#core/post/postage.ts';
import type { PostRules } from '#core/post/rules.ts';
import { servedCountries } from '#core/post/served.ts';

const RULES: PostRules = {
  packingG: 40,
  groups: [
    {
      countries: ['GB', 'IM'],
      elsewhere: false,
      freeFromMinor: 12_000,
      bands: [
        { upToG: 100, priceMinor: 320 },
        { upToG: 250, priceMinor: 395 },
      ],
    },
    { countries: ['NO'], elsewhere: false, freeFromMinor: null, bands: [{ upToG: 500, priceMinor: 940 }] },
  ],
  collection: false,
};
const parcel = (fields: Partial<Parcel>): Parcel => ({
  country: 'GB',
  massG: 60,
  priceMinor: 4_800,
  quantity: 1,
  ...fields,
});
const price = (priceMinor: number) => ({ kind: 'price', priceMinor });

describe('postage', () => {
  it.each<[string, Partial<Parcel>, unknown]>([
    ['a parcel as heavy as the band goes', { massG: 60 }, price(320)],
    ['a gram more', { massG: 61 }, price(395)],
    ['a hundredth of a gram more', { massG: 60.01 }, price(395)],
    ['what only floating point adds', { massG: 20.000000000001, priceMinor: 1, quantity: 3 }, price(320)],
    ['no weight at all', { massG: 0 }, price(320)],
    ['packing is weighed once, not with each piece', { massG: 30, quantity: 2 }, price(320)],
    ['as heavy as the last band goes', { massG: 105, quantity: 2 }, price(395)],
    ['heavier than the last', { massG: 105.5, quantity: 2 }, { kind: 'too-heavy', weightG: 251, mostG: 250 }],
    ['a penny short of free', { priceMinor: 11_999 }, price(320)],
    ['free from there on', { priceMinor: 12_000 }, { kind: 'free', fromMinor: 12_000 }],
    [
      'free by the value of all',
      { massG: 10, priceMinor: 4_000, quantity: 3 },
      { kind: 'free', fromMinor: 12_000 },
    ],
    [
      'worth a fortune but too heavy',
      { massG: 900, priceMinor: 1e6 },
      { kind: 'too-heavy', weightG: 940, mostG: 250 },
    ],
    ['another group', { country: 'NO', priceMinor: 1e6 }, price(940)],
    ['a country that no group names', { country: 'JP' }, { kind: 'not-served', country: 'JP' }],
    ['a country there isn’t', { country: '' }, { kind: 'not-served', country: '' }],
  ])('%s', (_, fields, expected) => {
    expect(postage(RULES, parcel(fields))).toEqual(expected);
  });

  it('everywhere else takes what no other group names, wherever it stands', () => {
    const rest = {
      countries: ['IE'],
      elsewhere: true,
      freeFromMinor: null,
      bands: [{ upToG: 2000, priceMinor: 1_130 }],
    };
    for (const groups of [
      [rest, ...RULES.groups],
      [...RULES.groups, rest],
    ]) {
      const rules = { ...RULES, groups };
      expect(['GB', 'NO', 'IE', 'JP'].map((country) => postage(rules, parcel({ country })))).toEqual(
        [320, 940, 1_130, 1_130].map(price),
      );
      expect(servedCountries(rules)).toHaveLength(249);
    }
    expect(servedCountries(RULES)).toEqual(['GB', 'IM', 'NO']);
    expect(servedCountries({ ...RULES, groups: [] })).toEqual([]);
  });

  it('is what it adds to the order, or nothing that could be added', () => {
    const all = [price(320), { kind: 'free', fromMinor: 1 }, { kind: 'too-heavy' }, { kind: 'not-served' }];
    expect(all.map((one) => postageMinor(one as never))).toEqual([320, 0, null, null]);
  });
});

/** Rules that the content check lets through: bands rising, none cheaper than a lighter one. */
const steps = fc.array(fc.tuple(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 0, max: 900 })), {
  minLength: 1,
  maxLength: 8,
});
const anyRules = fc
  .record({
    packingG: fc.double({ min: 0, max: 500, noNaN: true }),
    steps,
    freeFromMinor: fc.option(fc.nat(20_000)),
  })
  .map(({ packingG, steps: all, freeFromMinor }): PostRules => {
    const bands = all.map((_, at) => {
      const until = all.slice(0, at + 1);
      return {
        upToG: until.reduce((sum, [wide]) => sum + wide, 0),
        priceMinor: until.reduce((sum, [, dear]) => sum + dear, 0),
      };
    });
    return {
      packingG,
      collection: false,
      groups: [{ countries: ['GB'], elsewhere: false, freeFromMinor, bands }],
    };
  });

test('a heavier parcel of the same value never costs less, and none costs less than nothing', () => {
  let judged = 0;
  fc.assert(
    fc.property(
      anyRules,
      fc.double({ min: 0, max: 3000, noNaN: true }),
      fc.double({ min: 0, max: 3000, noNaN: true }),
      fc.nat(30_000),
      (rules, one, other, priceMinor) => {
        const [light, heavy] = [one, other]
          .toSorted((a, b) => a - b)
          .map((massG) => postage(rules, parcel({ massG, priceMinor })));
        if (light === undefined || heavy === undefined) throw new Error('two were asked');
        const lightMinor = postageMinor(light);
        const heavyMinor = postageMinor(heavy);
        // What can't be posted light can't be posted heavy.
        if (lightMinor === null) expect(heavyMinor).toBeNull();
        if (lightMinor === null || heavyMinor === null) return;
        judged += 1;
        expect(lightMinor).toBeGreaterThanOrEqual(0);
        expect(heavyMinor).toBeGreaterThanOrEqual(lightMinor);
      },
    ),
    { numRuns: 2000 },
  );
  expect(judged).toBeGreaterThan(500);
});

/** Reserved for other uses, withdrawn, or given out by CLDR itself: letters with a name that are no code of ISO 3166-1. */
const NO_COUNTRY =
  'AC AN BU CP CQ CS DD DG DY EA EU EZ FX HV IC NH QO RH SU TA TP UK UN VD XA XB XK YD YU ZR ZZ'.split(' ');

describe('countries', () => {
  const names = new Intl.DisplayNames('en', { type: 'region', fallback: 'none' });

  it('are those of ISO 3166-1, each with a name in CLDR, none twice', () => {
    expect(COUNTRIES).toHaveLength(249);
    expect(COUNTRIES).toEqual([...new Set(COUNTRIES)].toSorted());
    expect(COUNTRIES.filter((code) => names.of(code) === undefined)).toEqual([]);
  });

  it('leave out no two letters that CLDR names, save those that stand for no country of ISO 3166-1', () => {
    const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
    const named = [...letters]
      .flatMap((one) => [...letters].map((other) => one + other))
      .filter((code) => names.of(code));
    const others = named.filter((code) => !COUNTRIES.includes(code) && !NO_COUNTRY.includes(code));
    expect(named.length).toBeGreaterThan(249);
    expect(others).toEqual([]);
  });

  it('need a postcode where posts sort by one', () => {
    expect(['GB', 'DE', 'US', 'NO', 'JP'].every(needsPostcode)).toBe(true);
    expect(['IE', 'HK', 'AE', 'JM'].some(needsPostcode)).toBe(false);
  });
});
