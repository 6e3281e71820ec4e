/**
 * The loop of a closed strand.
 *
 * The inside girth is the girth of the largest cylinder that the strand passes
 * round, drawn taut, with neighbours touching, none overlapping, and hole axes
 * meeting where they touch. Each part is a rectangle `along × across` with
 * rounded corners. How this project reads the definition, and where each point
 * is worked out:
 *
 * - The strand's line runs through the parts' centres. A centre comes no nearer
 *   to the cylinder's axis than the radius and half its across.
 * - Neighbours that turn by t are d(t) apart (`junction.ts`).
 * - Drawn taut, the line is the convex hull of the centres: its corners touch
 *   the cylinder, the parts between two corners lie on the chord, lifted off it
 *   (`hull.ts`).
 * - A corner's hole axis halves the angle between its two chords, so half of its
 *   turn falls on each of its junctions; a lifted part's axis lies on its chord.
 * - Turns make distances, and distances turns: a fixed point, at the radius
 *   where the strand comes round once (`close.ts`).
 * - The wire crosses a junction where the two axes meet on the plane that halves
 *   their angle; the slack there is what the turn opens between the hole mouths.
 */
import { closeLoop } from './close.ts';
import { outlinesOf } from './junction.ts';
import type { Part } from './part.ts';
import { loadLoop, newWorkspace, type Workspace } from './workspace.ts';

export type { Part } from './part.ts';

/** Where one part lies in the closed loop; the cylinder's axis is the origin. */
export type LoopSpot = {
  /** Distance of its centre from the cylinder's axis. */
  readonly radiusMm: number;
  /** Its place round the cylinder, from the first part on, rad, rising with the order of the parts. */
  readonly placeRad: number;
  /** Direction of its hole axis, rad, in the same frame. */
  readonly axisRad: number;
  /** True where it lies on a chord, off the cylinder. */
  readonly lifted: boolean;
  /** Turn between it and the next part. */
  readonly turnRad: number;
  /** Distance of its centre from the next one's. */
  readonly toNextMm: number;
  /** Wire bare between its hole mouth and the next one's. */
  readonly gapMm: number;
};

export type Loop = {
  /** False where the parts pass round no cylinder at all: fewer than three, or one too wide for the rest. */
  readonly closes: boolean;
  readonly radiusMm: number;
  readonly insideGirthMm: number;
  /** Sum of along: the finished length, if the parts are the whole strand with its closing. */
  readonly lengthMm: number;
  /** Wire that the bent strand needs beyond its parts. */
  readonly slackMm: number;
  /** One for each part, in the order given. */
  readonly spots: readonly LoopSpot[];
};

/** Parts of one loop at the most; a longer one is refused as not closing. */
export const MOST_LOOP_PARTS = 8000;
/** No measure of a part is longer. Ten metres: far beyond any strand. */
const LONGEST_MM = 10_000;

function sound(part: Part): boolean {
  const { alongMm, acrossMm, roundingMm } = part;
  return (
    alongMm > 0 &&
    alongMm <= LONGEST_MM &&
    acrossMm > 0 &&
    acrossMm <= LONGEST_MM &&
    Number.isFinite(roundingMm)
  );
}

/** A part that takes no length bends nothing and is left out; a part that is no part spoils the loop. */
function usable(parts: readonly Part[]): Part[] | null {
  const taking = parts.filter((part) => part.alongMm !== 0);
  return taking.length <= MOST_LOOP_PARTS && taking.every(sound) ? taking : null;
}

/** Places of the parts, from part 0 of the workspace on. */
function layOut(work: Workspace, radiusMm: number): LoopSpot[] {
  const { corners, corner, halfAcross, arc, leftAngle, rightAngle, distance, turn } = work;
  const spots: LoopSpot[] = [];
  let cornerPlace = 0;
  for (let index = 0; index < corners; index += 1) {
    const from = corner[index]!;
    const to = corner[index + 1]!;
    const r1 = radiusMm + halfAcross[from]!;
    // Counted from the corner's tangent: the chord leaves turned inwards by its chord–tangent angle.
    const chordAxis = cornerPlace + Math.PI / 2 + rightAngle[index]!;
    const cornerAxis = cornerPlace + Math.PI / 2 + (rightAngle[index]! - leftAngle[index]!) / 2;
    for (let part = from; part < to; part += 1) {
      const s = arc[part]! - arc[from]!;
      const x = r1 * Math.cos(cornerPlace) + s * Math.cos(chordAxis);
      const y = r1 * Math.sin(cornerPlace) + s * Math.sin(chordAxis);
      const turnRad = turn[part]!;
      const toNextMm = distance[part]!;
      const meeting = (work.straight[part]! + work.round[part]!) * Math.cos(turnRad / 2);
      const inward =
        cornerPlace + Math.atan2(s * Math.cos(rightAngle[index]!), r1 - s * Math.sin(rightAngle[index]!));
      spots.push({
        radiusMm: part === from ? r1 : Math.hypot(x, y),
        placeRad: part === from ? cornerPlace : inward,
        axisRad: part === from ? cornerAxis : chordAxis,
        lifted: part !== from,
        turnRad,
        toNextMm,
        gapMm: Math.max(0, toNextMm - meeting),
      });
    }
    cornerPlace += rightAngle[index]! + leftAngle[index + 1]!;
  }
  return spots;
}

const OPEN: Loop = { closes: false, radiusMm: 0, insideGirthMm: 0, lengthMm: 0, slackMm: 0, spots: [] };

/**
 * Closes a strand round the largest cylinder that it passes round.
 *
 * @param parts everything on the loop in order, the closing with its rings and
 *   wire loops too (`strand/parts.ts` lists them). Any part may be the first.
 * @returns the loop, good to about 1e-11 mm. Parts that aren't sound (a measure
 *   that is negative, not a number or beyond ten metres, or an across of 0) give
 *   a loop with `closes` false; nothing is thrown. Parts of no along have no
 *   spot of their own.
 */
export function solveLoop(parts: readonly Part[]): Loop {
  const taking = usable(parts);
  if (taking === null) return OPEN;
  const lengthMm = taking.reduce((sum, part) => sum + part.alongMm, 0);
  if (taking.length < 3) return { ...OPEN, lengthMm };
  const work = newWorkspace(taking.length);
  loadLoop(work, outlinesOf(taking), Int32Array.from(taking.keys()), taking.length);
  const radiusMm = closeLoop(work);
  if (!(radiusMm > 0)) return { ...OPEN, lengthMm };
  const fromFirst = layOut(work, radiusMm);
  const turned = fromFirst.length - work.first;
  const spots = [...fromFirst.slice(turned), ...fromFirst.slice(0, turned)];
  const zero = spots[0]!.placeRad;
  return {
    closes: true,
    radiusMm,
    insideGirthMm: 2 * Math.PI * radiusMm,
    lengthMm,
    slackMm: spots.reduce((sum, spot) => sum + spot.gapMm, 0),
    spots: spots.map((spot) => ({
      ...spot,
      placeRad: (((spot.placeRad - zero) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI),
      axisRad: spot.axisRad - zero,
    })),
  };
}
