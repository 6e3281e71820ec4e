/** The name of a colour family; its own code where it has none. */
import { goodsWords } from '#words/goods.ts';
import type { Lang } from '#words/lang.ts';

export function colourName(family: string, lang: Lang): string {
  const names: Readonly<Record<string, string>> = goodsWords(lang).colours;
  return names[family] ?? family;
}
