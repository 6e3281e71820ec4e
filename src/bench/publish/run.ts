/** Publishing, and bringing what is published to a host elsewhere, from the bench. */
import { releasesFolder } from '#catalogue/released/place.ts';
import { hostingFolder } from '#hosting/place.ts';
import { readHostProgress } from '#hosting/progress.ts';
import { readProgress } from '#release/progress.ts';
import { begin } from './begin.ts';

/** Begins a publishing, or the way back. */
export const beginPublishing = (option: '--quick' | '--back'): Promise<void> => {
  const folder = releasesFolder();
  const tells = (): boolean => readProgress(folder).state === 'running';
  return begin({ file: 'src/command/publish.ts', options: [option], folder, tells });
};

/** Begins an upload. */
export const beginUpload = (options: readonly ('--foreign' | '--whole')[]): Promise<void> => {
  const folder = hostingFolder();
  const tells = (): boolean => readHostProgress(folder).state === 'running';
  return begin({ file: 'src/command/upload.ts', options, folder, tells });
};
