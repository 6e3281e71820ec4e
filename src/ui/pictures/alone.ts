/** Drawings that take ink and letters from their page, as files of their own: an `<img>` inherits nothing. */

/** `--ink` of `styles/tokens.css`, on a light page and on a dark one. */
export const PAGE_INK = { light: '#1c2224', dark: '#e9ece8' } as const;

/** Those of `--face` that a device may have itself: a picture fetches no face. */
const FACES = "'Gill Sans','Segoe UI',sans-serif";

const LOOK =
  `<style>:root{color:${PAGE_INK.light};font-family:${FACES}}` +
  `@media(prefers-color-scheme:dark){:root{color:${PAGE_INK.dark}}}</style>`;

const ROOT = /^<svg\b[^>]*>/;
const VIEW_BOX = /^<svg\b[^>]*\bviewBox="\S+ \S+ (\S+) (\S+)"/;

/** The whole SVG text of a drawing, with ink and letters of its own. */
export const alone = (svg: string): string => svg.replace(ROOT, (root) => root + LOOK);

/** Wide enough for any screen; only the shape counts. */
const WIDTH_PX = 1200;

export type Shape = { readonly width: number; readonly height: number };

/**
 * Whole px in the shape of a drawing's view box, by which an `<img>` keeps its place on the page.
 * @throws RangeError where it has none
 */
export function shapeOf(svg: string): Shape {
  const [, width, height] = VIEW_BOX.exec(svg) ?? [];
  if (width === undefined || height === undefined) {
    throw new RangeError(`got ${svg.slice(0, 80)}, expected an SVG with a view box`);
  }
  return { width: WIDTH_PX, height: Math.round((WIDTH_PX * Number(height)) / Number(width)) };
}
