/** The figures behind the card, for who wants them: nothing here is needed to string by. */
import { FactList, type Fact } from '../FactList.tsx';
import type { FactProps } from './WireFacts.tsx';

export function ExactFigures(props: FactProps) {
  const { words } = props;
  return (
    <details class="off-paper">
      <summary>{words.exact}</summary>
      <FactList facts={[...strandLines(props), ...endLines(props), ...strengthLines(props)]} set="tight" />
    </details>
  );
}

function strandLines({ strandCard: { cut, slackMm }, words, format }: FactProps): Fact[] {
  const { beadsMm, slackMm: cutSlackMm, loopsMm, tailsMm, gripsMm, totalMm } = cut;
  const parts = words.cutParts(format, beadsMm, cutSlackMm, loopsMm, tailsMm, gripsMm);
  return [
    { label: words.slack, value: format.fine(slackMm) },
    { label: words.cut, value: `${format.fine(totalMm)} = ${parts}` },
  ];
}

function endLines({ card, nameOf, words, said, format }: FactProps): Fact[] {
  const { wire, flexibility, ends } = card;
  const diameter = `${format.number(wire.diameterMm, 2)} mm`;
  return [
    {
      label: words.wire,
      value: words.wireText(nameOf(wire.id), wire.strands, diameter, said.flexibility[flexibility]),
    },
    { label: words.crimp, value: said.crimp(ends.crimp, format, nameOf) },
    ...(ends.cover === null ? [] : [{ label: words.cover, value: said.cover(ends.cover, format, nameOf) }]),
    ...(ends.guard === null ? [] : [{ label: words.guard, value: said.guard(ends.guard, format, nameOf) }]),
  ];
}

function strengthLines({ card: { strength }, words, said, format }: FactProps): Fact[] {
  const { breakN, basis, factor, wantedFactor, caveats } = strength;
  const caveat = caveats.map((one) => said.caveats[one]).join(' ');
  const text = words.strengthText(format, breakN, basis, factor, wantedFactor);
  return [{ label: words.strength, value: `${text}. ${caveat}` }];
}
