/** The running bench: settings, the open book and the clock, joined once for all its pages. */
import { settingsFrom, type Settings } from './settings.ts';
import { openInbox, type Inbox } from '../book/inbox.ts';
import { openBook, type Book } from '../book/open.ts';
import { sweepWorkFolders } from '../book/workFolder.ts';
import { throttle, type Throttle } from '../http/throttle.ts';

export type Bench = {
  readonly settings: Settings;
  /** The open book; opened on first use, and again after it could not be. Throws BookError. */
  readonly book: () => Book;
  readonly inbox: () => Inbox;
  readonly deskThrottle: Throttle;
  /** Of all orders that one proxy hands on. */
  readonly proxyThrottle: Throttle;
  /** Tries at the passphrase. */
  readonly entryThrottle: Throttle;
  readonly nowMs: () => number;
};

/** Tries a minute from one address: a person mistypes twice, a guesser needs millions. */
const TRIES_PER_MINUTE = 5;

/** Senders who may all order at once through one proxy: a fair's wireless network. */
const PROXY_SHARE = 10;

/** Joins a bench. Everything from outside is handed in. */
export function joinBench(settings: Settings, nowMs: () => number): Bench {
  let open: { book: Book; inbox: Inbox } | null = null;
  const opened = (): { book: Book; inbox: Inbox } => {
    if (open === null) {
      const book = openBook(settings.bookFile);
      sweepWorkFolders(settings.bookFile, nowMs());
      open = { book, inbox: openInbox(book) };
    }
    return open;
  };
  return {
    settings,
    book: () => opened().book,
    inbox: () => opened().inbox,
    deskThrottle: throttle(settings.deskPerMinute),
    proxyThrottle: throttle(PROXY_SHARE * settings.deskPerMinute),
    entryThrottle: throttle(TRIES_PER_MINUTE),
    nowMs,
  };
}

let running: Bench | null = null;

/** The bench of this process. Throws RangeError for a setting that can't be read. */
export function bench(): Bench {
  running ??= joinBench(settingsFrom(process.env, process.cwd()), Date.now);
  return running;
}
