/** The road of a preview: what its page is made of, the files as they lie there or with what was posted and isn't saved. */
import type { Reading } from '#catalogue/load/readCatalogue.ts';
import { readShop, readWhole } from '#catalogue/collections.ts';
import { EditError } from '#catalogue/write/rewrite.ts';
import { troubleResponse } from './access/refusal.ts';
import { content } from './content/content.ts';
import type { EntryKey } from './content/entry.ts';
import { bench } from './context/bench.ts';
import { promisedIn } from './context/promised.ts';
import { readForm } from './http/readForm.ts';
import { MOST_BOARD_BYTES, readBoardRequest } from './intake/boardRequest.ts';
import { typedChange } from './models/content/editEntry.ts';
import { frameFor, type Frame } from './models/frame.ts';
import { readingWithBoard } from './saveBoard.ts';

export type Previewed = {
  readonly reading: Reading;
  /** The maker's, who looks at it. */
  readonly frame: Frame;
  /** What was posted, to be posted again for another language; null for the files as they lie there. */
  readonly draft: URLSearchParams | null;
};

/** Name of the field in which a board comes, as JSON. */
const BOARD = 'board';

/** In a form every sign but letters and figures is three. */
const MOST_DRAFT_BYTES = 3 * MOST_BOARD_BYTES;

/**
 * @param key of the entry that may be posted as a draft; null where the page has none
 * @returns a response where nothing can be shown of what was posted
 */
export async function previewed(request: Request, key: EntryKey | null): Promise<Previewed | Response> {
  const lying = content().reading();
  const frame = frameFor(request, lying.catalogue?.shop ?? (await readShop()), bench().nowMs());
  if (request.method !== 'POST') return { reading: lying, frame, draft: null };
  const refused = (status: number): Response => troubleResponse({ code: 'bad-form' }, status, request);
  const draft = await readForm(request, MOST_DRAFT_BYTES);
  if (draft === null || key === null) return refused(400);
  try {
    const reading = draft.has(BOARD) ? await withBoard(draft, key) : withForm(draft, key, frame);
    return reading === null ? refused(400) : { reading, frame, draft };
  } catch (error) {
    if (!(error instanceof EditError || error instanceof RangeError)) throw error;
    return refused(409);
  }
}

function withForm(draft: URLSearchParams, key: EntryKey, frame: Frame): Reading | null {
  const opened = content().open(key);
  if (opened === null) return null;
  const { changes, body } = typedChange(draft, opened, frame);
  return content().readingWith(key, changes, body);
}

async function withBoard(draft: URLSearchParams, { id }: EntryKey): Promise<Reading | null> {
  const catalogue = content().reading().catalogue ?? (await readWhole());
  const sent = readBoardRequest(draft.get(BOARD) ?? '', id, catalogue);
  return sent === null ? null : readingWithBoard(content(), catalogue, sent, bench().nowMs());
}

/** Pieces that lay finished and are promised to somebody. */
export const promisedNow = () => promisedIn(bench().settings.bookFile);
