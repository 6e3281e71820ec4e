/** Was rings um eine Seite steht, die vor dem Veröffentlichen gezeigt wird. */
import type { preview as english } from '../en/preview.ts';

export const preview: typeof english = {
  title: 'Vorschau',
  lead: 'So sehen es Käuferinnen, sobald Sie veröffentlichen. Bestellungen von hier gehen nirgendwohin.',
  noOrders: 'Das ist eine Vorschau: Die Bestellung ging nirgendwohin, und nichts davon wurde aufgehoben.',
  notYet: 'Dieses Stück lässt sich noch nicht zeigen',
  languages: { en: 'English', de: 'Deutsch' },
  /** The pages of a piece at the bench, and what comes after them. */
  ways: {
    words: 'Texte und Preis',
    board: 'Perlenbrett',
    price: 'Preis',
    photos: 'Fotos',
    preview: 'Vorschau',
    card: 'Werkkarte',
    publish: 'Veröffentlichen',
  },
};
