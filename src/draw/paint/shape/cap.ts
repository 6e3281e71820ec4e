import { num, pair } from '../../svg/text.ts';
import { pathMark, type Shaper } from './form.ts';

/** Petals seen from the side. */
const PETALS = 3;

/** How wide the closed end is, as a share of the open one. */
const CROWN_SHARE = 0.3;

/** How far the petals reach past the cap's own length, over the bead they hold. */
const REACH_SHARE = 1.5;

/** A bead cap: a small bowl cut in petals, open to the end of the wire. */
export const cap: Shaper = ({ alongMm, acrossMm }) => {
  const half = alongMm / 2;
  const mouth = acrossMm / 2;
  const crown = mouth * CROWN_SHARE;
  let d = `M${pair(-half, crown)}V${num(-crown)}`;
  d += `C${pair(-half * 0.9, -mouth * 0.8)} ${pair(-half * 0.2, -mouth)} ${pair(half, -mouth * 0.97)}`;
  let lines = '';
  for (let petal = 0; petal < PETALS; petal += 1) {
    const from = mouth * ((petal / PETALS) * 2 - 1) * 0.97;
    const to = mouth * (((petal + 1) / PETALS) * 2 - 1) * 0.97;
    d += `C${pair(half * REACH_SHARE, from)} ${pair(half * REACH_SHARE, to)} ${pair(half, to)}`;
    if (petal > 0)
      lines += `M${pair(half, from)}Q${pair(0, from * 0.9)} ${pair(-half * 0.7, from * CROWN_SHARE)}`;
  }
  d += `C${pair(-half * 0.2, mouth)} ${pair(-half * 0.9, mouth * 0.8)} ${pair(-half, crown)}Z`;
  const outline = pathMark(d);
  return {
    outline,
    surfaces: [{ mark: outline, lie: 'turned' }],
    lines: [{ d: lines, tone: 'dark', widthMm: acrossMm * 0.04 }],
    gloss: 'none',
  };
};
