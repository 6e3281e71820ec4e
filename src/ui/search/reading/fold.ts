/** Words as they are compared: one spelling for capitals, accents, umlauts, apostrophes and endings. */
import { stemmer as german } from '@orama/stemmers/german';
import { stemmer as english } from '@orama/stemmers/english';
import type { Lang } from '#words/lang.ts';

/** What a word is made of; an apostrophe or a point within doesn't part it. */
export const WORD = /[\p{L}\p{N}]+(?:['’.][\p{L}\p{N}]+)*/gu;

/** Small letters without accents; ä, ae and a are one, so are ß and ss. */
export function fold(word: string): string {
  return word
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}]/gu, '')
    .replace(/([aou])e/g, '$1');
}

const STEMMERS: Readonly<Record<Lang, (word: string) => string>> = { de: german, en: english };

/** The stem of a folded word: the part that its forms have in common. */
export const stem = (folded: string, lang: Lang): string => STEMMERS[lang](folded);

/** Words of a text, each once, as they are written but for capitals. */
export function wordsOf(text: string): string[] {
  return [...new Set(text.toLowerCase().match(WORD) ?? [])];
}

/** Letters and pairs of them that sound alike, in English or German. */
const ALIKE: readonly (readonly [RegExp, string])[] = [
  [/ph|v/g, 'f'],
  [/sch|sh/g, 's'],
  [/c(?=[eiy])/g, 's'],
  [/ck|qu|[cq]/g, 'k'],
  [/dt|th|ght/g, 't'],
  [/z/g, 's'],
];

/** What the ear keeps of a folded word: its first letter and the consonants after it, none twice. People who write by ear lose the vowels. */
export function soundOf(folded: string): string {
  const alike = ALIKE.reduce((word, [written, heard]) => word.replace(written, heard), folded);
  const single = alike.replace(/(.)\1+/g, '$1');
  return single.slice(0, 1) + single.slice(1).replace(/[aeiouh]/g, '');
}
