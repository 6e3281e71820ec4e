/** The part of a photograph that is shown, as it is written: `10% 0% 80% 100%`, from the left, from the top, width, height. */

/** In fractions of the upright picture; left + width and top + height are 1 at most. */
export type Crop = {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
};

/** Less is a spot that no photograph has pixels for. */
const LEAST = 0.05;
/** Tenths of a percent are finer than a hand. */
const STEP = 0.001;

/** Null where it isn't four percentages of a part that lies within the picture. */
export function readCrop(text: string): Crop | null {
  const parts = text.trim().split(/\s+/);
  const read = parts.map((part) =>
    /^\d{1,3}(?:\.\d+)?%$/.test(part) ? Number(part.slice(0, -1)) / 100 : NaN,
  );
  const [left = NaN, top = NaN, width = NaN, height = NaN] = read;
  const within = left + width <= 1 + STEP && top + height <= 1 + STEP;
  if (parts.length !== 4 || !within || !(width >= LEAST && height >= LEAST)) return null;
  return { left, top, width: Math.min(width, 1 - left), height: Math.min(height, 1 - top) };
}

/** The other way, in tenths of a percent. */
export function writeCrop({ left, top, width, height }: Crop): string {
  return [left, top, width, height].map((part) => `${Math.round(part * 1000) / 10}%`).join(' ');
}
