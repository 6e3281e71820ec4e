/** The public files as one file to unpack on a host. */
import { createReadStream } from 'node:fs';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import yazl from 'yazl';
import { publicFolder, publicPaths } from './publicFiles.ts';

/** A plain file that everybody may read (the upper half of a ZIP entry's attributes on Unix). */
const MODE = 0o100644;
/** What is compressed already. */
const PACKED = /\.(?:webp|avif|jpe?g|png|woff2|pf_\w+|pagefind)$/;

/**
 * The same release is the same file, byte for byte: names sorted, every entry with the time of the release.
 * Files are read one after the other, as the stream is.
 * @param release its folder
 * @param madeAt when it was made, ISO 8601
 */
export function zipOf(release: string, madeAt: string): Readable {
  const zip = new yazl.ZipFile();
  // ZIP's plain time has no zone; a host compares it with nothing but that of another release.
  const options = { mtime: asIfHere(madeAt), mode: MODE, forceDosTimestamp: true };
  const stream = zip.outputStream as Readable;
  let reading: Readable | null = null;
  const failed = (error: Error): void => void stream.destroy(error);
  zip.on('error', failed);
  // Nobody takes the rest: the file that is open is closed.
  stream.once('close', () => reading?.destroy());
  for (const path of publicPaths(release)) {
    const file = join(publicFolder(release), path);
    zip.addReadStreamLazy(path, { ...options, compress: !PACKED.test(path) }, (give) => {
      reading = createReadStream(file).once('error', failed);
      give(null, reading);
    });
  }
  zip.end();
  return stream;
}

/** The figures of a time in UTC as a time of this machine's zone, which the library writes: so every zone writes the same. */
function asIfHere(iso: string): Date {
  const at = new Date(iso);
  return new Date(
    at.getUTCFullYear(),
    at.getUTCMonth(),
    at.getUTCDate(),
    at.getUTCHours(),
    at.getUTCMinutes(),
    at.getUTCSeconds(),
  );
}
