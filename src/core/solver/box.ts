/** A box of choices: for every section a fewest and a most. The search splits boxes until they are settled. */
import type { FitProblem } from './problem.ts';

export type Box = { readonly low: readonly number[]; readonly high: readonly number[] };

/** The whole of what the maker allows. */
export function wholeBox(problem: FitProblem): Box {
  return {
    low: problem.sections.map((section) => section.fewest),
    high: problem.sections.map((section) => section.most),
  };
}

/** Least cost of any choice in the box. */
export function leastCost(problem: FitProblem, box: Box): number {
  let sum = 0;
  problem.sections.forEach((section, index) => {
    const low = box.low[index] ?? 0;
    const high = box.high[index] ?? 0;
    const away = section.usual < low ? low - section.usual : section.usual > high ? section.usual - high : 0;
    sum += section.cost * away;
  });
  return sum;
}

/**
 * Shrinks a box to what a cost budget and the stock leave of it: no choice
 * that meets both is lost. Null where none is left.
 */
export function shrink(problem: FitProblem, box: Box, budget: number): Box | null {
  const spare = budget - leastCost(problem, box);
  if (spare < 0) return null;
  const low = [...box.low];
  const high = [...box.high];
  problem.sections.forEach((section, index) => {
    if (!(section.cost > 0)) return;
    const l = low[index] ?? 0;
    const h = high[index] ?? 0;
    const nearest = Math.min(Math.max(section.usual, l), h);
    const reach = Math.floor(spare / section.cost);
    // Away from the usual count every step costs; towards it none is ever in the box beyond `nearest`.
    low[index] = Math.max(l, nearest - reach);
    high[index] = Math.min(h, nearest + reach);
  });
  for (const [stock, { left }] of problem.stock.entries()) {
    let used = 0;
    problem.sections.forEach((section, index) => {
      used += (section.takes[stock] ?? 0) * (low[index] ?? 0);
    });
    if (used > left) return null;
    problem.sections.forEach((section, index) => {
      const takes = section.takes[stock] ?? 0;
      const l = low[index] ?? 0;
      if (takes > 0) high[index] = Math.min(high[index] ?? 0, l + Math.floor((left - used) / takes));
    });
  }
  // What the stock took away may leave only what is too dear.
  const shrunk = { low, high };
  return leastCost(problem, shrunk) > budget ? null : shrunk;
}

export function inStock(problem: FitProblem, counts: readonly number[]): boolean {
  return problem.stock.every(({ left }, stock) => {
    let used = 0;
    problem.sections.forEach((section, index) => {
      used += (section.takes[stock] ?? 0) * (counts[index] ?? 0);
    });
    return used <= left;
  });
}

/** A section of which the box holds both none and some, or -1. */
const mixing = ({ low, high }: Box): number =>
  low.findIndex((count, index) => count === 0 && high[index]! > 0);

/** True where some choices of the box have none of a section that others have some of. */
export const mixesZero = (box: Box): boolean => mixing(box) >= 0;

function widest(box: Box): number {
  let best = -1;
  let width = 0;
  box.low.forEach((low, index) => {
    const here = (box.high[index] ?? 0) - low;
    if (here > width) {
      width = here;
      best = index;
    }
  });
  return best;
}

function cut(box: Box, index: number, lastBelow: number): [Box, Box] {
  const replaced = (of: readonly number[], value: number): number[] =>
    of.map((old, at) => (at === index ? value : old));
  return [
    { low: box.low, high: replaced(box.high, lastBelow) },
    { low: replaced(box.low, lastBelow + 1), high: box.high },
  ];
}

/**
 * Two halves of a box, lower first; null where the box holds one choice only.
 * @param zeroApart whether none of a section is parted from some of it before all else.
 */
export function split(box: Box, zeroApart: boolean): readonly [Box, Box] | null {
  const first = zeroApart ? mixing(box) : -1;
  if (first >= 0) return cut(box, first, 0);
  const at = widest(box);
  if (at < 0) return null;
  return cut(box, at, Math.floor(((box.low[at] ?? 0) + (box.high[at] ?? 0)) / 2));
}

/** All of a box but its low or high corner, as boxes that share nothing. */
export function withoutCorner(box: Box, corner: 'low' | 'high'): Box[] {
  const rest: Box[] = [];
  const low = [...box.low];
  const high = [...box.high];
  for (let index = 0; index < low.length; index += 1) {
    const l = low[index] ?? 0;
    const h = high[index] ?? 0;
    if (l < h) {
      const [from, to] = corner === 'low' ? [l + 1, h] : [l, h - 1];
      rest.push({ low: low.with(index, from), high: high.with(index, to) });
    }
    // From here on this section stays at the corner.
    low[index] = corner === 'low' ? l : h;
    high[index] = corner === 'low' ? l : h;
  }
  return rest;
}
