/** Wie gemessen wird, in Worten. */
import type { measuring as english } from '../en/measuring.ts';

export const measuring: typeof english = {
  title: 'So wird gemessen',
  how: {
    wrist:
      'Legen Sie das Band gleich hinter dem Handgelenkknochen, auf der Seite zum Ellbogen, um das Handgelenk: Es liegt rundum an und drückt nirgends. Schreiben Sie, was es zeigt, und geben Sie nichts zu; das macht der Sitz.',
    ankle:
      'Legen Sie das Band gleich über dem Knöchel um das Bein: Es liegt rundum an und drückt nirgends. Schreiben Sie, was es zeigt, und geben Sie nichts zu.',
    neck: 'Legen Sie das Band gleich unter dem Kehlkopf um den Hals, rechtwinklig zum Hals: Es liegt rundum an und drückt nirgends. Nicht um den Halsansatz, wo eine Kette liegt: Der wird aus Ihrem Maß berechnet.',
    length:
      'Legen Sie eine Kette, die Ihnen gefällt, gerade hin und messen Sie von Ende zu Ende, mit Verschluss und Ring. Oder hängen Sie eine Schnur dorthin, wo das Stück liegen soll, und messen Sie die.',
  },
  noTape:
    'Kein Maßband da? Nehmen Sie einen Papierstreifen, zeichnen Sie an, wo er sich trifft, und legen Sie ihn an ein Lineal. Wolle und Gummi dehnen sich und täuschen.',
  strip: 'Ein Papiermaßband drucken',
  picture: {
    wrist: 'Hand und Unterarm; das Band läuft gleich hinter dem Handgelenkknochen um das Handgelenk.',
    ankle: 'Fuß und Unterschenkel; das Band läuft gleich über dem Knöchel um das Bein.',
    neck: 'Kopf, Hals und Schultern; das Band läuft gleich unter dem Kehlkopf rechtwinklig um den Hals.',
    length:
      'Eine Kette, gerade neben ein Lineal gelegt und vom Ende des Verschlusses bis zum Ende des Rings gemessen.',
  },
};
