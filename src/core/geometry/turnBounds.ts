/**
 * How far any junction of a taut loop can turn, whatever else is strung: from
 * what may stand beside it, and from no knowledge of the counts.
 *
 * All of it holds in every loop that closes at `radiusMm` or more. With r for
 * a corner's distance from the axis (radius and half its across) and d for the
 * length of a chord, the chord–tangent angle λ at its end x towards y is
 *
 *     sin λ = (d² + r_x² − r_y²) / (2 d r_x)
 *           = d/(2 r_x) + (h_x − h_y)/d − (h_x − h_y)²/(2 d r_x)
 *           ≤ d/(2 r_x) + (h_x − h_y)/d,            h = half across.        (1)
 *
 * 1. Of the straight lines from a corner to later parts, the hull takes the one
 *    with the least λ. So (1) bounds its λ for EVERY part that is sure to
 *    follow, as if that lay on the cylinder, with d for the length of the strand
 *    up to there. As a function of d it has no maximum but at the ends (convex
 *    where h_x > h_y, rising else); and it falls as the radius grows.
 * 2. No chord's line comes nearer to the axis than the line through some two
 *    neighbours that both lie on the cylinder (their nearer one, where the foot
 *    of the perpendicular isn't between them). For a chord with its foot
 *    between its ends, the foot lies between two neighbours on the chord, each
 *    at its place or further out. Else λ < 0 at one end; as the
 *    strand turns inwards there, the next chord has a λ of more than −λ, so its
 *    line is nearer still to the axis. Its other end is nearer than any before,
 *    or its foot lies between its ends: going on so comes to one that does.
 *    With p for that distance, cos λ ≥ p / r_x.                           (2)
 * 3. A corner turns by its two λ, a junction by half of what its two parts do.
 *    Distances depend on turns, so the rounds below start from distances at
 *    any turn from 0 to π, and each bounds turns by the distances of the last.
 *    A distance is a concave function of its turn, so it is least at an end.
 */
import { distanceAt, farthestTurn, setJunction, type Junctions, type Outlines } from './junction.ts';

/** Which kinds may be neighbours, and what may follow each on either side. */
export type Neighbourhood = {
  readonly outlines: Outlines;
  readonly junctions: Junctions;
  /** Kinds joined by each junction, in the order of the loop. */
  readonly one: Int32Array;
  readonly other: Int32Array;
  /** The junction that two kinds make as neighbours; -1 where they never are. */
  readonly junctionOf: (one: number, other: number) => number;
  readonly after: readonly Run[];
  readonly before: readonly Run[];
  /** The junctions that are bounded; of the others nothing is said but what holds at any turn. */
  readonly bounded: readonly number[];
};

/** Parts that may follow a kind, nearest first, with the junctions on the way. */
type Run = {
  readonly from: number;
  readonly kinds: readonly number[];
  readonly junctions: readonly number[];
};

/** Bounds of each junction in loops of some radius or more. */
export type TurnBounds = {
  readonly mostTurnRad: Float64Array;
  readonly leastMm: Float64Array;
  readonly mostMm: Float64Array;
  /** No chord's line is nearer to the axis. 0 where one may cross it: then nothing is bounded. */
  readonly chordMm: number;
};

/**
 * @param after `after[kind]`: the runs of kinds of which one is sure to come after it.
 * @param before the same the other way round the loop.
 */
export function neighbourhood(
  outlines: Outlines,
  after: readonly (readonly (readonly number[])[])[],
  before: readonly (readonly (readonly number[])[])[],
): Neighbourhood {
  const kinds = after.length;
  const of = new Int32Array(kinds * kinds).fill(-1);
  const one: number[] = [];
  const other: number[] = [];
  const junction = (left: number, right: number): number => {
    const at = left * kinds + right;
    if (of[at]! < 0) {
      of[at] = one.push(left) - 1;
      other.push(right);
    }
    return of[at]!;
  };
  const runs = (lists: readonly (readonly (readonly number[])[])[], backwards: boolean): Run[] => {
    const made: Run[] = [];
    lists.forEach((list, from) => {
      for (const run of list) {
        let last = from;
        const junctions = run.map((kind) => {
          const found = backwards ? junction(kind, last) : junction(last, kind);
          last = kind;
          return found;
        });
        made.push({ from, kinds: run, junctions });
      }
    });
    return made;
  };
  const allAfter = runs(after, false);
  const allBefore = runs(before, true);
  const floats = (): Float64Array => new Float64Array(one.length);
  const junctions = { straight: floats(), rim: floats(), round: floats() };
  one.forEach((left, at) => setJunction(junctions, at, outlines, left, other[at]!));
  return {
    outlines,
    junctions,
    one: Int32Array.from(one),
    other: Int32Array.from(other),
    junctionOf: (left, right) => of[left * kinds + right]!,
    after: allAfter,
    before: allBefore,
    bounded: [...one.keys()],
  };
}

/** The same, but only junctions whose distance hangs on their turn are bounded: less work where nothing else is asked. */
export function openingOnly(of: Neighbourhood): Neighbourhood {
  const { straight, rim } = of.junctions;
  const bounded = of.bounded.filter((at) => straight[at]! > 0 || rim[at]! > 0);
  const kinds = new Set(bounded.flatMap((at) => [of.one[at]!, of.other[at]!]));
  const kept = (runs: readonly Run[]): Run[] => runs.filter(({ from }) => kinds.has(from));
  return { ...of, bounded, after: kept(of.after), before: kept(of.before) };
}

/** Least distance from the axis of a line through two neighbours on the cylinder, (2). */
function leastChord(of: Neighbourhood, radiusMm: number, mostMm: Float64Array): number {
  const { halfAcross } = of.outlines;
  let least = Infinity;
  for (let at = 0; at < mostMm.length; at += 1) {
    const d = mostMm[at]!;
    const r1 = radiusMm + halfAcross[of.one[at]!]!;
    const r2 = radiusMm + halfAcross[of.other[at]!]!;
    const foot = (d * d + r1 * r1 - r2 * r2) / (2 * d);
    const inside = foot > 0 && foot < d;
    least = Math.min(least, inside ? Math.sqrt(Math.max(0, r1 * r1 - foot * foot)) : Math.min(r1, r2));
  }
  return least;
}

/** The greatest chord–tangent angle of a run's first part, by (1) and (2). */
function mostAngle(
  { outlines: { halfAcross } }: Neighbourhood,
  { from, kinds, junctions }: Run,
  radiusMm: number,
  chordMm: number,
  { leastMm, mostMm }: Pick<TurnBounds, 'leastMm' | 'mostMm'>,
): number {
  const r = radiusMm + halfAcross[from]!;
  let sine = Math.sqrt(Math.max(0, 1 - (chordMm / r) ** 2));
  let near = 0;
  let far = 0;
  for (let at = 0; at < kinds.length; at += 1) {
    near += leastMm[junctions[at]!]!;
    far += mostMm[junctions[at]!]!;
    const higher = halfAcross[from]! - halfAcross[kinds[at]!]!;
    sine = Math.min(sine, Math.max(near / (2 * r) + higher / near, far / (2 * r) + higher / far));
  }
  return Math.asin(Math.max(-1, sine));
}

/** Bounds turns by distances known to hold, and distances by those turns. What nothing is said of may turn by π. */
function boundOnce(
  around: Neighbourhood,
  radiusMm: number,
  known: Pick<TurnBounds, 'leastMm' | 'mostMm'>,
): TurnBounds {
  const { junctions, one, other, outlines, bounded } = around;
  const count = one.length;
  const kinds = outlines.halfAcross.length;
  const chordMm = leastChord(around, radiusMm, known.mostMm);
  // Of each part, and of each junction's part: the run that allows the greatest chord–tangent angle.
  const floats = (length: number): Float64Array => new Float64Array(length).fill(-Math.PI / 2);
  const [angleAfter, angleBefore] = [floats(kinds), floats(kinds)];
  const [oneAngle, otherAngle] = [floats(count), floats(count)];
  const take = (runs: readonly Run[], byPart: Float64Array, byJunction: Float64Array): void => {
    for (const run of runs) {
      const angle = mostAngle(around, run, radiusMm, chordMm, known);
      const junction = run.junctions[0]!;
      byPart[run.from] = Math.max(byPart[run.from]!, angle);
      byJunction[junction] = Math.max(byJunction[junction]!, angle);
    }
  };
  take(around.after, angleAfter, oneAngle);
  take(around.before, angleBefore, otherAngle);
  const mostTurnRad = new Float64Array(count).fill(Math.PI);
  const leastMm = Float64Array.from(known.leastMm);
  const mostMm = Float64Array.from(known.mostMm);
  for (const at of bounded) {
    const oneTurn = Math.max(0, angleBefore[one[at]!]! + oneAngle[at]!);
    const otherTurn = Math.max(0, otherAngle[at]! + angleAfter[other[at]!]!);
    const turn = (oneTurn + otherTurn) / 2;
    mostTurnRad[at] = turn;
    leastMm[at] = Math.min(distanceAt(junctions, at, 0), distanceAt(junctions, at, turn));
    mostMm[at] = distanceAt(junctions, at, Math.min(turn, farthestTurn(junctions, at, 0)));
  }
  return { mostTurnRad, leastMm, mostMm, chordMm };
}

/**
 * Bounds for every loop that closes at a radius of `radiusMm` or more.
 * @param known the same for a smaller radius, which hold here too and save a round.
 */
export function boundTurns(of: Neighbourhood, radiusMm: number, known?: TurnBounds): TurnBounds {
  if (known !== undefined) return boundOnce(of, radiusMm, known);
  const { junctions, one } = of;
  const loose = {
    leastMm: Float64Array.from(one, (_, at) =>
      Math.min(distanceAt(junctions, at, 0), distanceAt(junctions, at, Math.PI)),
    ),
    mostMm: Float64Array.from(one, (_, at) => distanceAt(junctions, at, farthestTurn(junctions, at, 0))),
  };
  return boundOnce(of, radiusMm, boundOnce(of, radiusMm, loose));
}
