import { num, pair } from '../../svg/text.ts';
import { roundedBox, type Shaper } from './form.ts';

/** A length of rod: lit across, a line of shade at either end where it turns in to its hole. */
export const tube: Shaper = ({ alongMm, acrossMm, roundingMm }) => {
  const rounding = Math.min(roundingMm, alongMm / 2, acrossMm / 2);
  const outline = roundedBox(alongMm, acrossMm, rounding);
  const insetMm = Math.min(alongMm * 0.12, acrossMm * 0.1);
  const top = acrossMm / 2 - Math.max(rounding * 0.4, acrossMm * 0.03);
  const endLine = (x: number): string => `M${pair(x, -top)}V${num(top)}`;
  return {
    outline,
    surfaces: [{ mark: outline, lie: 'turned' }],
    lines: [
      {
        d: endLine(-alongMm / 2 + insetMm) + endLine(alongMm / 2 - insetMm),
        tone: 'dark',
        widthMm: insetMm * 0.5,
      },
    ],
    gloss: 'turned',
  };
};
