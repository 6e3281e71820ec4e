/** The published shop as one file, to be unpacked on a host. */
import { Readable } from 'node:stream';
import type { APIRoute } from 'astro';
import { dated, download } from '#bench/http/download.ts';
import { currentRelease } from '#catalogue/released/place.ts';
import { zipOf } from '#hosting/zip.ts';
import { readRecord } from '#release/record.ts';

export const prerender = false;

export const GET: APIRoute = () => {
  const release = currentRelease();
  const record = release === null ? null : readRecord(release);
  if (release === null || record === null) return new Response(null, { status: 404 });
  const stream = Readable.toWeb(zipOf(release, record.madeAt)) as ReadableStream<Uint8Array<ArrayBuffer>>;
  return download(stream, 'application/zip', dated('shop', Date.parse(record.madeAt), 'zip'));
};
