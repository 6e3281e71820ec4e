/** From whatever somebody chose as a photograph to the one file that is kept: upright, sRGB, and without camera or place. */
import sharp, { type Metadata } from 'sharp';
import type { PhotoProblem } from '#words/photoCodes.ts';
import { decodeHeic } from './heic.ts';
import { kindOf } from './kind.ts';

/** A telephone's largest are below 20. */
export const MOST_PHOTO_MB = 40;
/** A telephone's 108 megapixels; four hundred unfold from a few kilobytes. */
const MOST_PIXELS = 110_000_000;
/** The decoder for telephones' pictures holds all of them at once. */
const MOST_HEIC_PIXELS = 64_000_000;
/** Less is an icon, px of the longer side. */
const LEAST_SIDE = 320;
/** Half again as wide as the shop ever shows it, so that a part can be cut out. */
const MOST_SIDE = 2400;
/** Above it a JPEG that is encoded again looks the same to the eye, and is larger. */
const QUALITY = 88;

export type Taken =
  | { readonly ok: true; readonly jpeg: Buffer; readonly width: number; readonly height: number }
  | { readonly ok: false; readonly problem: PhotoProblem };

const refuse = (problem: PhotoProblem): Taken => ({ ok: false, problem });

const tooMany = (megapixels: number, most: number): Taken =>
  refuse({ code: 'photo-pixels', megapixels, most: Math.round(most / 1e6) });

/** What is wrong with a picture by what it says of itself, before a pixel is unfolded. */
function fault({ width, height, pages = 1 }: Metadata): Taken | null {
  if (width * height > MOST_PIXELS) return tooMany(Math.round((width * height) / 1e6), MOST_PIXELS);
  if (pages > 1) return refuse({ code: 'photo-moves' });
  if (Math.max(width, height) < LEAST_SIDE) {
    return refuse({ code: 'photo-small', width, height, least: LEAST_SIDE });
  }
  return null;
}

async function master(picture: Uint8Array): Promise<Taken> {
  try {
    const wrong = fault(await sharp(picture, { limitInputPixels: false }).metadata());
    if (wrong !== null) return wrong;
    // Nothing of the file's own data is copied, and a colour profile is applied: sharp does so unless told otherwise.
    const { data, info } = await sharp(picture, { limitInputPixels: MOST_PIXELS, failOn: 'error' })
      .autoOrient()
      .resize({ width: MOST_SIDE, height: MOST_SIDE, fit: 'inside', withoutEnlargement: true })
      .flatten({ background: '#ffffff' })
      .toColourspace('srgb')
      .jpeg({ quality: QUALITY, mozjpeg: true })
      .toBuffer({ resolveWithObject: true });
    return { ok: true, jpeg: data, width: info.width, height: info.height };
  } catch {
    return refuse({ code: 'photo-broken' });
  }
}

/** Takes a file in. Never throws for what is in it. */
export async function takePhotograph(bytes: Uint8Array): Promise<Taken> {
  const kind = kindOf(bytes);
  if (kind === 'empty') return refuse({ code: 'photo-missing' });
  if (kind === 'picture') return master(bytes);
  if (kind !== 'heic') return refuse({ code: 'photo-kind', kind });
  const decoded = await decodeHeic(bytes, MOST_HEIC_PIXELS);
  if (decoded.ok) return master(decoded.png);
  return decoded.code === 'broken'
    ? refuse({ code: 'photo-broken' })
    : tooMany(decoded.megapixels, MOST_HEIC_PIXELS);
}
