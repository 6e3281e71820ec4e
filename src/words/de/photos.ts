/** Fotos eines Stücks, wie die Macherin an der Werkbank davon liest. */
import type { Format } from '../format.ts';
import type { PhotoTrouble } from '../photoCodes.ts';
import type { Sentences } from '../sentence.ts';
import type { photos as english } from '../en/photos.ts';

const kinds = {
  drawing: 'Diese Datei ist eine Zeichnung (SVG)',
  document: 'Diese Datei ist ein Dokument (PDF)',
  archive: 'Diese Datei ist ein gepackter Ordner, was auch immer ihr Name sagt',
  film: 'Diese Datei ist ein Film',
  unknown: 'Diese Datei ist kein Foto, das sich hier lesen lässt',
};

const troubles: Sentences<PhotoTrouble> = {
  'photo-missing': () => 'Es wurde kein Foto gewählt, oder seine Datei ist leer. Wählen Sie eines.',
  'photo-broken': () =>
    'Dieses Foto ist beschädigt, oder nur ein Teil davon kam an. Kopieren Sie es noch einmal von Kamera oder Telefon.',
  'photo-moves': () =>
    'Dieses Bild bewegt sich. Wählen Sie ein stehendes: am Telefon also ein Foto statt einer Bildfolge.',
  'photo-kind': ({ kind }) => `${kinds[kind]}. Wählen Sie ein Foto als JPEG, PNG, WebP, AVIF oder HEIC.`,
  'photo-pixels': ({ megapixels, most }, f) =>
    `Dieses Bild hat ${f.number(megapixels)} Megapixel, höchstens ${f.number(most)} gehen. Speichern Sie eine kleinere Kopie und wählen Sie die.`,
  'photo-small': ({ width, height, least }, f) =>
    `Dieses Bild ist nur ${f.number(width)} × ${f.number(height)} Punkte groß. Seine längere Seite braucht mindestens ${f.number(least)}; wählen Sie das Foto selbst, keine kleine Kopie.`,
  'photo-too-large': ({ mostMb }, f) =>
    `Die Datei ist größer als ${f.number(mostMb)} MB. Speichern Sie eine kleinere Kopie und wählen Sie die.`,
  'alt-missing': () =>
    'Sagen Sie, was das Foto zeigt: Wer es nicht sehen kann, hört stattdessen diese Worte. Wählen Sie dann das Foto noch einmal, wenn es ein neues ist.',
  'crop-unreadable': () =>
    'Der Ausschnitt muss im Foto liegen. Schreiben Sie Prozente: von links, von oben, Breite und Höhe.',
  'no-such-photo': () => 'Dieses Foto ist nicht mehr auf der Seite. Nichts wurde geändert.',
  'photo-changed-meanwhile': () =>
    'Das Stück wurde in einem anderen Fenster geändert. Nichts wurde überschrieben: Sehen Sie es an, wie es jetzt ist, und tun Sie es dann noch einmal.',
  'photo-not-writable': () =>
    'Die Dateien ließen sich nicht schreiben. Nichts wurde geändert. Machen Sie Platz auf der Platte, oder prüfen Sie die Rechte des Inhaltsordners.',
  'photo-problems': () => 'So lässt sich das Stück nicht speichern. Nichts wurde geändert.',
};

export const photos: typeof english = {
  title: (piece) => `Fotos von ${piece}`,
  none: 'Noch kein Foto: Der Laden zeigt die Zeichnung.',
  first: 'Das erste sehen Käuferinnen in Listen und oben auf seiner Seite.',
  add: 'Ein Foto dazulegen',
  choose: 'Foto',
  hint: 'Wählen Sie es, lassen Sie es irgendwo auf diese Seite fallen, oder nehmen Sie es mit dem Telefon auf. Es wird aufrecht gedreht, und wo und womit es aufgenommen wurde, bleibt weg.',
  alt: 'Was es zeigt, für jemanden, der es nicht sehen kann (auf Englisch)',
  altDe: 'Dasselbe auf Deutsch',
  altHint: 'Zum Beispiel: das Armband liegt auf grauem Schiefer, der Verschluss links.',
  upload: 'Zum Stück legen',
  sending: 'Unterwegs',
  saveWords: 'Worte speichern',
  place: (at, of) => `Foto ${at} von ${of}`,
  earlier: 'Nach vorn',
  later: 'Nach hinten',
  remove: 'Wegnehmen',
  removeHint: 'Seine Datei bleibt im Inhaltsordner, damit der Verlauf es zurückholen kann.',
  crop: 'Nur einen Ausschnitt zeigen',
  cropHint: 'Zeichnen Sie über das Foto, oder schreiben Sie Prozente davon.',
  parts: { left: 'Von links, %', top: 'Von oben, %', width: 'Breite, %', height: 'Höhe, %' },
  saveCrop: 'Diesen Ausschnitt zeigen',
  frames: { whole: 'Alles', square: 'Quadrat in der Mitte', middle: 'Etwas näher' },
  fileGone: (file) =>
    `Die Datei „${file}“ ist nicht da oder nicht lesbar. Legen Sie sie zurück, oder nehmen Sie das Foto weg.`,
  trouble: troubles,
  size: (width: number, height: number, f: Format) => `${f.number(width)} × ${f.number(height)} Punkte`,
};
