/** Wire gauges, by which makers buy the wire of rings and findings. */

/** American Wire Gauge by the formula of ASTM B258: 0.005 in × 92^((36 − n)/39), mm. */
function awgMm(gauge: number): number {
  return 0.127 * 92 ** ((36 - gauge) / 39);
}

/** Ten-thousandths of an inch of the British gauge, 10 to 30: BS 3737:1964, exact. */
const SWG_TENTHS_OF_MIL: readonly number[] = [
  1280, 1160, 1040, 920, 800, 720, 640, 560, 480, 400, 360, 320, 280, 240, 220, 200, 180, 164, 148, 136, 124,
];
const FIRST_GAUGE = 10;
const LAST_GAUGE = { awg: 36, swg: 30 } as const;

export type GaugeSystem = 'awg' | 'swg';

/**
 * Diameter of a wire gauge in mm; null for a gauge outside 10 to 36 (AWG)
 * or 10 to 30 (SWG), or not whole.
 */
export function gaugeMm(system: GaugeSystem, gauge: number): number | null {
  if (!Number.isInteger(gauge) || gauge < FIRST_GAUGE || gauge > LAST_GAUGE[system]) return null;
  if (system === 'awg') return awgMm(gauge);
  return ((SWG_TENTHS_OF_MIL[gauge - FIRST_GAUGE] ?? 0) * 254) / 100_000;
}
