/** Orders as JSON, each with its state and history: what another program, or this bench again, can read. */
import { history, type Entry, type Event } from '../book/entry.ts';
import type { Book } from '../book/open.ts';

export type Exported = Omit<Entry, 'snapshotId' | 'version'> & { readonly history: readonly Event[] };

export function toExport(book: Book, entries: readonly Entry[]): Exported[] {
  return entries.map(({ snapshotId: _snapshot, version: _version, ...entry }) => ({
    ...entry,
    history: history(book, entry.document.number),
  }));
}
