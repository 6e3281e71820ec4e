/** What a slip is made with. */
import type { Lang } from '#words/lang.ts';
import type { OrderWords, SlipWords } from '#words/words.ts';

export type SlipProps = {
  /** Address of a piece's page with `{id}` in it. */
  readonly pieceAddress: string;
};

export type SlipLanguage = {
  readonly lang: Lang;
  readonly words: SlipWords;
  readonly orderWords: OrderWords;
};
