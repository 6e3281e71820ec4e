/** Places in a row in English figures. */
const RULES = new Intl.PluralRules('en', { type: 'ordinal' });
const ENDINGS: Readonly<Partial<Record<Intl.LDMLPluralRule, string>>> = { one: 'st', two: 'nd', few: 'rd' };

/** `1st`, `2nd`, `13th`. */
export const ordinal = (place: number): string => `${place}${ENDINGS[RULES.select(place)] ?? 'th'}`;
