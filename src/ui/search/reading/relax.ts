/** What to leave away, step by step, when no piece has all that was asked for. */
import type { Part } from './reading.ts';

/** What a buyer would sooner do without stands first. */
const SOONER = ['status', 'year', 'has', 'closing', 'word', 'length', 'strands', 'bead', 'cost', 'fits'];
const groupOf = ({ ask }: Part): string => (ask.by === 'pairs' ? ask.group : ask.by);
const order = (part: Part): number => {
  const at = SOONER.indexOf(groupOf(part));
  return at < 0 ? SOONER.length : at;
};

/** Never left away: nobody takes a necklace for a bracelet, and what a piece shall be free of may harm who asks. */
const stays = (part: Part): boolean =>
  groupOf(part) === 'kind' || (groupOf(part) === 'has' && part.ask.by === 'pairs' && part.ask.not);

/** More that come near would look like an answer. */
export const MOST_NEAR = 6;

/** Ever shorter lists of what is asked for, down to what stays, or to the last thing where nothing does. */
export function relaxed(parts: readonly Part[]): readonly (readonly Part[])[] {
  const kept = parts.filter(stays);
  const leaving = parts.filter((part) => !stays(part)).sort((a, b) => order(a) - order(b));
  const single = leaving.map((part) => parts.filter((other) => other !== part));
  const steps = leaving.map((_, at) => [...kept, ...leaving.slice(at + 1)]);
  return [...single, ...steps].filter((list) => list.length > 0 && list.length < parts.length);
}
