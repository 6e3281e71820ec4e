/** What can be wrong with the book, by name, from SQLite's result codes (sqlite.org/rescode.html). */
export type BookProblem =
  | 'locked'
  | 'full'
  | 'read-only'
  | 'not-a-book'
  | 'newer-book'
  | 'broken'
  | 'unreachable'
  /** A book was begun here, and its file is missing or empty. */
  | 'gone'
  /** The book is there; what it holds of this one order can't be read. */
  | 'order-damaged';

/** Thrown where the book can't be opened, read or written. `problem` picks the sentence. */
export class BookError extends Error {
  readonly problem: BookProblem;
  constructor(problem: BookProblem, options?: ErrorOptions) {
    super(`order book: ${problem}`, options);
    this.name = 'BookError';
    this.problem = problem;
  }
}

/** Primary result codes that have a name of their own here. */
const BY_CODE: Readonly<Record<number, BookProblem>> = {
  5: 'locked',
  6: 'locked',
  8: 'read-only',
  // An input or output error: on most disks the sign that they are full or failing.
  10: 'full',
  11: 'broken',
  13: 'full',
  14: 'unreachable',
  15: 'locked',
  // A row that the tables don't allow: only a file from outside has one.
  19: 'broken',
  26: 'not-a-book',
};

/** Runs `work`; SQLite's errors come out as `BookError`, all others as they are. */
export function named<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw asBookError(error);
  }
}

/** SQLite's general error (code 1): where statements are ours, it means a schema that isn't ours any more. */
export const isOfSchema = (error: unknown): boolean =>
  error instanceof Error && 'errcode' in error && Number(error.errcode) === 1;

function asBookError(error: unknown): unknown {
  // What the book holds as JSON was JSON when it was written.
  if (error instanceof SyntaxError) return new BookError('order-damaged', { cause: error });
  if (!(error instanceof Error)) return error;
  // The book was closed meanwhile, since its file was taken away or replaced.
  if ('code' in error && error.code === 'ERR_INVALID_STATE')
    return new BookError('unreachable', { cause: error });
  if (!('errcode' in error)) return error;
  const problem = BY_CODE[Number(error.errcode) & 0xff];
  return problem === undefined ? error : new BookError(problem, { cause: error });
}
