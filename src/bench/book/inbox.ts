/**
 * Orders that come in at the same moment share one write: the disk is asked to
 * be sure once for all of them, and each is answered only after that.
 */
import type { Book } from './open.ts';
import { receive, type Arrival, type Reception } from './receive.ts';

/** So many in one write at the utmost: one failure refuses no more than these. */
const TOGETHER = 64;

type Waiting = {
  readonly arrival: Arrival;
  readonly resolve: (reception: Reception) => void;
  readonly reject: (error: unknown) => void;
};

export type Inbox = (arrival: Arrival) => Promise<Reception>;

/** Makes the inbox of a book. The promise rejects with BookError where the order is not in the book. */
export function openInbox(book: Book): Inbox {
  let waiting: Waiting[] = [];
  const takeIn = (): void => {
    const batch = waiting.splice(0, TOGETHER);
    if (waiting.length > 0) setImmediate(takeIn);
    try {
      const receptions = receive(
        book,
        batch.map((one) => one.arrival),
      );
      batch.forEach((one, at) => one.resolve(receptions[at] as Reception));
    } catch (error) {
      for (const one of batch) one.reject(error);
    }
  };
  return (arrival) =>
    new Promise((resolve, reject) => {
      if (waiting.length === 0) setImmediate(takeIn);
      waiting = [...waiting, { arrival, resolve, reject }];
    });
}
