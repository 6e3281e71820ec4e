/** What to take from the drawers before the first bead, and what about it needs mending. */
import type { BenchCardWords, StringingWords } from '#words/words.ts';
import type { Format } from '#words/format.ts';
import type { StrandCard } from '#core/instructions/card.ts';
import type { Stringing } from '#core/instructions/stringing.ts';
import { FactList, type Fact } from '../FactList.tsx';

export type FactProps = {
  readonly card: Stringing;
  readonly strandCard: StrandCard;
  readonly nameOf: (id: string) => string;
  readonly words: BenchCardWords;
  readonly said: StringingWords;
  readonly format: Format;
};

/** @param withPiece also what is for the whole piece: ends, pendant, balance, strength */
export function WireFacts({ withPiece, ...props }: FactProps & { readonly withPiece: boolean }) {
  const { card, strandCard, nameOf, words, format } = props;
  const lines: Fact[] = [
    { label: words.wire, value: nameOf(card.wire.id) },
    { label: words.cut, value: format.ruler(strandCard.cut.totalMm, 'up') },
    ...tailLines(props),
    ...(withPiece ? [...endLines(props), ...hangLines(props), ...strengthLines(props)] : []),
  ];
  return <FactList facts={lines} set="tight" />;
}

/** An end where a bead stops the tail. */
function tailLines({ strandCard: { tails }, nameOf, words, said, format }: FactProps): Fact[] {
  return (['clasp', 'ring'] as const)
    .filter((end) => tails[end].blockedBy !== null)
    .map((end) => ({
      label: words.doubledEnds[end],
      value: said.tail(tails[end], format, nameOf),
      bad: true,
    }));
}

/** Names alone where all fits; figures where something doesn't. */
function endLines({ card: { ends }, nameOf, words, said, format }: FactProps): Fact[] {
  const { crimp, coverId, cover, guard, extenderMm, chainUsedMm, links, link } = ends;
  const line = (label: string, id: string, bad: boolean, why: string): Fact =>
    bad ? { label, value: why, bad } : { label, value: nameOf(id) };
  const lines = [line(words.crimp, crimp.crimp, crimp.fit !== 'fits', said.crimp(crimp, format, nameOf))];
  if (coverId === null) lines.push({ label: words.cover, value: words.bare });
  else {
    const bad = cover !== null && cover.fit !== 'fits';
    lines.push(line(words.cover, coverId, bad, cover === null ? '' : said.cover(cover, format, nameOf)));
  }
  if (guard !== null) {
    lines.push(line(words.guard, guard.guard, !guard.passes, said.guard(guard, format, nameOf)));
  }
  if (extenderMm > 0) {
    const [of, used] = [format.ruler(extenderMm), format.ruler(chainUsedMm)];
    const value =
      links === null || link === null
        ? words.chainText(of, used)
        : words.chainLinks(format, links, of, link, used);
    lines.push({ label: words.chain, value });
  }
  return lines;
}

/** Where the pendant goes, and on what, the list says; here stands what is amiss with it. */
function hangLines({ card: { pendant, balance }, words, said, format }: FactProps): Fact[] {
  const lines: Fact[] = [];
  if (pendant !== null && !pendant.centred)
    lines.push({ label: words.pendant, value: said.centred(pendant, format), bad: true });
  if (pendant?.facing?.faces === 'sideways')
    lines.push({ label: words.pendant, value: said.facing(pendant.facing, format), bad: true });
  if (balance.notable) lines.push({ label: words.balance, value: said.balance(balance, format) });
  return lines;
}

function strengthLines({ card: { strength }, words }: FactProps): Fact[] {
  return strength.enough ? [] : [{ label: words.strength, value: words.weak, bad: true }];
}
