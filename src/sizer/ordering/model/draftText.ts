/** Where a form that is half filled in is kept on this device. Apart, so that the page can look without the form's code. */
import type { Store } from '../../model/ports.ts';

export const DRAFT_KEY = 'claspwise.form';

/** The kept entry; empty where nothing sound is kept. */
export function draftEntry(store: Store): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(store.read(DRAFT_KEY) ?? '{}');
    return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}

/** The piece in her size, or the one that lies finished. */
export type Ordered = 'sized' | 'ready';

/** Which form for this piece was begun and not sent; null where none was. */
export function begunFor(store: Store, pieceId: string): Ordered | null {
  const { piece, ordered } = draftEntry(store);
  if (piece !== pieceId) return null;
  return ordered === 'ready' ? 'ready' : 'sized';
}
