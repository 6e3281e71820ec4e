/** What the terminal command ends with. Scripts may rely on these numbers. */
export const EXIT = {
  /** Sized within the shop's tolerance, or a finished piece explained. */
  fits: 0,
  /** Something unforeseen; the message is on standard error. */
  failed: 1,
  /** The command line can't be read: an option, a measure, no piece. */
  usage: 2,
  /** No count meets the tolerance, or explains the measure; the nearest are given. */
  near: 3,
  /** The size lies outside what the piece can be; the limits are given. */
  outside: 4,
  /** The size or the design is refused, or what the command line asks of this piece. */
  refused: 5,
  /** The catalogue, the piece, the rules or standard input can't be read. */
  unread: 6,
} as const;

export type Exit = (typeof EXIT)[keyof typeof EXIT];
