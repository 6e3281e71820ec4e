/** The one that lies finished: what it measures, whom it suits, the button that asks for it, and the way to the size field for anybody else. */
import type { Format } from '#words/format.ts';
import { strandLengths } from '#words/strandLengths.ts';
import type { AskingWords } from '#words/words.ts';
import { measureId } from '../model/elements.ts';
import type { BuiltPiece, PieceForSizer } from '../model/input.ts';

export type ReadyOfferProps = {
  readonly piece: PieceForSizer;
  readonly built: BuiltPiece;
  readonly words: AskingWords;
  readonly format: Format;
  /** Begins those of the form's fields. */
  readonly id: string;
  /** Null where a button beside the price asks for it. */
  readonly onWant: (() => void) | null;
};

export function ReadyOffer({ piece, built, words, format, id, onWant }: ReadyOfferProps) {
  const { lengthsMm, insideGirthMm, priceMinor } = built.figures;
  const lengths = strandLengths(format, lengthsMm);
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
        {onWant !== null && (
          <button type="button" class="button" onClick={onWant}>
            {words.readyOrder}
          </button>
        )}{' '}
        <a class="button plain" href={`#${measureId(id)}`}>
          {words.readyElse}
        </a>
      </p>
    </section>
  );
}
