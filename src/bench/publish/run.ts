/** Publishing from the bench: a process of its own, so that neither a closed window nor a long build holds up an order. */
import { spawn } from 'node:child_process';
import { setTimeout as pause } from 'node:timers/promises';
import { READ_FROM, releasesFolder } from '#catalogue/released/place.ts';
import { publisher } from '#release/lock.ts';
import { readProgress } from '#release/progress.ts';

/** From the project's folder, in which the server runs. */
const COMMAND = 'src/command/publish.ts';

/** How long a request waits for the process to begin, ms; the page shows later by itself that it has. */
const BEGIN_MS = 60_000;

/**
 * Begins a publishing, or the way back; one that runs already goes on alone.
 * Settles once the new one says how far it is, or has ended: a page shown before
 * that would tell of the last one, and never look again.
 */
export async function beginPublishing(option: '--quick' | '--back'): Promise<void> {
  const folder = releasesFolder();
  if (publisher(folder) !== null) return;
  const { [READ_FROM]: _served, ...env } = process.env;
  const child = spawn(process.execPath, [COMMAND, option], { env, stdio: 'ignore' });
  let ended = false;
  for (const event of ['exit', 'error']) child.once(event, () => (ended = true));
  // A server that ends takes it along: half a release is cleared away by the next publishing.
  const stop = (): void => void child.kill();
  process.once('exit', stop);
  child.once('exit', () => process.off('exit', stop));
  const until = Date.now() + BEGIN_MS;
  while (!ended && readProgress(folder).state !== 'running' && Date.now() < until) await pause(20);
}
