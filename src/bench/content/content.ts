/** The content of this bench, joined once for all its pages. */
import { contentFolder } from '#ui/site/contentFolder.ts';
import { bench } from '../context/bench.ts';
import { historyFile } from './history.ts';
import { openContent, type ContentStore } from './store.ts';

let running: ContentStore | null = null;

/** What the maker writes, of this process. */
export function content(): ContentStore {
  const { settings, nowMs } = bench();
  running ??= openContent({ folder: contentFolder(), historyFile: historyFile(settings.bookFile), nowMs });
  return running;
}
