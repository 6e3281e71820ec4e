/** The public files once more in dist/client, for whoever copies them to a host by hand. */
import { existsSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { PARTS, takeOverAll } from './files.ts';

/** Ends the name of a copy that another has taken the place of. */
const OLD = '.old-';

/** CLASPWISE_DIST names another folder than dist/. */
const dist = (): string => process.env.CLASPWISE_DIST ?? 'dist';

/**
 * Replaces dist/client by the files of a release. The shop isn't served from
 * there, so it may be missing for the moment between two renames.
 * @param release its folder
 */
export function copyForHand(release: string): void {
  const there = join(dist(), PARTS.client);
  const fresh = `${there}.new`;
  rmSync(fresh, { recursive: true, force: true });
  takeOverAll(join(release, PARTS.client), fresh);
  if (existsSync(there)) renameSync(there, `${there}${OLD}${process.pid}`);
  renameSync(fresh, there);
}

/** Takes away the files of copies before, thousands of them: after all that anybody waits for. */
export function clearOldCopies(): void {
  if (!existsSync(dist())) return;
  for (const name of readdirSync(dist())) {
    if (name.startsWith(`${PARTS.client}${OLD}`))
      rmSync(join(dist(), name), { recursive: true, force: true });
  }
}
