/** What the maker can do with an order: its state, its day, her notes. Each form says which version she saw. */
import type { BenchWords } from '#words/words.ts';
import { ORDER_STATES } from '#words/benchCodes.ts';
import { NOTE_CAP } from '../book/change.ts';
import type { Entry } from '../book/entry.ts';

type Props = { readonly entry: Entry; readonly words: BenchWords };

export function Changes({ entry, words }: Props) {
  const action = `/bench/orders/${entry.document.number}/change/`;
  const version = <input type="hidden" name="version" value={entry.version} />;
  return (
    <section aria-labelledby="state">
      <h2 id="state">
        {words.order.state}: <span class={`mark state-${entry.state}`}>{words.states[entry.state]}</span>
      </h2>
      <form class="row" method="post" action={action}>
        {version}
        <input type="hidden" name="kind" value="state" />
        {ORDER_STATES.filter((state) => state !== entry.state).map((state) => (
          <button type="submit" name="state" value={state}>
            {words.order.setState(state)}
          </button>
        ))}
      </form>
      <form class="row" method="post" action={action}>
        {version}
        <input type="hidden" name="kind" value="due" />
        <label>
          {words.order.due} <input type="date" name="on" value={entry.dueOn ?? ''} />
        </label>
        <button type="submit">{words.order.setDue}</button>
      </form>
      <form method="post" action={action}>
        {version}
        <input type="hidden" name="kind" value="note" />
        <label>
          {words.order.noteLabel}
          <textarea name="text" rows={3} maxLength={NOTE_CAP} required></textarea>
        </label>
        <button type="submit">{words.order.addNote}</button>
      </form>
    </section>
  );
}
