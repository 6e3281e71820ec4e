/** The frame every drawing stands in: size, title, description, definitions. */
import { element, escapeXml, num } from './text.ts';

/** What every drawing is told by its caller, who knows the words and the page. */
export type Caption = {
  /** Read first by a screen reader, shown as a tooltip. */
  readonly title: string;
  /** Says what the picture shows, for those who don't see it. */
  readonly description: string;
  /** Starts every id in the drawing: unique on its page. A letter, then letters, digits, `-` or `_`. */
  readonly idPrefix: string;
};

export type Box = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

const ID_PREFIX = /^[A-Za-z][\w-]*$/;

/** Throws RangeError unless `idPrefix` can start an id that needs no quoting anywhere. */
export function assertIdPrefix(idPrefix: string): void {
  if (!ID_PREFIX.test(idPrefix)) {
    throw new RangeError(
      `got id prefix ${JSON.stringify(idPrefix)}, expected a letter, then letters, digits, - or _`,
    );
  }
}

/**
 * A whole SVG document.
 * @param box the view box, in millimetres of the thing drawn (or pixels, where the view says so)
 * @param lifeSize when true the drawing asks to be shown at 1 mm a millimetre
 */
export function svgDocument(
  caption: Caption,
  box: Box,
  definitions: string,
  content: string,
  lifeSize = false,
): string {
  assertIdPrefix(caption.idPrefix);
  const titleId = `${caption.idPrefix}-title`;
  const descriptionId = `${caption.idPrefix}-desc`;
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `${num(box.x)} ${num(box.y)} ${num(box.width)} ${num(box.height)}`,
      width: lifeSize ? `${num(box.width)}mm` : undefined,
      height: lifeSize ? `${num(box.height)}mm` : undefined,
      role: 'img',
      'aria-labelledby': `${titleId} ${descriptionId}`,
    },
    `<title id="${titleId}">${escapeXml(caption.title)}</title>` +
      `<desc id="${descriptionId}">${escapeXml(caption.description)}</desc>` +
      (definitions === '' ? '' : `<defs>${definitions}</defs>`) +
      content,
  );
}
