/**
 * `npm run build`: makes a release of the program and the content and puts it
 * in the place of the one that is served. `--quick` takes over what hasn't
 * changed, and does nothing where nothing has; `--start` besides leaves alone
 * what was taken back. `--back` goes back to the release before. Exit code 0:
 * done; 1: not, and the shop stays as it was; 3: another publishing runs.
 */
import { parseArgs } from 'node:util';
import { promisedIn } from '#bench/context/promised.ts';
import { settingsFrom } from '#bench/context/settings.ts';
import { writeOutFrom } from '#bench/stock/publishStock.ts';
import { report } from '#catalogue/read/problem.ts';
import { currentRelease, releasesFolder } from '#catalogue/released/place.ts';
import { ContentError } from '#release/content.ts';
import { clearOldCopies, copyForHand } from '#release/handCopy.ts';
import { releaseWhenEnded, takeLock } from '#release/lock.ts';
import { makeRelease } from '#release/make.ts';
import { writeProgress } from '#release/progress.ts';
import { clearSwept } from '#release/sweep.ts';
import { takeBack } from '#release/takeBack.ts';
import type { Step } from '#words/publishing.ts';

/** A large catalogue may have a remark on every piece; the first tell what there is to know. */
const MOST_NOTES = 10;
/** Between two notes of how far it is, ms. */
const NOTE_MS = 150;

const { values } = parseArgs({
  options: {
    quick: { type: 'boolean', default: false },
    start: { type: 'boolean', default: false },
    back: { type: 'boolean', default: false },
  },
});
const folder = releasesFolder();
const began = Date.now();
const since = new Date(began).toISOString();
const seconds = (): number => (Date.now() - began) / 1000;
const now = (): string => new Date().toISOString();

let step: Step = 'reading';
let lastNote = 0;

function note(pieces: { done: number; of: number } | null): void {
  lastNote = Date.now();
  writeProgress(folder, { state: 'running', since, step, pieces });
}

const told = {
  step: (next: Step): void => {
    step = next;
    note(null);
  },
  pieces: (done: number, of: number): void => {
    if (step === 'program') step = 'pages';
    if (Date.now() - lastNote >= NOTE_MS || done === of) note({ done, of });
  },
  slower: (error: unknown): void => {
    console.error(`The pages couldn't be made by what was kept (${String(error)}). Building everything …`);
  },
};

/** Without it the shop is published all the same, and sizes with what its files say. */
function writeStock(bookFile: string): void {
  try {
    const { failed } = writeOutFrom(bookFile, Date.now);
    if (failed.length > 0) console.error(`What there is could not be written out for: ${failed.join(', ')}.`);
  } catch (error) {
    console.error(`What there is could not be written out (${String(error)}).`);
  }
}

async function publish(): Promise<void> {
  const { bookFile } = settingsFrom(process.env, process.cwd());
  // A start only takes up what was published; numbers are written out where she says so.
  if (!values.start) writeStock(bookFile);
  const promised = promisedIn(bookFile);
  const wish = { whole: !values.quick && !values.start, evenTakenBack: !values.start };
  const made = await makeRelease(promised, wish, told);
  if (made.outcome === 'same') {
    console.log(`Nothing has changed since it was built (${made.since.slice(0, 16).replace('T', ' ')} UTC).`);
  } else {
    const notes = made.notes;
    if (notes.length > 0) {
      console.log(`${notes.length} worth a look:\n${report(notes.slice(0, MOST_NOTES), 'en')}`);
    }
    console.log(`Built in ${seconds().toFixed(1)} s.`);
  }
  writeProgress(folder, { state: 'done', at: now(), seconds: seconds(), outcome: made.outcome });
}

function goBack(): void {
  const release = takeBack(folder);
  if (release === null) throw new Error('There is no release before this one to go back to.');
  console.log(`Back to what was built at ${release.madeAt}.`);
  writeProgress(folder, { state: 'done', at: now(), seconds: seconds(), outcome: 'taken-back' });
}

function failed(error: unknown): void {
  process.exitCode = 1;
  const problems = error instanceof ContentError ? error.problems : [];
  const said = error instanceof Error ? error.message : String(error);
  console.error(problems.length > 0 ? `${said}\n\n${report(problems, 'en')}\n` : said);
  writeProgress(folder, { state: 'failed', at: now(), problems, said: problems.length > 0 ? '' : said });
}

const lock = takeLock(folder);
if (lock === null) {
  console.error('Another publishing runs. Fix: wait until it is done.');
  process.exitCode = 3;
} else {
  // Told to end, it takes along what it started; half a release is cleared away by the next publishing.
  releaseWhenEnded(lock);
  try {
    note(null);
    if (values.back) goBack();
    else await publish();
    const served = currentRelease();
    if (served !== null) copyForHand(served);
  } catch (error) {
    failed(error);
  } finally {
    lock.release();
  }
  clearSwept(folder);
  clearOldCopies();
  // Libraries that made the pages may hold handles open.
  process.exit();
}
