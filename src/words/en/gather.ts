/** What to pick and what to buy for the orders still to be strung. */
import type { Format } from '../format.ts';

export const gather = {
  title: 'What to gather',
  forOrders: (count: number): string =>
    count === 0
      ? 'No order waits to be strung.'
      : count === 1
        ? 'For 1 order that is still to be strung, by its piece as it stands now.'
        : `For ${count} orders that are still to be strung, by their pieces as they stand now.`,
  leftOut: 'Left out, since nothing can be strung from them as they are:',
  buy: 'To buy',
  pick: 'Pick list',
  pickHint: 'The list goes from tray to tray. Tick on paper or here.',
  onlyAgreed: 'Only what is agreed',
  allOpen: 'All that is still to be strung',
  columns: { tray: 'Tray', what: 'What', need: 'Needed', have: 'Counted', buy: 'To buy', orders: 'For' },
  uncounted: '–',
  fromOffcut: (cut: string, offcut: string, order: string): string =>
    `${cut} mm for ${order}: from the offcut of ${offcut} mm`,
  metres: (metres: number, f: Format): string => `${f.number(metres, 2)} m`,
};
