/**
 * Every page of the bench, one address or more of each file in
 * `src/pages/bench/`: the one list of the tests that open them all. Places of
 * the navigation are in it by themselves; `tests/bench/pages.test.ts` names a
 * page that is missing.
 */
import { GROUPS } from '#bench/views/places.ts';

/** Of what bears an order's number; `order` stands for `/bench/orders/NUMBER`. */
const ORDER = ['order/', 'order/card/', 'order/packing/', 'order/label/', 'order/care/', 'order/steps/'];

const PIECE = [
  '/bench/pieces/banked-fire/?size=165+mm&hand=left',
  '/bench/pieces/banked-fire/words/',
  '/bench/pieces/banked-fire/price/?of=all&by=20',
  '/bench/pieces/banked-fire/tutorial/?size=165+mm',
  '/bench/pieces/banked-fire/board/',
  '/bench/pieces/banked-fire/photos/',
  '/bench/pieces/banked-fire/steps/?size=165+mm&hand=left',
];

const ENTRIES = [
  '/bench/publish/host/',
  '/bench/stock/parts/agate-6/',
  '/bench/stock/wires/soft-19/',
  '/bench/trays/ember-20/',
  '/bench/trays/new/?kind=crimp',
  '/bench/wires/soft-19/',
  '/bench/wires/new/',
  '/bench/guides/en/care/',
  '/bench/guides/en/new/',
];

/** Where the navigation leads to. */
export const PLACES: readonly string[] = GROUPS.flatMap(({ places }) => places.map(([, path]) => path));

/** All others, with `order` for an order's address and `buyer` for her page. */
export const FURTHER: readonly string[] = [...ORDER, 'buyer/', ...PIECE, ...ENTRIES];

/** The page's address where the book holds this order. */
export const addressOf = (path: string, number: string): string =>
  path.replace(/^order/, `/bench/orders/${number}`).replace(/^buyer/, `/bench/buyers/${number}`);
