/** Volume of a component from its outline, less its hole. Cubic millimetres. */
import type { Component, Shape } from '../component.ts';

/**
 * What share of its turned outline a shape fills. Exact where geometry says
 * so; the rest are estimates (from memory), and `isRough` tells which.
 */
const FILL: Readonly<Record<Shape, number>> = {
  ball: 1,
  rondelle: 1,
  tube: 1,
  // Two cones on one base: a third of the cylinder round them.
  bicone: 1 / 3,
  // A square section over the circle in it.
  cube: 4 / Math.PI,
  chip: 0.55,
  coin: 0.45,
  drop: 0.6,
  // A thin shell.
  cap: 0.25,
  ring: 1,
  lobster: 0.35,
  'spring-ring': 0.25,
  toggle: 0.2,
  hook: 0.2,
  box: 0.5,
  magnetic: 0.9,
};

const EXACT: ReadonlySet<Shape> = new Set<Shape>(['ball', 'rondelle', 'tube', 'bicone', 'cube', 'ring']);

/** True where the volume goes by a guessed share of the outline. */
export const isRough = (shape: Shape): boolean => !EXACT.has(shape);

/** A corner no sharper can be measured; its square must not vanish. */
const SHARP_MM = 1e-6;

/**
 * Half of the turned part of one rounded end, from the flat's edge outwards,
 * less the hole: the integral of π((inner + √(c² − x²))² − hole²) while it is
 * above 0. For a ball it makes the napkin-ring volume π/6 (D² − d²)^1.5.
 */
function roundedEnd(inner: number, corner: number, hole: number): number {
  if (corner < SHARP_MM) return 0;
  const rise = Math.max(0, hole - inner);
  if (rise >= corner) return 0;
  const reach = Math.sqrt(corner ** 2 - rise ** 2);
  const underArc = (reach * rise + corner ** 2 * Math.asin(reach / corner)) / 2;
  const square = inner ** 2 + corner ** 2 - hole ** 2;
  return Math.PI * (square * reach + 2 * inner * underArc - reach ** 3 / 3);
}

/** The outline `along × across` with its corners, turned about the wire, less the hole. */
function turned(component: Component): number {
  const radius = component.acrossMm / 2;
  const hole = component.holeMm / 2;
  const corner = Math.min(component.roundingMm, component.alongMm / 2, radius);
  const flat = (component.alongMm - 2 * corner) * Math.max(0, radius ** 2 - hole ** 2) * Math.PI;
  return flat + 2 * roundedEnd(radius - corner, corner, hole);
}

/** A ring of round wire: `across` outside, `along` (bearing to bearing) inside. */
function torus(component: Component): number {
  const wire = (component.acrossMm - component.alongMm) / 2;
  if (wire <= 0) return 0;
  return (Math.PI ** 2 / 4) * wire ** 2 * (component.acrossMm - wire);
}

/** A bicone or a cube: its own solid less the cylinder of the hole. */
function solid(component: Component, fill: number): number {
  const outline = (Math.PI / 4) * component.acrossMm ** 2 * component.alongMm * fill;
  const bore = (Math.PI / 4) * component.holeMm ** 2 * component.alongMm;
  return Math.max(0, outline - bore);
}

/** A pendant hangs off the wire: its length is what it hangs, not what it takes along. */
function body(component: Component): Component {
  return component.kind === 'pendant' && component.hangMm > 0
    ? { ...component, alongMm: component.hangMm, roundingMm: 0, holeMm: 0 }
    : component;
}

/** Volume in mm³, 0 or more. */
export function volumeMm3(component: Component): number {
  const outline = body(component);
  if (outline.shape === 'ring') return torus(outline);
  if (outline.shape === 'bicone' || outline.shape === 'cube') return solid(outline, FILL[outline.shape]);
  return Math.max(0, turned(outline) * (FILL[outline.shape] ?? 1));
}
