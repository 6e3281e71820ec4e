/** The cloth a piece is shown on: pale, a little of the opposite of the beads' own colour, lighter where the lamp is. */
import type { Component } from '#core/design/component.ts';
import { lightnessOf, mix, tone } from './ink/tone.ts';
import type { Box } from '../svg/document.ts';
import { element } from '../svg/text.ts';
import type { Ink } from './ink/ink.ts';

/** Undyed linen, and slate for pieces so pale that they would be lost on it. */
const LINEN = '#efe9df';
const SLATE = '#5b6570';

/** Above this lightness a piece counts as pale. */
const PALE = 0.86;

/** How much of the beads' colour the cloth takes. */
const TINGE = 0.07;

/** The colour most of the surface shows: components weighed by the area that is seen. */
function chiefColour(components: readonly Component[]): string {
  let seen = 0;
  let colour = LINEN;
  for (const { alongMm, acrossMm, look } of components) {
    const area = alongMm * acrossMm;
    seen += area;
    if (seen > 0) colour = mix(colour, look.colour, area / seen);
  }
  return colour;
}

export type Ground = { readonly colour: string; readonly isDark: boolean };

export function groundFor(components: readonly Component[]): Ground {
  const chief = chiefColour(components);
  const isDark = lightnessOf(chief) > PALE;
  return { colour: mix(isDark ? SLATE : LINEN, chief, TINGE), isDark };
}

export function paintGround(ink: Ink, box: Box, { colour }: Ground): string {
  const fill = ink.paint({
    form: 'radial',
    centre: [0.38, 0.28],
    radius: 0.95,
    focus: [0.38, 0.28],
    stops: [
      { at: 0, colour: tone(colour, 0.05) },
      { at: 0.55, colour },
      { at: 1, colour: tone(colour, -0.1) },
    ],
  });
  return element('rect', { x: box.x, y: box.y, width: box.width, height: box.height, fill });
}
