/**
 * Fits a piece of several strands by writing out every choice of counts that the
 * stock allows, with its own reading of the order of preference. Slow, and nothing
 * in it to go wrong but the reading.
 *
 * What nested strands are fitted to is taken from `nestingOf`, which is proven by itself.
 */
import type { Counts, Design } from '#core/design/design.ts';
import { expand } from '#core/design/expand.ts';
import { finishedLengthMm, loopParts } from '#core/design/loopParts.ts';
import { solveLoop } from '#core/geometry/loop.ts';
import { nestingOf } from '#core/sizing/nest.ts';

type Strung = { readonly counts: readonly number[]; readonly mm: number; readonly used: readonly number[] };

const hundredths = (mm: number): number => Math.round(Number((mm * 100).toFixed(4)));

/** Every choice of one strand, measured. No chain: on several strands it is left to the wearer. */
function everyStrand(design: Design, index: number, counted: readonly string[]): Strung[] {
  const strand = design.strands[index]!;
  let choices: number[][] = [[]];
  for (const { role, usual, fewest, most } of strand.sections) {
    const [from, to] = role === 'focal' ? [usual, usual] : [fewest, most];
    choices = choices.flatMap((counts) =>
      Array.from({ length: to - from + 1 }, (_, step) => [...counts, from + step]),
    );
  }
  const one: Design = { ...design, strands: [strand], lie: 'single' };
  return choices.map((counts) => {
    const sequence = expand(one, [counts])[0]!;
    const used = counted.map((id) => sequence.filter(({ component }) => component.id === id).length);
    const mm =
      design.kind === 'necklace'
        ? finishedLengthMm(one, sequence)
        : solveLoop(loopParts(one, sequence)).insideGirthMm;
    return { counts, mm, used };
  });
}

/** What a choice for the whole piece comes to: one strung strand each. */
export type Piece = readonly Strung[];

/** Every choice for the whole piece that the stock allows, for `pieces` of them. */
export function everyPiece(design: Design, pieces: number): Piece[] {
  const counted = Object.values(design.components).flatMap(({ id, stock }) => (stock === null ? [] : [id]));
  const { clasp, ring } = design.ends;
  const left = counted.map((id) => {
    const findings = [clasp, ring].filter((one) => one === id).length;
    return Math.floor(design.components[id]!.stock! / pieces) - findings;
  });
  let all: Strung[][] = [[]];
  for (const index of design.strands.keys()) {
    const strands = everyStrand(design, index, counted);
    all = all.flatMap((so) => strands.map((one) => [...so, one]));
  }
  return all.filter((piece) =>
    left.every((most, at) => piece.reduce((sum, { used }) => sum + used[at]!, 0) <= most),
  );
}

export type Judged = {
  readonly status: 'fits' | 'near' | 'outside';
  readonly best: Counts;
  readonly below: Counts | null;
  readonly above: Counts | null;
};

const countsOf = (piece: Piece | undefined): Counts | null => piece?.map(({ counts }) => counts) ?? null;

/** The best of every piece for a target of the first strand; undefined where there is no piece at all. */
export function judgedBy(
  design: Design,
  all: readonly Piece[],
  targetMm: number,
  toleranceMm: number,
): Judged | undefined {
  const nesting = nestingOf(design);
  const targets = design.strands.map((_, index) => nesting.targetMm(index, targetMm));
  const offs = (piece: Piece): number[] => piece.map(({ mm }, index) => mm - targets[index]!);
  const excess = (off: number): number => Math.max(0, hundredths(Math.abs(off)) - hundredths(toleranceMm));
  const key = (piece: Piece): number[] => {
    const off = offs(piece);
    const excesses = off.map(excess);
    let [cost, parts] = [0, 0];
    const order: number[] = [];
    design.strands.forEach(({ sections, mirrored }, index) => {
      sections.forEach((section, at) => {
        const count = piece[index]!.counts[at]!;
        const change = Math.abs(count - section.usual);
        const place = mirrored ? sections.length - at : Math.min(at, sections.length - 1 - at) + 1;
        const sides = mirrored && section.role !== 'focal' ? 2 : 1;
        cost += (section.cost ?? place) * change;
        parts += count * sides * section.motif.reduce((sum, part) => sum + part.count, 0);
        order.push(change, count);
      });
    });
    const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
    const errors = off.map((one) => hundredths(Math.abs(one)));
    return [Math.max(...excesses), sum(excesses), cost, sum(errors), parts, ...order];
  };
  const best = (pieces: readonly Piece[]): Piece | undefined => {
    let found: { readonly piece: Piece; readonly key: readonly number[] } | undefined;
    for (const piece of pieces) {
      const here = key(piece);
      const at = found === undefined ? -1 : here.findIndex((value, place) => value !== found!.key[place]);
      if (found === undefined || (at >= 0 && here[at]! < found.key[at]!)) found = { piece, key: here };
    }
    return found?.piece;
  };
  const first = best(all);
  if (first === undefined) return undefined;
  const onSide = (side: 1 | -1): Piece | undefined =>
    best(all.filter((piece) => offs(piece).every((off) => excess(off) === 0 || side * off >= 0)));
  if (offs(first).every((off) => excess(off) === 0)) {
    return { status: 'fits', best: countsOf(first)!, below: null, above: null };
  }
  const [below, above] = [onSide(-1), onSide(1)];
  const status = below !== undefined && above !== undefined ? 'near' : 'outside';
  return { status, best: countsOf(first)!, below: countsOf(below), above: countsOf(above) };
}

/** The least and the most that all strands can be together, in the first one's measure. */
export function limitsBy(design: Design, all: readonly Piece[]): readonly [leastMm: number, mostMm: number] {
  const nesting = nestingOf(design);
  const known = new Map<string, number>();
  const firstMm = (index: number, mm: number): number => {
    const key = `${index} ${mm}`;
    const found = known.get(key) ?? nesting.firstMm(index, mm);
    known.set(key, found);
    return found;
  };
  const firsts = all.map((piece) => piece.map(({ mm }, index) => firstMm(index, mm)));
  return [
    Math.min(...firsts.map((each) => Math.max(...each))),
    Math.max(...firsts.map((each) => Math.min(...each))),
  ];
}
