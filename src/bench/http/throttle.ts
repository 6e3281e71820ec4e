/** Tokens by address, in memory: so many at once, and so many a minute after that. */

export type Throttle = {
  /** Takes one. @returns 0, or the seconds until there is another. */
  readonly take: (address: string, nowMs: number) => number;
};

/** Addresses that are remembered; beyond it the longest unseen are forgotten. */
const MOST_ADDRESSES = 10_000;
const MINUTE_MS = 60_000;

type Bucket = { tokens: number; atMs: number };

/**
 * @param perMinute tokens a minute for one address, and as many at once; 0: no limit
 */
export function throttle(perMinute: number): Throttle {
  const buckets = new Map<string, Bucket>();
  return {
    take: (address, nowMs) => {
      if (perMinute === 0) return 0;
      const bucket = buckets.get(address) ?? { tokens: perMinute, atMs: nowMs };
      const grown = (Math.max(0, nowMs - bucket.atMs) / MINUTE_MS) * perMinute;
      bucket.tokens = Math.min(perMinute, bucket.tokens + grown);
      bucket.atMs = nowMs;
      // Put at the end again: the map's order is that of last sight.
      buckets.delete(address);
      buckets.set(address, bucket);
      const [oldest] = buckets.keys();
      if (buckets.size > MOST_ADDRESSES && oldest !== undefined) buckets.delete(oldest);
      if (bucket.tokens >= 1) {
        bucket.tokens -= 1;
        return 0;
      }
      return Math.ceil(((1 - bucket.tokens) * MINUTE_MS) / perMinute / 1000);
    },
  };
}

/**
 * One limit for each sender, and one for all whom the same proxy hands on, so
 * that a proxy which passes on whatever address its visitors claim opens no
 * way round the first.
 * @param via address of the connection
 */
export function behindProxy(senders: Throttle, proxies: Throttle, via: string): Throttle {
  return {
    take: (address, nowMs) => {
      const seconds = senders.take(address, nowMs);
      return seconds > 0 || address === via ? seconds : proxies.take(via, nowMs);
    },
  };
}
