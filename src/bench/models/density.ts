/** How large a card may be and how small it must be set, so that one sheet of A4 or US Letter holds it. */

/** Letters that a line of the sequence and of the steps holds at the usual size, on the narrower paper. */
const SEQUENCE_LETTERS = 52;
const STEP_LETTERS = 62;
/** Wire, ends and marks beside the sequence, in lines; some more for each further strand. */
const FACT_LINES = 18;
const FACT_LINES_STRAND = 4;
const FACT_LINES_PENDANT = 5;
/** A warning at the card's head. */
const WARNING_LINES = 2;

/** Lines that a sheet holds at each size: measured on US Letter, the shorter paper. */
const ROOM = [
  { lines: 37, name: 'roomy' },
  { lines: 40, name: '' },
  { lines: 52, name: 'dense' },
  { lines: 66, name: 'dense very' },
] as const;

type Texts = {
  readonly groups: readonly string[];
  readonly steps: readonly string[];
  readonly strands: number;
  readonly pendant: boolean;
  readonly warned: boolean;
};

/** The class that sets the card's size in print. */
export function densityOf({ groups, steps, strands, pendant, warned }: Texts): string {
  const sequence = linesOf(groups, SEQUENCE_LETTERS) + 2 * strands;
  const facts = FACT_LINES + (strands - 1) * FACT_LINES_STRAND + (pendant ? FACT_LINES_PENDANT : 0);
  const lines = Math.max(sequence, facts) + linesOf(steps, STEP_LETTERS) / 2 + (warned ? WARNING_LINES : 0);
  return ROOM.find((room) => lines <= room.lines)?.name ?? 'dense very least';
}

function linesOf(texts: readonly string[], letters: number): number {
  return texts.reduce((sum, text) => sum + Math.max(1, Math.ceil(text.length / letters)), 0);
}
