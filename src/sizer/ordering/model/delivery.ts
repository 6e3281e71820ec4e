/** How the pieces reach the buyer, as her form stands. */
import { postage, postageMinor, type Postage } from '#core/post/postage.ts';
import { ADDRESS_CAPS, ADDRESS_PARTS, type Address, type Delivery } from '#order/document.ts';
import { NAME } from '#order/fields.ts';
import type { FormProblem } from '#words/orderFacts.ts';
import type { PostForSizer } from '../../model/input.ts';
import { quantityOf, tidyForm, type FormProblems, type OrderForm } from './form.ts';
import type { OrderItem } from './item.ts';

/** The way she has chosen, or the only one there is; null where nothing is asked. */
export function wayOf(post: PostForSizer | null, form: OrderForm): 'post' | 'collection' | null {
  if (post === null) return null;
  if (post.collection === null) return 'post';
  return post.rules.groups.length === 0 ? 'collection' : form.way;
}

/** The country she has chosen, until then the shop's own: the first that its rules name. */
export function countryOf({ rules }: PostForSizer, { address }: OrderForm): string {
  return address.country === '' ? (rules.groups[0]?.countries[0] ?? '') : address.country;
}

/** Codes that stand one after the other. */
export const codesOf = (run: string): readonly string[] => run.match(/../g) ?? [];

/** Postage of what would be ordered; null where nothing would be posted. */
export function postageOf({ post, candidate }: OrderItem, form: OrderForm): Postage | null {
  if (post === null || wayOf(post, form) !== 'post') return null;
  const { massG, priceMinor } = candidate;
  const quantity = quantityOf(form) ?? 1;
  return postage(post.rules, { country: countryOf(post, form), massG, priceMinor, quantity });
}

/** Where a parcel would go and what that adds; not said where it can't be posted. */
export function deliveryOf(
  item: OrderItem,
  form: OrderForm,
): { readonly delivery: Delivery; readonly postageMinor: number } {
  const { post } = item;
  const way = wayOf(post, form);
  if (way === 'collection') return { delivery: { by: 'collection' }, postageMinor: 0 };
  const found = postageOf(item, form);
  const minor = found === null ? null : postageMinor(found);
  if (post === null || minor === null) return { delivery: { by: 'unsaid' }, postageMinor: 0 };
  const { name, address } = tidyForm(form);
  const to = { ...address, name: address.name === '' ? name : address.name, country: countryOf(post, form) };
  return { delivery: { by: 'post', to }, postageMinor: minor };
}

/** What is wrong with the address; nothing where none is asked. */
export function addressProblems(post: PostForSizer | null, form: OrderForm): FormProblems {
  if (post === null || wayOf(post, form) !== 'post') return {};
  const { address } = tidyForm(form);
  const country = countryOf(post, form);
  const needsPostcode = !codesOf(post.withoutPostcode).includes(country);
  const found = ADDRESS_PARTS.map((part) => {
    const problem = partProblem(part, { ...address, country }, needsPostcode);
    return [`to-${part}`, problem] as const;
  });
  return Object.fromEntries(found.filter(([, problem]) => problem !== null));
}

function partProblem(part: keyof Address, address: Address, needsPostcode: boolean): FormProblem | null {
  const text = address[part];
  if (text.length > ADDRESS_CAPS[part]) return { code: 'part-long', most: ADDRESS_CAPS[part] };
  // A recipient is named only where it isn't the buyer.
  if (part === 'name') return text === '' || NAME.test(text) ? null : { code: 'name-missing' };
  if (part === 'line1') return NAME.test(text) ? null : { code: 'line1-missing' };
  if (text !== '') return null;
  if (part === 'postcode') return needsPostcode ? { code: 'postcode-missing' } : null;
  return part === 'town' || part === 'country' ? { code: `${part}-missing` } : null;
}
