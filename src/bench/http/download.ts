/** An answer that is saved as a file. */
import { dayOf } from '#words/day.ts';

/** `name`: plain letters, digits, dots and dashes only; it comes from the bench, never from a buyer. */
export function download(
  content: string | Uint8Array<ArrayBuffer> | ReadableStream<Uint8Array<ArrayBuffer>>,
  type: string,
  name: string,
): Response {
  return new Response(content, {
    headers: { 'content-type': type, 'content-disposition': `attachment; filename="${name}"` },
  });
}

/** Name of a file made today: `orders-2026-11-25.csv`. */
export function dated(stem: string, nowMs: number, end: string): string {
  return `${stem}-${dayOf(nowMs)}.${end}`;
}
