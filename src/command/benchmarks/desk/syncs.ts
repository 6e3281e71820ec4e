/** What the disk itself can do: appends made sure of, one after another. */
import { closeSync, fsyncSync, openSync, rmSync, writeSync } from 'node:fs';
import { join } from 'node:path';

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
