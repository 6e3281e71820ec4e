/** Batches strung literally: what is done in one go, taken apart again, is a card's own work for each piece. */
import { describe, expect, it } from 'vitest';
import { batchOf } from '#core/instructions/batch.ts';
import type { Step } from '#core/instructions/step.ts';
import { stringing } from '#core/instructions/stringing.ts';
import { sizeTable } from '#ui/models/sizeRows.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';
import { carryOut, type Work } from './hands/carryOut.ts';
import { randomWork } from './hands/designs.ts';

/** The steps of each piece in the order in which the batch comes to them. */
function takenApart(works: readonly Work[]): Step[][] {
  const mine = works.map((): Step[] => []);
  for (const { parts } of batchOf(works.map(({ card }) => card.steps))) {
    for (const { piece, at } of parts) mine[piece]?.push(works[piece]!.card.steps[at]!);
  }
  return mine;
}

function strungByHand(works: readonly Work[], what: string): void {
  for (const [piece, steps] of takenApart(works).entries()) {
    const work = works[piece]!;
    expect(steps.toSorted(byText), what).toEqual([...work.card.steps].sort(byText));
    expect(carryOut(work, steps), `${what}, piece ${piece}`).toBeNull();
  }
}
const byText = (one: Step, other: Step): number => (JSON.stringify(one) < JSON.stringify(other) ? -1 : 1);

const catalogue = catalogueOf();
const { rules } = catalogue.shop;

/** A piece in every size of its table, for both hands. */
function sizesOf(id: string): Work[] {
  const piece = catalogue.pieces.find((one) => one.id === id)!;
  const { design } = piece;
  return (sizeTable(piece, rules, 'en')?.rows ?? []).flatMap(({ candidate }) =>
    (['left', 'right'] as const).map((hand) => ({
      ...{ design, rules, candidate, hand },
      card: stringing(design, rules, candidate, hand),
    })),
  );
}

/** One piece of each kind: mirrored, with something that hangs, of several strands, with a chain. */
const KINDS = {
  mirrored: catalogue.pieces.find(
    ({ design }) => design.strands[0]?.mirrored === true && design.hanging === null,
  ),
  pendant: catalogue.pieces.find(({ design }) => design.hanging !== null),
  'several strands': catalogue.pieces.find(({ design }) => design.strands.length > 1),
  chain: catalogue.pieces.find(({ design }) => design.ends.extenderMm > 0),
};

describe.each(Object.entries(KINDS))('a batch of a piece that is %s', (_, piece) => {
  it('is strung as each card alone would be', () => {
    const works = sizesOf(piece!.id).slice(0, 6);
    expect(works.length).toBeGreaterThan(3);
    strungByHand(works, piece!.id);
  });

  it('cuts all wires in one go, and begins no end before, no beads before all first ends, no second end before all beads', () => {
    const works = sizesOf(piece!.id).slice(0, 3);
    const stops = batchOf(works.map(({ card }) => card.steps));
    const stages = stops.map(({ stage }) => stage);
    expect(stages.filter((stage) => stage === 'cut')).toHaveLength(1);
    expect(stages.filter((stage, at) => stage !== stages[at - 1])).toEqual([
      'ready',
      'cut',
      'first',
      'beads',
      'second',
      'done',
    ]);
    const cut = stops.find(({ stage }) => stage === 'cut')!;
    expect(cut.parts).toHaveLength(works.length * piece!.design.strands.length);
    // Spectacles go on once for all of them; each is laid out by itself.
    const [first] = stops;
    expect(first?.parts).toHaveLength(works.length);
  });
});

it('a card alone keeps its own order', () => {
  const [work] = sizesOf(KINDS['several strands']!.id);
  const stops = batchOf([work!.card.steps]);
  expect(stops.map(({ parts }) => parts)).toEqual(work!.card.steps.map((_, at) => [{ piece: 0, at }]));
});

it('random pieces, several at a time, whatever they are', () => {
  let batches = 0;
  let works: Work[] = [];
  for (let seed = 1; batches < 60; seed += 1) {
    const work = randomWork(seed);
    if (work === null) continue;
    works.push(work);
    if (works.length <= batches % 4) continue;
    strungByHand(works, `up to seed ${seed}`);
    batches += 1;
    works = [];
  }
});
