/** The pictures of telephones (HEIC), decoded in a thread of its own: it takes a second and much memory. */
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { crc32, deflateSync } from 'node:zlib';
import { Worker } from 'node:worker_threads';
import sharp from 'sharp';

/** Twice what a telephone's largest takes on a slow machine; a file that is made to hang ends there. */
const LONGEST_MS = 60_000;
const MOST_THREAD_MB = 1536;

type Pixels = {
  readonly width: number;
  readonly height: number;
  /** Four bytes a pixel; empty where there are more pixels than may be. */
  readonly rgba: Uint8Array;
};

export type Decoded = { readonly ok: true; readonly png: Buffer } | HeicProblem;
export type HeicProblem =
  | { readonly ok: false; readonly code: 'too-many-pixels'; readonly megapixels: number }
  | { readonly ok: false; readonly code: 'broken' };

/** Found where the bench runs, and left out of what a build makes of it. */
const DECODER = createRequire(join(process.cwd(), 'package.json')).resolve;

function inThread(): void {
  const { parentPort, workerData } = process.getBuiltinModule('node:worker_threads');
  const { createRequire: requireFrom } = process.getBuiltinModule('node:module');
  type Image = {
    get_width(): number;
    get_height(): number;
    is_primary(): boolean;
    display(
      into: { data: Uint8ClampedArray; width: number; height: number },
      done: (made: unknown) => void,
    ): void;
  };
  type Library = { HeifDecoder: new () => { decode(bytes: Uint8Array): Image[] } };
  const { file, bytes, most } = workerData as { file: string; bytes: Uint8Array; most: number };
  const library = requireFrom(file)(file) as Library;
  const images = new library.HeifDecoder().decode(bytes);
  const image = images.find((one) => one.is_primary()) ?? images[0];
  if (image === undefined) throw new Error('no picture');
  const width = image.get_width();
  const height = image.get_height();
  if (width * height > most) {
    parentPort?.postMessage({ width, height, rgba: new Uint8Array() });
    return;
  }
  const data = new Uint8ClampedArray(width * height * 4);
  image.display({ data, width, height }, (made) => {
    if (made === null) throw new Error('no pixels');
    parentPort?.postMessage({ width, height, rgba: new Uint8Array(data.buffer) }, [data.buffer]);
  });
}

function pixelsOf(bytes: Uint8Array, most: number): Promise<Pixels> {
  const worker = new Worker(`(${inThread.toString()})()`, {
    eval: true,
    workerData: { file: DECODER('libheif-js/wasm-bundle'), bytes, most },
    resourceLimits: { maxOldGenerationSizeMb: MOST_THREAD_MB },
    // What the library has to say of a broken file is said by the page.
    stdout: true,
    stderr: true,
  });
  const ends = setTimeout(() => void worker.terminate(), LONGEST_MS);
  return new Promise<Pixels>((resolve, reject) => {
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', () => reject(new Error('ended without a picture')));
  }).finally(() => {
    clearTimeout(ends);
    void worker.terminate();
  });
}

/** The colour profile written in the file (a `colr` box of type `prof`; ISO/IEC 14496-12, 12.1.5); null where there is none. */
function profileIn(bytes: Buffer): Buffer | null {
  const at = bytes.indexOf('colrprof', 0, 'latin1');
  if (at < 4) return null;
  const length = bytes.readUInt32BE(at - 4);
  const profile = bytes.subarray(at + 8, at - 4 + length);
  // The profile states its own length first.
  return profile.length >= 128 && profile.readUInt32BE(0) === profile.length ? profile : null;
}

/** A PNG with a colour profile put in behind its first chunk (ISO/IEC 15948, 11.3.3.3). */
function withProfile(png: Buffer, profile: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from('iCCPtelephone\0\0', 'latin1'), deflateSync(profile)]);
  const head = Buffer.alloc(4);
  head.writeUInt32BE(body.length - 4);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(body));
  // Signature (8 bytes) and IHDR (25).
  return Buffer.concat([png.subarray(0, 33), head, body, check, png.subarray(33)]);
}

/**
 * A HEIC picture as PNG: upright, since its own turn is applied in decoding, and with its colour profile.
 * @param most pixels
 */
export async function decodeHeic(bytes: Uint8Array, most: number): Promise<Decoded> {
  try {
    const { width, height, rgba } = await pixelsOf(bytes, most);
    if (rgba.length === 0) {
      return { ok: false, code: 'too-many-pixels', megapixels: Math.round((width * height) / 1e6) };
    }
    const raw = { width, height, channels: 4 as const };
    const png = await sharp(rgba, { raw }).removeAlpha().png({ compressionLevel: 1 }).toBuffer();
    const profile = profileIn(Buffer.from(bytes));
    return { ok: true, png: profile === null ? png : withProfile(png, profile) };
  } catch {
    return { ok: false, code: 'broken' };
  }
}
