/** Reads a query: what is asked for, what was put right, what nothing holds. */
import type { ShownUnit } from '#core/units/unit.ts';
import { addAmount, type Compare, type Meant, type Measuring } from './amountMeant.ts';
import { askFor, askForBeads, askOfClasp, giveUp, negateLast, newDraft } from './draft.ts';
import { fill } from './fill.ts';
import { fold } from './fold.ts';
import { itemsOf, type Item } from './items.ts';
import type { Opened, Role, Sense } from './open.ts';
import type { Part, Place, Reading } from './reading.ts';

/** What nobody here knows before a colour is a shade of it: "royal blue". */
const isColour = (item: Item | undefined): boolean =>
  item?.senses[0]?.as === 'concept' && item.senses[0].concept.group === 'colour';

const OPPOSITE: Readonly<Record<Compare, Compare>> = {
  under: 'over',
  over: 'under',
  between: 'between',
  about: 'about',
};

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
  let clasp: Item | null = null;
  let before: 'amount' | 'concept' | 'other' = 'other';

  const items = itemsOf(text, opened, live);
  for (const [place, item] of items.entries()) {
    if (item.corrected !== null) {
      const values = { from: item.text, to: item.corrected };
      draft.said.push({ code: 'corrected', text: fill(words.corrected, values) });
    }
    if (item.amount !== null) takeAmount(item, item.amount);
    else if (item.seed !== null) {
      askForBeads(draft, item.seed, item.seed, item.at);
      before = 'amount';
    } else if (before === 'amount' && opened.isBead(item.text)) before = 'other';
    else if (item.senses.length === 0 && isColour(items[place + 1])) draft.idle.push(item.text);
    else if (item.senses.length === 0) giveUp(draft, 'unknown', item.text);
    else for (const sense of item.senses) takeSense(item, sense, items[place + 1]);
  }
  dropShade();
  dropClasp();
  keepKinds();
  for (const meant of amounts) addAmount(draft, meant, { body, sized, unit });
  if (!draft.parts.some(({ ask }) => ask.by === 'cost')) draft.parts.push(...draft.ends);
  if (rough) draft.said.push({ code: 'rough', text: words.rough });
  if (draft.idle.length > 0)
    draft.said.push({ code: 'idle', text: fill(words.idle, { words: draft.idle.join(', ') }) });
  const { parts, sort, said, hopeless } = draft;
  return { parts, sort, said, hopeless };

  function takeAmount({ text: written, at: [from, to] }: Item, amount: Meant['amount']): void {
    // "From 30 to 50" is between them.
    const said = amount.least < amount.most && compare?.is === 'over' ? 'between' : compare?.is;
    const how = said ?? (amount.reach === 'open' ? 'over' : amount.reach);
    amounts.push({ amount, text: written, compare: how, at: [compare?.at[0] ?? from, to] });
    compare = null;
    before = 'amount';
  }

  function takeSense(item: Item, sense: Sense, after: Item | undefined): void {
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
      // "45 cm long", "Länge 45 cm" say what the measure is of, not that it shall be long.
      const isMeasure = before === 'amount' || after?.amount?.of === 'length';
      if ((concept.group === 'length' || concept.fits !== null) && isMeasure) sized = true;
      else askFor(draft, concept, [not?.[0] ?? item.at[0], item.at[1]], { not: not !== null, or });
      if (clasp !== null && askOfClasp(draft, item.at[1])) clasp = null;
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
    } else if (role === 'under' || role === 'over' || role === 'between' || role === 'about') {
      // "Not dearer than" is at most as dear.
      compare = not === null ? { is: role, at } : { is: OPPOSITE[role], at: [not[0], at[1]] };
      not = null;
    } else if (role === 'less' || role === 'more') limitLast(role === 'less' ? 'under' : 'over', at[1]);
    else if (role === 'wrist' || role === 'ankle' || role === 'neck') body = { of: role, at };
    else if (role === 'size') sized = true;
    else if (role === 'free' && before === 'concept') negateLast(draft, at[1]);
    else if (role === 'elsewhere' && not === null) giveUp(draft, role, item.corrected ?? item.text);
    else if (role === 'rough') rough = true;
    else if (role === 'clasp') {
      if (before !== 'concept' || !askOfClasp(draft, at[1])) clasp = item;
    } else if (role === 'idle') leave(item);
  }

  /** A clasp of nothing that a clasp can be of is a word that tells no piece from another. */
  function dropClasp(): void {
    if (clasp !== null) draft.idle.push(clasp.text);
    clasp = null;
  }

  /** Kinds that go unless they are asked for: they were. */
  function keepKinds(): void {
    const asked = ({ ask }: Part): boolean => ask.by === 'pairs' && ask.group === 'kind' && !ask.not;
    if (!draft.parts.some(asked)) return;
    for (const [at, part] of draft.parts.entries()) {
      const { ask } = part;
      if (ask.by !== 'pairs' || ask.group === 'kind' || !ask.not) continue;
      draft.parts[at] = { ...part, ask: { ...ask, any: ask.any.filter(([name]) => name !== 'kind') } };
    }
  }

  /** What tells no piece from another, if only the first part of a word: "Herrenarmband". What such a word ends in, it is only made with. */
  function leave({ text: written, senses }: Item): void {
    const [sense] = senses;
    if (senses.length === 1) draft.idle.push(written);
    else if (sense?.as === 'role' && sense.role === 'idle') {
      const to = [...written].findIndex((_, at) => opened.sense(fold(written.slice(0, at))) === sense);
      if (to > 0) draft.idle.push(written.slice(0, to));
    }
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
