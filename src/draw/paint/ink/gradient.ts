/** Gradients, as data: the palette writes each once. */
import { element, num } from '../../svg/text.ts';

export type Stop = {
  /** 0 to 1. */
  readonly at: number;
  readonly colour: string;
  /** 1 where left out. */
  readonly opacity?: number;
};

/** All places in shares of the painted shape's own box, so that one gradient serves every size. */
export type Gradient =
  | {
      readonly form: 'linear';
      readonly from: readonly [number, number];
      readonly to: readonly [number, number];
      readonly stops: readonly Stop[];
    }
  | {
      readonly form: 'radial';
      readonly centre: readonly [number, number];
      readonly radius: number;
      readonly focus: readonly [number, number];
      readonly stops: readonly Stop[];
    };

/**
 * The gradient's element.
 * @param alike `#…` of one with the same stops, which is then asked for them: a bead in six lights is six
 *   gradients of one colouring. What isn't said would be taken from it too, so all is said.
 */
export function writeGradient(gradient: Gradient, id: string, alike: string | null = null): string {
  const href = alike ?? undefined;
  const stops = alike === null ? writeStops(gradient.stops) : '';
  if (gradient.form === 'linear') {
    const [x1, y1] = gradient.from;
    const [x2, y2] = gradient.to;
    return element('linearGradient', { id, href, x1: num(x1), y1: num(y1), x2: num(x2), y2: num(y2) }, stops);
  }
  const [cx, cy] = gradient.centre;
  const [fx, fy] = gradient.focus;
  // SVG takes a half for what isn't said, and the centre for the focus.
  const unlessHalf = (share: number): number | undefined =>
    share === 0.5 && alike === null ? undefined : share;
  return element(
    'radialGradient',
    {
      id,
      href,
      cx: unlessHalf(cx),
      cy: unlessHalf(cy),
      r: unlessHalf(gradient.radius),
      fx: fx === cx && alike === null ? undefined : fx,
      fy: fy === cy && alike === null ? undefined : fy,
    },
    stops,
  );
}

function writeStops(stops: readonly Stop[]): string {
  return stops
    .map(({ at, colour, opacity }) =>
      element('stop', {
        offset: at,
        'stop-color': colour,
        'stop-opacity': opacity === 1 ? undefined : opacity,
      }),
    )
    .join('');
}
