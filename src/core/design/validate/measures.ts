/** Figures of one component that can't be true together. */
import type { Design } from '../design.ts';
import type { MeasureError, ValidationError } from '../validationError.ts';
import type { Component, ComponentKind } from '../component.ts';
import { isMaterial } from '../mass/density.ts';
import { report } from './shape.ts';

/** These may take no length on the wire: they hang from it or close it. */
const MAY_BE_NOTHING_LONG: ReadonlySet<ComponentKind> = new Set<ComponentKind>(['pendant', 'clasp', 'ring']);

/** Noise of inches turned to millimetres, mm. */
const NOISE_MM = 0.001;

type Measures = Pick<Component, 'alongMm' | 'acrossMm' | 'roundingMm' | 'holeMm'>;

/** What is wrong with measures beside each other, each of which may stand alone. */
export function measureErrors({ alongMm, acrossMm, roundingMm, holeMm }: Measures): MeasureError[] {
  const mostMm = Math.min(alongMm, acrossMm) / 2;
  return [
    ...(roundingMm > mostMm + NOISE_MM ? [{ code: 'rounding-too-large' as const, roundingMm, mostMm }] : []),
    ...(holeMm >= acrossMm && acrossMm > 0 ? [{ code: 'hole-too-wide' as const, holeMm, acrossMm }] : []),
  ];
}

function validateOne(component: Component, at: string, problems: ValidationError[]): void {
  const { kind, alongMm, acrossMm, material } = component;
  const about = (field: string) => ({ at: `${at}.${field}`, component: component.id });
  if (alongMm === 0 && !MAY_BE_NOTHING_LONG.has(kind)) {
    report(problems, { code: 'no-length', ...about('alongMm') });
  }
  if (acrossMm === 0) report(problems, { code: 'no-width', ...about('acrossMm') });
  for (const error of measureErrors(component)) {
    report(problems, { ...error, ...about(error.code === 'hole-too-wide' ? 'holeMm' : 'roundingMm') });
  }
  if (!isMaterial(material)) report(problems, { code: 'unknown-material', ...about('material'), material });
}

/** Every component of the design, named or not. */
export function validateMeasures(design: Design, problems: ValidationError[]): void {
  for (const [key, component] of Object.entries(design.components)) {
    const at = `components.${key}`;
    if (component.id !== key)
      report(problems, { code: 'id-differs', at: `${at}.id`, component: component.id, key });
    validateOne(component, at, problems);
  }
}
