/** The one that lies finished: what it measures, whom it suits, and the button that asks for it. */
import type { Format } from '#words/format.ts';
import type { SizingWords } from '#words/words.ts';
import type { BuiltPiece, PieceForSizer } from '../model/input.ts';

export type ReadyOfferProps = {
  readonly piece: PieceForSizer;
  readonly built: BuiltPiece;
  readonly words: SizingWords;
  readonly format: Format;
  readonly id: string;
  readonly onWant: () => void;
};

export function ReadyOffer({ piece, built, words, format, id, onWant }: ReadyOfferProps) {
  const { lengthsMm, insideGirthMm, priceMinor } = built.figures;
  const lengths = [...new Set(lengthsMm.map(format.length))];
  const { kind } = piece.design;
  const { suits = null } = built;
  return (
    <section class="sizer-ready" aria-labelledby={`${id}-ready`}>
      <h3 id={`${id}-ready`}>{words.readyTitle}</h3>
      <p>
        {words.readyIs(format, lengths, insideGirthMm, priceMinor)}{' '}
        {suits === null ? words.readyHangs : words.readySuits(format, kind, suits)}
      </p>
      <p>
        <button type="button" class="button" onClick={onWant}>
          {words.readyOrder}
        </button>
      </p>
    </section>
  );
}
