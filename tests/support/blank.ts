/** A component with nothing special about it, of which every fixture makes its own. */
import type { Component } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';

export const BLANK: Component = {
  id: 'blank',
  kind: 'bead',
  name: 'blank',
  shape: 'ball',
  alongMm: 6,
  acrossMm: 6,
  roundingMm: 3,
  holeMm: 1,
  material: 'glass',
  massG: null,
  look: { family: 'glass', colour: '#808080', accent: null },
  costMinor: 10,
  stock: null,
  closedMm: null,
  handed: false,
  ways: 1,
  loop: null,
  hangMm: 0,
  cautions: [],
};

/** A design with each of its components made into another. */
export const mapComponents = (design: Design, of: (component: Component) => Component): Design => ({
  ...design,
  components: Object.fromEntries(Object.entries(design.components).map(([id, one]) => [id, of(one)])),
});
