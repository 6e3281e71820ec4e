/** Orders sent at the desk: as fast as clients can, or at a steady rate. */
import { join } from 'node:path';
import { closeSync, fsyncSync, openSync, rmSync, writeSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';

export type Send = () => Promise<void>;

export type Latencies = { readonly medianMs: number; readonly p95Ms: number; readonly p99Ms: number };

export type Load = Latencies & {
  /** Receipts a second. */
  readonly perSecond: number;
};

function latencies(timesMs: readonly number[]): Latencies {
  const times = timesMs.toSorted((a, b) => a - b);
  const at = (share: number): number =>
    times[Math.min(times.length - 1, Math.floor(times.length * share))] ?? 0;
  return { medianMs: at(0.5), p95Ms: at(0.95), p99Ms: at(0.99) };
}

/** `clients` send one after another for `seconds`. */
export async function fullLoad(send: Send, clients: number, seconds: number): Promise<Load> {
  const started = performance.now();
  const end = started + seconds * 1000;
  const timesMs: number[] = [];
  const client = async (): Promise<void> => {
    for (let at = performance.now(); at < end; at = performance.now()) {
      await send();
      timesMs.push(performance.now() - at);
    }
  };
  await Promise.all(Array.from({ length: clients }, client));
  return { perSecond: (timesMs.length * 1000) / (performance.now() - started), ...latencies(timesMs) };
}

/** Sends at `perSecond`, whether answers come or not, for `seconds`. @returns how long answers took */
export async function steadyLoad(send: Send, perSecond: number, seconds: number): Promise<Latencies> {
  const started = performance.now();
  const pending: Promise<number>[] = [];
  for (let at = 0; at < perSecond * seconds; at += 1) {
    const due = started + (at * 1000) / perSecond;
    const early = due - performance.now();
    if (early > 0) await pause(early);
    // Counted from when it was due: waiting behind others is the buyer's waiting too.
    pending.push(send().then(() => performance.now() - due));
  }
  return latencies(await Promise.all(pending));
}

/** A page of the book, as one commit writes it. */
const PAGE_BYTES = 4096;

/** Writes and syncs for `seconds` in `folder`. @returns syncs a second */
export function syncsPerSecond(folder: string, seconds: number): number {
  const file = join(folder, 'syncs');
  const descriptor = openSync(file, 'w');
  const page = Buffer.alloc(PAGE_BYTES, 7);
  const started = process.hrtime.bigint();
  let syncs = 0;
  while (process.hrtime.bigint() - started < BigInt(seconds * 1e9)) {
    writeSync(descriptor, page);
    fsyncSync(descriptor);
    syncs += 1;
  }
  closeSync(descriptor);
  rmSync(file);
  return (syncs * 1e9) / Number(process.hrtime.bigint() - started);
}
