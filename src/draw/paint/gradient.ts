/** Gradients, as data: the palette writes each once. */
import { element, num } from '../svg/text.ts';

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

/** The gradient's element. */
export function writeGradient(gradient: Gradient, id: string): string {
  const stops = gradient.stops
    .map((stop) =>
      element('stop', {
        offset: stop.at,
        'stop-color': stop.colour,
        'stop-opacity': stop.opacity === undefined || stop.opacity === 1 ? undefined : stop.opacity,
      }),
    )
    .join('');
  if (gradient.form === 'linear') {
    const [x1, y1] = gradient.from;
    const [x2, y2] = gradient.to;
    return element('linearGradient', { id, x1: num(x1), y1: num(y1), x2: num(x2), y2: num(y2) }, stops);
  }
  const [cx, cy] = gradient.centre;
  const [fx, fy] = gradient.focus;
  // SVG takes a half for what isn't said, and the centre for the focus.
  const unlessHalf = (share: number): number | undefined => (share === 0.5 ? undefined : share);
  return element(
    'radialGradient',
    {
      id,
      cx: unlessHalf(cx),
      cy: unlessHalf(cy),
      r: unlessHalf(gradient.radius),
      fx: fx === cx ? undefined : fx,
      fy: fy === cy ? undefined : fy,
    },
    stops,
  );
}
