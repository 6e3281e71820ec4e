/** The device's clock, time zone and source of randomness. */
import type { Clock } from '../model/ports.ts';

export const browserClock: Clock = {
  nowMs: () => Date.now(),
  after(ms, call) {
    const timer = setTimeout(call, ms);
    return () => clearTimeout(timer);
  },
};

/** A whole number from 0 to 255 from the browser's own source of randomness, which nobody can guess. */
export function randomByte(): number {
  return crypto.getRandomValues(new Uint8Array(1))[0] ?? 0;
}
