/** Strands on one clasp that hang one below the other. */
import { CHEST_SLOPE_RAD } from './assumptions.ts';
import type { Figure } from './figure.ts';
import { dropMm } from './lie.ts';
import type { Load } from './lie.ts';
import { lengthForDrop } from './place.ts';

export type NestStrand = {
  readonly load: Omit<Load, 'lengthMm'>;
  /** Across of the strand at its lowest point. */
  readonly lowestAcrossMm: number;
};

/**
 * Least finished lengths of nested strands, the innermost's given: each hangs
 * below the one inside it by half the sum of their diameters and the gap,
 * measured on the chest.
 * @returns one length a strand, null from where a strand can't be laid.
 */
export function nestLengths(
  strands: readonly NestStrand[],
  innermostMm: number,
  gapMm: number,
  figure: Figure,
): (number | null)[] {
  const onChest = Math.cos(CHEST_SLOPE_RAD);
  const lengths: (number | null)[] = [];
  let above: { readonly drop: number; readonly acrossMm: number } | null = null;
  for (const { load, lowestAcrossMm } of strands) {
    const lengthMm: number | null =
      lengths.length === 0
        ? innermostMm
        : above === null
          ? null
          : lengthForDrop(
              load,
              figure,
              above.drop + ((above.acrossMm + lowestAcrossMm) / 2 + gapMm) * onChest,
            );
    const drop: number | null =
      lengthMm === null ? null : dropMm({ ...load, lengthMm }, figure, figure.neckBase.mm);
    lengths.push(drop === null ? null : lengthMm);
    above = drop === null ? null : { drop, acrossMm: lowestAcrossMm };
  }
  return lengths;
}
