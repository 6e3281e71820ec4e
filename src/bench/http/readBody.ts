/** Reads a request's body up to the largest that an order can be. */

/** The largest legal order in JSON is 9 KB, in escapes six times that. */
export const MOST_BYTES = 64 * 1024;

/** The body's text; null where it is larger than `mostBytes`. No more than that is ever held. */
export async function readBody(request: Request, mostBytes = MOST_BYTES): Promise<string | null> {
  const bytes = await readBytes(request, mostBytes);
  return bytes === null ? null : new TextDecoder().decode(bytes);
}

/** The body's bytes; null where there are more than `mostBytes`. */
export async function readBytes(request: Request, mostBytes: number): Promise<Uint8Array | null> {
  if (Number(request.headers.get('content-length') ?? 0) > mostBytes) return null;
  if (request.body === null) return new Uint8Array();
  const reader = (request.body as ReadableStream<Uint8Array>).getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
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
