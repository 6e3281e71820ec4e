/** The piece laid on one body, with what is said of it. */
import { useMemo } from 'preact/hooks';
import type { Candidate } from '#core/sizing/sizing.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import type { Format } from '#words/format.ts';
import type { BodyWords, SizingWords } from '#words/words.ts';
import { limitsOf } from '../model/limits.ts';
import { STEP_MM } from '../model/slider.ts';
import { layOn, leastRound, lengthAt, nearestTo, nextLength, type Laid } from './model/lay.ts';
import type { WearerBody } from './model/wearerForm.ts';
import type { PieceForSizer } from '../model/input.ts';
import { ChartNotes } from './ChartNotes.tsx';
import { ChartPicture } from './ChartPicture.tsx';

/** Page keys go as far as an inch or two centimetres. */
const MANY_STEPS = { in: 8, cm: 20 } as const;

/** Least depth below the pit of the neck that is shown, and room below the lowest point, mm. */
const LEAST_DEPTH_MM = 190;
const ROOM_BELOW_MM = 45;

/** Depth that holds the longest piece, so that the picture stands still while a length is dragged. */
function depthFor({ strands }: Laid): number {
  const lowest = strands.map(({ lie }) => (lie.pendantDropMm ?? lie.dropMm) + ROOM_BELOW_MM);
  return Math.max(LEAST_DEPTH_MM, ...lowest);
}

/** What the form hands to the chart of a body. */
export type BodyChartProps = {
  readonly words: BodyWords;
  readonly sizingWords: SizingWords;
  readonly format: Format;
  readonly id: string;
  readonly piece: PieceForSizer;
  readonly candidate: Candidate;
  readonly unit: ShownUnit;
  /** The neck that the buyer sizes by, mm; null where she goes by length. */
  readonly girthMm: number | null;
  /** The length asked for; the candidate's own where none was. */
  readonly wantedMm: number;
  readonly onLength: (mm: number) => void;
};

type ChartProps = BodyChartProps & {
  readonly body: Extract<WearerBody, { ok: true }>;
  readonly kept: readonly number[];
  /** A length and, where it has one, its name. */
  readonly named: (mm: number) => readonly string[];
  readonly movable: boolean;
  /** The neck that is shown where nobody said one and a typical one won't do, mm; else null. */
  readonly presumedNeckMm: number | null;
};

export function Chart({
  words,
  format,
  id,
  piece,
  candidate,
  unit,
  wantedMm,
  onLength,
  body,
  kept,
  named,
  movable,
  presumedNeckMm,
}: ChartProps) {
  const { figure, sex } = body;
  const laid = useMemo(() => layOn(piece, candidate, figure), [piece, candidate, figure]);
  const limits = useMemo(() => (movable ? limitsOf(piece, 'length', 'easy') : null), [piece, movable]);
  const reach = {
    least: Math.max(limits?.leastMm ?? 0, leastRound(piece, candidate, figure)),
    most: limits?.mostMm ?? 0,
    now: candidate.fittedMm,
  };
  // Of a collar the girth is what is fitted; of a necklace the first strand's length.
  const lengthMm = movable ? candidate.fittedMm : candidate.finishedLengthMm;
  const options = useMemo(() => {
    const compared = kept.flatMap((mm) => {
      const other = nearestTo(piece, mm);
      const strand = other === null ? undefined : layOn(piece, other, figure).strands[0];
      return strand === undefined ? [] : [{ lie: strand.lie, lines: named(mm) }];
    });
    const description = laid.lowestMm === null ? '' : words.handleText(format, lengthMm, laid.lowestMm);
    const caption = { title: words.picture(piece.name), description, idPrefix: `${id}-worn` };
    const longest = movable ? nearestTo(piece, reach.most) : null;
    const bottomMm = depthFor(longest === null ? laid : layOn(piece, longest, figure));
    return { ...caption, figure, sex, unit, labels: words.landmarks, compared, bottomMm };
  }, [laid, figure, sex, unit, kept, format]);
  const take = (lengthMm: number | null) => {
    if (lengthMm !== null) onLength(Math.min(reach.most, Math.max(reach.least, lengthMm)));
  };
  const stepMm = (steps: 'one' | 'many') => STEP_MM[unit] * (steps === 'one' ? 1 : MANY_STEPS[unit]);
  return (
    <>
      <ChartPicture
        design={piece.design}
        strands={laid.strands}
        options={options}
        lowestMm={movable ? laid.lowestMm : null}
        handleLabel={words.handle}
        handleText={options.description}
        reach={reach}
        onPlace={(dropMm) => take(lengthAt(piece, candidate, figure, dropMm))}
        onStep={(way, steps) => take(nextLength(piece, candidate, wantedMm, way, stepMm(steps)))}
        onEnd={(end) => take(reach[end])}
      />
      {movable && <p class="sizer-hint">{words.hint}</p>}
      <ChartNotes
        words={words}
        format={format}
        lie={laid.first}
        child={figure.child}
        presumedNeckMm={presumedNeckMm}
      />
    </>
  );
}
