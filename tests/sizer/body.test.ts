/** The body chart's model. */
import { describe, expect, test } from 'vitest';
import { figureOf } from '#core/body/figure.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import type { WornStrand } from '#draw/drawings/body.ts';
import { collarNeckMm, layOn, leastRound, lengthAt, nearestTo, nextLength } from '#sizer/body/model/lay.ts';
import { lengthName } from '#sizer/body/model/lengthName.ts';
import { bodyOf, UNKNOWN_WEARER, type WearerForm } from '#sizer/body/model/wearerForm.ts';
import { listedOf } from '#sizer/model/answer.ts';
import { design, pendantNecklace, section, strand, unequalNecklace } from '#tests/support/workshop.ts';
import { pieceOf } from './support.ts';

const typical = bodyOf(UNKNOWN_WEARER, 'in');
if (!typical.ok) throw new Error('expected a body');
const { figure } = typical;

const body = (more: Partial<WearerForm>, unit: ShownUnit = 'in') =>
  bodyOf({ ...UNKNOWN_WEARER, ...more }, unit);

describe('wearer', () => {
  test('neck and height are read as people write them', () => {
    const read = body({ who: 'female', neck: '13 in', height: '165 cm' });
    expect(read.ok && read.figure.neckGirth.mm).toBeCloseTo(330.2, 9);
    expect(read.ok && read.sex).toBe('female');
    expect(read.ok && read.figure.assumptions).toEqual([]);
  });

  test('what is not known is taken for the average, and said so', () => {
    expect(figure.assumptions).toEqual(expect.arrayContaining(['mean-neck', 'mean-height', 'pooled']));
  });

  test.each([
    [{ neck: 'wide' }, 'neck', 'length'],
    [{ neck: '3 in' }, 'neck', 'figure'],
    [{ height: '12 m' }, 'height', 'length'],
    [{ height: '30 cm' }, 'height', 'figure'],
    [{ who: 'child' }, 'age', 'age'],
    [{ who: 'child', age: 'eight' }, 'age', 'age'],
    [{ who: 'child', age: '40' }, 'age', 'figure'],
  ] as const)('%o is wrong in %s', (form, field, of) => {
    expect(body(form)).toMatchObject({ ok: false, problem: { field, of } });
  });

  test('there is no size for a baby, not even a typical one', () => {
    for (const age of ['0', '1', '1,9', '1.99']) {
      expect(body({ who: 'child', age })).toMatchObject({
        ok: false,
        problem: { field: 'age', problem: { code: 'under-two' } },
      });
    }
    const two = body({ who: 'child', age: '2' });
    expect(two.ok && two.figure.child).toBe(true);
  });
});

describe('places and lengths', () => {
  const piece = pieceOf(pendantNecklace);

  test('the length for the place where it hangs is the length that it has', () => {
    for (const wanted of [420, 444.5, 500]) {
      const candidate = nearestTo(piece, wanted);
      if (candidate === null) throw new Error('expected a piece');
      const laid = layOn(piece, candidate, figure);
      if (laid.lowestMm === null) throw new Error('expected it to hang');
      // The load changes a little with the count; a tenth of a millimetre is far below a bead.
      expect(lengthAt(piece, candidate, figure, laid.lowestMm)).toBeCloseTo(candidate.finishedLengthMm, 1);
    }
  });

  test('the pendant’s middle is what is aimed at, where there is one', () => {
    const laid = layOn(piece, listedOf(piece), figure);
    expect(laid.first.status !== 'too-short' && laid.lowestMm === laid.first.pendantDropMm).toBe(true);
    const plain = pieceOf(unequalNecklace);
    const bare = layOn(plain, listedOf(plain), figure);
    expect(bare.first.status !== 'too-short' && bare.lowestMm === bare.first.dropMm).toBe(true);
  });

  test('a step down is another, longer piece; a step up another, shorter one; each step lands where it says', () => {
    const from = nearestTo(piece, 450);
    if (from === null) throw new Error('expected a piece');
    for (const way of [1, -1] as const) {
      const lengthMm = nextLength(piece, from, 450, way, 1);
      if (lengthMm === null) throw new Error('expected a next length');
      const next = nearestTo(piece, lengthMm);
      expect(Math.sign((next?.fittedMm ?? 0) - from.fittedMm)).toBe(way);
    }
  });

  test('at its end there is no next piece', () => {
    const longest = nearestTo(piece, 3000);
    if (longest === null) throw new Error('expected a piece');
    expect(nextLength(piece, longest, longest.fittedMm, 1, 1)).toBeNull();
  });

  test('a strand too short for the neck is not drawn', () => {
    const short = pieceOf(
      design({ kind: 'necklace', strands: [strand([section('run', [['ball-8', 1]], { usual: 10 })])] }),
    );
    const laid = layOn(short, listedOf(short), figure);
    expect(laid).toMatchObject({ lowestMm: null, first: { status: 'too-short' } });
    expect<readonly WornStrand[]>(laid.strands).toEqual([]);
  });

  test('a collar too short for a typical neck is laid on the neck that it closes round', () => {
    const collar = pieceOf(
      design({ kind: 'collar', strands: [strand([section('run', [['ball-8', 1]], { usual: 20 })])] }),
    );
    const listed = listedOf(collar);
    expect(layOn(collar, listed, figure).first.status).toBe('too-short');
    const neckGirthMm = collarNeckMm(collar, listed);
    const own = figureOf({ sex: 'unstated', neckGirthMm, heightMm: null });
    expect(neckGirthMm).toBeLessThan(figure.neckGirth.mm);
    expect(own.ok && layOn(collar, listed, own.figure).lowestMm).not.toBeNull();
    expect(collarNeckMm(piece, listedOf(piece))).toBeNull();
  });

  test('a collar that no neck is like says nothing of one', () => {
    const tiny = pieceOf(
      design({ kind: 'collar', strands: [strand([section('run', [['ball-8', 1]], { usual: 8 })])] }),
    );
    expect(collarNeckMm(tiny, listedOf(tiny))).toBeNull();
  });

  test('the shortest that the chart goes to still closes round the neck', () => {
    const least = leastRound(piece, listedOf(piece), figure);
    const candidate = nearestTo(piece, least);
    if (candidate === null) throw new Error('expected a piece');
    expect(layOn(piece, candidate, figure).lowestMm).not.toBeNull();
    expect(least).toBeGreaterThan(figure.neckGirth.mm);
  });

  test('a bracelet is not sized by length', () => {
    expect(nearestTo(pieceOf(design()), 450)).toBeNull();
  });
});

// Names of lengths by whole inches: common practice, no source; not every length has one.
test.each([
  [13, 'collar'],
  [15.4, 'choker'],
  [18, 'princess'],
  [22, 'matinee'],
  [26, null],
  [30, 'opera'],
  [60, 'rope'],
  [9, null],
])('%d in is called %s', (inches, name) => {
  expect(lengthName(inches * 25.4)).toBe(name);
});
