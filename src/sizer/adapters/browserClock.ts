/** The browser's clock and timers. */
import type { Clock } from '../model/ports.ts';

export const browserClock: Clock = {
  nowMs: () => Date.now(),
  after(ms, call) {
    const timer = setTimeout(call, ms);
    return () => clearTimeout(timer);
  },
};
