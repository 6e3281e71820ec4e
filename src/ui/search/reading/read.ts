/** Reads a query: what is asked for, what was put right, what nothing holds. */
import type { ShownUnit } from '#core/units/unit.ts';
import { addAmount, type Compare, type Meant, type Measuring } from './amountMeant.ts';
import { askFor, askForBeads, giveUp, negateLast, newDraft } from './draft.ts';
import { fill } from './fill.ts';
import { itemsOf, type Item } from './items.ts';
import type { Opened, Role, Sense } from './open.ts';
import type { Place, Reading } from './reading.ts';

/** Markup that came along with pasted words: as long, and empty. */
const plain = (query: string): string =>
  query.normalize('NFC').replace(/<[^<>]*>/g, (tag) => ' '.repeat(tag.length));

/**
 * @param unit of a bare number
 * @param live true while the last word is being written
 */
export function readQuery(
  query: string,
  opened: Opened,
  { unit, live = false }: { readonly unit: ShownUnit; readonly live?: boolean },
): Reading {
  const text = plain(query);
  const draft = newDraft(opened.vocabulary);
  const words = opened.vocabulary.said;
  const amounts: Meant[] = [];
  let body: Measuring['body'] = null;
  let sized = false;
  /** A small, medium or large one is asked for. */
  let rough = false;
  /** What is open until the next word: "no", "or", "under", "dark". */
  let not: Place | null = null;
  let or = false;
  let compare: { readonly is: Compare; readonly at: Place } | null = null;
  let shade: Item | null = null;
  let before: 'amount' | 'concept' | 'other' = 'other';

  for (const item of itemsOf(text, opened, live)) {
    if (item.corrected !== null) {
      const values = { from: item.text, to: item.corrected };
      draft.said.push({ code: 'corrected', text: fill(words.corrected, values) });
    }
    if (item.amount !== null) takeAmount(item, item.amount);
    else if (item.seed !== null) {
      askForBeads(draft, item.seed, item.seed, item.at);
      before = 'amount';
    } else if (before === 'amount' && opened.isBead(item.text)) before = 'other';
    else if (item.senses.length === 0) giveUp(draft, 'unknown', item.text);
    else for (const sense of item.senses) takeSense(item, sense);
  }
  dropShade();
  for (const meant of amounts) addAmount(draft, meant, { body, sized, unit });
  if (rough) draft.said.push({ code: 'rough', text: words.rough });
  if (draft.idle.length > 0)
    draft.said.push({ code: 'idle', text: fill(words.idle, { words: draft.idle.join(', ') }) });
  const { parts, sort, said, hopeless } = draft;
  return { parts, sort, said, hopeless };

  function takeAmount({ text: written, at: [from, to] }: Item, amount: Meant['amount']): void {
    const how = compare?.is ?? (amount.open ? 'over' : null);
    amounts.push({ amount, text: written, compare: how, at: [compare?.at[0] ?? from, to] });
    compare = null;
    before = 'amount';
  }

  function takeSense(item: Item, sense: Sense): void {
    if (sense.as === 'role') {
      takeRole(sense.role, item);
      if (sense.role !== 'stop') before = 'other';
      return;
    }
    compare = null;
    if (sense.as === 'word') {
      dropShade();
      if (not === null)
        draft.parts.push({ ask: { by: 'word', word: sense.word }, at: [item.at], label: null });
      else draft.idle.push(text.slice(not[0], item.at[1]));
      before = 'other';
    } else {
      const { concept } = sense;
      if (shade !== null && concept.group === 'colour') shade = null;
      else dropShade();
      // "45 cm long" says what the measure is of, not that it shall be long.
      if ((concept.group === 'length' || concept.fits !== null) && before === 'amount') sized = true;
      else askFor(draft, concept, [not?.[0] ?? item.at[0], item.at[1]], { not: not !== null, or });
      before = 'concept';
      or = false;
    }
    not = null;
  }

  function takeRole(role: Role, item: Item): void {
    const { at } = item;
    if (role === 'not') not = at;
    else if (role === 'or') or = true;
    else if (role === 'shade') {
      dropShade();
      shade = item;
    } else if (role === 'under' || role === 'over' || role === 'between' || role === 'about')
      compare = { is: role, at };
    else if (role === 'less' || role === 'more') limitLast(role === 'less' ? 'under' : 'over', at[1]);
    else if (role === 'wrist' || role === 'ankle' || role === 'neck') body = { of: role, at };
    else if (role === 'size') sized = true;
    else if (role === 'free' && before === 'concept') negateLast(draft, at[1]);
    else if (role === 'elsewhere' && not === null) giveUp(draft, role, item.corrected ?? item.text);
    else if (role === 'rough') rough = true;
    else if (role === 'idle' && item.senses.length === 1) draft.idle.push(item.text);
  }

  /** "£40 or less". */
  function limitLast(is: Compare, to: number): void {
    const last = amounts.pop();
    if (last === undefined) return;
    const beside = before === 'amount';
    amounts.push(beside ? { ...last, compare: is, at: [last.at[0], to] } : last);
  }

  /** A shade without a colour after it is a word like others. */
  function dropShade(): void {
    if (shade === null) return;
    const sense = opened.word(opened.keyOf(shade.text));
    if (sense?.as === 'word')
      draft.parts.push({ ask: { by: 'word', word: sense.word }, at: [shade.at], label: null });
    else draft.idle.push(shade.text);
    shade = null;
  }
}
