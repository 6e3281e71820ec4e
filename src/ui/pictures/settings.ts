/** How pictures are encoded. A change of any of these makes every picture anew: they are part of the cache's key. */

export type Format = 'avif' | 'webp' | 'jpeg';

/** Smallest first in the page, so that a browser takes the first it can read. */
export const FORMATS: readonly Format[] = ['avif', 'webp', 'jpeg'];

export const MEDIA_TYPES: Readonly<Record<Format | 'svg', string>> = {
  avif: 'image/avif',
  webp: 'image/webp',
  jpeg: 'image/jpeg',
  svg: 'image/svg+xml',
};

/** Widths a photograph is offered in, px: a phone, a column, the same on a dense screen. */
export const WIDTHS = [480, 960, 1600] as const;

/** Widths a drawing's pixels are offered in, px: a card in a column, the same on a dense screen. */
export const CARD_WIDTHS = [400, 800] as const;

/** Those of a drawing that fills a phone, px: an ordinary one, and one with a dense screen. */
export const PHONE_WIDTHS = [800, 1200] as const;

/**
 * Whether drawings are made into pixels and share pictures at all. A build that
 * measures ten thousand pieces leaves them out: CLASPWISE_PICTURES=svg.
 */
export const MAKES_PIXELS = process.env.CLASPWISE_PICTURES !== 'svg';

/** Above effort 3 AVIF takes five times as long for the same bytes within a percent. */
export const ENCODING = {
  avif: { quality: 52, effort: 3 },
  webp: { quality: 78 },
  jpeg: { quality: 80, mozjpeg: true },
} as const;

/** Width of the placeholder that is written into the page, px. */
export const PLACEHOLDER_PX = 16;

/** What Open Graph readers show whole. */
export const SHARE = { widthPx: 1200, heightPx: 630 } as const;

/** Two pictures at once, one thread each: on two cores faster than any other way. */
export const AT_ONCE = 2;
