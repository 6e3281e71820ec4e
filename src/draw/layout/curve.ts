/** A line that a strand may be laid on, walked by its length. */

export type CurvePoint = {
  readonly xMm: number;
  readonly yMm: number;
  /** Direction of travel, clockwise from rightwards. */
  readonly turnRad: number;
};

export type Curve = {
  readonly lengthMm: number;
  /** The point `sMm` along it; before 0 and past the end it runs straight on. */
  at(sMm: number): CurvePoint;
};

/** The point `byMm` on from `point`, straight ahead. */
export function straightOn(point: CurvePoint, byMm: number): CurvePoint {
  return {
    xMm: point.xMm + byMm * Math.cos(point.turnRad),
    yMm: point.yMm + byMm * Math.sin(point.turnRad),
    turnRad: point.turnRad,
  };
}

/** An arc round a centre. A positive sweep runs clockwise, as the eye sees it. */
export function arc(
  centreXMm: number,
  centreYMm: number,
  radiusMm: number,
  fromRad: number,
  sweepRad: number,
): Curve {
  const lengthMm = Math.abs(sweepRad) * radiusMm;
  const sign = Math.sign(sweepRad);
  const within = (sMm: number): CurvePoint => {
    const angleRad = fromRad + (sign * sMm) / radiusMm;
    return {
      xMm: centreXMm + radiusMm * Math.cos(angleRad),
      yMm: centreYMm + radiusMm * Math.sin(angleRad),
      turnRad: angleRad + (sign * Math.PI) / 2,
    };
  };
  return { lengthMm, at: (sMm) => runningOn(within, lengthMm, sMm) };
}

/** A straight line from a point. */
export function line(xMm: number, yMm: number, turnRad: number, lengthMm: number): Curve {
  return { lengthMm, at: (sMm) => straightOn({ xMm, yMm, turnRad }, sMm) };
}

/** Several curves walked one after the other. */
export function joined(curves: readonly Curve[]): Curve {
  const lengthMm = curves.reduce((sum, curve) => sum + curve.lengthMm, 0);
  const within = (sMm: number): CurvePoint => {
    let leftMm = sMm;
    let last: Curve | undefined;
    for (const curve of curves) {
      last = curve;
      if (leftMm <= curve.lengthMm) return curve.at(leftMm);
      leftMm -= curve.lengthMm;
    }
    if (last === undefined) throw new RangeError('got no curve, expected at least one to join');
    return last.at(last.lengthMm + leftMm);
  };
  return { lengthMm, at: within };
}

/** `within` on the curve itself, straight on past either end. */
export function runningOn(within: (sMm: number) => CurvePoint, lengthMm: number, sMm: number): CurvePoint {
  if (sMm < 0) return straightOn(within(0), sMm);
  if (sMm > lengthMm) return straightOn(within(lengthMm), sMm - lengthMm);
  return within(sMm);
}
