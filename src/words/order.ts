/** The sentences of an order's road, by language. */
import { order as de } from './de/order.ts';
import { order as en } from './en/order.ts';
import { inLanguages } from './lang.ts';

export type OrderWords = typeof en;
export const orderWords = inLanguages<OrderWords>({ en, de });
