/** What a publishing would change in the shop: the content as it lies now, beside that of a release. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { storeCatalogue, type StoredCatalogue } from '#catalogue/model/storedCatalogue.ts';
import { CATALOGUE_FILE } from '#catalogue/released/place.ts';
import type { Changed } from '#words/publishing.ts';
import type { Content } from './content.ts';
import type { ReleaseRecord } from './record.ts';

const KINDS = ['pieces', 'components', 'wires', 'guides'] as const;
export type ChangedKind = (typeof KINDS)[number];

export type Changes = Readonly<Record<ChangedKind, readonly Changed[]>> & {
  /** The shop's own file: rules, prices of work, post, addresses. */
  readonly shop: boolean;
};

/** True where a publishing would change nothing that a buyer sees. */
export const isNothing = (changes: Changes): boolean =>
  !changes.shop && KINDS.every((kind) => changes[kind].length === 0);

type Entry = { readonly id: string; readonly name: string; readonly text: string };

type Photographs = Readonly<Record<string, string>>;

/** Entries as texts to compare. A piece's revision is left out: it changes with each bead in it, which is told of itself. */
function entries(
  stored: StoredCatalogue,
  photographs: Photographs,
): Readonly<Record<ChangedKind, readonly Entry[]>> {
  const entry = ({ id, name }: { id: string; name: string }, data: object): Entry => ({
    id,
    name,
    text: JSON.stringify(data),
  });
  return {
    pieces: stored.pieces.map(({ revision: _revision, ...piece }) =>
      entry(piece, { ...piece, shots: piece.pictures.map(({ file }) => photographs[file]) }),
    ),
    components: stored.components.map((one) => entry(one, one)),
    wires: stored.wires.map((one) => entry(one, one)),
    guides: stored.guides.map(({ html: _html, ...guide }) =>
      entry({ id: `${guide.lang}/${guide.id}`, name: guide.title }, guide),
    ),
  };
}

function compare(before: readonly Entry[], now: readonly Entry[]): Changed[] {
  const old = new Map(before.map((entry) => [entry.id, entry]));
  const present = new Set(now.map(({ id }) => id));
  const changed = now.flatMap(({ id, name, text }): Changed[] => {
    const was = old.get(id);
    if (was === undefined) return [{ id, name, how: 'new' }];
    return was.text === text ? [] : [{ id, name, how: 'changed' }];
  });
  const gone = before.filter(({ id }) => !present.has(id));
  return [...changed, ...gone.map(({ id, name }): Changed => ({ id, name, how: 'gone' }))];
}

/**
 * @param release folder of the release to compare with, and its record
 * @throws Error where its catalogue can't be read
 */
export function changesSince(release: string, record: ReleaseRecord, content: Content): Changes {
  const published = JSON.parse(readFileSync(join(release, CATALOGUE_FILE), 'utf8')) as StoredCatalogue;
  // Guides are compared as they are written.
  const guides = content.catalogue.guides.map((guide) => ({ ...guide, html: '' }));
  const stored = storeCatalogue(content.catalogue, guides);
  const before = entries(published, record.photographs);
  const now = entries(JSON.parse(JSON.stringify(stored)) as StoredCatalogue, content.photographs);
  const [pieces, components, wires, guideChanges] = KINDS.map((kind) => compare(before[kind], now[kind]));
  return {
    pieces: pieces ?? [],
    components: components ?? [],
    wires: wires ?? [],
    guides: guideChanges ?? [],
    shop: JSON.stringify(published.shop) !== JSON.stringify(stored.shop),
  };
}
