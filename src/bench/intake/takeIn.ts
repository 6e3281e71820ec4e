/** Pasted texts and dropped files into the book. */
import type { Arrived, OrderWay } from '#words/benchCodes.ts';
import type { Inbox } from '../book/inbox.ts';
import type { Snapshot } from '../book/snapshot.ts';
import { MOST_FILE_MB, type OrderRead } from './orderRead.ts';
import { asPlain, isMailbox, isNone, readMailbox, readMessage } from './readMail.ts';
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

async function read({ source, way, bytes: offered }: Offering): Promise<OrderRead[]> {
  if (offered.length > MOST_FILE_MB * 1024 * 1024) {
    return [{ ok: false, problem: { code: 'file-too-large', mostMb: MOST_FILE_MB } }];
  }
  const bytes = readableBytes(offered);
  if (utf8(bytes)?.trim() === '') {
    return [{ ok: false, problem: { code: way === 'paste' ? 'empty-form' : 'empty-file' } }];
  }
  if (isMailbox(bytes)) return readMailbox(bytes);
  if (/\.eml$/i.test(source)) return readMessage(bytes);
  const found = readFileText(bytes);
  if (found.some((one) => one.ok)) return found;
  // A mail saved under any name, in whatever encoding, is tried as one.
  const inMail = await readMessage(bytes);
  return isNone(inMail) ? asPlain(utf8(bytes), found) : inMail;
}

async function enter(found: OrderRead, { source, way }: Offering, desk: TakeIn): Promise<Arrived> {
  if (!found.ok) return { code: 'refused', source, why: found.problem };
  const { document } = found;
  const now = await desk.pieceNow(document.piece.id);
  const { outcome, number } = await desk.inbox({ document, way, at: desk.at, now });
  return { code: outcome, number, source };
}
