/** From what the maker wrote of buying a thing to what one unit of it holds. */
import type { z } from 'zod';
import type { Component } from '#core/design/component.ts';
import { massOf } from '#core/design/mass/mass.ts';
import type { Sold, Supply } from '../model/supply.ts';
import type { Entry } from '../read/entry.ts';
import type { Problem } from '../read/problem.ts';
import type { AuthoredComponent } from '../schemas/component.ts';
import type { soldSchema } from '../schemas/supply.ts';
import type { AuthoredWire } from '../schemas/wire.ts';

type AuthoredSold = z.output<typeof soldSchema>;

const MM_PER_M = 1000;

/** What a unit can be reckoned from, besides pieces. */
const FROM: Readonly<Partial<Record<AuthoredSold['by'], 'length' | 'weight'>>> = {
  strand: 'length',
  bag: 'weight',
};

/** Pieces in one unit; 0 where it says too little. An estimate rounds down: fewer came is worse than more. */
function holdsOf(sold: AuthoredSold, component: Component): Pick<Sold, 'holds' | 'estimated'> {
  const { by, pieces, length, weight } = sold;
  if (pieces !== undefined) return { holds: pieces, estimated: false };
  if (by === 'piece') return { holds: 1, estimated: false };
  if (by === 'strand' && length !== undefined && component.alongMm > 0) {
    return { holds: Math.floor(length / component.alongMm), estimated: true };
  }
  if (by === 'bag' && weight !== undefined) {
    return { holds: Math.floor(weight / massOf(component).massG), estimated: true };
  }
  return { holds: 0, estimated: true };
}

type Built = { readonly supply: Supply; readonly problems: readonly Problem[] };

/** @param component built of the same entry */
export function buildSupply(entry: Entry<AuthoredComponent>, component: Component): Built {
  const { keep = null, sold } = entry.value;
  if (sold === undefined) return { supply: { keep, sold: null }, problems: [] };
  const held = holdsOf(sold, component);
  if (held.holds < 1) {
    const error = { code: 'sold-unclear', by: sold.by, from: FROM[sold.by] ?? 'pieces' } as const;
    return { supply: { keep, sold: null }, problems: [entry.problemAt(['sold'], error)] };
  }
  const { by, price, supplier = null, number = null } = sold;
  return { supply: { keep, sold: { by, ...held, priceMinor: price.minor, supplier, number } }, problems: [] };
}

export function buildWireSupply({ value }: Entry<AuthoredWire>): Supply {
  const { keep, sold } = value;
  const keepMm = keep === undefined ? null : Math.round(keep * MM_PER_M);
  if (sold === undefined) return { keep: keepMm, sold: null };
  const { by, length, price, supplier = null, number = null } = sold;
  const holds = Math.round(length * MM_PER_M);
  return {
    keep: keepMm,
    sold: { by, holds, estimated: false, priceMinor: price.minor, supplier, number },
  };
}
