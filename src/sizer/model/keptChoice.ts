/**
 * What this device keeps of choices that belong to one piece: the parts chosen instead of the listed ones, and which
 * of the nearest pieces. It stands in the entry of sizes, by the piece. Never sent anywhere.
 */
import { type ChosenParts, PICKS, type Pick } from '#core/design/choice.ts';
import { parseLength } from '#core/units/length.ts';
import type { PieceForSizer } from './input.ts';
import { keep, kept } from './keptSize.ts';
import type { Store } from './ports.ts';
import type { SizerState } from './sizerState.ts';

/** Pieces that choices are kept of, the latest. */
const MOST = 24;

/** Clasp, pendant, pick, and the size that it was made for. */
type Kept = readonly unknown[];
type Named = { readonly id: string; readonly offers?: PieceForSizer['offers'] };

/** The parts kept for a piece, as far as they are still offered; '' for the others. */
export function keptParts(store: Store, { id, offers = [] }: Named): ChosenParts {
  const [clasp, pendant] = entryOf(store, id);
  const offered = (part: keyof ChosenParts, chosen: unknown): string =>
    offers.find((one) => one.part === part && one.id === chosen)?.id ?? '';
  return { clasp: offered('clasp', clasp), pendant: offered('pendant', pendant) };
}

/** The pick kept for a piece; `best` where it was made for another size than the state's. */
export function keptPick(store: Store, { id }: Named, state: SizerState): Pick {
  const [, , pick, size] = entryOf(store, id);
  return (size === sizeOf(state) && PICKS.find((one) => one === pick)) || 'best';
}

/** Keeps what a state has chosen for a piece. */
export function keepChoice(store: Store, { id }: Named, state: SizerState): void {
  const { parts, pick } = state;
  const others = entries(store).filter(([piece]) => piece !== id);
  const own = [id, [parts.clasp, parts.pendant, pick, sizeOf(state)]] as const;
  keep(store, { chosen: [...others, own].slice(-MOST) });
}

/** The same in whichever unit it is written. */
function sizeOf({ of, text, unit, sit }: SizerState): string {
  const read = parseLength(text, unit);
  return [of, read.ok && read.mm.toFixed(1), sit].join();
}

const entryOf = (store: Store, id: string): Kept =>
  listOf(entries(store).find(([piece]) => piece === id)?.[1]);
const entries = (store: Store): readonly Kept[] => listOf(kept(store)['chosen']).map(listOf);
const listOf = (value: unknown): Kept => (Array.isArray(value) ? value : []);
