/** What it costs as it is shown, and by when it would be sent or that it lies finished. */
import type { Format } from '#words/format.ts';
import type { AskingWords } from '#words/words.ts';

export type PriceProps = {
  readonly words: AskingWords;
  readonly format: Format;
  /** Minor units of the shop's currency. */
  readonly priceMinor: number;
  /** By when, or what lies finished; null where neither is to be said. */
  readonly when: string | null;
};

export function Price({ words, format, priceMinor, when }: PriceProps) {
  return (
    <div class="sizer-price">
      <dl>
        <dt class="unseen">{words.price}</dt>
        <dd>{format.money(priceMinor)}</dd>
      </dl>
      {when !== null && <p class="small quiet">{when}</p>}
    </div>
  );
}
