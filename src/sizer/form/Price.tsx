/** What it costs as it is shown, and by when it would be sent. */
import type { Format } from '#words/format.ts';
import type { AskingWords } from '#words/words.ts';

export type PriceProps = {
  readonly words: AskingWords;
  readonly format: Format;
  /** Minor units of the shop's currency. */
  readonly priceMinor: number;
  /** By when; null where it isn't made any more. */
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
