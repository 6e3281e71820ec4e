/** What is wrong with a design that can't be computed or strung: a code, a place, and what the message names. */
export type ValidationError = {
  readonly code:
    /** Not the shape of a design at all: a field is missing or of another type. */
    | 'bad-shape'
    | 'unknown-component'
    | 'unknown-material'
    /** A hole that doesn't take one wire. */
    | 'hole-too-small'
    /** A crimp that doesn't take its wires. */
    | 'crimp-too-small'
    /** A cover made for another closed crimp. */
    | 'cover-wrong'
    /** A closed ring, and nothing to open where it is to take what hangs on it. */
    | 'ring-closed'
    | 'no-strand'
    | 'bad-measure'
    | 'bad-counts'
    | 'wrong-kind'
    | 'ways'
    | 'too-large';
  /** Path within the design, e.g. `strands.0.sections.2`. */
  readonly at: string;
  /** What the message names: ids, measures in mm. */
  readonly args: Readonly<Record<string, string | number>>;
};
