/** A piece and a world for tests of the island: a store in memory, a clock that is told the time, a shop that answers as told. */
import type { Design } from '#core/design/design.ts';
import type { Answer, Clock, Post, Store } from '#sizer/model/ports.ts';
import type { PieceForSizer } from '#sizer/model/input.ts';
import { focalBracelet, RULES } from '#tests/support/workshop.ts';

export function pieceOf(design: Design, more: Partial<PieceForSizer> = {}): PieceForSizer {
  return {
    id: 'test-piece',
    name: 'Test Piece',
    revision: '0123456789ab',
    design,
    listedMinor: 6000,
    rules: RULES,
    orderable: true,
    ready: false,
    ...more,
  };
}

export const bracelet = pieceOf(focalBracelet);

/** `room`: characters it takes in all, as a full device does. */
export function memoryStore(room = Infinity): Store & { readonly texts: Map<string, string> } {
  const texts = new Map<string, string>();
  return {
    texts,
    read: (key) => texts.get(key) ?? null,
    write(key, text) {
      if (text.length > room) return false;
      texts.set(key, text);
      return true;
    },
    erase: (key) => void texts.delete(key),
  };
}

export function tellableClock(startMs = 1_000_000): Clock & {
  /** Lets time pass, and calls what was due. */
  readonly pass: (ms: number) => void;
  readonly waiting: () => number;
} {
  let now = startMs;
  let timers: { at: number; call: () => void }[] = [];
  return {
    nowMs: () => now,
    after(ms, call) {
      const timer = { at: now + ms, call };
      timers.push(timer);
      return () => {
        timers = timers.filter((one) => one !== timer);
      };
    },
    pass(ms) {
      now += ms;
      const due = timers.filter(({ at }) => at <= now);
      timers = timers.filter(({ at }) => at > now);
      for (const { call } of due) call();
    },
    waiting: () => timers.length,
  };
}

/** A shop that gives these answers in turn, and the last one for ever; it keeps what it was sent. */
export function shopAnswering(...answers: ((number: string) => Answer)[]): {
  readonly post: Post;
  readonly sent: { readonly address: string; readonly type: string; readonly number: string }[];
} {
  const sent: { address: string; type: string; number: string }[] = [];
  const post: Post = async (address, type, text) => {
    const { number } = JSON.parse(text) as { number: string };
    const answer = answers[Math.min(sent.length, answers.length - 1)];
    sent.push({ address, type, number });
    return answer === undefined ? { kind: 'none' } : answer(number);
  };
  return { post, sent };
}

export const receipt = (number: string): Answer => ({
  kind: 'answer',
  status: 201,
  json: { number, receivedAt: '2026-11-25T18:41:00.000Z', checked: 'same', differences: [] },
});
export const trouble = (): Answer => ({ kind: 'answer', status: 503, json: { title: 'The book is full' } });
export const noAnswer = (): Answer => ({ kind: 'none' });

/** Lets every promise that can settle, settle. */
export async function settle(): Promise<void> {
  for (let turn = 0; turn < 20; turn += 1) await Promise.resolve();
}
