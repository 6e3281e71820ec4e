/** Notes on the host what was sent and removed, some lines at a time, so that another upload can go on from there. */
import { journalLine, JOURNAL_FILE, type Done } from './manifest.ts';
import type { Remote } from './remote.ts';

/** Lines that may be lost, and are sent again then. */
const LINES = 40;
const WAIT_MS = 1000;

export type Journal = {
  note(done: Done): Promise<void>;
  /** Writes what is still held back. */
  flush(): Promise<void>;
};

export function beginJournal(remote: Remote, clock: () => number): Journal {
  let held: string[] = [];
  let length = 0;
  let last = clock();
  /** One after the other: each knows where the one before ended. */
  let writing: Promise<void> = Promise.resolve();

  const write = (): Promise<void> => {
    const bytes = Buffer.from(held.join(''));
    held = [];
    last = clock();
    if (bytes.length === 0) return writing;
    writing = writing.then(async () => {
      await remote.add(bytes, JOURNAL_FILE, length);
      length += bytes.length;
    });
    return writing;
  };

  return {
    async note(done) {
      held.push(journalLine(done));
      if (held.length >= LINES || clock() - last >= WAIT_MS) await write();
    },
    flush: write,
  };
}
