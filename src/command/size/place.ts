/** From a place on the body to the finished length that reaches it, and from a length to where it lies. */
import { NINETY_PERCENT } from '#core/body/assumptions.ts';
import { figureOf } from '#core/body/figure.ts';
import type { Figure, FigureProblem } from '#core/body/figure.ts';
import { lieOf } from '#core/body/lie.ts';
import type { Band, Lie } from '#core/body/lie.ts';
import { loadOf } from '#core/body/load.ts';
import type { Estimate } from '#core/body/neckBase.ts';
import { lengthForDrop } from '#core/body/place.ts';
import type { Aim } from '#core/body/place.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import { usual } from '#core/sizing/usual.ts';
import type { Design, PieceKind } from '#core/design/design.ts';
import { expand } from '#core/design/expand.ts';
import type { Options, Place } from './options.ts';

export type PlaceProblem =
  | { readonly code: 'place-not-for'; readonly kind: PieceKind }
  | { readonly code: 'place-not-known'; readonly place: string }
  | { readonly code: 'place-out-of-reach'; readonly dropMm: number }
  | { readonly code: 'figure'; readonly problem: FigureProblem };

export type Reached =
  | {
      readonly ok: true;
      readonly lengthMm: number;
      readonly dropMm: number;
      /** Where the landmark lies for nine people in ten; null for a drop in figures. */
      readonly band: Band | null;
      readonly aim: Aim;
    }
  | { readonly ok: false; readonly problem: PlaceProblem };

type Wearer = Options['wearer'];

/** The body of whoever wears it, as far as the command line says. */
export function figureFor({ sex, neck, height, ageYears }: Wearer) {
  const neckGirthMm = neck?.mm ?? null;
  return figureOf(
    ageYears === null ? { sex, neckGirthMm, heightMm: height?.mm ?? null } : { ageYears, neckGirthMm },
  );
}

/** Below the pit of the neck, upright; null where no survey says. */
function placeOn(place: Place, figure: Figure): Estimate | null {
  if (typeof place === 'object') return { mm: place.mm, sdMm: 0 };
  return place === 'pit' ? { mm: 0, sdMm: 0 } : figure[place];
}

function bandOf({ mm, sdMm }: Estimate): Band | null {
  if (sdMm === 0) return null;
  return { leastMm: mm - NINETY_PERCENT * sdMm, mostMm: mm + NINETY_PERCENT * sdMm };
}

/** The length that puts the design's lowest bead, or its pendant's middle, at a place. */
export function reach(design: Design, place: Place, aim: Aim | null, wearer: Wearer): Reached {
  if (design.kind !== 'necklace') return { ok: false, problem: { code: 'place-not-for', kind: design.kind } };
  const found = figureFor(wearer);
  if (!found.ok) return { ok: false, problem: { code: 'figure', problem: found.problem } };
  const at = placeOn(place, found.figure);
  if (at === null) return { ok: false, problem: { code: 'place-not-known', place: String(place) } };
  const aimed = aim ?? (design.hanging === null ? 'strand' : 'pendant');
  const load = loadOf(design, expand(design, usual(design))[0] ?? [], 0);
  const dropMm = at.mm;
  const lengthMm = lengthForDrop(load, found.figure, dropMm, aimed);
  if (lengthMm === null) return { ok: false, problem: { code: 'place-out-of-reach', dropMm } };
  return { ok: true, lengthMm, dropMm, band: bandOf(at), aim: aimed };
}

/** Where each strand of a necklace lies; null for anything else, or where the body is no body. */
export function liesOf(design: Design, candidate: Candidate, wearer: Wearer): Lie[] | null {
  if (design.kind !== 'necklace') return null;
  const found = figureFor(wearer);
  if (!found.ok) return null;
  return candidate.sequences.map((sequence, index) => lieOf(loadOf(design, sequence, index), found.figure));
}
