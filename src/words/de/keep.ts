/** Was die Macherin über das Aufbewahren ihrer Aufträge liest. */
import { orders } from './counts.ts';

export const keep = {
  title: 'Aufbewahren',
  backup: 'Sicherung',
  backupHint:
    'Eine Datei mit allen Bestellungen, Notizen und Tagen. Heben Sie sie auf einem anderen Datenträger auf, wo nur Sie sie lesen: Sie enthält Namen und Adressen.',
  download: 'Sicherung herunterladen',
  restore: 'Wiederherstellen',
  restoreHint:
    'Setzt eine Sicherung an die Stelle des ganzen Auftragsbuchs. Was jetzt darin steht, wird vorher daneben aufgehoben.',
  restoreFile: 'Datei der Sicherung',
  restoreSure: 'Das Auftragsbuch durch diese Sicherung ersetzen',
  restoreButton: 'Wiederherstellen',
  restored: (count: number, kept: string): string =>
    `Wiederhergestellt: Im Buch ${count === 1 ? 'steht 1 Bestellung' : `stehen ${count} Bestellungen`}. Was vorher darin stand, liegt in ${kept}.`,
  folderOpen:
    'Wer sonst ein Konto auf diesem Rechner hat, kann in den Ordner des Auftragsbuchs sehen. Das Buch selbst ist für andere zu; schließen Sie auch den Ordner.',
  copies: 'Kopien neben dem Buch',
  copiesHint:
    'Was im Buch stand, bevor eine Sicherung zurückgespielt wurde. Was Sie löschen, wird auch darin gelöscht, wenn sie sich öffnen lassen; heruntergeladene Sicherungen löschen Sie selbst.',
  exports: 'Listen für andere Programme',
  csv: 'Bestellungen als CSV, für eine Tabelle',
  json: 'Bestellungen als JSON, mit ihrem Verlauf',
  retention: 'Daten der Kundschaft',
  retentionHint: (months: number): string =>
    `Ihr Laden hebt die Daten ${months === 1 ? 'einen Monat' : `${months} Monate`} auf, nachdem eine Bestellung verschickt oder abgesagt ist. Von selbst wird nichts gelöscht; das Recht am Ort kann mehr oder weniger verlangen.`,
  overdue: (count: number): string =>
    count === 0 ? 'Keine Bestellung ist darüber.' : `${orders(count)} darüber:`,
  eraseAll: 'Die Daten zu diesen Bestellungen endgültig löschen',
  erased: (count: number): string => `In ${orders(count)} gelöscht.`,
  done: 'Getan',
};
