/** From what the maker wrote to the core's component, with defaults kind to her. */
import { CLASP_SHAPES, LOOPS } from '#core/design/component.ts';
import type { Component, ComponentKind, Shape } from '#core/design/component.ts';
import { isMaterial, DENSITY_G_PER_CM3 } from '#core/design/mass/density.ts';
import { measureErrors } from '#core/design/validate/measures.ts';
import type { CatalogueError } from '#words/catalogueCodes.ts';
import { materials } from '../model/materials.ts';
import type { Entry } from '../read/entry.ts';
import { near } from '../read/near.ts';
import type { FieldPath, Problem } from '../read/problem.ts';
import type { AuthoredComponent } from '../schemas/component.ts';

/** The shape most of a kind have; a clasp has to say which it is. */
const usualShape: Readonly<Record<Exclude<ComponentKind, 'clasp'>, Shape>> = {
  bead: 'ball',
  spacer: 'rondelle',
  cap: 'cap',
  crimp: 'tube',
  cover: 'ball',
  ring: 'ring',
  pendant: 'drop',
};

/** Corner radius as a share of the lesser measure: a half is fully round, 0 a sharp edge. */
const rounded: Readonly<Record<Shape, number>> = {
  ball: 1 / 2,
  rondelle: 1 / 2,
  bicone: 1 / 2,
  tube: 0,
  cube: 0,
  chip: 1 / 4,
  coin: 1 / 2,
  drop: 1 / 2,
  cap: 1 / 4,
  ring: 1 / 2,
  lobster: 1 / 4,
  'spring-ring': 1 / 2,
  toggle: 1 / 4,
  hook: 1 / 4,
  box: 1 / 8,
  magnetic: 1 / 8,
};

/** Clasps that one hand works at one side while the other holds the ring. */
const handedShapes: readonly Shape[] = ['lobster', 'spring-ring'];

/** Kinds that the wire runs through, so that their hole has to be known. */
const threaded: readonly ComponentKind[] = ['bead', 'spacer', 'cap', 'crimp'];

/** Fields that only some kinds have. */
const onlyFor: readonly (readonly [keyof AuthoredComponent & string, readonly ComponentKind[]])[] = [
  ['closed', ['crimp']],
  ['takes', ['cover']],
  ['one-handed', ['clasp']],
  ['ways', ['clasp']],
  ['loop', ['pendant']],
  ['hang', ['pendant']],
  ['joint', ['ring']],
];

/** True for a field that a component of this kind may have; one that only some kinds have is refused with others. */
export function isFieldOf(field: string, kind: string): boolean {
  const row = onlyFor.find(([name]) => name === field);
  return row === undefined || row[1].some((one) => one === kind);
}

type Field = keyof AuthoredComponent & string;

/** Measures that a kind can't do without. */
const measured: Readonly<Partial<Record<ComponentKind, readonly Field[]>>> = {
  crimp: ['closed'],
  cover: ['takes'],
  pendant: ['hang'],
};

/** What has to be chosen for a kind, for nothing is usual. */
const chosen: Readonly<Partial<Record<ComponentKind, { readonly field: Field; readonly options: string }>>> =
  {
    clasp: { field: 'shape', options: CLASP_SHAPES.join(', ') },
    pendant: { field: 'loop', options: LOOPS.join(', ') },
  };

/** True for a field that a component of this kind has to say, for nothing is usual. */
export const isNeededFor = (field: string, kind: string): boolean =>
  Object.entries(chosen).some(([one, { field: of }]) => one === kind && of === field);

/** What holds where a component of this kind leaves the field out; null where that is nothing, or it has to say. */
export const usualFor = (field: string, kind: string): string | null =>
  field === 'shape' && kind in usualShape ? usualShape[kind as keyof typeof usualShape] : null;

type Report = (path: FieldPath, error: CatalogueError) => void;

function checkFields(value: AuthoredComponent, report: Report): void {
  const { kind } = value;
  for (const [field, of] of onlyFor) {
    if (value[field] !== undefined && !of.includes(kind))
      report([field], { code: 'field-not-for', field, kind });
  }
  const choice = chosen[kind];
  if (choice !== undefined && value[choice.field] === undefined) {
    report([], { code: 'choice-needed', kind, ...choice });
  }
  for (const field of measured[kind] ?? []) {
    if (value[field] === undefined) report([], { code: 'measure-needed', field, kind });
  }
  if (threaded.includes(kind) && value.hole === undefined) {
    report([], { code: 'measure-needed', field: 'hole', kind });
  }
  const { material } = value;
  if (!isMaterial(material)) {
    const close = near(material, Object.keys(DENSITY_G_PER_CM3));
    report(['material'], { code: 'unknown-material', material, near: close });
  }
}

/** Cautions that follow from what it is, with those the maker adds. */
function cautionsOf(value: AuthoredComponent): Component['cautions'] {
  const own = new Set(value.cautions);
  if (value.shape === 'magnetic') own.add('magnet');
  if (value.material === 'lead-crystal') own.add('lead');
  return [...own];
}

/** Length and width, from `size` alone or from both. */
function outline(value: AuthoredComponent): { alongMm: number; acrossMm: number } | null {
  const { size, across } = value;
  // A pendant hangs from the wire and takes nothing of its length.
  const along = value.along ?? (value.kind === 'pendant' && size === undefined ? 0 : undefined);
  if (size !== undefined)
    return along === undefined && across === undefined ? { alongMm: size, acrossMm: size } : null;
  return along !== undefined && across !== undefined ? { alongMm: along, acrossMm: across } : null;
}

/** The core's component, or all that is wrong with it. */
export function buildComponent(entry: Entry<AuthoredComponent>): {
  component: Component | null;
  problems: Problem[];
} {
  const { value, id } = entry;
  const problems: Problem[] = [];
  const report: Report = (path, error) => problems.push(entry.problemAt(path, error));
  checkFields(value, report);
  const { kind } = value;
  const shape = value.shape ?? (kind === 'clasp' ? 'lobster' : usualShape[kind]);
  const size = outline(value);
  if (size === null) {
    report([], { code: 'size-or-both', shape });
    return { component: null, problems };
  }
  const roundingMm = value.rounding ?? Math.min(size.alongMm, size.acrossMm) * rounded[shape];
  const holeMm = value.hole ?? (kind === 'cover' ? (value.takes ?? 0) : kind === 'ring' ? size.alongMm : 0);
  for (const error of measureErrors({ ...size, roundingMm, holeMm })) {
    report([error.code === 'hole-too-wide' ? 'hole' : 'rounding'], error);
  }
  if (problems.length > 0) return { component: null, problems };
  const { material } = value;
  const component: Component = {
    id,
    kind,
    name: value.name,
    shape,
    ...size,
    roundingMm,
    holeMm,
    material,
    massG: value.weight ?? null,
    look: {
      family: isMaterial(material) ? materials[material].family : 'glass',
      colour: value.colour,
      accent: value.accent ?? null,
    },
    costMinor: value.cost.minor,
    stock: value.stock ?? null,
    closedMm: value.closed ?? value.takes ?? null,
    handed: value['one-handed'] ?? handedShapes.includes(shape),
    ways: value.ways ?? 1,
    loop: value.loop ?? null,
    // A ring is soldered unless she says that it opens: the mistake is then found before it is strung.
    ...(kind === 'ring' ? { joint: value.joint ?? 'closed' } : {}),
    hangMm: value.hang ?? 0,
    cautions: cautionsOf(value),
  };
  return { component, problems };
}
