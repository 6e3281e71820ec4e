/**
 * Fits a strand by trying every choice of counts, with its own reading of the
 * order of preference. Slow, and nothing in it to go wrong but the reading.
 */
import { solveLoop } from '#core/geometry/loop.ts';
import type { Design } from '#core/design/design.ts';
import { expand } from '#core/design/expand.ts';
import { loopParts } from '#core/design/loopParts.ts';

export type Tried = {
  readonly counts: readonly number[];
  /** The link of its chain it is closed in, by itself in the list; none where links aren't known. */
  readonly link: readonly number[];
  /** With the extender closed and let out, mm. */
  readonly leastMm: number;
  readonly mostMm: number;
  readonly cost: number;
  readonly parts: number;
};

const hundredths = (mm: number): number => Math.round(Number((mm * 100).toFixed(4)));

function everyChoice(design: Design, strand: number): number[][] {
  let choices: number[][] = [[]];
  for (const { role, usual, fewest, most } of design.strands[strand]!.sections) {
    const [from, to] = role === 'focal' ? [usual, usual] : [fewest, most];
    choices = choices.flatMap((counts) =>
      Array.from({ length: to - from + 1 }, (_, step) => [...counts, from + step]),
    );
  }
  return choices;
}

function costOf(design: Design, strand: number, counts: readonly number[]): number {
  const { sections, mirrored } = design.strands[strand]!;
  const places = sections.length;
  return counts.reduce((sum, count, index) => {
    const fromEnd = mirrored ? places - index : Math.min(index, places - 1 - index) + 1;
    const { cost, usual } = sections[index]!;
    return sum + (cost ?? fromEnd) * Math.abs(count - usual);
  }, 0);
}

/** Every choice that the stock allows, measured. One strand only. */
export function tryAll(design: Design, of: 'length' | 'girth', pieces = 1): Tried[] {
  return everyChoice(design, 0).flatMap((counts): Tried[] => {
    const sequence = expand(design, [counts])[0]!;
    const used = new Map<string, number>();
    const { clasp, ring } = design.ends;
    const findings = [clasp, ...(ring === null ? [] : [ring])];
    for (const id of [...sequence.map((placed) => placed.component.id), ...findings]) {
      used.set(id, (used.get(id) ?? 0) + 1);
    }
    const short = [...used].some(([id, count]) => {
      const { stock } = design.components[id]!;
      return stock !== null && count * pieces > stock;
    });
    if (short) return [];
    const measure = (chainMm: number): number => {
      const parts = loopParts(design, sequence, chainMm);
      return of === 'girth'
        ? solveLoop(parts).insideGirthMm
        : parts.reduce((sum, part) => sum + part.alongMm, 0);
    };
    const { extenderMm, linkMm } = design.ends;
    const made = (link: readonly number[], leastMm: number, mostMm: number): Tried => {
      return { counts, link, leastMm, mostMm, cost: costOf(design, 0, counts), parts: sequence.length };
    };
    if (linkMm === undefined) return [made([], measure(0), measure(extenderMm))];
    return Array.from({ length: Math.round(extenderMm / linkMm) + 1 }, (_, link) => {
      const mm = measure(link * linkMm);
      return made([link], mm, mm);
    });
  });
}

const offMm = (tried: Tried, targetMm: number): number =>
  tried.leastMm > targetMm ? tried.leastMm - targetMm : tried.mostMm < targetMm ? targetMm - tried.mostMm : 0;

/** The best of them for a target, by the order of preference. */
export function bestOf(
  design: Design,
  all: readonly Tried[],
  targetMm: number,
  toleranceMm: number,
): Tried | undefined {
  const usual = design.strands[0]!.sections.map((section) => section.usual);
  const key = (tried: Tried): number[] => {
    const error = hundredths(offMm(tried, targetMm));
    const bySection = tried.counts.flatMap((count, index) => [Math.abs(count - usual[index]!), count]);
    const excess = Math.max(0, error - hundredths(toleranceMm));
    return [excess, tried.cost, error, tried.parts, ...bySection, ...tried.link];
  };
  return [...all]
    .map((tried) => ({ tried, key: key(tried) }))
    .reduce<{ tried: Tried; key: number[] } | undefined>((best, here) => {
      if (best === undefined) return here;
      const at = here.key.findIndex((value, index) => value !== best.key[index]);
      return at >= 0 && here.key[at]! < best.key[at]! ? here : best;
    }, undefined)?.tried;
}

/** Nearest on one side, error first. */
export function nearestOf(
  design: Design,
  all: readonly Tried[],
  targetMm: number,
  side: 'below' | 'above',
): Tried | undefined {
  const there = all.filter((tried) =>
    side === 'below' ? tried.mostMm <= targetMm + 1e-6 : tried.leastMm >= targetMm - 1e-6,
  );
  const least = Math.min(...there.map((tried) => hundredths(offMm(tried, targetMm))));
  return bestOf(
    design,
    there.filter((tried) => hundredths(offMm(tried, targetMm)) === least),
    targetMm,
    0,
  );
}
