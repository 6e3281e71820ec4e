/** The head of a card: the piece, whose it is, and its figures in one line. */
import type { ComponentChildren } from 'preact';
import { benchCardWords } from '#words/words.ts';
import type { PieceCard } from '../../models/benchCard.ts';
import type { Frame } from '../../models/frame.ts';
import { FactList, type Fact } from '../FactList.tsx';

type Props = {
  readonly bench: PieceCard;
  readonly frame: Frame;
  /** In small letters after the name: an order's number. */
  readonly mark?: string;
  /** What was asked for, in words. */
  readonly size: string;
  /** Further facts at the end of the line. */
  readonly more?: readonly Fact[];
  readonly children?: ComponentChildren;
};

export function CardHead({ bench: { copy, candidate, card }, frame, mark, size, more, children }: Props) {
  const { lang, format, words: book } = frame;
  const words = benchCardWords(lang);
  const facts: Fact[] = [
    { label: words.facts.size, value: size },
    { label: words.facts.finished, value: book.both(card.finishedLengthMm, format) },
    { label: words.facts.girth, value: book.both(candidate.insideGirthMm, format) },
    ...(more ?? []),
  ];
  return (
    <header>
      <h1>
        {copy.name} {mark !== undefined && <small>{mark}</small>}
      </h1>
      {children}
      <FactList facts={facts} set="inline" />
    </header>
  );
}
