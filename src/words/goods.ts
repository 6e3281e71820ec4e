/** Names of what comes as a key: materials, closings, families of colour. */
import { isMaterial } from '#core/design/mass/density.ts';
import type { Lang } from './lang.ts';
import { goodsWords } from './words.ts';

/** A name by its key; the key itself where there is none. */
const nameOr = (names: Readonly<Record<string, string>>, key: string): string => names[key] ?? key;

/** The name of a material; the material's own key where it isn't known. */
export function materialName(material: string, lang: Lang): string {
  return isMaterial(material) ? goodsWords(lang).materials[material] : material;
}

/** The name of a closing, by the shape of its clasp. */
export const closingName = (shape: string, lang: Lang): string => nameOr(goodsWords(lang).closings, shape);

/** The name of a colour's family. */
export const colourName = (family: string, lang: Lang): string => nameOr(goodsWords(lang).colours, family);
