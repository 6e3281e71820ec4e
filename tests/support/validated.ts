/** Short forms of what `validateDesign` finds, and damage to hand it. */
import { validateDesign } from '#core/design/validate/validateDesign.ts';
import type { Component } from '#core/design/component.ts';
import type { ValidationError } from '#core/design/validationError.ts';
import type { Design } from '#core/design/design.ts';
import { design, withComponent } from './workshop.ts';

export const found = (of: unknown): ValidationError[] => validateDesign(of as Design);
export const told = (of: unknown) => found(of).map(({ code, at, ...rest }) => [code, at, rest]);
export const codes = (of: unknown) => found(of).map(({ code, at }) => `${code} ${at}`);

/** The plain bracelet with its bead changed. */
export const ball = (more: Partial<Component>) => withComponent(design(), 'ball-8', more);

/** A copy with the value at a dotted path replaced; `undefined` takes it away. */
export function changed(of: Design, path: string, value: unknown): unknown {
  const copy = structuredClone(of) as unknown as Record<string, unknown>;
  const steps = path.split('.');
  let at: Record<string, unknown> = copy;
  for (const step of steps.slice(0, -1)) at = at[step] as Record<string, unknown>;
  const last = steps.at(-1) ?? '';
  if (value === undefined) delete at[last];
  else at[last] = value;
  return copy;
}
