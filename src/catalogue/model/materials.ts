/**
 * What each material looks like and can't bear. Keys are those of the core's
 * density table, so a material is known everywhere or nowhere.
 *
 * Hardness is Mohs's scale (scratching: talc 1, steel blade about 5½, quartz
 * 7), the middle of the usual range, from memory; null where scratching isn't
 * what matters. What a material dislikes is common practice, no source.
 */
import type { Component } from '#core/design/component.ts';
import type { Material } from '#core/design/mass/density.ts';

/** What harms a material. `tarnish`: it darkens in air and on skin, and can be polished. */
export type Dislike = 'water' | 'perfume' | 'light' | 'heat' | 'knocks' | 'acid' | 'tarnish';

export type MaterialFacts = {
  readonly family: Component['look']['family'];
  readonly mohs: number | null;
  readonly dislikes: readonly Dislike[];
};

const of = (
  family: MaterialFacts['family'],
  mohs: number | null,
  ...dislikes: readonly Dislike[]
): MaterialFacts => ({ family, mohs, dislikes });

export const materials: Readonly<Record<Material, MaterialFacts>> = {
  quartz: of('stone', 7),
  chalcedony: of('stone', 6.75, 'light'),
  calcite: of('stone', 3, 'acid', 'knocks', 'perfume'),
  aragonite: of('stone', 3.75, 'acid', 'knocks', 'perfume'),
  fluorite: of('stone', 4, 'knocks', 'heat'),
  pyrite: of('stone', 6.25, 'water'),
  hematite: of('stone', 6, 'knocks', 'water'),
  jadeite: of('stone', 6.75),
  nephrite: of('stone', 6.25),
  malachite: of('stone', 3.75, 'acid', 'perfume', 'water', 'heat'),
  garnet: of('stone', 7.25),
  feldspar: of('stone', 6.25, 'knocks'),
  amazonite: of('stone', 6.25, 'knocks'),
  moonstone: of('stone', 6.25, 'knocks'),
  labradorite: of('stone', 6.25, 'knocks'),
  serpentine: of('stone', 4, 'acid', 'perfume'),
  rhodonite: of('stone', 6, 'knocks'),
  rhodochrosite: of('stone', 3.75, 'acid', 'knocks'),
  turquoise: of('stone', 5.5, 'perfume', 'water', 'light', 'heat'),
  lapis: of('stone', 5.5, 'acid', 'perfume', 'water'),
  corundum: of('stone', 9),
  slate: of('stone', 3.5, 'acid', 'knocks'),
  marble: of('stone', 3, 'acid', 'perfume'),
  lava: of('stone', 5.5, 'perfume'),
  pearl: of('pearl', 3, 'perfume', 'acid', 'water', 'heat'),
  shell: of('shell', 3.5, 'perfume', 'acid', 'heat'),
  coral: of('shell', 3.5, 'perfume', 'acid', 'heat'),
  amber: of('stone', 2.25, 'perfume', 'heat', 'light', 'knocks'),
  jet: of('stone', 3, 'heat', 'knocks'),
  bone: of('shell', 2.5, 'water', 'heat', 'perfume'),
  horn: of('wood', 2.5, 'water', 'heat'),
  ebony: of('wood', null, 'water', 'heat'),
  'lignum-vitae': of('wood', null, 'water', 'heat'),
  boxwood: of('wood', null, 'water', 'heat'),
  'olive-wood': of('wood', null, 'water', 'heat'),
  beech: of('wood', null, 'water', 'heat'),
  oak: of('wood', null, 'water', 'heat'),
  walnut: of('wood', null, 'water', 'heat'),
  glass: of('glass', 5.5, 'knocks'),
  borosilicate: of('glass', 6, 'knocks'),
  'lead-crystal': of('glass', 5, 'knocks', 'acid'),
  porcelain: of('stone', 7, 'knocks'),
  earthenware: of('stone', 5, 'knocks', 'water'),
  acrylic: of('glass', 3, 'heat', 'perfume'),
  resin: of('glass', 3, 'heat', 'perfume', 'light'),
  nylon: of('glass', null, 'heat'),
  copper: of('metal', 3, 'tarnish', 'water'),
  silver: of('metal', 2.75, 'tarnish', 'perfume'),
  'fine-silver': of('metal', 2.5, 'tarnish', 'knocks'),
  gold: of('metal', 2.5, 'knocks'),
  'gold-14k': of('metal', 3.5),
  'gold-18k': of('metal', 3),
  brass: of('metal', 3.5, 'tarnish', 'water'),
  bronze: of('metal', 3, 'tarnish', 'water'),
  steel: of('metal', 6),
  titanium: of('metal', 6),
  tin: of('metal', 1.5, 'knocks'),
  zinc: of('metal', 2.5, 'acid', 'water'),
  aluminium: of('metal', 2.75, 'acid'),
  pewter: of('metal', 2, 'knocks', 'heat'),
  'magnet-alloy': of('metal', 6, 'knocks', 'heat', 'water'),
};
