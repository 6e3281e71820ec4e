/** What it costs as it is shown, and by when it would be sent. */
import type { ComponentChildren } from 'preact';
import type { Format } from '#words/format.ts';
import type { SizingWords } from '#words/words.ts';

export type PriceProps = {
  readonly words: SizingWords;
  readonly format: Format;
  /** Minor units of the shop's currency. */
  readonly priceMinor: number;
  /** By when, from the page as it was built. */
  readonly when: ComponentChildren;
};

export function Price({ words, format, priceMinor, when }: PriceProps) {
  return (
    <div class="sizer-price">
      <dl>
        <dt class="unseen">{words.price}</dt>
        <dd>{format.money(priceMinor)}</dd>
      </dl>
      {when}
    </div>
  );
}
