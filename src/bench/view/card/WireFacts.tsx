/** Wire, cut, ends, pendant, strength: what to take from the drawers before the first bead. */
import type { BenchCardWords } from '#words/benchCard.ts';
import type { Format } from '#words/format.ts';
import type { StringingWords } from '#words/stringing.ts';
import type { Stringing } from '#core/stringing/stringing.ts';

type Props = {
  readonly card: Stringing;
  readonly nameOf: (id: string) => string;
  readonly words: BenchCardWords;
  readonly said: StringingWords;
  readonly format: Format;
};

type Line = { readonly label: string; readonly text: string; readonly bad?: boolean };

export function WireFacts(props: Props) {
  const lines = [
    ...wireLines(props),
    ...strandLines(props),
    ...endLines(props),
    ...hangLines(props),
    ...strengthLines(props),
  ];
  return (
    <dl class="facts tight">
      {lines.map(({ label, text, bad }) => (
        <div class={bad === true ? 'bad' : undefined}>
          <dt>{label}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}

function wireLines({ card: { wire, flexibility, hand }, words, said, format }: Props): Line[] {
  const diameter = `${format.number(wire.diameterMm, 2)} mm`;
  return [
    { label: words.handLabel, text: words.hand[hand.reason](hand.boardSide) },
    {
      label: words.wire,
      text: words.wireText(wire.name, wire.strands, diameter, said.flexibility[flexibility]),
    },
  ];
}

/** Lines of each strand; strands with the same text share one. */
function strandLines({ card: { strands }, nameOf, words, said, format }: Props): Line[] {
  const cuts = strands.map(({ cut }) => {
    const { beadsMm, slackMm, loopsMm, tailsMm, gripsMm, totalMm } = cut;
    const parts = words.cutParts(format, beadsMm, slackMm, loopsMm, tailsMm, gripsMm);
    return { label: words.cut, text: `${format.fine(totalMm)} = ${parts}` };
  });
  const slacks = strands.map(({ slackMm }) => ({ label: words.slack, text: format.fine(slackMm) }));
  const tails = (['clasp', 'ring'] as const).map((end) =>
    strands.map(({ tails: both }) => ({
      label: words.doubledEnds[end],
      text: said.tail(both[end], format, nameOf),
      bad: both[end].blockedBy !== null,
    })),
  );
  return [cuts, slacks, ...tails].flatMap(shared);
}

function shared(lines: readonly Line[]): Line[] {
  const texts = new Map<string, { line: Line; strands: number[] }>();
  lines.forEach((line, at) => {
    const known = texts.get(line.text);
    if (known === undefined) texts.set(line.text, { line, strands: [at + 1] });
    else known.strands.push(at + 1);
  });
  return [...texts.values()].map(({ line, strands }) =>
    texts.size === 1 ? line : { ...line, label: `${line.label} ${strands.join(', ')}` },
  );
}

function endLines({ card: { ends }, nameOf, words, said, format }: Props): Line[] {
  const { crimp, cover, guard, extenderMm, chainUsedMm } = ends;
  return [
    { label: words.crimp, text: said.crimp(crimp, format, nameOf), bad: crimp.fit !== 'fits' },
    cover === null
      ? { label: words.cover, text: words.bare }
      : { label: words.cover, text: said.cover(cover, format, nameOf), bad: cover.fit !== 'fits' },
    ...(guard === null
      ? []
      : [{ label: words.guard, text: said.guard(guard, format, nameOf), bad: !guard.passes }]),
    ...(extenderMm === 0
      ? []
      : [{ label: words.chain, text: words.chainText(format.fine(extenderMm), format.fine(chainUsedMm)) }]),
  ];
}

function hangLines({ card: { pendant, balance }, nameOf, words, said, format }: Props): Line[] {
  const lines: Line[] = [];
  if (pendant !== null) {
    const { facing, left, right } = pendant;
    const hung = [nameOf(pendant.pendant), words.pendantRings(pendant.rings.map(nameOf))];
    if (left !== null && right !== null) hung.push(words.between(nameOf(left), nameOf(right)));
    lines.push({ label: words.pendant, text: hung.join(', ') });
    lines.push({ label: '', text: said.centred(pendant, format), bad: !pendant.centred });
    if (facing !== null) {
      lines.push({ label: '', text: said.facing(facing, format), bad: facing.faces === 'sideways' });
    }
  }
  if (balance.told) lines.push({ label: words.balance, text: said.balance(balance, format) });
  return lines;
}

function strengthLines({ card: { strength }, words, said, format }: Props): Line[] {
  const { breakN, basis, factor, wantedFactor, enough, caveats } = strength;
  const caveat = caveats.map((one) => said.caveats[one]).join(' ');
  const text = words.strengthText(format, breakN, basis, factor, wantedFactor);
  return [
    { label: words.strength, text: `${text}. ${enough ? '' : `${words.weak} `}${caveat}`, bad: !enough },
  ];
}
