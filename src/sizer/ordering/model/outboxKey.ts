/** The outbox's place in the store, apart so that looking whether it is empty costs no more than this. */
export const OUTBOX_KEY = 'claspwise.outbox';
