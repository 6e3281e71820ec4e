/** A strung strand as the body feels it. */
import { hangingMass, sequenceMass } from '../design/mass/pieceMass.ts';
import type { Design } from '../design/design.ts';
import type { Placed } from '../design/expand.ts';
import { finishedLengthMm } from '../design/loopParts.ts';
import type { Load } from './lie.ts';

/** From the wire down to the pendant's middle: its rings, each by its working length, and half of what it hangs. */
export function pendantMiddleMm(design: Design): number {
  if (design.hanging === null) return 0;
  const rings = design.hanging.rings.reduce((sum, id) => sum + (design.components[id]?.alongMm ?? 0), 0);
  return rings + (design.components[design.hanging.pendant]?.hangMm ?? 0) / 2;
}

/** Mean across of what lies on the neck: the half of the strand nearer to clasp and ring. */
function acrossOnNeck(sequence: readonly Placed[]): number {
  const strung = sequence.filter(({ section }) => section !== 'end');
  const quarter = Math.ceil(strung.length / 4);
  const onNeck = [...strung.slice(0, quarter), ...strung.slice(strung.length - quarter)];
  const alongMm = onNeck.reduce((sum, { component }) => sum + component.alongMm, 0);
  if (alongMm === 0) return 0;
  return onNeck.reduce((sum, { component }) => sum + component.acrossMm * component.alongMm, 0) / alongMm;
}

/** Load of strand `index` as expanded; the pendant hangs on strand 0. */
export function loadOf(design: Design, sequence: readonly Placed[], index: number): Load {
  const lengthMm = finishedLengthMm(design, sequence);
  const massG = sequenceMass(sequence).massG;
  const hangs = index === 0;
  return {
    lengthMm,
    gPerMm: lengthMm > 0 ? massG / lengthMm : 0,
    pendantG: hangs ? hangingMass(design).massG : 0,
    pendantMiddleMm: hangs ? pendantMiddleMm(design) : 0,
    acrossMm: acrossOnNeck(sequence),
  };
}
