/** What the maker reads round a page of the shop that is shown before it is published. */
export const preview = {
  title: 'Preview',
  lead: 'What buyers will see once you publish. Orders tried out here go nowhere.',
  noOrders: 'This is a preview: the order went nowhere, and nothing of it was kept.',
  draft: 'As it stands in your other window, not saved yet. Orders tried out here go nowhere.',
  notYet: 'This can’t be shown yet',
  notYetDraft: 'What is to mend is told of what you have there now; nothing of it was saved.',
  /** Opens it, from a form or the board. */
  asTyped: 'Preview',
  front: 'Preview of the front page',
  guide: 'Back to its text',
  languages: { en: 'English', de: 'Deutsch' },
  /** The pages of a piece at the bench, and what comes after them. */
  ways: {
    words: 'Words and price',
    board: 'Bead board',
    price: 'Price',
    photos: 'Photographs',
    preview: 'Preview',
    tutorial: 'Tutorial',
    card: 'Bench card',
    publish: 'Publish',
  },
};
