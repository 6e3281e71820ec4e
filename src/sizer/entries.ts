/** The file each language’s island starts from; one a language, so that a phone gets no other’s words. */
import type { Lang } from '#words/lang.ts';

type Entries = Readonly<Record<Lang, string>>;

export const sizerEntry: Entries = { en: 'SizerEn', de: 'SizerDe' };
export const slipEntry: Entries = { en: 'SlipEn', de: 'SlipDe' };
