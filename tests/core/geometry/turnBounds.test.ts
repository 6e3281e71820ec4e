/** What is said of every turn before a loop is solved, against loops that are. */
import { expect, test } from 'vitest';
import { outlinesOf } from '#core/geometry/junction.ts';
import { solveLoop, type Part } from '#core/geometry/loop.ts';
import { boundTurns, neighbourhood, openingOnly, type Neighbourhood } from '#core/geometry/turnBounds.ts';
import { random, type Random } from '../random.ts';

const STRANDS = process.env['CLASPWISE_THOROUGH'] ? 20_000 : 400;

/** Rounding noise of sums of a few dozen lengths. */
const NOISE = 1e-9;

function oddPart(of: Random): Part {
  const [alongMm, acrossMm] = [of.pick([1, 2, 4, 6, 12]), of.pick([1, 2, 4, 6, 12])];
  return { alongMm, acrossMm, roundingMm: (Math.min(alongMm, acrossMm) / 2) * of.pick([0, 0.4, 1]) };
}

/** A motif that repeats: what follows each of its kinds is itself again, from there on. */
function motifRing(motif: readonly Part[]): Neighbourhood {
  const kinds = motif.map((_, at) => at);
  const after = kinds.map((kind) => [[...kinds.slice(kind + 1), ...kinds]]);
  const before = kinds.map((kind) => [[...kinds.slice(0, kind).reverse(), ...kinds.toReversed()]]);
  return neighbourhood(outlinesOf(motif), after, before);
}

test('no turn, no distance and no chord of a loop that closes lies beyond its bounds', () => {
  let closed = 0;
  let bounded = 0;
  for (let seed = 1; seed <= STRANDS; seed += 1) {
    const of = random(seed);
    const motif = Array.from({ length: of.whole(1, 4) }, () => oddPart(of));
    const times = of.whole(3, 12);
    const loop = solveLoop(Array.from({ length: times }, () => motif).flat());
    if (!loop.closes) continue;
    closed += 1;
    const around = motifRing(motif);
    const radiusMm = loop.radiusMm * of.pick([1, 0.9, 0.5]);
    const all = boundTurns(around, radiusMm);
    const later = boundTurns(around, loop.radiusMm, all);
    const some = boundTurns(openingOnly(around), radiusMm);
    if (all.chordMm > 0) bounded += 1;
    loop.spots.forEach((spot, at) => {
      const next = loop.spots[(at + 1) % loop.spots.length]!;
      const junction = around.junctionOf(at % motif.length, (at + 1) % motif.length);
      const area = spot.radiusMm * next.radiusMm * Math.sin(next.placeRad - spot.placeRad);
      for (const bounds of [all, later, some]) {
        const said = `seed ${seed}, junction ${at}`;
        expect(spot.turnRad, said).toBeLessThanOrEqual(bounds.mostTurnRad[junction]! + NOISE);
        expect(spot.toNextMm, said).toBeLessThanOrEqual(bounds.mostMm[junction]! + NOISE);
        expect(spot.toNextMm, said).toBeGreaterThanOrEqual(bounds.leastMm[junction]! - NOISE);
        expect(area / spot.toNextMm, said).toBeGreaterThanOrEqual(bounds.chordMm - NOISE);
      }
    });
  }
  expect(closed).toBeGreaterThan(0.95 * STRANDS);
  expect(bounded).toBeGreaterThan(0.9 * closed);
});

test('alike parts turn by no more than they must, once the radius is known', () => {
  for (const part of [
    { alongMm: 6, acrossMm: 6, roundingMm: 3 },
    { alongMm: 10, acrossMm: 4, roundingMm: 0 },
    { alongMm: 2, acrossMm: 8, roundingMm: 0.5 },
  ]) {
    const { radiusMm, spots } = solveLoop(new Array<Part>(24).fill(part));
    let bounds = boundTurns(motifRing([part]), radiusMm);
    for (let round = 0; round < 20; round += 1) bounds = boundTurns(motifRing([part]), radiusMm, bounds);
    expect(bounds.mostTurnRad[0]).toBeCloseTo((2 * Math.PI) / 24, 9);
    expect(bounds.mostMm[0]).toBeCloseTo(spots[0]!.toNextMm, 9);
    expect(bounds.chordMm).toBeCloseTo((radiusMm + part.acrossMm / 2) * Math.cos(Math.PI / 24), 9);
  }
});
