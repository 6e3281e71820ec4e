/** What the maker reads round a page of the shop that is shown before it is published. */
export const preview = {
  title: 'Preview',
  lead: 'What buyers will see once you publish. Orders tried out here go nowhere.',
  noOrders: 'This is a preview: the order went nowhere, and nothing of it was kept.',
  notYet: 'This piece can’t be shown yet',
  languages: { en: 'English', de: 'Deutsch' },
  /** The pages of a piece at the bench, and what comes after them. */
  ways: {
    words: 'Words and price',
    board: 'Bead board',
    price: 'Price',
    photos: 'Photographs',
    preview: 'Preview',
    card: 'Bench card',
    publish: 'Publish',
  },
};
