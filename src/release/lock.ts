/** One publishing at a time, whichever process asks. */
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const LOCK_FILE = 'publishing';

/** True while a process of that number runs. */
export function runs(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

/** Number of the process that publishes; null where none does: what a killed one left behind doesn't count. */
export function publisher(folder: string): number | null {
  try {
    const pid = Number(readFileSync(join(folder, LOCK_FILE), 'utf8'));
    return Number.isInteger(pid) && pid > 0 && runs(pid) ? pid : null;
  } catch {
    return null;
  }
}

/** Takes the lock; null where another process has it. */
export function takeLock(folder: string): { readonly release: () => void } | null {
  mkdirSync(folder, { recursive: true });
  const file = join(folder, LOCK_FILE);
  if (publisher(folder) === null) rmSync(file, { force: true });
  try {
    writeFileSync(file, String(process.pid), { flag: 'wx' });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return null;
    throw error;
  }
  return { release: () => rmSync(file, { force: true }) };
}

/** Lets go of the lock where its process is told to end, and ends it. */
export function releaseWhenEnded(lock: { readonly release: () => void }): void {
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
    process.once(signal, () => {
      lock.release();
      process.exit(1);
    });
  }
}
