/** Words for materials, colours, closings, cautions and care. */
import { isMaterial } from '#core/design/mass/density.ts';
import { goods as de } from './de/goods.ts';
import { goods as en } from './en/goods.ts';
import { inLanguages, type Lang } from './lang.ts';

export type GoodsWords = typeof en;

export const goodsWords = inLanguages<GoodsWords>({ en, de });

/** The name of a material; the material's own key where it isn't known. */
export function materialName(material: string, lang: Lang): string {
  return isMaterial(material) ? goodsWords(lang).materials[material] : material;
}

/** The name of a closing, by the shape of its clasp. */
export function closingName(shape: string, lang: Lang): string {
  const names: Readonly<Record<string, string>> = goodsWords(lang).closings;
  return names[shape] ?? shape;
}
