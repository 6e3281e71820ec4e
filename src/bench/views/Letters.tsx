/** Prepared letters: each opens in her own mail program, where she reads and changes it. */
import type { Draft } from '../letters/letters.ts';
import { ChangeForm, type ChangeProps } from './ChangeForm.tsx';

type Props = ChangeProps & { readonly drafts: readonly Draft[]; readonly payment: string | null };

export function Letters({ drafts, payment, ...props }: Props) {
  const { words } = props.frame;
  if (drafts.length === 0) return null;
  return (
    <section aria-labelledby="letters">
      <h2 id="letters">{words.order.letters}</h2>
      {drafts.map((draft) => (
        <details>
          <summary>{words.order.letterNames[draft.letter]}</summary>
          <LetterBody {...props} draft={draft} id={`letter-${draft.letter}`} />
        </details>
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

type BodyProps = ChangeProps & {
  readonly draft: Draft;
  /** Of its text on this page. */
  readonly id: string;
  /** The page was opened to send it. */
  readonly focus?: boolean;
};

export function LetterBody({ draft, id, focus = false, ...props }: BodyProps) {
  const { words } = props.frame;
  return (
    <>
      <p>
        {words.order.subject}: <bdi>{draft.subject}</bdi>
      </p>
      <label for={id}>{words.order.text}</label>
      <textarea id={id} rows={rowsFor(draft.body)} readOnly lang={props.entry.document.lang} dir="auto">
        {draft.body}
      </textarea>
      <ChangeForm {...props} attempt={null} form={{ kind: 'message' }} class="row">
        <a class={focus ? 'button main' : 'button'} href={draft.link} autofocus={focus}>
          {words.order.openMail}
        </a>
        <button type="submit" name="message" value={draft.letter}>
          {words.order.iSent}
        </button>
      </ChangeForm>
    </>
  );
}

/** All of a message is seen at once, and a long one doesn't push everything else off the page. */
function rowsFor(body: string): number {
  return Math.min(24, body.split('\n').length + 1);
}
