/** What is sent and removed, in an order in which no visitor meets a page whose parts aren't there. */
import type { Manifest, Unsure } from './manifest.ts';
import { isNamedByContent, isPage, type Digests } from './publicFiles.ts';

const FRONT_PAGE = 'index.html';

export type Plan = {
  /** Sent one group after the other; within a group in any order. */
  readonly groups: readonly (readonly string[])[];
  /** Removed after all that. */
  readonly remove: readonly string[];
  /** Left for pages that somebody has open, and removed with the next upload. */
  readonly leaving: readonly string[];
  /** What is on its way, for the list on the host. */
  readonly unsure: Readonly<Record<string, Unsure>>;
};

/**
 * Groups: first what no page that lies there asks for (pictures, scripts and styles under names of their own, other
 * files that are new), then new pages, which only new parts and pages lead on to, then files that change under
 * their name and may lead to the new pages, then the pages that change.
 * @param whole sends every file again, whatever the list says
 */
export function planUpload(wanted: Digests, there: Manifest, whole = false): Plan {
  const paths = Object.keys(wanted);
  const wasThere = (path: string): boolean => path in there.files || there.unsure[path] === 'there';
  const send = paths.filter((path) => whole || there.files[path] !== wanted[path]);
  // Visitors ask for the front page by themselves, so it never counts as one that nobody leads to yet.
  const changes = (path: string): boolean =>
    path === FRONT_PAGE || (wasThere(path) && !isNamedByContent(path));
  const groups = [
    send.filter((path) => !isPage(path) && !changes(path)),
    send.filter((path) => isPage(path) && !changes(path)),
    send.filter((path) => !isPage(path) && changes(path)),
    send.filter((path) => isPage(path) && changes(path)),
  ];
  const old = new Set([...Object.keys(there.files), ...Object.keys(there.unsure)]);
  const unwanted = [...old].filter((path) => !(path in wanted));
  const left = new Set(there.leaving);
  const stays = (path: string): boolean => path in there.files && isNamedByContent(path) && !left.has(path);
  const remove = unwanted.filter((path) => !stays(path));
  const touched = [...send, ...remove];
  return {
    groups,
    remove,
    leaving: unwanted.filter(stays),
    unsure: Object.fromEntries(touched.map((path) => [path, wasThere(path) ? 'there' : 'new'])),
  };
}

export const isNothing = ({ groups, remove }: Plan): boolean =>
  remove.length === 0 && groups.every((group) => group.length === 0);

/** The list while the upload runs: what it touches is known to nobody until the journal says so. */
export function listDuring(there: Manifest, { unsure }: Plan): Manifest {
  const files = Object.fromEntries(Object.entries(there.files).filter(([path]) => !(path in unsure)));
  return { version: 1, release: null, files, unsure, leaving: there.leaving };
}

/** The list after it. Files that are leaving still lie there. */
export function listAfter(release: string, wanted: Digests, there: Manifest, { leaving }: Plan): Manifest {
  const stay = leaving.map((path) => [path, there.files[path] ?? ''] as const);
  return { version: 1, release, files: { ...wanted, ...Object.fromEntries(stay) }, leaving, unsure: {} };
}
