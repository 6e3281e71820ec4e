/**
 * `npm run upload`: brings what is published to the host elsewhere that the bench has settings for. `--foreign`:
 * into a folder that holds files from elsewhere too; `--whole`: every file again. Exit code 0: it lies there;
 * 1: not, and why; 2: a question is open, which the bench asks; 3: another upload runs.
 */
import { parseArgs } from 'node:util';
import { currentRelease, releasesFolder } from '#catalogue/released/place.ts';
import { connect, UnknownHost } from '#hosting/connect.ts';
import { hostingFolder } from '#hosting/place.ts';
import { writeHostProgress, type Files, type HostQuestion } from '#hosting/progress.ts';
import { remoteFolder } from '#hosting/remote.ts';
import { readSettings, type HostSettings } from '#hosting/settings.ts';
import { HostError } from '#hosting/trouble.ts';
import { upload } from '#hosting/upload.ts';
import { releaseWhenEnded, takeLock } from '#release/lock.ts';
import { readRecord } from '#release/record.ts';
import { hostingWords } from '#words/words.ts';
import type { HostStep, HostTrouble } from '#words/hosting.ts';

/** Between two notes of how far it is, ms. */
const NOTE_MS = 150;
const { values } = parseArgs({
  options: { foreign: { type: 'boolean', default: false }, whole: { type: 'boolean', default: false } },
});
const folder = hostingFolder();
const words = hostingWords('en');
const began = Date.now();
const now = (): string => new Date().toISOString();

let step: HostStep = 'connecting';
let lastNote = 0;
function note(files: Files | null): void {
  lastNote = Date.now();
  writeHostProgress(folder, { state: 'running', since: new Date(began).toISOString(), step, files });
}
const told = {
  step: (next: HostStep): void => {
    step = next;
    note(null);
  },
  files: (done: number, of: number): void => {
    if (Date.now() - lastNote >= NOTE_MS || done === of) note({ done, of });
  },
};

function ask(question: HostQuestion): void {
  writeHostProgress(folder, { state: 'asking', at: now(), question });
  console.log(question.about === 'folder' ? words.foreign(question.folder) : words.newHost);
  process.exitCode = 2;
}

async function bring(settings: HostSettings, release: string): Promise<void> {
  const record = readRecord(release);
  if (record === null) throw new Error('Nothing has been published yet. Fix: npm run build.');
  const connection = await connect(settings);
  try {
    const wish = { evenIfForeign: values.foreign, whole: values.whole };
    const remote = remoteFolder(connection, settings.folder);
    const came = await upload({ release, id: record.id }, remote, wish, told);
    if (came.outcome === 'foreign') {
      ask({ about: 'folder', folder: settings.folder, names: came.names, count: came.count });
      return;
    }
    const { sent, removed } = came;
    const seconds = (Date.now() - began) / 1000;
    const publishedAt = record.madeAt;
    writeHostProgress(folder, { state: 'done', at: now(), seconds, publishedAt, sent, removed });
    console.log(words.terminal(sent, removed, seconds.toFixed(1)));
  } finally {
    connection.end();
  }
}

function failed(error: unknown): void {
  if (error instanceof UnknownHost) return ask({ about: 'host-key', key: error.key });
  const said = error instanceof Error ? error.message : String(error);
  const trouble: HostTrouble =
    error instanceof HostError ? error.trouble : { code: 'host-said', path: '', said };
  writeHostProgress(folder, { state: 'failed', at: now(), trouble });
  console.error(words.trouble(trouble));
  process.exitCode = 1;
}

const settings = readSettings(folder);
const release = currentRelease(releasesFolder());
const lock = settings === null || release === null ? null : takeLock(folder);
if (settings === null || release === null) {
  console.error(settings === null ? words.noSettings : words.nothingPublished);
  process.exitCode = 1;
} else if (lock === null) {
  console.error(words.another);
  process.exitCode = 3;
} else {
  releaseWhenEnded(lock);
  try {
    note(null);
    await bring(settings, release);
  } catch (error) {
    failed(error);
  } finally {
    lock.release();
  }
  process.exit();
}
