/** What every part of the page of a price is given. */
import type { PricingWords } from '#words/words.ts';
import type { Frame } from '../../models/frame.ts';
import type { PriceSheet } from '../../models/pricing/sheet.ts';

export type PriceProps = { readonly sheet: PriceSheet; readonly frame: Frame; readonly words: PricingWords };
