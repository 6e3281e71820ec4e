/** What a piece names is there. */
import { namedComponents, namedInstead, namedWire } from '../build/naming.ts';
import { near } from '../read/near.ts';
import type { Problem, WrittenPiece } from '../read/problem.ts';

/** Every named component exists. `known` holds broken ones too: those have problems of their own. */
export function assertComponentsExist(
  { value, problemAt }: WrittenPiece,
  known: ReadonlySet<string>,
): Problem[] {
  return [...namedComponents(value), ...namedInstead(value)]
    .filter(({ id }) => !known.has(id))
    .map(({ id, path }) => problemAt(path, { code: 'unknown-component', id, near: near(id, known) }));
}

export function assertWireExists({ value, problemAt }: WrittenPiece, known: ReadonlySet<string>): Problem[] {
  return namedWire(value)
    .filter(({ id }) => !known.has(id))
    .map(({ id, path }) => problemAt(path, { code: 'unknown-wire', id, near: near(id, known) }));
}
