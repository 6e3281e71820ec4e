/** The postage of an order reckoned again by the maker's own rules, beside what the buyer saw. */
import { postage, postageMinor } from '#core/post/postage.ts';
import type { PostRules } from '#core/post/rules.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import type { OrderDocument } from '#order/document.ts';
import type { Difference } from '#words/difference.ts';

export type DeliveryCheck = {
  /** Of the whole order; as shown where the rules can't say. */
  readonly postageMinor: number;
  readonly differences: readonly Difference[];
};

/**
 * Checks how an order is to reach its buyer.
 * @param rules null: the shop asks nobody; undefined: not known, as in an old copy
 * @param candidate what would be strung; null where nothing can be
 */
export function checkDelivery(
  { delivery, shown, quantity }: OrderDocument,
  rules: PostRules | null | undefined,
  candidate: Candidate | null,
): DeliveryCheck {
  const asShown = { postageMinor: shown.postageMinor, differences: [] };
  // What wasn't asked, or has been erased, says nothing to hold postage against.
  if (rules === undefined || delivery.by === 'unsaid') return asShown;
  const compared = (nowMinor: number): DeliveryCheck => ({
    postageMinor: nowMinor,
    differences:
      nowMinor === shown.postageMinor
        ? []
        : [{ code: 'postage', shownMinor: shown.postageMinor, nowMinor, shownIn: shown.currency }],
  });
  if (delivery.by === 'collection') {
    const { postageMinor: nowMinor, differences } = compared(0);
    if (rules?.collection === true) return { postageMinor: nowMinor, differences };
    return { postageMinor: nowMinor, differences: [...differences, { code: 'no-collection' }] };
  }
  const { country } = delivery.to;
  if (rules === null) return { ...asShown, differences: [{ code: 'post-not-served', country }] };
  if (candidate === null) return asShown;
  const { massG, priceMinor } = candidate;
  const now = postage(rules, { country, massG, priceMinor, quantity });
  if (now.kind === 'not-served') return { ...asShown, differences: [{ code: 'post-not-served', country }] };
  if (now.kind === 'too-heavy') {
    const { weightG, mostG } = now;
    return { ...asShown, differences: [{ code: 'post-too-heavy', weightG: Math.ceil(weightG), mostG }] };
  }
  return compared(postageMinor(now) ?? 0);
}
