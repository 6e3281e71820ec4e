/** Fetches the shop's vocabulary, reads queries with it and asks the index. Comes with the first search, not before. */
import { openVocabulary } from '../reading/open.ts';
import type { Vocabulary } from '../reading/vocabulary.ts';

export { pricesOf } from '../figures.ts';
export { fold, stem } from '../reading/fold.ts';
export { searchEngine } from './engine.ts';
export { fitsFilter } from '../marks.ts';
export { asksReady } from '../reading/asksReady.ts';
export { readQuery } from '../reading/read.ts';
export { MOST_NEAR, relaxed } from '../reading/relax.ts';
export type Opened = ReturnType<typeof openVocabulary>;

/** @throws TypeError without a network, Error with the answer's status */
export async function fetchVocabulary(address: string): Promise<Opened> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`got ${answer.status} for ${address}, expected the search's words`);
  return openVocabulary((await answer.json()) as Vocabulary);
}
