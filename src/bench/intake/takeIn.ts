/** Pasted texts and dropped files into the book. */
import type { Arrived, OrderWay } from '#words/benchCodes.ts';
import type { Inbox } from '../book/inbox.ts';
import type { Snapshot } from '../book/snapshot.ts';
import { isNone, MOST_FILE_MB, type OrderRead } from './orderRead.ts';
import { isSource } from './plainText.ts';
import { asPlain, isMailbox, readMailbox, readMessage } from './readMail.ts';
import { utf8 } from '../http/readBody.ts';
import { readableBytes } from './readable.ts';
import { readFileText } from './readText.ts';

export type Offering = {
  /** Name of the file, or what stands for the pasted text. */
  readonly source: string;
  readonly way: OrderWay;
  readonly bytes: Uint8Array;
};

export type TakeIn = {
  readonly inbox: Inbox;
  readonly pieceNow: (id: string) => Promise<Snapshot | null>;
  readonly at: string;
};

/** Takes in every order of every offering. @returns what became of each. Rejects with BookError. */
export async function takeIn(offerings: readonly Offering[], desk: TakeIn): Promise<Arrived[]> {
  const arrived: Arrived[] = [];
  for (const offering of offerings) {
    const found = await read(offering);
    arrived.push(...(await Promise.all(found.map((one) => enter(one, offering, desk)))));
  }
  return arrived;
}

async function read({ source, way, bytes: offered }: Offering): Promise<readonly OrderRead[]> {
  if (offered.length > MOST_FILE_MB * 1024 * 1024) {
    return [{ ok: false, problem: { code: 'file-too-large', mostMb: MOST_FILE_MB } }];
  }
  const bytes = message(begun(readableBytes(offered)));
  if (bytes.length === 0) {
    return [{ ok: false, problem: { code: way === 'paste' ? 'empty-form' : 'empty-file' } }];
  }
  if (isMailbox(bytes)) return readMailbox(bytes);
  // A mail may lie under any name; what its source spells out is not all that it holds.
  if (/\.eml$/i.test(source) || isSource(latin1(bytes))) return readMessage(bytes);
  const found = readFileText(bytes);
  if (found.some((one) => one.ok)) return found;
  // One in whatever encoding is tried as one too.
  const inMail = await readMessage(bytes);
  return isNone(inMail) ? asPlain(utf8(bytes), found) : inMail;
}

/** One mail that a program keeps between its length, on a line of its own, and notes in XML; other bytes as they are. */
function message(bytes: Uint8Array): Uint8Array {
  const [line = '', length = ''] = /^(\d{1,9})[ \t]*\r?\n/.exec(latin1(bytes.subarray(0, 80))) ?? [];
  const inside = bytes.subarray(line.length, line.length + Number(length));
  return line !== '' && isSource(latin1(inside)) ? inside : bytes;
}

const latin1 = (bytes: Uint8Array): string => Buffer.from(bytes).toString('latin1');

/** The bytes from the first that is to be seen, past a byte order mark and blank lines. */
function begun(bytes: Uint8Array): Uint8Array {
  const marked = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  const text = bytes.subarray(marked ? 3 : 0);
  const first = text.findIndex((byte) => !BLANK.has(byte));
  return first < 0 ? text.subarray(text.length) : text.subarray(first);
}

/** Tab, line feed, carriage return and space. */
const BLANK: ReadonlySet<number> = new Set([9, 10, 13, 32]);

async function enter(found: OrderRead, { source, way }: Offering, desk: TakeIn): Promise<Arrived> {
  if (!found.ok) return { code: 'refused', source, why: found.problem };
  const { document } = found;
  const now = await desk.pieceNow(document.piece.id);
  const { outcome, number } = await desk.inbox({ document, way, at: desk.at, now });
  return { code: outcome, number, source };
}
