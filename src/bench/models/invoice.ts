/** What an invoice of an order says, on the day it is issued. */
import { dayOf } from '#words/day.ts';
import type { Shop } from '#catalogue/model/catalogue.ts';
import { addressLines } from '#words/address.ts';
import { formatNumber } from '#words/format.ts';
import { invoiceWords, orderWords } from '#words/words.ts';
import { taxWithin, type InvoiceContent } from '../book/invoiceContent.ts';
import { counts } from '../book/payments.ts';
import type { Frame } from './frame.ts';
import type { OrderDetail } from './orderDetail.ts';
import { sumParts } from './sumParts.ts';

/** Begins the numbers of the year in which `now` stands. */
export function prefixOf({ numberPrefix }: NonNullable<Shop['seller']>, now: string): string {
  return numberPrefix.replaceAll('{year}', dayOf(now).slice(0, 4));
}

/**
 * Everything an invoice says, in its buyer's language; null where the shop names no seller.
 * @param theirs the buyer's frame, the piece's name in `detail` in her language
 */
export function invoiceContent(detail: OrderDetail, theirs: Frame): InvoiceContent | null {
  const { shop, lang, now } = theirs;
  const { seller } = shop;
  if (seller === null) return null;
  const { entry, money } = detail;
  const { buyer, delivery } = entry.document;
  const to = delivery.by === 'post' ? delivery.to : null;
  return {
    version: 1,
    lang,
    seller: {
      shop: shop.name,
      name: seller.name,
      address: [...seller.address],
      taxNumber: seller.taxNumber,
    },
    // The address is the only one that the order knows; its first line may name someone else.
    buyer: {
      name: buyer.name,
      address: to === null ? [] : addressLines({ ...to, name: '' }, theirs.format.country(to.country)),
    },
    orderedOn: dayOf(entry.receivedAt),
    issuedOn: dayOf(now),
    items: itemsOf(detail, theirs),
    currency: money.price.currency,
    totalMinor: money.price.minor,
    tax: taxOf(seller, money.price.minor, lang),
    payments: money.payments
      .filter((one) => counts(one, money.due))
      .map(({ kind, way, day, minor }) => ({ kind, way, day, minor })),
    openMinor: money.ledger.openMinor,
    reason: '',
  };
}

/** Pieces and postage, where a price and a postage that the book knows add up to the total; else all in one line. */
function itemsOf(detail: OrderDetail, { lang, format }: Frame): InvoiceContent['items'] {
  const { entry, money, pieceName } = detail;
  const { quantity } = entry.document;
  const words = invoiceWords(lang);
  const text = words.item(pieceName, orderWords(lang).size(format, entry.document));
  const parts = sumParts(detail);
  if (parts === null) {
    return [{ text, quantity, eachMinor: null, sumMinor: money.price.minor }];
  }
  const { priceMinor, postageMinor } = parts;
  const pieces = { text, quantity, eachMinor: priceMinor, sumMinor: priceMinor * quantity };
  const post = { text: words.postage, quantity: null, eachMinor: null, sumMinor: postageMinor };
  return postageMinor === 0 ? [pieces] : [pieces, post];
}

function taxOf(
  { taxHundredths, taxText }: NonNullable<Shop['seller']>,
  totalMinor: number,
  lang: Frame['lang'],
): InvoiceContent['tax'] {
  const words = invoiceWords(lang);
  const own = taxText === null ? null : (taxText[lang] ?? taxText.en);
  if (taxHundredths === null) {
    return { text: own ?? words.notRegistered, hundredths: null, minor: null };
  }
  const rate = formatNumber(taxHundredths / 100, lang, 2);
  return {
    text: own ?? words.included(rate),
    hundredths: taxHundredths,
    minor: taxWithin(totalMinor, taxHundredths),
  };
}
