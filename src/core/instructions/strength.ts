/** Whether the wire holds: what pulls, what it bears, and how sure either is. */
import type { Wire } from '../design/component.ts';
import type { Rules } from '../design/rules.ts';

/** What the figure leaves out; told with the figure, always. */
export type StrengthCaveat = 'no-crimp-loss' | 'bare-metal-estimate' | 'coating-assumed' | 'strands-assumed';

export type WireBreak = {
  readonly breakN: number;
  readonly basis: 'rated' | 'estimated';
  readonly caveats: readonly StrengthCaveat[];
};

export type Strength = WireBreak & {
  /** Static pull on one end of the strand that bears most. */
  readonly pullN: number;
  /** Allowance of the shop's rules for a snag. */
  readonly snagN: number;
  /** `breakN / (pullN + snagN)`. */
  readonly factor: number;
  readonly wantedFactor: number;
  readonly enough: boolean;
};

/**
 * Breaking force factor K, F = K d² R, of strands of wires by their number.
 * 49: 6x7-WSC of EN 12385-4 (0.388; metallic area 0.432 d²). The others: the
 * geometric fill of round wires in their circle, times π/4, times the same
 * loss by spinning (0.388 / 0.432).
 */
const SPINNING = 0.388 / 0.432;
const BREAK_FACTOR: Readonly<Record<number, number>> = {
  7: (7 / 3 ** 2) * (Math.PI / 4) * SPINNING,
  19: (19 / 5 ** 2) * (Math.PI / 4) * SPINNING,
  21: (21 / (3 * (1 + 2 / Math.sqrt(3))) ** 2) * (Math.PI / 4) * SPINNING,
  49: 0.388,
};

/** Grade of common stainless rope wire, MPa (EN 12385-4 grade 1960). Drawn fine wire is stronger, so this is cautious. */
const GRADE_MPA = 1960;

/** What a coating adds to the diameter: 0.48 mm outside over 0.45 mm of metal (from memory; makers seldom state it). */
const COATING_MM = 0.03;

/**
 * What a wire bears before it breaks, as rated, or estimated from its metal.
 * An estimate is of bare new wire; no published figure was found for coated
 * strand of 0.25 to 0.6 mm. Neither knows what a crimp takes away.
 */
export function wireBreak(wire: Wire): WireBreak {
  if (wire.breakN !== null) return { breakN: wire.breakN, basis: 'rated', caveats: ['no-crimp-loss'] };
  const known = BREAK_FACTOR[wire.strands];
  const metalMm = Math.max(0, wire.diameterMm - COATING_MM);
  const caveats: StrengthCaveat[] = ['no-crimp-loss', 'bare-metal-estimate', 'coating-assumed'];
  if (known === undefined) caveats.push('strands-assumed');
  // Of the known makes the weakest: a guess may not flatter.
  const factor = known ?? Math.min(...Object.values(BREAK_FACTOR));
  return { breakN: factor * metalMm ** 2 * GRADE_MPA, basis: 'estimated', caveats };
}

/**
 * Weigh the pull against the break.
 * @param pullN static pull at one end, newtons.
 */
export function strengthOf(wire: Wire, rules: Rules, pullN: number): Strength {
  const { snagN, safetyFactor } = rules.wire;
  const found = wireBreak(wire);
  const load = pullN + snagN;
  // No load at all: as safe as can be said without dividing by nothing.
  const factor = load > 0 ? found.breakN / load : Number.MAX_VALUE;
  return { ...found, pullN, snagN, factor, wantedFactor: safetyFactor, enough: factor >= safetyFactor };
}

export type Flexibility = 'stiff' | 'supple' | 'softest';

/** How a wire drapes: for one diameter, the more and finer its wires the softer (common practice, no source). */
export function flexibility(wire: Wire): Flexibility {
  if (wire.strands >= 49) return 'softest';
  return wire.strands >= 19 ? 'supple' : 'stiff';
}
