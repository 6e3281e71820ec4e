/** A piece with another clasp, ring or pendant than it is listed with. */
import { near } from '#catalogue/read/near.ts';
import { validateDesign } from '#core/design/validate/validateDesign.ts';
import type { Component } from '#core/design/component.ts';
import type { ValidationError } from '#core/design/validationError.ts';
import type { Design } from '#core/design/design.ts';
import { withHanging, withParts } from '#core/design/swap.ts';

export const SWAPPED = ['clasp', 'ring', 'pendant'] as const;
type Part = (typeof SWAPPED)[number];

/** Component ids, null where the part stays; `NO_PENDANT` takes the pendant off. */
export type SwapRequest = Readonly<Record<Part, string | null>>;

/** Takes the pendant off, unless a component of the shop is called so. */
const NO_PENDANT = 'none';

/** What changed; null where there was or is no such part. */
export type Swap = { readonly part: Part; readonly from: string | null; readonly to: string | null };

export type SwapProblem =
  | {
      readonly code: 'no-such-part';
      readonly part: Part;
      readonly written: string;
      readonly near: string;
      readonly known: readonly string[];
    }
  | {
      readonly code: 'wrong-part';
      readonly part: Part;
      readonly written: string;
      readonly known: readonly string[];
    }
  | { readonly code: 'clasp-needs-ring'; readonly clasp: string; readonly known: readonly string[] }
  | { readonly code: 'design'; readonly problems: readonly ValidationError[] };

type Stock = Readonly<Record<string, Component>>;

const idsOf = (stock: Stock, part: Part): string[] =>
  Object.values(stock)
    .filter(({ kind }) => kind === part)
    .map(({ id }) => id)
    .sort();

/** The component asked for, or why it can't be had. null where none is. */
function requested(stock: Stock, part: Part, written: string | null): Component | SwapProblem | null {
  if (written === null) return null;
  const found = Object.hasOwn(stock, written) ? stock[written] : undefined;
  const known = idsOf(stock, part);
  if (found === undefined) return { code: 'no-such-part', part, written, near: near(written, known), known };
  return found.kind === part ? found : { code: 'wrong-part', part, written, known };
}

const isProblem = (one: Component | SwapProblem | null): one is SwapProblem => one !== null && 'code' in one;

function swapsOf(listed: Design, design: Design): Swap[] {
  const parts = ({ ends, hanging }: Design) => ({
    clasp: ends.clasp,
    ring: ends.ring,
    pendant: hanging?.pendant ?? null,
  });
  const [before, after] = [parts(listed), parts(design)];
  return SWAPPED.flatMap((part) => {
    const [from, to] = [before[part], after[part]];
    return from === to ? [] : [{ part, from, to }];
  });
}

/**
 * The design with the parts swapped.
 * @param stock every component there is to choose from, by id.
 */
export function swapped(
  listed: Design,
  swap: SwapRequest,
  stock: Stock,
): { readonly design: Design; readonly swaps: readonly Swap[] } | { readonly problem: SwapProblem } {
  const bare = swap.pendant === NO_PENDANT && !Object.hasOwn(stock, NO_PENDANT);
  const clasp = requested(stock, 'clasp', swap.clasp);
  const ring = requested(stock, 'ring', swap.ring);
  const pendant = requested(stock, 'pendant', bare ? null : swap.pendant);
  if (isProblem(clasp)) return { problem: clasp };
  if (isProblem(ring)) return { problem: ring };
  if (isProblem(pendant)) return { problem: pendant };
  const parts = withParts(listed, { clasp, ring, pendant });
  if (parts === null) {
    return { problem: { code: 'clasp-needs-ring', clasp: clasp?.id ?? '', known: idsOf(stock, 'ring') } };
  }
  const design = bare ? withHanging(parts, null) : parts;
  const problems = validateDesign(design);
  if (problems.length > 0) return { problem: { code: 'design', problems } };
  return { design, swaps: swapsOf(listed, design) };
}
