/** Die Antworten des Bestelltischs, wo er keine Bestellung annimmt. */
import type { DeskProblem } from '../deskProblem.ts';
import { sentenceOf, type Sentences } from '../sentence.ts';
import type { desk as en } from '../en/desk.ts';

const KEPT = 'Ihre Bestellung liegt auf Ihrem Gerät; bei der Werkstatt ist sie noch nicht.';

const sentences: Sentences<DeskProblem, []> = {
  'origin-not-allowed': () => 'Von dieser Website werden keine Bestellungen angenommen.',
  'method-not-allowed': () => 'Eine Bestellung wird mit POST geschickt.',
  'content-type': () => 'Eine Bestellung wird als application/json geschickt.',
  'too-large': ({ mostBytes }) => `Eine Bestellung hat höchstens ${mostBytes} Bytes.`,
  'not-utf8': () =>
    'Was ankam, enthält Zeichen in einer anderen Kodierung als UTF-8; ein Name könnte verloren gehen. Bitte als UTF-8 noch einmal senden.',
  'not-json': () => 'Was ankam, ist kein JSON.',
  'not-an-order': () => 'Was ankam, ist keine Bestellung.',
  'newer-version': ({ version }) =>
    `Die Bestellung ist in Version ${version} geschrieben, die neuer ist als dieser Bestelltisch.`,
  'unknown-version': ({ version }) => `Die Bestellung nennt die Version „${version}“, die es nie gab.`,
  'wrong-field': ({ field }) => `Das Feld „${field}“ der Bestellung fehlt oder ist nicht lesbar.`,
  robot: () =>
    'Ein Feld, das Menschen nicht sehen, war ausgefüllt, wie es Automaten tun. Wenn Sie ein Mensch sind, schicken Sie die Bestellung bitte per E-Mail.',
  'number-taken': ({ number }) =>
    `Die Nummer ${number} hat schon eine andere Bestellung. Bitte bestellen Sie noch einmal, damit Ihre eine neue bekommt.`,
  'ready-gone': () =>
    'Das Stück, das fertig dalag, ist inzwischen jemandem versprochen. Ein gleiches wird gern gefertigt: Bestellen Sie es in Ihrer Größe.',
  'too-many': ({ seconds }) =>
    `Aus Ihrem Netz kamen viele Bestellungen. Bitte versuchen Sie es in ${seconds} Sekunden noch einmal.`,
  'book-locked': () =>
    `Das Auftragsbuch ist gerade belegt. ${KEPT} Sie kann gleich noch einmal geschickt werden.`,
  'book-full': () =>
    `Der Speicher der Werkstatt ist voll. ${KEPT} Bitte schicken Sie sie per E-Mail oder versuchen Sie es später.`,
  'book-closed': () =>
    `Das Auftragsbuch lässt sich nicht öffnen. ${KEPT} Bitte schicken Sie sie per E-Mail oder versuchen Sie es später.`,
};

export const desk: typeof en = {
  title: 'Die Bestellung wurde nicht angenommen',
  sentence: (problem: DeskProblem): string => sentenceOf(sentences, problem),
};
