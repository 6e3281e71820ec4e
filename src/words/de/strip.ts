/** Ein Papiermaßband zum Drucken: seine Seite, und was auf dem Blatt steht. */
import type { strip as english } from '../en/strip.ts';

export const strip: typeof english = {
  title: 'Maßband zum Drucken',
  lead: 'Ein Papiermaßband zum Ausschneiden, in Zoll und Millimetern, wenn kein weiches Band im Haus ist.',
  paperLabel: 'Papier',
  papers: { a4: 'A4', letter: 'US Letter' },
  print: 'Dieses Blatt drucken',
  size: 'Drucken Sie mit 100 % („Originalgröße“), nie „an Seite angepasst“.',
  otherPaper: 'Es geht auf ein Blatt. Hat Ihr Papier das andere Format, wählen Sie zuerst das.',
  picture:
    'Ein Blatt: zwei Papiermaßbänder zum Ausschneiden, ein Balken von 100 mm und der Umriss einer Bankkarte.',
  sheet: {
    heading: 'Maßband zum Ausschneiden',
    steps: [
      'Drucken Sie mit 100 %, auch „Originalgröße“ genannt. Schalten Sie „an Seite anpassen“ aus.',
      'Prüfen Sie das Blatt: Legen Sie eine Bankkarte auf den Umriss oder ein Lineal an den Balken. Stimmt eines nicht, messen Sie nicht mit diesem Blatt.',
      'Schneiden Sie an den gestrichelten Linien. Schere und Schnipsel gehören nicht in kleine Hände.',
      'Legen Sie das Band herum, die Skala außen: Es liegt rundum an und drückt nirgends. Lesen Sie ab, wo die Nulllinie auf die Skala trifft, und geben Sie nichts zu.',
      'Für den Hals kleben Sie das zweite Band über das Ende des ersten, Skala auf Skala. Legen Sie es locker an und nehmen Sie es nach dem Ablesen gleich ab.',
    ],
    bar: 'Dieser Balken ist 100 mm lang.',
    card: 'Eine Bankkarte (ISO/IEC 7810 ID-1, 85,60 × 53,98 mm) deckt diesen Umriss genau.',
    caution: 'Ein Blatt, das an die Seite angepasst wurde, misst falsch. Prüfen Sie vor dem Schneiden.',
    first: 'Nulllinie: hier ablesen',
    second: 'über das erste kleben, Skala auf Skala',
  },
};
