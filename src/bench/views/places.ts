/**
 * Every place that the bench's navigation leads to, in groups by what she does
 * there: the one list, which the browser tests read too. A group is reached by
 * its first place. Names stand in `src/words/*\/bench.ts` under `nav`.
 */
export const GROUPS = [
  {
    group: 'orders',
    places: [
      ['book', '/bench/'],
      ['byHand', '/bench/orders/new/'],
      ['takeIn', '/bench/in/'],
      ['buyers', '/bench/buyers/'],
      ['months', '/bench/months/'],
    ],
  },
  {
    group: 'making',
    places: [
      ['week', '/bench/week/'],
      ['gather', '/bench/gather/'],
      ['steps', '/bench/steps/'],
    ],
  },
  {
    group: 'stock',
    places: [
      ['stock', '/bench/stock/'],
      ['count', '/bench/stock/count/'],
      ['stockIn', '/bench/stock/in/'],
      ['shopping', '/bench/shopping/'],
    ],
  },
  {
    group: 'design',
    places: [
      ['pieces', '/bench/pieces/'],
      ['newPiece', '/bench/pieces/new/'],
      ['trays', '/bench/trays/'],
    ],
  },
  {
    group: 'selling',
    places: [
      ['publish', '/bench/publish/'],
      ['rules', '/bench/shop/'],
      ['guides', '/bench/guides/'],
      ['history', '/bench/history/'],
    ],
  },
  {
    group: 'safety',
    places: [
      ['keep', '/bench/keep/'],
      ['access', '/bench/access/'],
      ['tablets', '/bench/tablets/'],
    ],
  },
] as const;

type OneGroup = (typeof GROUPS)[number];
export type Place = OneGroup['places'][number][0];

/** The group that a place belongs to; undefined for a page that is in none. */
export const groupOf = (place: Place | undefined): OneGroup | undefined =>
  GROUPS.find(({ places }) => places.some(([name]) => name === place));
