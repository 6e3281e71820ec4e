/** A command of its own process, so that neither a closed window nor a long one holds up an order. */
import { spawn } from 'node:child_process';
import { setTimeout as pause } from 'node:timers/promises';
import { READ_FROM } from '#catalogue/released/place.ts';
import { publisher } from '#release/lock.ts';

/** How long a request waits for the process to begin, ms; the page shows later by itself that it has. */
const BEGIN_MS = 60_000;

export type Command = {
  /** From the project's folder, in which the server runs. */
  readonly file: string;
  readonly options: readonly string[];
  /** Whose lock it takes. */
  readonly folder: string;
  /** Whether it says how far it is. */
  readonly tells: () => boolean;
};

/**
 * Begins a command; one that runs already goes on alone. Settles once the new
 * one says how far it is, or has ended: a page shown before that would tell of
 * the last one, and never look again.
 */
export async function begin({ file, options, folder, tells }: Command): Promise<void> {
  if (publisher(folder) !== null) return;
  const { [READ_FROM]: _served, ...env } = process.env;
  const child = spawn(process.execPath, [file, ...options], { env, stdio: 'ignore' });
  let ended = false;
  for (const event of ['exit', 'error']) child.once(event, () => (ended = true));
  // A server that ends takes it along: what is half done is cleared away or gone on with by the next one.
  const stop = (): void => void child.kill();
  process.once('exit', stop);
  child.once('exit', () => process.off('exit', stop));
  const until = Date.now() + BEGIN_MS;
  while (!ended && !tells() && Date.now() < until) await pause(20);
}
