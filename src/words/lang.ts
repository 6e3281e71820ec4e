/**
 * How the words are kept.
 *
 * One file per area and language: `en/<area>.ts` and `de/<area>.ts`, each a
 * plain object of texts and of functions from codes and figures to sentences.
 * English is the contract: the German file is typed `typeof` the English one,
 * so that a missing or misspelt sentence doesn't compile. `words.ts` joins them:
 * pages, bench and terminal call `<area>Words(lang)`; the island imports one
 * language only, because every byte is sent to a phone.
 */

export const LANGS = ['en', 'de'] as const;
export type Lang = (typeof LANGS)[number];

/** BCP 47 tag for Intl: the spelling, dates and numbers of each language. */
const LOCALES: Readonly<Record<Lang, string>> = { en: 'en-GB', de: 'de-DE' };

/** The Intl locale of a language. */
export function locale(lang: Lang): string {
  return LOCALES[lang];
}

/** True for a language the shop speaks; for text that comes from an address or a file. */
export function isLang(value: unknown): value is Lang {
  return LANGS.some((lang) => lang === value);
}
