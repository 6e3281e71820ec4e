/** The piece as sized, drawn to scale: laid straight, or closed as it is worn. */
import { useMemo, useState } from 'preact/hooks';
import type { Candidate } from '#core/sizing/sizing.ts';
import { drawLoop } from '#draw/view/loop.ts';
import { drawStraight } from '#draw/view/straight.ts';
import { airMm, drawWrist } from '#draw/view/wrist.ts';
import type { Format } from '#words/format.ts';
import type { SizingWords } from '#words/sizing.ts';
import type { BuyerUnit } from '../model/sizerState.ts';
import type { PieceForSizer } from '../props.ts';
import { Choices } from './Choices.tsx';

export type PictureProps = {
  readonly words: SizingWords;
  readonly format: Format;
  readonly id: string;
  readonly piece: PieceForSizer;
  readonly candidate: Candidate;
  readonly unit: BuyerUnit;
  /** Girth of the wrist, ankle or neck that it is sized for; null where none is known. */
  readonly girthMm: number | null;
  /** As the hand advice says; left where either will do. */
  readonly claspSide: 'left' | 'right';
};

type View = 'straight' | 'closed';

export function Picture(props: PictureProps) {
  const { words, id, piece } = props;
  const [view, setView] = useState<View>(piece.design.kind === 'necklace' ? 'straight' : 'closed');
  const svg = useDrawing(props, view);
  return (
    <figure class="sizer-picture" data-view={view}>
      <div
        class="sizer-drawing"
        tabIndex={0}
        role="group"
        aria-label={words.viewsLegend}
        dangerouslySetInnerHTML={{ __html: svg }}
      />
      <figcaption>
        <Choices
          name={`${id}-view`}
          legend={words.viewsLegend}
          quiet
          value={view}
          options={[
            { value: 'straight', label: words.views.straight },
            { value: 'closed', label: words.views.closed },
          ]}
          onChange={setView}
        />
      </figcaption>
    </figure>
  );
}

/** The drawing as SVG text. All that it holds comes from the shop's own catalogue, escaped by `draw`. */
function useDrawing(props: PictureProps, view: View): string {
  const { words, format, id, piece, candidate, unit, claspSide, girthMm } = props;
  return useMemo(() => {
    const { sequences, finishedLengthMm, insideGirthMm } = candidate;
    const parts = sequences.reduce((sum, sequence) => sum + sequence.length, 0);
    const caption = {
      title: words.pictureTitle(piece.name),
      description: words.pictureDescription(format, finishedLengthMm, parts),
      idPrefix: `${id}-${view}`,
    };
    if (view === 'straight') return drawStraight(piece.design, sequences, { ...caption, unit, claspSide });
    if (girthMm === null || girthMm >= insideGirthMm) return drawLoop(piece.design, sequences, caption);
    const airLabel = words.air(format, airMm(insideGirthMm, girthMm));
    return drawWrist(piece.design, sequences, { ...caption, girthMm, airLabel });
  }, [piece, candidate, view, unit, claspSide, girthMm, format]);
}
