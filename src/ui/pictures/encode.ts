/** Pictures by sharp: turned upright, scaled, stripped of camera and place data. */
import sharp from 'sharp';
import { ENCODING, PLACEHOLDER_PX, SHARE, type Format } from './settings.ts';

sharp.concurrency(1);

export type Size = { readonly width: number; readonly height: number };

/** Size as it is seen, camera turn applied. */
export async function sizeOf(photograph: Buffer): Promise<Size> {
  const { autoOrient } = await sharp(photograph).metadata();
  return { width: autoOrient.width, height: autoOrient.height };
}

/** One photograph in one width and format. Metadata isn't copied: sharp leaves it out unless told. */
export async function encode(photograph: Buffer, width: number, format: Format): Promise<Buffer> {
  const scaled = sharp(photograph).autoOrient().resize({ width, withoutEnlargement: true });
  return scaled.toFormat(format, ENCODING[format]).toBuffer();
}

/** A few blurred pixels as a data address, shown until the photograph is there. */
export async function placeholder(photograph: Buffer): Promise<string> {
  const tiny = await sharp(photograph)
    .autoOrient()
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
