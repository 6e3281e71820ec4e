/** The picture that goes with a link to a page about no one piece: the shop's name, its place and its mark. */
import { svgDocument, type Caption } from '../svg/document.ts';
import { element } from '../svg/text.ts';
import { SHARE_BOX, shareWords } from './share.ts';

export type ShopShareOptions = Caption & {
  readonly name: string;
  /** Under the name. */
  readonly place: string;
  /** The mark's spots within a square of 24. */
  readonly mark: readonly (readonly [x: number, y: number])[];
};

const GROUND = '#f7f8f5';
const WORDS = '#2b2723';
const MARK = '#7c2537';
/** The mark stands on the right, as pieces do in their own share pictures. */
const MARK_BOX = { x: 720, y: 127, size: 376 };
const MARK_UNITS = 24;
const SPOT_RADIUS = 2.5;

export function drawShopShare(options: ShopShareOptions): string {
  const { x, y, width, height } = SHARE_BOX;
  const ground = element('rect', { x, y, width, height, fill: GROUND });
  const scale = MARK_BOX.size / MARK_UNITS;
  const spots = options.mark.map(([cx, cy]) =>
    element('circle', {
      cx: MARK_BOX.x + cx * scale,
      cy: MARK_BOX.y + cy * scale,
      r: SPOT_RADIUS * scale,
    }),
  );
  const mark = element('g', { fill: MARK }, spots.join(''));
  return svgDocument(options, SHARE_BOX, '', ground + mark + shareWords(options.name, options.place, WORDS));
}
