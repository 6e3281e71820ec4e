/**
 * Handbook densities, g/cm³, for the mass of what hasn't been weighed. Real
 * stones differ from these by 1 to 5 %, glass and wood by more: the result
 * says that it is an estimate (see `mass.ts`).
 *
 * Sources, by letter:
 * - G: Geant4 material table (NIST-based), G4NistMaterialBuilder.cc
 * - P: PNNL-15870 compendium of material composition data
 * - V: molar mass over molar volume, CHNOSZ/SUPCRT92 mineral data
 * - U: USGS, Natural Gemstones (middle of the printed range)
 * - C: CRC Handbook of Chemistry and Physics, density of various solids (middle of the range)
 * - R: reciprocal rule of mixtures from the pure metals in G
 * - S: secondary list (middle of the range)
 * - M: from memory, middle of the usual range, not verified
 */
export const DENSITY_G_PER_CM3 = {
  // stone
  quartz: 2.648, // P
  chalcedony: 2.61, // M: aggregate 2.58 to 2.64; ideal 2.648 (V)
  calcite: 2.7099, // V
  aragonite: 2.9308, // V
  fluorite: 3.1812, // V
  pyrite: 5.0111, // V
  hematite: 5.2747, // V
  jadeite: 3.3466, // V
  nephrite: 3.0, // S: 2.9 to 3.1
  malachite: 4.0305, // V
  garnet: 4.12, // M: gem almandine 3.93 to 4.30
  feldspar: 2.655, // U: 2.55 to 2.76
  amazonite: 2.5565, // V: K-feldspar
  moonstone: 2.59, // M: 2.56 to 2.62
  labradorite: 2.705, // S: 2.69 to 2.72
  serpentine: 2.5932, // V: antigorite
  rhodonite: 3.6526, // V
  rhodochrosite: 3.699, // V
  turquoise: 2.75, // S: 2.6 to 2.9
  lapis: 2.8, // S
  corundum: 3.9867, // V
  slate: 2.75, // M
  marble: 2.7099, // V: calcite
  lava: 1.8, // M: vesicular basalt varies widely
  // pearl, shell, and what once lived
  pearl: 2.71, // U
  shell: 2.78, // M: nacre 2.70 to 2.86
  coral: 2.65, // U: 2.6 to 2.7
  amber: 1.073, // U: 1.05 to 1.096
  jet: 1.31, // U: 1.30 to 1.32
  bone: 1.85, // C, G
  horn: 1.3, // M
  // wood
  ebony: 1.04, // S: 0.96 to 1.12
  'lignum-vitae': 1.325, // S: 1.28 to 1.37
  boxwood: 1.05, // M: 0.95 to 1.16
  'olive-wood': 0.92, // M: 0.85 to 1.0
  beech: 0.72, // M
  oak: 0.75, // M
  walnut: 0.65, // M
  // glass and clay
  glass: 2.5, // M: soda-lime 2.47 to 2.53; plate 2.4 (G)
  borosilicate: 2.23, // G
  'lead-crystal': 3.05, // M: 2.9 to 3.2
  porcelain: 2.4, // C: 2.3 to 2.5
  earthenware: 2.0, // M
  // plastics
  acrylic: 1.19, // G
  resin: 1.28, // M: cast polyester 1.1 to 1.46
  nylon: 1.14, // G
  // metal
  copper: 8.96, // G
  silver: 10.3574, // R: sterling, 92.5 % silver
  'fine-silver': 10.5, // G
  gold: 19.32, // G
  'gold-14k': 13.07, // S
  'gold-18k': 15.58, // S
  brass: 8.53, // S: C26000
  bronze: 8.78, // G: 90/10, 8.74 to 8.82
  steel: 8.0, // P: stainless 304 and 316
  titanium: 4.54, // G
  tin: 7.31, // G
  zinc: 7.133, // G
  aluminium: 2.699, // G
  pewter: 7.2963, // R: 92 Sn 6 Sb 2 Cu
  'magnet-alloy': 7.5, // M: sintered NdFeB
} as const satisfies Readonly<Record<string, number>>;

export type Material = keyof typeof DENSITY_G_PER_CM3;

/** Stands in for a material the table doesn't know: that of ordinary glass. */
export const UNKNOWN_DENSITY_G_PER_CM3 = 2.5;

/** Whether the table knows a material. */
export function isMaterial(name: string): name is Material {
  return Object.hasOwn(DENSITY_G_PER_CM3, name);
}

/** Density in g/cm³; null where the table doesn't know the material. */
export function densityOf(material: string): number | null {
  return isMaterial(material) ? DENSITY_G_PER_CM3[material] : null;
}

/**
 * Density of a mixture by the reciprocal rule: volumes add. Shares are of
 * mass and add to 1; densities g/cm³. The rule neglects the contraction of
 * real alloys, a percent or two.
 */
export function mixtureDensity(
  parts: readonly { readonly share: number; readonly density: number }[],
): number {
  return 1 / parts.reduce((sum, { share, density }) => sum + share / density, 0);
}
