/** What an extender chain does for one size. */
import { linkAt } from '#core/design/chain.ts';
import type { Design } from '#core/design/design.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import type { Format } from './format.ts';
import type { SizedWords } from './words.ts';

/** In which link of its chain the piece closes, or how far down it where nobody knows its links; null where it has none. */
export function chainSentence(
  { ends }: Design,
  { chainUsedMm }: Candidate,
  words: SizedWords,
  f: Format,
): string | null {
  const { extenderMm } = ends;
  if (extenderMm === 0) return null;
  if (chainUsedMm === 0) return words.chainIdle(f, extenderMm);
  const link = linkAt(ends, chainUsedMm);
  return link === null
    ? words.chainUsed(f, chainUsedMm, extenderMm)
    : words.chainLink(f, link, linkAt(ends, extenderMm)!);
}
