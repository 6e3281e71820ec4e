/** Rulers: marks in inches or centimetres, in the ink of the page. */
import { INCH_MM, type ShownUnit } from '#core/units/unit.ts';
import { element, num, pair } from '../svg/text.ts';

type Scale = {
  /** Distance of the finest marks. */
  readonly stepMm: number;
  /** Every so many steps a number, and half-way a longer mark. */
  readonly stepsPerNumber: number;
  readonly numberMm: number;
};

/** Inches in quarters, centimetres in halves: as fine as a thumbnail still shows. */
const SCALES: Readonly<Record<ShownUnit, Scale>> = {
  in: { stepMm: INCH_MM / 4, stepsPerNumber: 4, numberMm: INCH_MM },
  cm: { stepMm: 5, stepsPerNumber: 2, numberMm: 10 },
};

export type RulerMark = {
  readonly atMm: number;
  readonly size: 'long' | 'middle' | 'short';
  readonly label: string;
};

/** Every how many units a number stands, so that numbers don't run together on a ruler that long. */
function numberEvery(lengthMm: number, unitMm: number): number {
  const shown = lengthMm / unitMm;
  if (shown <= 14) return 1;
  if (shown <= 28) return 2;
  return shown <= 60 ? 5 : 10;
}

/** Marks from 0 to the last one not past `lengthMm`. */
export function rulerMarks(lengthMm: number, unit: ShownUnit): RulerMark[] {
  const { stepMm, stepsPerNumber, numberMm } = SCALES[unit];
  const every = numberEvery(lengthMm, numberMm);
  const marks: RulerMark[] = [];
  // A hair more, so that a strand of exactly 7 in gets its seventh mark.
  for (let step = 0; step * stepMm <= lengthMm + 1e-6; step += 1) {
    const whole = step % stepsPerNumber === 0;
    const value = step / stepsPerNumber;
    const half = (step * 2) % stepsPerNumber === 0;
    marks.push({
      atMm: step * stepMm,
      size: whole ? 'long' : half ? 'middle' : 'short',
      label: whole && value % every === 0 ? String(value) : '',
    });
  }
  return marks;
}

/**
 * Marks of a bead board, from zero out: the figure at a mark is the length
 * between it and its like on the other side, so each stands at half of it.
 */
export function boardMarks(reachMm: number, unit: ShownUnit): RulerMark[] {
  return rulerMarks(2 * reachMm, unit).map((mark) => ({ ...mark, atMm: mark.atMm / 2 }));
}

const MARK_SHARE = { long: 1, middle: 0.65, short: 0.4 } as const;

/**
 * A ruler with its edge at y; `textMm` is the height of its numbers, marks are as long as that.
 * @param way 1: it lies below its edge; −1: above
 */
export function paintRuler(
  marks: readonly RulerMark[],
  xMm: number,
  yMm: number,
  textMm: number,
  way: 1 | -1,
): string {
  const baseline = way === 1 ? textMm * 2.1 : -textMm * 1.4;
  let d = '';
  let labels = '';
  for (const mark of marks) {
    d += `M${pair(xMm + mark.atMm, yMm)}v${num(way * textMm * MARK_SHARE[mark.size])}`;
    if (mark.label !== '') {
      labels += element('text', { x: xMm + mark.atMm, y: yMm + baseline }, mark.label);
    }
  }
  const last = marks.at(-1)?.atMm ?? 0;
  d += `M${pair(xMm, yMm)}h${num(last)}`;
  return (
    element('path', {
      d,
      stroke: 'currentColor',
      'stroke-width': textMm * 0.09,
      fill: 'none',
      opacity: '.75',
    }) +
    element(
      'g',
      { fill: 'currentColor', 'font-size': textMm, 'text-anchor': 'middle', 'font-family': 'inherit' },
      labels,
    )
  );
}
