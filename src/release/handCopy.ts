/** The public files once more in dist/client, for whoever copies them to a host by hand. */
import { existsSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { PARTS, takeOverAll } from './files.ts';

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
  const old = `${there}.old`;
  for (const left of [fresh, old]) rmSync(left, { recursive: true, force: true });
  takeOverAll(join(release, PARTS.client), fresh);
  if (existsSync(there)) renameSync(there, old);
  renameSync(fresh, there);
  rmSync(old, { recursive: true, force: true });
}
