/** Times work by the processor's own clock, so that a busy machine disturbs it less. */

export type Timing = { readonly medianMs: number; readonly p95Ms: number };

/** Rounds before counting, so that the compiler has seen the code. */
const WARM_ROUNDS = 3;

function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/**
 * Median and 95th percentile of one call, ms of processor time.
 * @param calls every call of one round; each is timed over `repeat` runs of itself.
 */
export function time(calls: readonly (() => unknown)[], repeat = 5): Timing {
  for (let round = 0; round < WARM_ROUNDS; round += 1) for (const call of calls) call();
  const times = calls
    .map((call) => {
      const start = processorMs();
      for (let run = 0; run < repeat; run += 1) call();
      return (processorMs() - start) / repeat;
    })
    .sort((one, other) => one - other);
  const at = (share: number): number =>
    times[Math.min(times.length - 1, Math.floor(share * times.length))] ?? NaN;
  return { medianMs: at(0.5), p95Ms: at(0.95) };
}

/** Exponent of growth between two sizes: 1 where twice the size takes twice the time. */
export function exponent(sizeOne: number, msOne: number, sizeTwo: number, msTwo: number): number {
  return Math.log(msTwo / msOne) / Math.log(sizeTwo / sizeOne);
}
