/** Der Zettel: eine Bestellung zum Aufheben, Drucken und Zeigen. */
import type { SlipProblem, slip as english } from '../en/slip.ts';
import type { Sentences } from '../sentence.ts';

const problems: Sentences<SlipProblem> = {
  'no-order': () =>
    'Diese Adresse enthält keine Bestellung. Öffnen Sie den Zettel mit dem ganzen Link, den Sie aufgehoben haben, samt allem nach dem #.',
  'cut-off': () => 'Das Ende der Adresse fehlt. Kopieren Sie den Link noch einmal, bis „.end“.',
  'too-long': () => 'Diese Adresse ist zu lang für eine Bestellung.',
  'newer-version': () =>
    'Diese Bestellung stammt von einer neueren Fassung des Ladens. Laden Sie die Seite neu.',
  'unknown-version': () => 'Diese Bestellung hat eine Fassung, die es nie gab.',
  damaged: () => 'In der Adresse ist ein Zeichen falsch oder fehlt. Kopieren Sie den Link noch einmal.',
  'not-an-order': () => 'Die Adresse ist vollständig, enthält aber keine Bestellung.',
};

export const slip: typeof english = {
  problems,
  title: 'Bestellzettel',
  description: 'Eine Bestellung auf einem Zettel, zum Aufheben und Drucken. Sie steht in der Adresse selbst.',
  numberIs: (number) => `Bestellung ${number}`,
  placed: (date) => `Geschrieben ${date} nach der Uhr der Käuferin.`,
  print: 'Zettel drucken',
  download: 'Bestellung herunterladen',
  copyLink: 'Link kopieren',
  copied: 'Kopiert.',
  seePiece: 'Das Stück ansehen',
  code: 'Scannen, um den Zettel auf einem anderen Gerät zu öffnen',
  codeTooLong: 'Diese Bestellung ist zu lang für einen QR-Code; kopieren Sie stattdessen den Link.',
  inAddress:
    'Die Bestellung steht im Link dieser Seite und sonst nirgends: Kein Server sieht sie. Wer den Link hat, kann Namen, Anschrift und Nachricht lesen; geben Sie ihn nur weiter, an wen Sie wollen.',
  forMaker: 'Für die Werkstatt: diesen Link oder den Text unten ins Auftragsbuch einfügen.',
  compact: 'Die Bestellung in einem Wort',
  offline: 'Diese Seite öffnet sich auch ohne Netz, wenn sie auf diesem Gerät schon einmal offen war.',
  noScript: 'Den Zettel liest JavaScript auf diesem Gerät. Ohne es heben Sie die E-Mail oder die Datei auf.',
};
