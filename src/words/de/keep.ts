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
  harmed: 'Ein Teil dieser Sicherung ist beschädigt',
  harmedFound:
    'Noch ist nichts geändert. Alles andere in dieser Sicherung ist heil, diese Bestellungen nicht:',
  harmedUnreadable: 'Sie lassen sich nicht mehr lesen:',
  harmedAltered: 'Sie lassen sich lesen, aber etwas darin ist nicht, wie es geschrieben wurde:',
  harmedThen:
    'Haben Sie eine ältere Sicherung, in der sie heil sind, nehmen Sie vielleicht lieber die. Stellen Sie diese wieder her, behalten sie ihren Platz im Buch, so wie sie sind, gekennzeichnet, mit Zahlungen und Papieren: Weggeworfen wird nichts davon. Haben Sie die E-Mail einer Bestellung noch, nehmen Sie sie danach noch einmal an, dann ist die Bestellung wieder ganz.',
  harmedFile: 'Dieselbe Datei der Sicherung noch einmal',
  harmedSure: 'Das Auftragsbuch durch diese Sicherung ersetzen, diese Bestellungen so, wie sie darin sind',
  harmedBack: 'Zurück, und nichts wiederherstellen',
  restored: (count: number): string =>
    count === 0
      ? 'Ein neues Buch ist begonnen.'
      : `Wiederhergestellt: Im Buch ${count === 1 ? 'steht 1 Bestellung' : `stehen ${count} Bestellungen`}.`,
  setAside: (kept: string): string => `Was vorher da lag, ist daneben aufgehoben als ${kept}.`,
  lost: 'Die Passphrase und die Zählung Ihrer Rechnungen ließen sich nicht übernehmen: Setzen Sie die Passphrase neu, wenn Sie eine haben, und sehen Sie nach der Nummer Ihrer letzten Rechnung, bevor Sie die nächste ausstellen.',
  broken: 'Das Auftragsbuch lässt sich so nicht gebrauchen',
  brokenSafe:
    'Ihr Laden bleibt offen. Wer jetzt bestellt, erfährt, dass die Bestellung noch nicht bei Ihnen ist: Sie wartet auf dem Gerät und wird von selbst wieder geschickt, oder sie kommt per E-Mail.',
  brokenRestore: 'Eine Sicherung an seine Stelle setzen',
  brokenRestoreHint:
    'Wählen Sie die neueste Sicherung, die Sie haben. Was jetzt da liegt, wird nicht gelöscht: Es wird unter anderem Namen beiseitegelegt, und wer sich mit solchen Dateien auskennt, kann vielleicht noch Bestellungen darin lesen. E-Mails mit Bestellungen seit dieser Sicherung können Sie noch einmal annehmen.',
  begin: 'Keine Sicherung?',
  beginHint:
    'Dann lässt sich ein neues, leeres Buch beginnen. Auch dabei wird, was jetzt da liegt, beiseitegelegt und nicht gelöscht. Bestellungen aus E-Mails können Sie noch einmal annehmen.',
  beginSure: 'Ein neues, leeres Buch beginnen',
  beginButton: 'Beginnen',
  check: 'Ist das Buch heil?',
  checkHint:
    'Jede Bestellung, jedes Papier, jede Zahlung, Notiz und Bewegung im Bestand und jede Seite der Datei wird mit dem verglichen, was geschrieben wurde, wenn die Werkbank startet und wann immer Sie es wollen. Was schon im Buch stand, bevor es solche Merkmale führte, wird damit verglichen, wie es da stand.',
  checkButton: 'Das ganze Buch prüfen',
  checkNone: 'Es ist noch nicht angesehen.',
  checkRunning: 'Es wird gerade angesehen. Sehen Sie gleich noch einmal nach.',
  checkFailed: (when: string): string =>
    `Es ließ sich nicht ansehen (${when}). Versuchen Sie es gleich noch einmal.`,
  checkSound: (when: string): string => `Alles ist heil (${when}).`,
  checkFound: (when: string): string => `Etwas ist beschädigt (${when}):`,
  checkStructure:
    'Die Datei selbst. Es wird nichts mehr hineingeschrieben, und neue Bestellungen warten bei ihren Käuferinnen. Stellen Sie eine Sicherung wieder her.',
  checkOrders: 'Bestellungen, die nicht mehr sind, was eingegangen ist:',
  checkKept:
    'Bestellungen, bei denen Geld, Papiere, Tage oder Notizen nicht mehr sind, was eingetragen wurde:',
  altered:
    'Etwas, was das Buch zu dieser Bestellung festhält, hat sich auf dem Datenträger geändert: ihr Stand oder ihre Tage, Zahlungen, Papiere, Pakete oder Notizen. Was davon, lässt sich nicht sagen. Gehen Sie sie unten durch, mit Ihrer Bank, Ihren Papieren und einer Sicherung daneben, und stellen Sie richtig, was falsch ist. Sagen Sie es dann, und das Buch nimmt sie, wie sie stehen.',
  lookedOver: 'Ich habe alles durchgesehen: Es stimmt, wie es dasteht',
  checkInvoices: (numbers: string): string => `Rechnungen, die sich nicht lesen lassen: ${numbers}.`,
  checkStock: (things: string): string =>
    `Was kam und ging, passt bei diesen nicht mehr zusammen; zählen Sie neu: ${things}`,
  checkSnapshots: (count: number): string =>
    `Stücke, wie sie bei der Bestellung standen: ${count}. Ihre Bestellungen richten sich nach dem Stück, wie es jetzt ist.`,
  folderOpen:
    'Wer sonst ein Konto auf diesem Rechner hat, kann in den Ordner des Auftragsbuchs sehen. Das Buch selbst ist für andere zu; schließen Sie auch den Ordner.',
  unreached: (names: string): string =>
    `In diesen Kopien ließ es sich nicht löschen, weil sie beschädigt sind oder sich nicht öffnen lassen: ${names}. Löschen Sie sie unten, wenn Sie sie nicht mehr brauchen.`,
  deleteCopy: 'Diese Kopie löschen',
  deleteSure: 'Sie endgültig löschen',
  copies: 'Kopien neben dem Buch',
  copiesHint:
    'Was im Buch stand, bevor eine Sicherung zurückgespielt wurde, und beschädigte Dateien, die beiseitegelegt sind. Was Sie löschen, wird auch darin gelöscht, wenn sie sich öffnen lassen; heruntergeladene Sicherungen löschen Sie selbst.',
  exports: 'Listen für andere Programme',
  csv: 'Bestellungen als CSV, für eine Tabelle',
  json: 'Bestellungen als JSON, mit ihrem Verlauf',
  exportsLack: (count: number): string =>
    count === 1
      ? '1 Bestellung im Buch lässt sich nicht lesen. Beide Listen nennen sie mit ihrer Nummer, als „unreadable“, mit dem, was übrig ist:'
      : `${count} Bestellungen im Buch lassen sich nicht lesen. Beide Listen nennen sie mit ihrer Nummer, als „unreadable“, mit dem, was übrig ist:`,
  retention: 'Daten der Kundschaft',
  retentionHint: (months: number): string =>
    `Ihr Laden hebt die Daten ${months === 1 ? 'einen Monat' : `${months} Monate`} auf, nachdem eine Bestellung verschickt oder abgesagt ist. Von selbst wird nichts gelöscht; das Recht am Ort kann mehr oder weniger verlangen.`,
  overdue: (count: number): string =>
    count === 0 ? 'Keine Bestellung ist darüber.' : `${orders(count)} darüber:`,
  eraseAll: 'Die Daten zu diesen Bestellungen endgültig löschen',
  erased: (count: number): string => `In ${orders(count)} gelöscht.`,
  done: 'Getan',
};
