/** The outbox's place in the store, apart so that looking whether it is empty costs no more than this. */
import type { Store } from '../../model/ports.ts';

export const OUTBOX_KEY = 'claspwise.outbox';
const EMPTY = '[]';

/** What is kept, as JSON. */
export const readText = (store: Store): string => store.read(OUTBOX_KEY) ?? EMPTY;

export const isEmpty = (store: Store): boolean => readText(store) === EMPTY;

/** False where it can't be kept. */
export const writeText = (store: Store, text: string): boolean => store.write(OUTBOX_KEY, text);
