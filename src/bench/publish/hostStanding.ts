/** How the shop stands on the host elsewhere. */
import { currentRelease } from '#catalogue/released/place.ts';
import { hostingFolder } from '#hosting/place.ts';
import { readHostProgress, type HostProgress } from '#hosting/progress.ts';
import { readSettings, seen, type HostSeen } from '#hosting/settings.ts';
import { readRecord } from '#release/record.ts';

export type HostStanding = {
  /** Null where none are kept. */
  readonly settings: HostSeen | null;
  readonly progress: HostProgress;
  /** When the served release was published, ISO 8601; null where there is none. */
  readonly publishedAt: string | null;
};

export function hostStanding(): HostStanding {
  const folder = hostingFolder();
  const settings = readSettings(folder);
  const release = currentRelease();
  return {
    settings: settings === null ? null : seen(settings),
    progress: settings === null ? { state: 'none' } : readHostProgress(folder),
    publishedAt: release === null ? null : (readRecord(release)?.madeAt ?? null),
  };
}
