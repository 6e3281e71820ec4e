/** New pieces out of old ones: other beads of the same size, other counts within their bounds. */
import type { Component } from '#core/design/component.ts';
import type { AuthoredSection } from '#catalogue/schemas/piece.ts';
import type { Random } from './random.ts';

type Components = Readonly<Record<string, Component>>;

/** Components that can stand where another stands: as long, as wide, and with a hole no smaller. */
export function kinOf(components: Components): ReadonlyMap<string, readonly [string, ...string[]]> {
  const all = Object.values(components);
  return new Map(
    all.map((one) => {
      const kin = all.filter(
        (other) =>
          other.id !== one.id &&
          other.kind === one.kind &&
          other.shape === one.shape &&
          other.alongMm === one.alongMm &&
          other.acrossMm === one.acrossMm &&
          other.holeMm >= one.holeMm,
      );
      return [one.id, [one.id, ...kin.map(({ id }) => id)]];
    }),
  );
}

/** A section as it is written in a file. */
export type WrittenSection = Omit<AuthoredSection, 'beads'> & { readonly beads: string | readonly string[] };

/** The same section with each of its beads exchanged by `swap`, and its usual count moved by at most one. */
export function varySection(section: WrittenSection, swap: (id: string) => string, random: Random): object {
  const lines = typeof section.beads === 'string' ? [section.beads] : section.beads;
  const beads = lines.map((line) => line.replace(/\S+$/, swap));
  const { usual, fewest = usual, most = usual } = section;
  if (usual === undefined) return { ...section, beads };
  const moved = Math.min(most, Math.max(fewest, usual + random.between(-1, 1)));
  return { ...section, beads, usual: moved };
}
