/** How a piece wants to be kept, from its materials. Codes only; the reasons are in words. */
import { isMaterial } from '#core/design/mass/density.ts';
import type { Design } from '#core/design/design.ts';
import { materials, type Dislike } from '../model/materials.ts';

/** One thing to keep a piece from, and the materials that ask for it. */
export type Care = { readonly against: Dislike | 'scratching'; readonly materials: readonly string[] };

/** In which order care is told: what happens every day first. */
const everyDay: readonly Dislike[] = ['water', 'perfume', 'acid', 'light', 'heat', 'knocks', 'tarnish'];

// A steel key is about 5½ on Mohs's scale, household dust holds quartz at 7: below 4 both scratch at a touch.
const softMohs = 4;

/** Every material of the piece, those of its closing too: it is worn against the skin as well. */
function materialsIn(design: Design): string[] {
  return [...new Set(Object.values(design.components).map(({ material }) => material))].sort();
}

const dislikesOf = (material: string): readonly Dislike[] =>
  isMaterial(material) ? materials[material].dislikes : [];

function isSoft(material: string): boolean {
  if (!isMaterial(material)) return false;
  const { mohs, family } = materials[material];
  return mohs !== null && mohs < softMohs && family !== 'metal';
}

/** What to keep the piece from; empty where nothing harms it in ordinary wear. */
export function careOf(design: Design): readonly Care[] {
  const names = materialsIn(design);
  const against: Care[] = everyDay.map((dislike) => ({
    against: dislike,
    materials: names.filter((material) => dislikesOf(material).includes(dislike)),
  }));
  const soft: Care = { against: 'scratching', materials: names.filter(isSoft) };
  return [...against, soft].filter((care) => care.materials.length > 0);
}
