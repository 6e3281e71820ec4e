/**
 * What a strand is made of. All lengths are millimetres, masses grams,
 * money integer minor units of the shop's one currency.
 */

/** What a component is for. A wire is not a component: it carries them. */
export const COMPONENT_KINDS = [
  'bead',
  'spacer',
  'cap',
  'crimp',
  'cover',
  'ring',
  'clasp',
  'pendant',
] as const;
export type ComponentKind = (typeof COMPONENT_KINDS)[number];

/** Shapes that only a clasp has. */
export const CLASP_SHAPES = ['lobster', 'spring-ring', 'toggle', 'hook', 'box', 'magnetic'] as const;

/** The outline seen from the side; drawing and volume both go by it. */
export const SHAPES = [
  'ball',
  'rondelle',
  'bicone',
  'tube',
  'cube',
  'chip',
  'coin',
  'drop',
  'cap',
  'ring',
  ...CLASP_SHAPES,
] as const;
export type Shape = (typeof SHAPES)[number];

/** Materials that take the light alike. */
export const FAMILIES = ['glass', 'stone', 'pearl', 'metal', 'wood', 'shell'] as const;

/** How a component takes the light. Colours are `#rrggbb`. */
export type Look = {
  readonly family: (typeof FAMILIES)[number];
  readonly colour: string;
  /** Second colour of a figured stone, a lined glass, a grain. */
  readonly accent: string | null;
};

/** How a ring closes: `closed` for good (soldered); `open`, cut through, so that it opens front to back (a jump ring); `split`, two turns that a loop is worked round. */
export const JOINTS = ['closed', 'open', 'split'] as const;
export type Joint = (typeof JOINTS)[number];

/** Which way a pendant's loop faces: `in-plane` lies in its own plane, `through` is a bail or a side-to-side hole. */
export const LOOPS = ['in-plane', 'through'] as const;

/** Cautions that can follow from what a component is. */
export const COMPONENT_CAUTIONS = ['magnet', 'nickel', 'lead', 'sharp'] as const;

export type Component = {
  readonly id: string;
  readonly kind: ComponentKind;
  readonly name: string;
  readonly shape: Shape;
  /** Length it takes on the wire; of a clasp or ring, its working length, bearing point to bearing point. */
  readonly alongMm: number;
  /** Diameter square to the wire. */
  readonly acrossMm: number;
  /** Corner radius of its side outline: `alongMm / 2` for a ball, 0 for a sharp tube; never above half of either measure. */
  readonly roundingMm: number;
  /** Diameter of its hole; of a crimp, its inside diameter; 0 where no wire passes (a clasp, a hung pendant). */
  readonly holeMm: number;
  /** Key of `mass/density.ts`. */
  readonly material: string;
  /** As weighed by the maker, which wins over volume × density; null where not weighed. */
  readonly massG: number | null;
  readonly look: Look;
  /** What the maker pays for one. */
  readonly costMinor: number;
  /** How many she has; null where she doesn't count. */
  readonly stock: number | null;
  /** Crimps: outside diameter once closed, which picks the cover. Covers: the closed crimp they take. Else null. */
  readonly closedMm: number | null;
  /** Clasps: whether one hand works it, and so has a side. */
  readonly handed: boolean;
  /** Clasps: how many strands it takes side by side. 1 for all else. */
  readonly ways: number;
  /** Pendants; else null. */
  readonly loop: (typeof LOOPS)[number] | null;
  /** Rings: what they can take once made. Left out where it isn't stated, as in designs of before it was asked. */
  readonly joint?: Joint;
  /** Pendants: how far it hangs below the wire, rings not counted. 0 for all else. */
  readonly hangMm: number;
  readonly cautions: readonly (typeof COMPONENT_CAUTIONS)[number][];
};

export type Wire = {
  readonly id: string;
  readonly name: string;
  /** Outside diameter, coating included. */
  readonly diameterMm: number;
  /** Number of steel wires in it: 7, 19, 21 or 49. The more, the softer its curve. */
  readonly strands: number;
  /** The maker's or seller's rated break, newtons; null where none is stated. */
  readonly breakN: number | null;
  readonly massGPerM: number;
  readonly costMinorPerM: number;
};
