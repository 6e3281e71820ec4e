/** Codes of publishing that the bench makes sentences of. */

/** `reading` content, building the `program`, making `pages`, the `search` index, `putting` it in place. */
export type Step = 'reading' | 'program' | 'pages' | 'search' | 'putting';

/** One entry that a publishing would change; of a guide, the language stands before its id. */
export type Changed = {
  readonly id: string;
  readonly name: string;
  readonly how: 'new' | 'changed' | 'gone';
};
