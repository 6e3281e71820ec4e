/** What every bench page needs to speak: language, words, formats, the shop. */
import type { Shop } from '#catalogue/model/catalogue.ts';
import { type BenchWords, benchWords } from '#words/words.ts';
import { formatFor, type Format } from '#words/format.ts';
import { isLang, type Lang } from '#words/lang.ts';

export type Frame = {
  readonly lang: Lang;
  readonly words: BenchWords;
  readonly format: Format;
  readonly shop: Shop;
  /** By the maker's clock, ISO 8601. */
  readonly now: string;
};

/** The maker's language is her browser's first that the bench speaks. */
export function languageOf(request: Request): Lang {
  const asked = (request.headers.get('accept-language') ?? '')
    .split(',')
    .map((part) => part.trim().slice(0, 2).toLowerCase());
  return asked.find(isLang) ?? 'en';
}

export function frameFor(request: Request, shop: Shop, nowMs: number): Frame {
  const lang = languageOf(request);
  return {
    lang,
    words: benchWords(lang),
    format: formatFor(lang, shop.unit, shop.rules.currency),
    shop,
    now: new Date(nowMs).toISOString(),
  };
}

/** The same page's frame in another language: for what a buyer will read. */
export function frameIn(lang: Lang, frame: Frame): Frame {
  const { shop } = frame;
  const format = formatFor(lang, shop.unit, shop.rules.currency);
  return { ...frame, lang, words: benchWords(lang), format };
}
