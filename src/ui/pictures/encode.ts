/** Pictures by sharp: turned upright, scaled, stripped of camera and place data. */
import sharp, { type Sharp } from 'sharp';
import type { Crop } from '#catalogue/model/crop.ts';
import { ENCODING, PLACEHOLDER_PX, SHARE, type Format } from './settings.ts';

sharp.concurrency(1);

export type Size = { readonly width: number; readonly height: number };

/** The part of an upright picture that is shown, px. */
function partOf({ width, height }: Size, crop: Crop): Size & { readonly left: number; readonly top: number } {
  const left = Math.min(width - 1, Math.round(crop.left * width));
  const top = Math.min(height - 1, Math.round(crop.top * height));
  return {
    left,
    top,
    width: Math.max(1, Math.min(width - left, Math.round(crop.width * width))),
    height: Math.max(1, Math.min(height - top, Math.round(crop.height * height))),
  };
}

async function wholeSize(photograph: Buffer): Promise<Size> {
  const { autoOrient } = await sharp(photograph).metadata();
  return { width: autoOrient.width, height: autoOrient.height };
}

/** Size as it is seen, camera turn applied and only the part that is shown. */
export async function sizeOf(photograph: Buffer, crop: Crop | null): Promise<Size> {
  const whole = await wholeSize(photograph);
  if (crop === null) return whole;
  const { width, height } = partOf(whole, crop);
  return { width, height };
}

/** Upright, and only the part that is shown. */
async function shown(photograph: Buffer, crop: Crop | null): Promise<Sharp> {
  const upright = sharp(photograph).autoOrient();
  return crop === null ? upright : upright.extract(partOf(await wholeSize(photograph), crop));
}

/** One photograph in one width and format. Metadata isn't copied: sharp leaves it out unless told. */
export async function encode(
  photograph: Buffer,
  width: number,
  format: Format,
  crop: Crop | null,
): Promise<Buffer> {
  const scaled = (await shown(photograph, crop)).resize({ width, withoutEnlargement: true });
  return scaled.toFormat(format, ENCODING[format]).toBuffer();
}

/** A few blurred pixels as a data address, shown until the photograph is there. */
export async function placeholder(photograph: Buffer, crop: Crop | null): Promise<string> {
  const tiny = await (
    await shown(photograph, crop)
  )
    .resize({ width: PLACEHOLDER_PX })
    .blur(1)
    .webp({ quality: 40 })
    .toBuffer();
  return `data:image/webp;base64,${tiny.toString('base64')}`;
}

/** A drawing as a picture of the given width. */
export async function rasterise(svg: string, width: number, format: Format): Promise<Buffer> {
  return sharp(Buffer.from(svg)).resize({ width }).toFormat(format, ENCODING[format]).toBuffer();
}

/** The share picture: what reads Open Graph doesn't read SVG or AVIF. */
export async function shareJpeg(svg: string): Promise<Buffer> {
  return sharp(Buffer.from(svg))
    .resize(SHARE.widthPx, SHARE.heightPx, { fit: 'cover' })
    .flatten({ background: '#ffffff' })
    .jpeg(ENCODING.jpeg)
    .toBuffer();
}
