/** The bench card as text. */
import { costsOf } from '#core/sizing/price/costs.ts';
import type { Hand } from '#core/design/choice.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import { stringing } from '#core/instructions/stringing.ts';
import type { StrandCard } from '#core/instructions/card.ts';
import type { Stringing } from '#core/instructions/stringing.ts';
import type { Format } from '#words/format.ts';
import {
  type BenchCardWords,
  type StringingWords,
  type TerminalWords,
  benchCardWords,
  stringingWords,
  terminalWords,
} from '#words/words.ts';
import { nameOf } from './names.ts';
import type { Subject } from './subject.ts';

function strandLines(
  strand: StrandCard,
  index: number,
  many: boolean,
  card: Stringing,
  name: (id: string) => string,
  f: Format,
  words: {
    readonly terminal: TerminalWords;
    readonly stringing: StringingWords;
    readonly card: BenchCardWords;
  },
): string[] {
  const { terminal, stringing: bench } = words;
  const rings = card.pendant?.rings ?? [];
  const rows = strand.rows.map(({ kind, component, count, runningCount, toMm }) => {
    // As on the bench card: the steps call components by these.
    const last = kind === 'strung' ? runningCount : null;
    if (component === null) return `  ${terminal.row(f, last, count, terminal.bareLoop, toMm)}`;
    if (kind === 'pendant') return `  ${words.card.hangs(name(component), rings.map(name))}`;
    const half = kind === 'other-half' ? words.card.halves.other(name(component)) : name(component);
    return `  ${terminal.row(f, last, count, half, toMm)}`;
  });
  return [
    ...(many ? [terminal.strand(f, index + 1)] : []),
    terminal.wire(f, card.wire.name, strand.cut.totalMm),
    ...rows,
    terminal.tailAt.clasp(bench.tail(strand.tails.clasp, f, name)),
    terminal.tailAt.ring(bench.tail(strand.tails.ring, f, name)),
  ];
}

function checkLines(
  card: Stringing,
  name: (id: string) => string,
  f: Format,
  bench: StringingWords,
): string[] {
  const { crimp, cover, guard } = card.ends;
  const { pendant, balance } = card;
  return [
    bench.crimp(crimp, f, name),
    ...(cover === null ? [] : [bench.cover(cover, f, name)]),
    ...(guard === null ? [] : [bench.guard(guard, f, name)]),
    ...(pendant === null ? [] : [bench.centred(pendant, f)]),
    ...(pendant === null || pendant.facing === null ? [] : [bench.facing(pendant.facing, f)]),
    ...(balance.notable ? [bench.balance(balance, f)] : []),
  ];
}

/** Everything of the card, strand by strand, then the checks and the steps. */
export function cardLines({ design, rules }: Subject, piece: Candidate, hand: Hand, f: Format): string[] {
  const card = stringing(design, rules, piece, hand);
  const name = nameOf(design);
  const words = {
    terminal: terminalWords(f.lang),
    stringing: stringingWords(f.lang),
    card: benchCardWords(f.lang),
  };
  const { strength, strands } = card;
  return [
    words.terminal.card,
    words.terminal.board(card.hand.boardSide),
    ...strands.flatMap((strand, index) =>
      strandLines(strand, index, strands.length > 1, card, name, f, words),
    ),
    ...checkLines(card, name, f, words.stringing),
    words.terminal.costs(f, costsOf(design, piece.counts, rules)),
    words.terminal.pull(f, strength.factor, strength.wantedFactor, strength.enough),
    ...strength.caveats.map((caveat) => `  ${words.stringing.caveats[caveat]}`),
    ...card.steps.map((step) => `[ ] ${words.stringing.step(step, f, name)}`),
  ];
}
