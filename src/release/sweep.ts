/** Old releases are taken away, but for those that are used or may be gone back to. */
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { currentId } from '#catalogue/released/place.ts';
import { runs } from './lock.ts';
import { releases } from './takeBack.ts';

/** So many are kept: what takes room in them are the files that no other has. */
const KEPT = 5;
const IN_USE = /^in-use-(\d+)$/;
const UNFINISHED = /\.making$/;

/** Notes that this process runs the code of a release, until it ends. */
export function noteInUse(folder: string, id: string): void {
  const file = join(folder, `in-use-${process.pid}`);
  try {
    writeFileSync(file, id);
  } catch {
    // A folder that can't be written to isn't swept either.
    return;
  }
  process.once('exit', () => rmSync(file, { force: true }));
}

function inUse(folder: string): Set<string> {
  const ids = new Set<string>();
  for (const name of readdirSync(folder)) {
    const pid = IN_USE.exec(name)?.[1];
    if (pid === undefined) continue;
    if (runs(Number(pid))) ids.add(readFileSync(join(folder, name), 'utf8').trim());
    else rmSync(join(folder, name), { force: true });
  }
  return ids;
}

/** Takes away what publishings that were killed left behind. Only whoever has the lock may. */
export function sweepUnfinished(folder: string): void {
  for (const name of readdirSync(folder).filter((one) => UNFINISHED.test(one))) {
    rmSync(join(folder, name), { recursive: true, force: true });
  }
}

/** Where releases lie that are no more, until their files are gone. */
const SWEPT = '.swept';

/** Takes away releases that nobody needs, at once by their names. Only whoever has the lock may. */
export function sweepOld(folder: string): void {
  const needed = inUse(folder);
  const now = currentId(folder);
  if (now !== null) needed.add(now);
  for (const { id } of releases(folder).slice(KEPT)) {
    if (!needed.has(id)) sweepAway(folder, id);
  }
}

function sweepAway(folder: string, id: string): void {
  const swept = join(folder, SWEPT);
  mkdirSync(swept, { recursive: true });
  rmSync(join(swept, id), { recursive: true, force: true });
  renameSync(join(folder, id), join(swept, id));
}

/** Their files, thousands of them: after all that anybody waits for. Whoever likes may. */
export function clearSwept(folder: string): void {
  try {
    rmSync(join(folder, SWEPT), { recursive: true, force: true });
  } catch {
    // Another publishing lays something there at this moment, and clears it away itself.
  }
}
