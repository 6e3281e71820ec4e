/** Figures of one component that can't be true together. */
import type { Design } from '../design.ts';
import type { ValidationError } from '../validationError.ts';
import type { Component, ComponentKind } from '../component.ts';
import { isMaterial } from '../mass/density.ts';
import { report } from './shape.ts';

/** These may take no length on the wire: they hang from it or close it. */
const MAY_BE_NOTHING_LONG: ReadonlySet<ComponentKind> = new Set<ComponentKind>(['pendant', 'clasp', 'ring']);

/** Rounding noise of inches turned to mm. */
const SLIP_MM = 0.001;

function validateOne(component: Component, at: string, problems: ValidationError[]): void {
  const { kind, alongMm, acrossMm, roundingMm, holeMm, material } = component;
  if (alongMm === 0 && !MAY_BE_NOTHING_LONG.has(kind)) {
    report(problems, 'bad-measure', `${at}.alongMm`, { value: 0, why: 'nothing-long' });
  }
  if (acrossMm === 0) report(problems, 'bad-measure', `${at}.acrossMm`, { value: 0, why: 'nothing-wide' });
  const most = Math.min(alongMm, acrossMm) / 2;
  if (roundingMm > most + SLIP_MM) {
    report(problems, 'bad-measure', `${at}.roundingMm`, { value: roundingMm, most, why: 'over-half' });
  }
  if (holeMm >= acrossMm && acrossMm > 0) {
    report(problems, 'bad-measure', `${at}.holeMm`, { value: holeMm, most: acrossMm, why: 'hole-over-bead' });
  }
  if (!isMaterial(material)) report(problems, 'unknown-material', `${at}.material`, { material });
}

/** Every component of the design, named or not. */
export function validateMeasures(design: Design, problems: ValidationError[]): void {
  for (const [key, component] of Object.entries(design.components)) {
    const at = `components.${key}`;
    if (component.id !== key) report(problems, 'bad-shape', `${at}.id`, { want: key });
    validateOne(component, at, problems);
  }
}
