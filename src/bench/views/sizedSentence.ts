/** How a size came out, in one sentence: on a piece's sheet and on the form of an order by hand. */
import type { Measure } from '#core/design/choice.ts';
import type { Design } from '#core/design/design.ts';
import type { Sizing } from '#core/sizing/sizing.ts';
import type { LengthProblem } from '#core/units/length.ts';
import { sentenceOf } from '#words/sentence.ts';
import { sizingWords } from '#words/words.ts';
import type { Frame } from '../models/frame.ts';

type Sized = {
  /** Why what was written is no length. */
  readonly unread: LengthProblem | null;
  /** null for the piece as listed. */
  readonly sizing: Sizing | null;
  readonly design: Design;
};

/** The sentence; empty for the piece as listed. */
export function sizedSentence(
  { unread, sizing, design }: Sized,
  of: Measure['of'],
  { lang, format }: Frame,
): string {
  const words = sizingWords(lang);
  if (unread !== null) return sentenceOf(words.unread, unread, format);
  if (sizing === null) return '';
  if (sizing.status === 'refused') return sentenceOf(words.problems, sizing.problem, format);
  if (sizing.status === 'outside') return words.outside(format, sizing.side, of, sizing.limits);
  const { status, targetMm, toleranceMm } = sizing;
  return status === 'fits'
    ? words.fits(format, targetMm, toleranceMm, design.lie === 'nested')
    : words.near(format, targetMm, toleranceMm);
}
