import { pair } from '../../svg/text.ts';
import { roundedBox, type Form, type Shaper } from './form.ts';

/** A closed crimp: a short tube pressed in at its middle. */
export const crimp: Shaper = (component) => {
  const { alongMm, acrossMm } = component;
  const outline = roundedBox(alongMm, acrossMm, Math.min(alongMm, acrossMm) * 0.2);
  const half = alongMm * 0.36;
  return {
    outline,
    surfaces: [{ mark: outline, lie: 'turned' }],
    lines: [
      {
        d: `M${pair(-half, 0)}Q${pair(0, acrossMm * 0.12)} ${pair(half, 0)}`,
        tone: 'dark',
        widthMm: acrossMm * 0.1,
      },
    ],
    gloss: 'none',
  };
};

/** A crimp cover: a hollow ball with the seam where it was pressed shut. */
export function cover(base: Form, acrossMm: number): Form {
  const half = acrossMm * 0.44;
  const seam = `M${pair(0, -half)}Q${pair(acrossMm * 0.1, 0)} ${pair(0, half)}`;
  return { ...base, lines: [...base.lines, { d: seam, tone: 'dark', widthMm: acrossMm * 0.04 }] };
}
