/** The largest design that is computed. Each cap is far over any real piece, and keeps bad input cheap. */

/** A woven collar has a dozen strands. */
export const MOST_STRANDS = 12;
/** Sections of one strand, a side. */
export const MOST_SECTIONS = 60;
/** Parts of one motif. */
export const MOST_MOTIF_PARTS = 40;
/** One component in a row within a motif. */
export const MOST_IN_ROW = 200;
/** Repeats of one section. */
export const MOST_REPEATS = 1000;
/** Components on one strand at its most: six metres of 2 mm seed beads. */
export const MOST_ON_STRAND = 3000;
/** Kinds of component in one design. */
export const MOST_KINDS = 200;
/** Rings between wire and pendant. */
export const MOST_RINGS = 12;
/** Any one measure of a component, mm: larger than any bead, clasp or pendant. */
export const MOST_MEASURE_MM = 300;
/** Inside length of a chain's link, mm: no clasp hooks into less. */
export const LEAST_LINK_MM = 1;
/** Wire diameter, mm: coated stringing wire ends at about 1 mm. */
export const MOST_WIRE_MM = 3;
/** Any amount of money, minor units; keeps sums exact. */
export const MOST_MINOR = 10_000_000;
/** Grams of one component. */
export const MOST_MASS_G = 10_000;
/** Characters of an id or a name. */
export const MOST_TEXT = 200;
/** Problems told at once; more help nobody. */
export const MOST_PROBLEMS = 100;
