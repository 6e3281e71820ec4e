/** What a piece is looked through by: each has a list of the pieces with it, and a picture. Nobody looks for a crimp. */
import { sharesOf } from '#catalogue/facts/facets.ts';
import type { Component } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';

/** All that is strung or hung, most seen first, then the clasp. */
export function lookedFor(design: Design): readonly Component[] {
  const clasp = design.components[design.ends.clasp];
  return [...sharesOf(design).map(({ component }) => component), ...(clasp === undefined ? [] : [clasp])];
}
