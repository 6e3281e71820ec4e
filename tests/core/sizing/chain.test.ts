/** How an extender chain meets a size: by any length, or in whole links where their length is known. */
import { describe, expect, test } from 'vitest';
import { loopParts } from '#core/design/loopParts.ts';
import { withEnds } from '#core/design/swap.ts';
import { solveLoop } from '#core/geometry/loop.ts';
import { explainPiece } from '#core/sizing/explain.ts';
import { range } from '#core/sizing/range.ts';
import { size } from '#core/sizing/size.ts';
import type { Choice } from '#core/design/choice.ts';
import type { Design } from '#core/design/design.ts';
import type { Rules } from '#core/design/rules.ts';
import type { Sizing } from '#core/sizing/sizing.ts';
import { describe as describePiece, usual } from '#core/sizing/usual.ts';
import { verifySizing } from '#core/verify/sizing.ts';
import { focalBracelet, necklace, rules, strict } from '../designs.ts';

const ask = (of: Choice['measure']['of'], mm: number): Choice => ({
  ...{ measure: { of, mm }, sit: 'easy', hand: 'left', pick: 'best', quantity: 1 },
});

const sized = (piece: Design, choice: Choice, by: Rules = rules): Sizing => size(piece, by, 4800, choice);

describe('an extender chain', () => {
  const chained = withEnds(necklace, { extenderMm: 50 });

  test('meets sizes between without a change, and says how far it is let out', () => {
    const sizing = sized(chained, ask('length', 480), strict);
    expect(sizing).toMatchObject({
      status: 'fits',
      best: {
        changes: [],
        fittedMm: expect.closeTo(480, 6),
        finishedLengthMm: expect.closeTo(480, 6),
        chainUsedMm: 26,
      },
    });
    expect(verifySizing(chained, sizing)).toEqual([]);
  });

  test('round a wrist the chain is let out until the girth is met', () => {
    const bracelet = withEnds(focalBracelet, { extenderMm: 40 });
    const sizing = sized(bracelet, ask('wrist', 165), strict);
    expect(sizing).toMatchObject({ status: 'fits', best: { changes: [] } });
    if (sizing.status !== 'fits') return;
    expect(sizing.best.insideGirthMm).toBeCloseTo(178, 3);
    expect(sizing.best.chainUsedMm).toBeGreaterThan(20);
  });

  const linked = withEnds(necklace, { extenderMm: 48, linkMm: 4 });

  test('closes in the whole link that comes nearest, and is as long as that', () => {
    const plainMm = describePiece(necklace, rules, 4800, usual(necklace)).finishedLengthMm;
    // Seven links are 28 mm; what is asked lies nearer to them than to six or eight, or just at the end.
    for (const [beyondMm, link] of [
      [0, 0],
      [1.9, 0],
      [2.1, 1],
      [26.1, 7],
      [28, 7],
      [29.9, 7],
      [48, 12],
      [49, 12],
    ] as const) {
      const sizing = sized(linked, ask('length', plainMm + beyondMm));
      expect(sizing, `${beyondMm}`).toMatchObject({
        status: 'fits',
        best: {
          changes: [],
          chainUsedMm: 4 * link,
          finishedLengthMm: plainMm + 4 * link,
          errorMm: expect.closeTo(4 * link - beyondMm, 9),
        },
      });
      expect(verifySizing(linked, sizing)).toEqual([]);
    }
  });

  test('of what lies between two links further apart than the tolerance both are offered', () => {
    const long = withEnds(necklace, { extenderMm: 50, linkMm: 25 });
    const plainMm = describePiece(necklace, rules, 4800, usual(necklace)).finishedLengthMm;
    const fixed = {
      ...long,
      strands: long.strands.map((one) => ({
        ...one,
        sections: one.sections.map((each) => ({ ...each, fewest: each.usual, most: each.usual })),
      })),
    };
    const sizing = sized(fixed, ask('length', plainMm + 10));
    expect(sizing).toMatchObject({
      status: 'near',
      best: { chainUsedMm: 0, errorMm: -10 },
      below: { chainUsedMm: 0 },
      above: { chainUsedMm: 25, errorMm: 15 },
    });
    expect(verifySizing(fixed, sizing)).toEqual([]);
    const found = range(fixed, rules);
    if (found.status !== 'known') throw new Error('it is sound');
    const { necklace: toleranceMm } = rules.toleranceMm;
    expect(found.intervals).toEqual(
      [0, 25, 50].map((mm) => ({
        fromMm: expect.closeTo(plainMm + mm - toleranceMm, 6) as number,
        toMm: expect.closeTo(plainMm + mm + toleranceMm, 6) as number,
      })),
    );
    expect(found.limits.leastBinds).toEqual([]);
  });

  test('round a wrist it closes in the link whose girth comes nearest', () => {
    const bracelet = withEnds(focalBracelet, { extenderMm: 40, linkMm: 4 });
    const sizing = sized(bracelet, ask('wrist', 165));
    expect(sizing).toMatchObject({ status: 'fits', best: { changes: [] } });
    expect(verifySizing(bracelet, sizing)).toEqual([]);
    if (sizing.status !== 'fits') return;
    const girthMm = (link: number): number => {
      const [sequence] = sizing.best.sequences;
      return solveLoop(loopParts(bracelet, sequence!, 4 * link)).insideGirthMm;
    };
    const link = sizing.best.chainUsedMm / 4;
    const off = (at: number): number => Math.abs(girthMm(at) - 178);
    expect(sizing.best.insideGirthMm).toBe(girthMm(link));
    expect(Math.min(off(link - 1), off(link + 1))).toBeGreaterThan(off(link));
  });

  test('a finished piece may have been measured in any link', () => {
    const plainMm = describePiece(necklace, rules, 4800, usual(necklace)).finishedLengthMm;
    const found = explainPiece(linked, 0, { of: 'length', mm: plainMm + 28, sdMm: 0.5, estimates: null });
    expect(found).toMatchObject({
      status: 'explained',
      explanations: expect.arrayContaining([
        expect.objectContaining({ counts: usual(necklace)[0], offMm: 0 }),
      ]),
    });
  });

  test('lengthens the range by itself', () => {
    const [closed, open] = [range(necklace, rules), range(chained, rules)];
    if (closed.status !== 'known' || open.status !== 'known') throw new Error('both are sound');
    expect(open.limits.mostMm - closed.limits.mostMm).toBeCloseTo(50, 9);
    expect(open.limits.leastMm).toBe(closed.limits.leastMm);
  });
});
