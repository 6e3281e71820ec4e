/** Whether the beads reach for as many pieces as are ordered. */
import { sizeChecked } from '#core/sizing/sizeChecked.ts';
import type { OrderItem } from './item.ts';

/** Sizes the same choice for that many: scarce beads may make it another piece, or none. */
export function enoughFor({ piece, choice, candidate }: OrderItem, quantity: number): boolean {
  if (quantity === 1) return true;
  const { design, rules, listedMinor, listed } = piece;
  const sizing = sizeChecked(design, rules, listedMinor, { ...choice, quantity }, listed);
  if (sizing.status !== 'fits' && sizing.status !== 'near') return false;
  return JSON.stringify(sizing.chosen.counts) === JSON.stringify(candidate.counts);
}
