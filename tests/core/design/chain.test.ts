/** Whole links of an extender chain, and what a design may say of them. */
import { describe, expect, test } from 'vitest';
import { linkAt, linksToFit, wholeLinks, withoutLinks } from '#core/design/chain.ts';
import type { Ends } from '#core/design/design.ts';
import { chainParts, closingParts } from '#core/design/loopParts.ts';
import { validateDesign } from '#core/design/validate/validateDesign.ts';
import { withEnds } from '#core/design/swap.ts';
import { focalBracelet } from '../designs.ts';

const linked = withEnds(focalBracelet, { extenderMm: 48, linkMm: 4 });

describe('links', () => {
  test('a length holds the whole ones, a hundredth of a millimetre given in', () => {
    expect([3.9, 3.991, 4, 50, 51.995].map((mm) => wholeLinks(mm, 4))).toEqual([0, 1, 1, 12, 13]);
    // 17 links of 2.8 mm are 47.599999999999994 mm in binary.
    expect(wholeLinks(17 * 2.8, 2.8)).toBe(17);
  });

  test('are counted from the piece, and not where nobody knows how long one is', () => {
    expect([0, 4, 28, 48].map((mm) => linkAt(linked.ends, mm))).toEqual([0, 1, 7, 12]);
    expect(linkAt(withoutLinks(linked).ends, 28)).toBeNull();
  });

  test('a fit counts on them where one strand closes by them', () => {
    const [one] = linked.strands;
    expect(linksToFit(linked)).toBe(12);
    expect(linksToFit(withoutLinks(linked))).toBe(0);
    expect(linksToFit(focalBracelet)).toBe(0);
    expect(linksToFit({ ...linked, strands: [one!, { ...one!, id: 'other' }] })).toBe(0);
  });
});

test('a chain let out is whole links, which hang from the ring', () => {
  expect(chainParts(linked, 0)).toEqual([]);
  expect(chainParts(linked, 28)).toEqual(
    Array.from({ length: 7 }, () => ({ alongMm: 4, acrossMm: 2, roundingMm: 1 })),
  );
  const { ring, clasp } = linked.ends;
  const alongMm = (id: string | null): number => linked.components[id!]!.alongMm;
  const loopMm = linked.ends.loopMm;
  expect(closingParts(linked, 8).map((part) => part.alongMm)).toEqual([
    ...[loopMm, alongMm(ring), 4, 4, alongMm(clasp), loopMm],
  ]);
});

describe('what a design may say of them', () => {
  const said = (ends: Partial<Ends>) => validateDesign(withEnds(focalBracelet, ends));

  test('a whole number of links, or nothing', () => {
    expect(said({ extenderMm: 48, linkMm: 4 })).toEqual([]);
    expect(said({ extenderMm: 17 * 2.8, linkMm: 2.8 })).toEqual([]);
    expect(said({ extenderMm: 4, linkMm: 4 })).toEqual([]);
    expect(said({ extenderMm: 50 })).toEqual([]);
  });

  test('no chain shorter than a link, cut through a link, or of links without a chain', () => {
    expect(said({ extenderMm: 3, linkMm: 4 })).toEqual([
      { code: 'chain-too-short', at: 'ends.extenderMm', chainMm: 3, linkMm: 4 },
    ]);
    expect(said({ extenderMm: 50, linkMm: 4 })).toEqual([
      { code: 'chain-not-whole', at: 'ends.extenderMm', chainMm: 50, linkMm: 4, links: 12 },
    ]);
    expect(said({ extenderMm: 0, linkMm: 4 })).toEqual([
      { code: 'link-without-chain', at: 'ends.linkMm', linkMm: 4 },
    ]);
    expect(said({ extenderMm: 4, linkMm: 0.9 })).toMatchObject([{ code: 'out-of-range', at: 'ends.linkMm' }]);
  });
});
