/** The head of a card: the piece, whose it is, what was said about it, and its figures. */
import { benchCardWords, orderWords } from '#words/words.ts';
import { measuredOf } from '../../check/lengths.ts';
import type { PieceCard } from '../../models/benchCard.ts';
import type { Frame } from '../../models/frame.ts';
import { FactList, type Fact } from '../FactList.tsx';

export type Note = { readonly by: 'buyer' | 'maker'; readonly text: string };

type Props = {
  readonly bench: PieceCard;
  readonly frame: Frame;
  /** In small letters after the name: an order's number. */
  readonly mark?: string;
  /** What was asked for, in words. */
  readonly size: string;
  /** Whose it is; '' where nobody's yet. */
  readonly buyer?: string;
  /** What must not be overlooked, before all else. */
  readonly warnings?: readonly string[];
  readonly notes?: readonly Note[];
  /** Further facts at the end of the line. */
  readonly more?: readonly Fact[];
};

export function CardHead({
  bench,
  frame,
  mark,
  size,
  buyer = '',
  warnings = [],
  notes = [],
  more = [],
}: Props) {
  const { copy, candidate, card } = bench;
  const { lang, format } = frame;
  const words = benchCardWords(lang);
  const facts: Fact[] = [
    { label: words.facts.size, value: size },
    ...orderWords(lang).measured({ length: format.ruler }, measuredOf(copy.design, candidate)),
    { label: words.facts.hand, value: words.hand[card.hand.reason](card.hand.hand, card.hand.boardSide) },
    ...more,
  ];
  return (
    <header>
      <h1>
        {copy.name} {mark !== undefined && <small>{mark}</small>}{' '}
        {buyer !== '' && (
          <small>
            <bdi>{words.for(buyer)}</bdi>
          </small>
        )}
      </h1>
      {warnings.map((text) => (
        <p class="warning">{text}</p>
      ))}
      {notes.map(({ by, text }) => (
        <p class="noted">
          <b>{words.notes[by]}</b> <bdi>{text}</bdi>
        </p>
      ))}
      <FactList facts={facts} set="inline" />
    </header>
  );
}
