/** A sample on a body of the usual size, for tests and gallery. */
import { figureOf, type Figure } from '#core/body/figure.ts';
import { lieOf } from '#core/body/lie.ts';
import type { Design } from '#core/design/design.ts';
import { finishedLengthMm } from '#core/design/loopParts.ts';
import { drawBody, type WornStrand } from '#draw/drawings/body.ts';
import { usualSequences } from './designs.ts';

export function sampleFigure(): Figure {
  const found = figureOf({ sex: 'female', neckGirthMm: null, heightMm: null });
  if (!found.ok) throw new Error(found.problem.code);
  return found.figure;
}

/** The strands that reach round; their weight is a round figure. */
export function wornStrands(design: Design, figure: Figure): WornStrand[] {
  return usualSequences(design).flatMap((sequence) => {
    const hasPendant = design.hanging !== null;
    const load = {
      lengthMm: finishedLengthMm(design, sequence),
      gPerMm: 0.08,
      pendantG: hasPendant ? 6 : 0,
      pendantMiddleMm: hasPendant ? 20 : 0,
      acrossMm: 7,
    };
    const lie = lieOf(load, figure);
    return lie.status === 'too-short' ? [] : [{ sequence, lie }];
  });
}

export function drawOnBody(design: Design, title: string, idPrefix: string): string {
  const figure = sampleFigure();
  return drawBody(design, wornStrands(design, figure), {
    title,
    description: title,
    idPrefix,
    figure,
    sex: 'female',
    unit: 'in',
    labels: { pit: title, bust: 'bust', navel: 'navel' },
  });
}
