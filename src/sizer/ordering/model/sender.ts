/** Sends what waits in the outbox, one order at a time, until each has its receipt. */
import type { Clock, Post, Store } from '../../model/ports.ts';
import type { SendResult } from './sendResult.ts';
import { putEntry, readOutbox, type Entry } from './outbox.ts';
import type { Endpoint } from './endpoint.ts';

/** Pauses after the first, second, … vain try: soon at first, then no burden to a shop in trouble. */
const PAUSES_MS = [5_000, 15_000, 60_000, 300_000] as const;
const LONGEST_PAUSE_MS = 300_000;

export type SenderWorld = {
  readonly store: Store;
  readonly post: Post;
  readonly clock: Clock;
  /** Called after every change with the number being sent at that moment. */
  readonly onChange: (sending: string | null) => void;
};

export type Sender = {
  /** Sends what is due; with `now`, everything that waits. Calls while it sends are no matter. */
  readonly go: (now?: boolean) => Promise<void>;
  /** No further tries by itself. */
  readonly stop: () => void;
};

/** A sender to one address. The same order is sent under the same number every time, so that twice is once. */
export function createSender(endpoint: Endpoint, world: SenderWorld): Sender {
  const { store, post, clock, onChange } = world;
  let busy = false;
  let stopped = false;
  let callOff = (): void => undefined;

  async function sendOne(entry: Entry): Promise<void> {
    onChange(entry.order.number);
    const answer = await post(endpoint.address, endpoint.type, endpoint.write(entry));
    const still = readOutbox(store).find(({ order }) => order.number === entry.order.number);
    // Meanwhile another tab may have had the receipt, or the buyer may have mailed it or taken it out.
    if (still?.state === 'waiting')
      putEntry(
        store,
        after(still, endpoint.read(entry.order.number, answer), clock.nowMs(), endpoint.mostSilent),
      );
    onChange(null);
  }

  async function go(now = false): Promise<void> {
    if (busy || stopped) return;
    busy = true;
    callOff();
    const start = clock.nowMs();
    for (const entry of readOutbox(store)) {
      if (entry.state === 'waiting' && (now || entry.nextTryMs <= start)) await sendOne(entry);
    }
    busy = false;
    planNext();
  }

  function planNext(): void {
    const times = readOutbox(store)
      .filter(isWaiting)
      .map(({ nextTryMs }) => nextTryMs);
    if (stopped || times.length === 0) return;
    const wait = Math.min(LONGEST_PAUSE_MS, Math.max(0, Math.min(...times) - clock.nowMs()));
    callOff = clock.after(wait, () => void go());
  }

  function stop(): void {
    stopped = true;
    callOff();
  }
  return { go, stop };
}

const isWaiting = ({ state }: Entry): boolean => state === 'waiting';

/** The entry after a try. */
function after(entry: Entry, result: SendResult, nowMs: number, mostSilent: number): Entry {
  if (result.kind === 'received') {
    const { receivedAt, differs, askedBefore } = result;
    return { ...entry, state: 'received', receivedAt, differs, askedBefore, problem: null };
  }
  if (result.kind === 'handed') return { ...entry, state: 'handed', problem: null };
  if (result.kind === 'no-desk') return { ...entry, state: 'mail', problem: null };
  if (result.kind === 'refused') return { ...entry, state: 'refused', problem: result.problem };
  const { problem } = result;
  if (problem.code === 'no-answer' && entry.tries + 1 >= mostSilent)
    return { ...entry, state: 'mail', problem };
  const pause = PAUSES_MS[entry.tries] ?? LONGEST_PAUSE_MS;
  return { ...entry, tries: entry.tries + 1, nextTryMs: nowMs + pause, problem };
}
