import type { Ask } from './reading.ts';

/** True where nothing is asked for but what lies there. @param status of that, as the index has it */
export const asksReady = (asks: readonly Ask[], status: string): boolean =>
  asks.some(
    (ask) =>
      ask.by === 'pairs' &&
      ask.group === 'status' &&
      !ask.not &&
      ask.any.every(([, value]) => value === status),
  );
