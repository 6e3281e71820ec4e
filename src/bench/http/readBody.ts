/** Reads a request's body up to the largest that an order can be. */

/** The largest legal order in JSON is 9 KB, in escapes six times that. */
export const MOST_BYTES = 64 * 1024;

export type BodyText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly code: 'too-large' | 'not-utf8' };

/** The body's text. No more than `mostBytes` of it is ever held, and no byte of it is guessed. */
export async function readBody(request: Request, mostBytes = MOST_BYTES): Promise<BodyText> {
  const bytes = await readBytes(request, mostBytes);
  if (bytes === null) return { ok: false, code: 'too-large' };
  const text = utf8(bytes);
  return text === null ? { ok: false, code: 'not-utf8' } : { ok: true, text };
}

/** Bytes as text; null where they are no UTF-8, since a name with holes in it can't be written to. */
export function utf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** The body's bytes; null where there are more than `mostBytes`, or its sender broke off. */
export async function readBytes(request: Request, mostBytes: number): Promise<Uint8Array | null> {
  if (Number(request.headers.get('content-length') ?? 0) > mostBytes) return null;
  if (request.body === null) return new Uint8Array();
  const reader = (request.body as ReadableStream<Uint8Array>).getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const part = await reader.read().catch(() => null);
    if (part === null) {
      // Nobody is left to be answered; one line tells the maker why nothing came of it.
      process.stderr.write(`An upload was broken off by its sender after ${length} bytes.\n`);
      return null;
    }
    const { done, value } = part;
    if (done) return Buffer.concat(parts);
    length += value.length;
    if (length > mostBytes) {
      // What it still holds is of no interest, nor how its sender takes that.
      await reader.cancel().catch(() => undefined);
      return null;
    }
    parts.push(value);
  }
}
