/** Wire, cut, ends, pendant, strength: what to take from the drawers before the first bead. */
import type { BenchCardWords, StringingWords } from '#words/words.ts';
import type { Format } from '#words/format.ts';
import type { Stringing } from '#core/instructions/stringing.ts';
import { FactList, type Fact } from '../FactList.tsx';

type Props = {
  readonly card: Stringing;
  readonly nameOf: (id: string) => string;
  readonly words: BenchCardWords;
  readonly said: StringingWords;
  readonly format: Format;
};

export function WireFacts(props: Props) {
  const lines = [
    ...wireLines(props),
    ...strandLines(props),
    ...endLines(props),
    ...hangLines(props),
    ...strengthLines(props),
  ];
  return <FactList facts={lines} set="tight" />;
}

function wireLines({ card: { wire, flexibility, hand }, nameOf, words, said, format }: Props): Fact[] {
  const diameter = `${format.number(wire.diameterMm, 2)} mm`;
  return [
    { label: words.handLabel, value: words.hand[hand.reason](hand.boardSide) },
    {
      label: words.wire,
      value: words.wireText(nameOf(wire.id), wire.strands, diameter, said.flexibility[flexibility]),
    },
  ];
}

/** Lines of each strand; strands with the same text share one. */
function strandLines({ card: { strands }, nameOf, words, said, format }: Props): Fact[] {
  const cuts = strands.map(({ cut }) => {
    const { beadsMm, slackMm, loopsMm, tailsMm, gripsMm, totalMm } = cut;
    const parts = words.cutParts(format, beadsMm, slackMm, loopsMm, tailsMm, gripsMm);
    return { label: words.cut, value: `${format.fine(totalMm)} = ${parts}` };
  });
  const slacks = strands.map(({ slackMm }) => ({ label: words.slack, value: format.fine(slackMm) }));
  const tails = (['clasp', 'ring'] as const).map((end) =>
    strands.map(({ tails: both }) => ({
      label: words.doubledEnds[end],
      value: said.tail(both[end], format, nameOf),
      bad: both[end].blockedBy !== null,
    })),
  );
  return [cuts, slacks, ...tails].flatMap(shared);
}

function shared(lines: readonly Fact[]): Fact[] {
  const texts = new Map<string, { line: Fact; strands: number[] }>();
  lines.forEach((line, at) => {
    const known = texts.get(line.value);
    if (known === undefined) texts.set(line.value, { line, strands: [at + 1] });
    else known.strands.push(at + 1);
  });
  return [...texts.values()].map(({ line, strands }) =>
    texts.size === 1 ? line : { ...line, label: `${line.label} ${strands.join(', ')}` },
  );
}

function endLines({ card: { ends }, nameOf, words, said, format }: Props): Fact[] {
  const { crimp, cover, guard, extenderMm, chainUsedMm } = ends;
  return [
    { label: words.crimp, value: said.crimp(crimp, format, nameOf), bad: crimp.fit !== 'fits' },
    cover === null
      ? { label: words.cover, value: words.bare }
      : { label: words.cover, value: said.cover(cover, format, nameOf), bad: cover.fit !== 'fits' },
    ...(guard === null
      ? []
      : [{ label: words.guard, value: said.guard(guard, format, nameOf), bad: !guard.passes }]),
    ...(extenderMm === 0
      ? []
      : [{ label: words.chain, value: words.chainText(format.fine(extenderMm), format.fine(chainUsedMm)) }]),
  ];
}

function hangLines({ card: { pendant, balance }, nameOf, words, said, format }: Props): Fact[] {
  const lines: Fact[] = [];
  if (pendant !== null) {
    const { facing, left, right } = pendant;
    const hung = [nameOf(pendant.pendant), words.pendantRings(pendant.rings.map(nameOf))];
    if (left !== null && right !== null) hung.push(words.between(nameOf(left), nameOf(right)));
    lines.push({ label: words.pendant, value: hung.join(', ') });
    lines.push({ label: '', value: said.centred(pendant, format), bad: !pendant.centred });
    if (facing !== null) {
      lines.push({ label: '', value: said.facing(facing, format), bad: facing.faces === 'sideways' });
    }
  }
  if (balance.told) lines.push({ label: words.balance, value: said.balance(balance, format) });
  return lines;
}

function strengthLines({ card: { strength }, words, said, format }: Props): Fact[] {
  const { breakN, basis, factor, wantedFactor, enough, caveats } = strength;
  const caveat = caveats.map((one) => said.caveats[one]).join(' ');
  const text = words.strengthText(format, breakN, basis, factor, wantedFactor);
  return [
    { label: words.strength, value: `${text}. ${enough ? '' : `${words.weak} `}${caveat}`, bad: !enough },
  ];
}
