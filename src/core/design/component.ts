/**
 * What a strand is made of. All lengths are millimetres, masses grams,
 * money integer minor units of the shop's one currency.
 */

/** What a component is for. A wire is not a component: it carries them. */
export type ComponentKind = 'bead' | 'spacer' | 'cap' | 'crimp' | 'cover' | 'ring' | 'clasp' | 'pendant';

/** The outline seen from the side; drawing and volume both go by it. */
export type Shape =
  | 'ball'
  | 'rondelle'
  | 'bicone'
  | 'tube'
  | 'cube'
  | 'chip'
  | 'coin'
  | 'drop'
  | 'cap'
  | 'ring'
  | 'lobster'
  | 'spring-ring'
  | 'toggle'
  | 'hook'
  | 'box'
  | 'magnetic';

/** How a component takes the light. Colours are `#rrggbb`. */
export type Look = {
  readonly family: 'glass' | 'stone' | 'pearl' | 'metal' | 'wood' | 'shell';
  readonly colour: string;
  /** Second colour of a figured stone, a lined glass, a grain. */
  readonly accent: string | null;
};

/** How a ring closes: `closed` for good (soldered); `open`, cut through, so that it opens front to back (a jump ring); `split`, two turns that a loop is worked round. */
export type Joint = 'closed' | 'open' | 'split';

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
  /** Key of `core/components/density.ts`. */
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
  /** Pendants: which way the loop faces. `in-plane` lies in the pendant's own plane, `through` is a bail or a side-to-side hole. Else null. */
  readonly loop: 'in-plane' | 'through' | null;
  /** Rings: what they can take once made. Left out where it isn't stated, as in designs of before it was asked. */
  readonly joint?: Joint;
  /** Pendants: how far it hangs below the wire, rings not counted. 0 for all else. */
  readonly hangMm: number;
  /** Cautions that follow from it, e.g. `magnet`, `nickel`, `lead`. */
  readonly cautions: readonly ('magnet' | 'nickel' | 'lead' | 'sharp')[];
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
