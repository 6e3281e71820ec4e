/** Figures of one component that can't be true together. */
import type { Design } from '../design.ts';
import type { ValidationError } from '../validationError.ts';
import type { Component, ComponentKind } from '../component.ts';
import { isMaterial } from '../mass/density.ts';
import { tell } from './shape.ts';

/** These may take no length on the wire: they hang from it or close it. */
const MAY_BE_NOTHING_LONG: ReadonlySet<ComponentKind> = new Set<ComponentKind>(['pendant', 'clasp', 'ring']);

/** Rounding noise of inches turned to mm. */
const SLIP_MM = 0.001;

function checkOne(component: Component, at: string, problems: ValidationError[]): void {
  const { kind, alongMm, acrossMm, roundingMm, holeMm, material } = component;
  if (alongMm === 0 && !MAY_BE_NOTHING_LONG.has(kind)) {
    tell(problems, 'bad-measure', `${at}.alongMm`, { value: 0, why: 'nothing-long' });
  }
  if (acrossMm === 0) tell(problems, 'bad-measure', `${at}.acrossMm`, { value: 0, why: 'nothing-wide' });
  const most = Math.min(alongMm, acrossMm) / 2;
  if (roundingMm > most + SLIP_MM) {
    tell(problems, 'bad-measure', `${at}.roundingMm`, { value: roundingMm, most, why: 'over-half' });
  }
  if (holeMm >= acrossMm && acrossMm > 0) {
    tell(problems, 'bad-measure', `${at}.holeMm`, { value: holeMm, most: acrossMm, why: 'hole-over-bead' });
  }
  if (!isMaterial(material)) tell(problems, 'unknown-material', `${at}.material`, { material });
}

/** Every component of the design, named or not. */
export function checkMeasures(design: Design, problems: ValidationError[]): void {
  for (const [key, component] of Object.entries(design.components)) {
    const at = `components.${key}`;
    if (component.id !== key) tell(problems, 'bad-shape', `${at}.id`, { want: key });
    checkOne(component, at, problems);
  }
}
