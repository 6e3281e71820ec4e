/** What an order comes to. */

/**
 * Price of all its pieces and the postage of the parcel, minor units. Shop page,
 * receipt, letters, invoice and exports all add it up here.
 */
export function orderTotalMinor(
  { priceMinor, postageMinor }: { readonly priceMinor: number; readonly postageMinor: number },
  quantity: number,
): number {
  return priceMinor * quantity + postageMinor;
}
