/**
 * What can be told of a piece that has a wrong field elsewhere, so that its
 * maker learns of everything at once: names that nothing has, counts out of order.
 */
import type { CatalogueError } from '#words/catalogueCodes.ts';
import { beadLine, isId } from '../fields/field.ts';
import type { Broken } from '../read/collect.ts';
import { near } from '../read/near.ts';
import type { FieldPath, Problem } from '../read/problem.ts';

/** Where a piece names components, and where its sections are; `*` for each of a list. */
const NAMING: readonly (readonly string[])[] = [
  ...['clasp', 'ring', 'crimp', 'cover', 'guard'].map((part) => ['closing', part]),
  ['pendant', 'hangs'],
  ['pendant', 'rings', '*'],
  ['instead', 'clasps', '*', 'clasp'],
  ['instead', 'clasps', '*', 'ring'],
  ['instead', 'pendants', '*'],
  ['sections', '*', 'beads', '*'],
  ['strands', '*', 'sections', '*', 'beads', '*'],
];
const SECTIONS: readonly (readonly string[])[] = [
  ['sections', '*'],
  ['strands', '*', 'sections', '*'],
];

type Found = { readonly value: unknown; readonly path: FieldPath };

/** Whatever stands at a path, as far as the entry goes. */
function at(value: unknown, [step, ...rest]: readonly string[], path: FieldPath = []): Found[] {
  if (step === undefined) return value === undefined || value === null ? [] : [{ value, path }];
  if (step === '*') {
    const list = Array.isArray(value) ? (value as readonly unknown[]) : [value];
    return list.flatMap((one, index) => at(one, rest, [...path, index]));
  }
  if (typeof value !== 'object' || value === null) return [];
  return at((value as Readonly<Record<string, unknown>>)[step], rest, [...path, step]);
}

function nameOf({ value, path }: Found): string | null {
  if (path.at(-2) !== 'beads') return typeof value === 'string' && isId(value) ? value : null;
  const bead = beadLine.safeParse(value);
  return bead.success ? bead.data.component : null;
}

function countsError(section: unknown): CatalogueError | null {
  if (typeof section !== 'object' || section === null) return null;
  const { usual = 1, fewest = usual, most = usual } = section as Readonly<Record<string, unknown>>;
  if (!Number.isInteger(usual) || !Number.isInteger(fewest) || !Number.isInteger(most)) return null;
  const counts = { fewest: Number(fewest), usual: Number(usual), most: Number(most) };
  const inOrder = counts.fewest <= counts.usual && counts.usual <= counts.most;
  return inOrder ? null : { code: 'counts-order', ...counts };
}

export function assertBroken(
  { data, problemAt }: Broken,
  components: ReadonlySet<string>,
  wires: ReadonlySet<string>,
): Problem[] {
  const unknown = NAMING.flatMap((naming) =>
    at(data, naming).flatMap((found) => {
      const id = nameOf(found);
      if (id === null || components.has(id)) return [];
      return [problemAt(found.path, { code: 'unknown-component', id, near: near(id, components) })];
    }),
  );
  const strange = at(data, ['wire']).flatMap(({ value, path }) => {
    if (typeof value !== 'string' || !isId(value) || wires.has(value)) return [];
    return [problemAt(path, { code: 'unknown-wire', id: value, near: near(value, wires) })];
  });
  const counts = SECTIONS.flatMap((where) =>
    at(data, where).flatMap(({ value, path }) => {
      const error = countsError(value);
      return error === null ? [] : [problemAt(path, error)];
    }),
  );
  return [...unknown, ...strange, ...counts];
}
