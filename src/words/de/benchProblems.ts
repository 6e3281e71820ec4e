/** Was die Macherin liest, wenn ihre Werkbank etwas nicht zeigen oder tun kann. */
import type { BenchProblem } from '../benchCodes.ts';
import type { Sentences } from '../sentence.ts';

export const problems: Sentences<BenchProblem> = {
  'book-locked': () =>
    'Eine andere Werkbank oder ein anderes Programm hält das Auftragsbuch. Nichts wurde geändert; versuchen Sie es gleich noch einmal.',
  'book-full': () =>
    'Der Speicher ist voll. Nichts wurde geändert. Schaffen Sie Platz und versuchen Sie es dann noch einmal.',
  'book-read-only': () => 'Das Auftragsbuch darf nicht beschrieben werden. Prüfen Sie die Rechte der Datei.',
  'book-unreachable': () =>
    'Das Auftragsbuch lässt sich nicht öffnen. Prüfen Sie, ob es seinen Ordner gibt und er beschreibbar ist.',
  'not-a-book': () =>
    'Wo das Auftragsbuch liegen soll, liegt eine andere Datei. Sie ist unberührt, und Bestellungen, die inzwischen kommen, bleiben bei ihren Käuferinnen. Legen Sie das Auftragsbuch zurück, wo es war, oder stellen Sie eine Sicherung wieder her.',
  'no-backup': () =>
    'Diese Datei ist keine Sicherung eines Auftragsbuchs. Nichts wurde geändert; wählen Sie eine andere.',
  'backup-newer': () =>
    'Diese Sicherung stammt von einer neueren Version. Nichts wurde geändert. Erneuern Sie zuerst diese Version, dann stellen Sie sie wieder her.',
  'backup-broken': () =>
    'Diese Sicherung ist selbst beschädigt: Nicht alles darin ist, wie es geschrieben wurde. Nichts wurde geändert; wählen Sie eine andere.',
  'newer-book': () =>
    'Das Auftragsbuch stammt von einer neueren Version dieses Programms. Es ist unberührt, und Bestellungen, die inzwischen kommen, bleiben bei ihren Käuferinnen. Erneuern Sie diese Version, dann ist alles wieder da.',
  'book-broken': () =>
    'Die Datei des Auftragsbuchs ist beschädigt. Es wird nichts mehr hineingeschrieben; Bestellungen, die inzwischen kommen, bleiben bei ihren Käuferinnen, und denen wird es gesagt. Stellen Sie eine Sicherung wieder her.',
  'book-gone': () =>
    'Hier wurde ein Auftragsbuch geführt, und seine Datei fehlt oder ist leer. An seiner Stelle ist nichts begonnen; Bestellungen, die inzwischen kommen, bleiben bei ihren Käuferinnen. Legen Sie die Datei zurück, wo sie war, oder stellen Sie eine Sicherung wieder her.',
  'order-damaged': () =>
    'Was von dieser Bestellung im Buch steht, lässt sich nicht mehr lesen: Ihre Bytes haben sich auf dem Datenträger geändert. Die anderen Bestellungen berührt das nicht. Ist die E-Mail noch da, so nehmen Sie sie noch einmal an, dann ist die Bestellung wieder ganz; oder stellen Sie eine Sicherung wieder her.',
  'changed-meanwhile': () =>
    'Diese Bestellung wurde in einem anderen Fenster oder an einer anderen Werkbank geändert. Nichts wurde überschrieben: Sehen Sie sie an, wie sie jetzt ist, und tun Sie es dann noch einmal.',
  'no-such-buyer': () =>
    'Zu dieser Bestellung steht niemand im Buch: Es gibt sie nicht, oder ihre Käuferin wurde gelöscht.',
  'no-such-piece': () => 'Im Katalog gibt es kein solches Stück.',
  'no-such-entry': () => 'Unter diesem Namen steht nichts im Inhalt, oder seine Datei ist so nicht lesbar.',
  'no-such-order': () => 'Eine Bestellung mit dieser Nummer steht nicht im Buch.',
  'no-such-invoice': () => 'Eine Rechnung mit dieser Nummer steht nicht im Buch.',
  'bad-form': () => 'Das Formular war nicht ausgefüllt, wie es sein soll. Nichts wurde geändert.',
  'upload-broken': () =>
    'Was ankam, war kein Formular oder nur ein Teil davon. Nichts wurde geändert; schicken Sie es noch einmal von der Seite ab.',
  'upload-too-large': () => 'Die Datei ist zu groß. Nichts wurde geändert.',
  'wrong-host': () =>
    'Die Werkbank wurde mit einem Namen gerufen, den sie nicht kennt. Ist es Ihrer, so setzen Sie ihn in CLASPWISE_HOSTS und starten neu.',
  'cross-site': () => 'Eine andere Website wollte das. Nichts wurde geändert.',
  'no-passphrase': () =>
    'Von anderswo öffnet sich die Werkbank nur mit einer Passphrase, und es ist keine gesetzt. Setzen Sie sie am Gerät selbst, unter „Wer herein darf“.',
  'needs-https': () =>
    'Von anderswo öffnet sich die Werkbank nur über https, damit unterwegs niemand mitliest.',
  'sign-in': () => 'Bitte geben Sie zuerst die Passphrase ein.',
  unpaired: () =>
    'Dieses Gerät ist nicht gekoppelt, oder es wurde weggeschickt. Lassen Sie sich am Rechner unter „Tablets“ einen Code zeigen und öffnen Sie ihn hier.',
  'not-on-tablet': () =>
    'Auf einem gekoppelten Gerät gibt es nur Karten und Schritte. Alles andere ist am Rechner selbst.',
  'pairing-over': () =>
    'Dieser Code wurde schon benutzt, oder seine zehn Minuten sind um. Lassen Sie sich am Rechner unter „Tablets“ einen neuen zeigen.',
  'device-name': () =>
    'Geben Sie dem Gerät einen Namen aus einer Zeile mit höchstens 40 Zeichen, an dem Sie es wiedererkennen.',
  'only-here': () => 'Gekoppelt und weggeschickt wird am Rechner selbst.',
  'wrong-passphrase': () => 'Das ist nicht die Passphrase.',
  'passphrase-length': () =>
    'Eine Passphrase hat 12 bis 200 Zeichen. Gut sind vier Wörter, die niemand zusammenstellen würde.',
  'too-many-tries': ({ seconds }, f) => `Zu viele Versuche. Wieder in ${f.number(seconds)} Sekunden.`,
};
