/** The head of a card: the piece, whose it is, and its figures in one line. */
import type { ComponentChildren } from 'preact';
import { benchCardWords } from '#words/benchCard.ts';
import type { PieceCard } from '../../page/benchCard.ts';
import type { Frame } from '../../page/frame.ts';

type Props = {
  readonly bench: PieceCard;
  readonly frame: Frame;
  /** In small letters after the name: an order's number. */
  readonly mark?: string;
  /** What was asked for, in words. */
  readonly size: string;
  /** Further facts at the end of the line. */
  readonly more?: readonly (readonly [label: string, value: string])[];
  readonly children?: ComponentChildren;
};

export function CardHead({ bench: { copy, candidate, card }, frame, mark, size, more, children }: Props) {
  const { lang, format, words: book } = frame;
  const words = benchCardWords(lang);
  const facts = [
    [words.facts.size, size],
    [words.facts.finished, book.both(card.finishedLengthMm, format)],
    [words.facts.girth, book.both(candidate.insideGirthMm, format)],
    ...(more ?? []),
  ] as const;
  return (
    <header>
      <h1>
        {copy.name} {mark !== undefined && <small>{mark}</small>}
      </h1>
      {children}
      <dl class="facts inline">
        {facts.map(([label, value]) => (
          <div>
            <dt>{label}</dt>
            <dd>
              <bdi>{value}</bdi>
            </dd>
          </div>
        ))}
      </dl>
    </header>
  );
}
