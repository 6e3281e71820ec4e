/** How far something is that goes on by itself; the bench's script keeps it up to date. */
import { underBase } from '#ui/site/base.ts';
import type { HowFar } from '../models/howFar.ts';

type Props = {
  readonly far: HowFar;
  readonly words: { readonly running: string; readonly stay: string };
  /** Where the script asks how far it is, from the bench's root. */
  readonly asks: `/${string}`;
};

export function Running({ far: { step, count, share }, words, asks }: Props) {
  return (
    <section aria-labelledby="running" data-publishing={underBase(asks)}>
      <h2 id="running">{words.running}</h2>
      <p role="status">
        <span data-step>{step}</span> <span data-count>{count}</span>
      </p>
      <progress aria-labelledby="running" max={1} value={share} />
      <p class="quiet">{words.stay}</p>
    </section>
  );
}
