/** Copies a mail's text; where the browser won't, shows it to be copied by hand. */
import { useState } from 'preact/hooks';
import type { OrderWords } from '#words/words.ts';

export function CopyButton({
  words,
  text,
  to,
  leads,
}: {
  readonly words: OrderWords;
  readonly text: string;
  readonly to: string;
  /** True where copying is what to do first. */
  readonly leads: boolean;
}) {
  const [state, setState] = useState<'idle' | 'copied' | 'by-hand'>('idle');
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setState('copied');
    } catch {
      setState('by-hand');
    }
  };
  return (
    <>
      <button type="button" class={leads ? 'button' : 'button plain'} onClick={() => void copy()}>
        {words.copyMail}
      </button>
      <span role="status">{state === 'copied' && words.copied}</span>
      {state === 'by-hand' && (
        <label class="sizer-by-hand">
          {words.copyByHand} {to}
          <textarea
            class="sizer-input"
            readOnly
            rows={8}
            value={text}
            onFocus={(event) => event.currentTarget.select()}
          />
        </label>
      )}
    </>
  );
}
