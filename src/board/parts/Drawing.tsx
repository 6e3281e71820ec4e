/** The bead board itself, drawn to scale: beads are taken in hand by pointer, and marked along by drawing over them. */
import { useMemo, useRef } from 'preact/hooks';
import type { Design } from '#core/design/design.ts';
import { finishedLengthMm } from '#core/design/loopParts.ts';
import { drawLaidBoard, type DrawnBoard } from '#draw/drawings/board.ts';
import { boardLengthMm, type BoardInput } from '../model/input.ts';
import { isIn, layPiece, type LaidPiece } from '../model/laid.ts';
import { nearestPlace, sameSection, type Hit } from '../model/hit.ts';
import type { Where } from '../model/answers.ts';
import type { Place, Span } from '../model/place.ts';
import type { Talk } from '../model/talk.ts';

type Props = {
  readonly design: Design;
  readonly unit: BoardInput['unit'];
  readonly span: Span | null;
  readonly after: Place;
  /** Where something is to be mended. */
  readonly wrong: readonly Where[];
  readonly talk: Talk;
  readonly onSelect: (span: Span | null) => void;
  readonly onStrand: (strand: number) => void;
  /** Told what a place on the screen is; for beads that are dropped here. */
  readonly finder: { current: ((x: number, y: number) => Hit | null) | null };
};

type Marked = {
  readonly x: number;
  readonly y: number;
  readonly turn: number;
  readonly w: number;
  readonly h: number;
};

/** Room round a marked bead, mm. */
const ROOM_MM = 0.5;

function marksOf(drawn: DrawnBoard, laid: LaidPiece, wanted: (place: Place) => boolean): Marked[] {
  return drawn.strands.flatMap(({ spots }, strand) =>
    spots.flatMap(({ xMm, yMm, turnRad, component }, index) => {
      const place = laid.places[strand]?.[index];
      if (place === null || place === undefined || !wanted(place)) return [];
      const w = component.alongMm + 2 * ROOM_MM;
      const h = component.acrossMm + 2 * ROOM_MM;
      return [{ x: xMm, y: yMm, turn: (turnRad * 180) / Math.PI, w, h }];
    }),
  );
}

/** Where the next bead goes: behind the last one of the run in hand, on the side that isn't the mirror. */
function caretOf(drawn: DrawnBoard, laid: LaidPiece, after: Place): Marked | null {
  const strand = drawn.strands[after.strand];
  if (strand === undefined) return null;
  const places = laid.places[after.strand] ?? [];
  const index = places.findLastIndex(
    (place) => place !== null && sameSection(place, after) && place.part === after.part,
  );
  const spot = strand.spots[index];
  if (spot === undefined) {
    const { xMm, yMm, turnRad } = strand.groove.curve.at(strand.groove.zeroMm);
    return { x: xMm, y: yMm, turn: (turnRad * 180) / Math.PI, w: 0, h: strand.wideMm };
  }
  const half = spot.component.alongMm / 2;
  return {
    x: spot.xMm + half * Math.cos(spot.turnRad),
    y: spot.yMm + half * Math.sin(spot.turnRad),
    turn: (spot.turnRad * 180) / Math.PI,
    w: 0,
    h: strand.wideMm,
  };
}

const isWrong = (wrong: readonly Where[], place: Place): boolean =>
  wrong.some(
    (where) =>
      typeof where !== 'string' &&
      sameSection(where, place) &&
      (where.part === -1 || where.part === place.part),
  );

export function Drawing({ design, unit, span, after, wrong, talk, onSelect, onStrand, finder }: Props) {
  const laid = useMemo(() => layPiece(design), [design]);
  const drawn = useMemo(() => {
    const longestMm = Math.max(0, ...laid.sequences.map((sequence) => finishedLengthMm(design, sequence)));
    return drawLaidBoard(design, laid.sequences, {
      ...{ title: talk.words.picture, description: '', idPrefix: 'board', unit, claspSide: 'left' },
      leastMm: boardLengthMm(design.kind, longestMm),
    });
  }, [design, laid, unit, talk]);
  const overlay = useRef<SVGSVGElement>(null);
  const anchor = useRef<Place | null>(null);
  const { box } = drawn;

  const find = (x: number, y: number): Hit | null => {
    const matrix = overlay.current?.getScreenCTM()?.inverse();
    if (matrix === undefined) return null;
    const at = new DOMPoint(x, y).matrixTransform(matrix);
    return nearestPlace(drawn.strands, laid.places, at.x, at.y);
  };
  finder.current = find;

  const spanTo = (place: Place): Span => {
    const from =
      anchor.current !== null && sameSection(anchor.current, place) ? anchor.current.part : place.part;
    const { strand, section, part } = place;
    return { strand, section, from: Math.min(from, part), to: Math.max(from, part) };
  };
  const down = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    const hit = find(event.clientX, event.clientY);
    if (hit === null) return;
    if (hit.place === null) {
      onStrand(hit.strand);
      return;
    }
    if (!event.shiftKey || anchor.current === null) anchor.current = hit.place;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    onSelect(spanTo(hit.place));
  };
  const moved = (event: PointerEvent): void => {
    if (event.buttons !== 1 || anchor.current === null) return;
    const place = find(event.clientX, event.clientY)?.place ?? null;
    if (place !== null && sameSection(anchor.current, place)) onSelect(spanTo(place));
  };

  const inHand = span === null ? [] : marksOf(drawn, laid, (place) => isIn(span, place));
  const bad = marksOf(drawn, laid, (place) => isWrong(wrong, place));
  const caret = caretOf(drawn, laid, after);
  const viewBox = `${box.x} ${box.y} ${box.width} ${box.height}`;
  return (
    <div class="flock">
      <div dangerouslySetInnerHTML={{ __html: drawn.svg }} />
      <svg
        ref={overlay}
        class="marks"
        viewBox={viewBox}
        aria-hidden="true"
        onPointerDown={down}
        onPointerMove={moved}
      >
        <rect x={box.x} y={box.y} width={box.width} height={box.height} fill="transparent" />
        {bad.map((mark) => (
          <Mark {...mark} className="wrong" />
        ))}
        {inHand.map((mark) => (
          <Mark {...mark} className="held" />
        ))}
        {caret !== null && (
          <line
            class="caret"
            x1="0"
            x2="0"
            y1={-caret.h / 2}
            y2={caret.h / 2}
            transform={`translate(${caret.x} ${caret.y})rotate(${caret.turn})`}
          />
        )}
      </svg>
    </div>
  );
}

function Mark({ x, y, turn, w, h, className }: Marked & { readonly className: string }) {
  return (
    <rect
      class={className}
      x={-w / 2}
      y={-h / 2}
      width={w}
      height={h}
      rx={Math.min(w, h) / 3}
      transform={`translate(${x} ${y})rotate(${turn})`}
    />
  );
}
