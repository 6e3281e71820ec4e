/** The running bench: settings, the open book and the clock, joined once for all its pages. */
import { settingsFrom, type Settings } from './settings.ts';
import { openInbox, type Inbox } from '../book/inbox.ts';
import { statSync } from 'node:fs';
import { isGone, noteBegun } from '../book/begun.ts';
import { isSound, openBook, refusesWrites, refuseWrites, type Book } from '../book/open.ts';
import { BookError, type BookProblem } from '../book/problem.ts';
import { isReplaceable } from '../book/replace.ts';
import { checkWhole, type Findings } from '../book/wholeCheck.ts';
import { sweepWorkFolders } from '../book/workFolder.ts';
import { throttle, type Throttle } from '../http/throttle.ts';

export type Bench = {
  readonly settings: Settings;
  /** The open book; opened on first use, and again after it could not be. Throws BookError. */
  readonly book: () => Book;
  readonly inbox: () => Inbox;
  /** The book; null where it is damaged or gone, so that another may take its place. Throws BookError for what passes, as a lock does. */
  readonly usable: () => Book | null;
  /** Since when orders have been turned away, and why; null once one was taken again. In memory only. */
  readonly turnedAway: () => TurnedAway | null;
  /** Why the book can't be used, where `usable` is null. */
  readonly whyNot: () => BookProblem;
  /** The check of the whole book: what is known of it, and to begin one unless one runs. */
  readonly check: { readonly last: () => CheckState; readonly start: () => void };
  readonly deskThrottle: Throttle;
  /** Of all orders that one proxy hands on. */
  readonly proxyThrottle: Throttle;
  /** Tries at the passphrase. */
  readonly entryThrottle: Throttle;
  /** Tries at a code that pairs a device. */
  readonly pairThrottle: Throttle;
  /** Tokens of devices that are not known. */
  readonly unknownThrottle: Throttle;
  readonly nowMs: () => number;
};

/** Tries a minute from one address: a person mistypes twice, a guesser needs millions. */
const TRIES_PER_MINUTE = 5;

/** A device that was sent away asks for a page with all that is on it, and for that again. */
const UNKNOWN_PER_MINUTE = 60;

/** Senders who may all order at once through one proxy: a fair's wireless network. */
const PROXY_SHARE = 10;

/** `since`: ISO 8601, of the first. */
export type TurnedAway = { readonly since: string; readonly problem: BookProblem };

/** `at`: ISO 8601, when it ended. `failed`: the file could not be looked at. */
export type CheckState =
  | { readonly state: 'none' }
  | { readonly state: 'running' }
  | { readonly state: 'failed'; readonly at: string }
  | { readonly state: 'done'; readonly at: string; readonly findings: Findings };

/** Which file lies there, whatever it is called; null where none does. */
function fileThere(file: string): string | null {
  const there = statSync(file, { throwIfNoEntry: false });
  return there === undefined ? null : `${there.dev} ${there.ino}`;
}

/** Joins a bench. Everything from outside is handed in. */
export function joinBench(settings: Settings, nowMs: () => number): Bench {
  const { bookFile } = settings;
  let open: { readonly book: Book; readonly inbox: Inbox; readonly there: string | null } | null = null;
  let last: CheckState = { state: 'none' };
  const now = (): string => new Date(nowMs()).toISOString();

  let turned: TurnedAway | null = null;
  const watched =
    (inbox: Inbox): Inbox =>
    async (arrival) => {
      try {
        const reception = await inbox(arrival);
        turned = null;
        return reception;
      } catch (error) {
        if (error instanceof BookError) turned = { since: turned?.since ?? now(), problem: error.problem };
        throw error;
      }
    };

  const startCheck = (book: Book): void => {
    if (last.state === 'running') return;
    last = { state: 'running' };
    checkWhole(bookFile).then(
      (findings) => {
        // Another book lies there by now.
        if (open?.book !== book) return;
        last = { state: 'done', at: now(), findings };
        if (findings.structure.length > 0) refuseWrites(book);
      },
      () => {
        if (open?.book === book) last = { state: 'failed', at: now() };
      },
    );
  };

  const opened = (): NonNullable<typeof open> => {
    // What is written into a file that was taken away or replaced is lost with it.
    if (open !== null && open.there !== fileThere(bookFile)) {
      open.book.db.close();
      open = null;
      last = { state: 'none' };
    }
    if (open === null) {
      if (isGone(bookFile)) throw new BookError('gone');
      const book = openBook(bookFile);
      sweepWorkFolders(bookFile, nowMs());
      noteBegun(bookFile);
      if (!isSound(book)) refuseWrites(book);
      open = { book, inbox: watched(openInbox(book)), there: fileThere(bookFile) };
      startCheck(book);
    }
    return open;
  };
  return {
    settings,
    book: () => opened().book,
    inbox: () => opened().inbox,
    usable: () => {
      try {
        const { book } = opened();
        return refusesWrites(book) ? null : book;
      } catch (error) {
        if (error instanceof BookError && isReplaceable(error.problem)) return null;
        throw error;
      }
    },
    turnedAway: () => turned,
    whyNot: () => {
      try {
        opened();
        return 'broken';
      } catch (error) {
        if (error instanceof BookError) return error.problem;
        throw error;
      }
    },
    check: { last: () => last, start: () => startCheck(opened().book) },
    deskThrottle: throttle(settings.deskPerMinute),
    proxyThrottle: throttle(PROXY_SHARE * settings.deskPerMinute),
    entryThrottle: throttle(TRIES_PER_MINUTE),
    pairThrottle: throttle(TRIES_PER_MINUTE),
    unknownThrottle: throttle(UNKNOWN_PER_MINUTE),
    nowMs,
  };
}

let running: Bench | null = null;

/** The bench of this process. Throws RangeError for a setting that can't be read. */
export function bench(): Bench {
  running ??= joinBench(settingsFrom(process.env, process.cwd()), Date.now);
  return running;
}
