/** What an extender chain does for one size. */
import type { Design } from '#core/design/design.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import type { Format } from './format.ts';
import type { SizingWords } from './words.ts';

/** How far down its chain the piece closes; null where it has none. */
export function chainSentence(
  { ends }: Design,
  { chainUsedMm }: Candidate,
  words: SizingWords,
  f: Format,
): string | null {
  if (ends.extenderMm === 0) return null;
  return chainUsedMm > 0
    ? words.chainUsed(f, chainUsedMm, ends.extenderMm)
    : words.chainIdle(f, ends.extenderMm);
}
