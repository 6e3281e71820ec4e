/** What a piece names is there. */
import { namedComponents, namedInstead } from '../build/design.ts';
import type { Entry } from '../read/entry.ts';
import { near } from '../read/near.ts';
import type { Problem } from '../read/problem.ts';
import type { AuthoredPiece } from '../schemas/piece.ts';

/** Every named component exists. `known` holds broken ones too: those have problems of their own. */
export function assertComponentsExist(entry: Entry<AuthoredPiece>, known: ReadonlySet<string>): Problem[] {
  return [...namedComponents(entry.value), ...namedInstead(entry.value)]
    .filter(({ id }) => !known.has(id))
    .map(({ id, path }) => entry.problemAt(path, { code: 'unknown-component', id, near: near(id, known) }));
}

export function assertWireExists(entry: Entry<AuthoredPiece>, known: ReadonlySet<string>): Problem[] {
  const { wire } = entry.value;
  return known.has(wire)
    ? []
    : [entry.problemAt(['wire'], { code: 'unknown-wire', id: wire, near: near(wire, known) })];
}
