/** Prepared letters: each opens in her own mail program, where she reads and changes it. */
import type { BenchWords } from '#words/words.ts';
import type { Entry } from '../book/entry.ts';
import type { Draft } from '../letters/letters.ts';

type Props = {
  readonly entry: Entry;
  readonly drafts: readonly Draft[];
  readonly payment: string | null;
  readonly words: BenchWords;
};

export function Letters({ entry, drafts, payment, words }: Props) {
  if (drafts.length === 0) return null;
  return (
    <section aria-labelledby="letters">
      <h2 id="letters">{words.order.letters}</h2>
      {drafts.map((draft) => (
        <Letter entry={entry} draft={draft} words={words} />
      ))}
      {payment !== null && (
        <p>
          {words.order.payment}:{' '}
          <a href={payment} rel="noreferrer">
            {payment}
          </a>
        </p>
      )}
    </section>
  );
}

function Letter({ entry, draft, words }: { entry: Entry; draft: Draft; words: BenchWords }) {
  const id = `letter-${draft.letter}`;
  return (
    <details>
      <summary>{words.order.letterNames[draft.letter]}</summary>
      <p>
        {words.order.subject}: <bdi>{draft.subject}</bdi>
      </p>
      <label for={id}>{words.order.text}</label>
      <textarea id={id} rows={12} readOnly lang={entry.document.lang} dir="auto">
        {draft.body}
      </textarea>
      <form class="row" method="post" action={`/bench/orders/${entry.document.number}/change/`}>
        <a class="button" href={draft.link}>
          {words.order.openMail}
        </a>
        <input type="hidden" name="version" value={entry.version} />
        <input type="hidden" name="kind" value="message" />
        <button type="submit" name="message" value={draft.letter}>
          {words.order.iSent}
        </button>
      </form>
    </details>
  );
}
