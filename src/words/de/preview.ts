/** Was rings um eine Seite steht, die vor dem Veröffentlichen gezeigt wird. */
import type { preview as english } from '../en/preview.ts';

export const preview: typeof english = {
  title: 'Vorschau',
  lead: 'So sehen es Käuferinnen, sobald Sie veröffentlichen. Bestellungen von hier gehen nirgendwohin.',
  noOrders: 'Das ist eine Vorschau: Die Bestellung ging nirgendwohin, und nichts davon wurde aufgehoben.',
  draft:
    'So steht es in Ihrem anderen Fenster, noch nicht gespeichert. Bestellungen von hier gehen nirgendwohin.',
  notYet: 'Das lässt sich noch nicht zeigen',
  notYetDraft: 'Was zu richten ist, gilt dem, was Sie dort gerade haben; gespeichert wurde davon nichts.',
  /** Öffnet sie, aus einem Formular oder vom Brett. */
  asTyped: 'Vorschau',
  front: 'Vorschau der Startseite',
  guide: 'Zurück zum Text',
  languages: { en: 'English', de: 'Deutsch' },
  /** The pages of a piece at the bench, and what comes after them. */
  ways: {
    words: 'Texte und Preis',
    board: 'Perlenbrett',
    price: 'Preis',
    photos: 'Fotos',
    preview: 'Vorschau',
    tutorial: 'Anleitung',
    card: 'Werkkarte',
    publish: 'Veröffentlichen',
  },
};
