/** Was die Macherin liest, wenn ihr Laden auf einen Server anderswo soll. */
import type { HostFormTrouble, HostStep, HostTrouble } from '../hosting.ts';
import type { hosting as english } from '../en/hosting.ts';

const dateien = (count: number): string => (count === 1 ? '1 Datei' : `${count} Dateien`);
const bei = (path: string): string => (path === '' || path === '.' ? 'den Ordner' : path);

const steps: Readonly<Record<HostStep, string>> = {
  connecting: 'Rufe Ihren Anbieter …',
  comparing: 'Sehe nach, was dort liegt …',
  sending: 'Schicke, was neu ist …',
  clearing: 'Räume weg, was nicht mehr gebraucht wird …',
};

function trouble(one: HostTrouble): string {
  switch (one.code) {
    case 'no-such-host':
      return `Kein Server heißt ${one.host}. Sehen Sie im Brief Ihres Anbieters nach, wie er geschrieben wird, und ob Sie online sind.`;
    case 'refused':
      return `${one.host} ist da, nimmt am Port ${one.port} aber kein SFTP an. Fragen Sie Ihren Anbieter, welcher Port es ist und ob SFTP erst eingeschaltet werden muss.`;
    case 'no-answer':
      return `${one.host} antwortet am Port ${one.port} nicht. Sehen Sie nach Server und Port und ob Sie online sind; sonst versuchen Sie es später noch einmal.`;
    case 'no-ssh':
      return `Was bei ${one.host}, Port ${one.port}, antwortet, spricht kein sicheres SFTP. Einfaches FTP genügt nicht: Fragen Sie Ihren Anbieter nach SFTP.`;
    case 'wrong-password':
      return `Ihr Anbieter nimmt dieses Passwort für ${one.user} nicht an. Geben Sie beides neu ein, so wie Sie es für SFTP bekommen haben.`;
    case 'wrong-key':
      return `Ihr Anbieter nimmt diesen Schlüssel für ${one.user} nicht an. Sehen Sie nach dem Namen und ob die öffentliche Hälfte des Schlüssels dort eingetragen ist.`;
    case 'key-unreadable':
      return 'Der private Schlüssel, der hier liegt, lässt sich nicht lesen. Geben Sie ihn neu ein.';
    case 'key-locked':
      return 'Der private Schlüssel, der hier liegt, geht mit seinem Kennwort nicht auf. Geben Sie beides neu ein.';
    case 'host-key-changed':
      return 'Ihr Anbieter zeigt einen anderen Fingerabdruck als den, den Sie bestätigt haben. Nichts wurde geschickt, auch Ihr Passwort nicht. Entweder hat Ihr Anbieter einen neuen Schlüssel, oder jemand steht zwischen Ihnen und ihm. Fragen Sie ihn, und zwar nicht über diese Verbindung, bevor Sie weitermachen.';
    case 'no-sftp':
      return 'Ihr Anbieter hat Sie eingelassen, hat aber kein SFTP für Sie. Bitten Sie ihn, SFTP für Ihr Konto einzuschalten.';
    case 'not-a-folder':
      return 'Wo der Ordner sein sollte, liegt eine Datei. Sehen Sie nach, wie der Ordner heißt.';
    case 'no-permission':
      return `Ihr Anbieter lässt Sie ${bei(one.path)} nicht schreiben. Sehen Sie nach dem Namen des Ordners, oder bitten Sie ihn um das Recht, dort zu schreiben.`;
    case 'no-room':
      return `Ihr Anbieter nahm nichts mehr an, als ${bei(one.path)} unterwegs war: Seine Platte oder Ihr Anteil daran ist wohl voll. Schaffen Sie dort Platz oder bitten Sie um mehr, dann schicken Sie es noch einmal.`;
    case 'cut-off':
      return 'Die Verbindung ist abgerissen. Was angekommen ist, bleibt dort; schicken Sie es noch einmal, dann geht es von da an weiter.';
    case 'host-said':
      return `Es hat nicht geklappt${one.path === '' ? '' : `, bei ${one.path}`}. Was dazu gesagt wurde: ${one.said}`;
    case 'stopped':
      return 'Es wurde unterbrochen, bevor alles da war. Schicken Sie es noch einmal, dann geht es von da an weiter.';
  }
}

const formTroubles: Readonly<Record<HostFormTrouble['code'], string>> = {
  'host-unreadable':
    'Das ist kein Name eines Servers. Er sieht aus wie sftp.example.org: ohne https:// davor, ohne Schrägstrich.',
  'port-unreadable': 'Ein Port ist eine ganze Zahl von 1 bis 65535. Fast alle Anbieter haben 22.',
  'user-missing': 'Tragen Sie den Namen ein, unter dem Ihr Anbieter Sie führt.',
  'folder-unreadable': 'Tragen Sie den Ordner ein, etwa public_html oder /var/www/laden, ohne „..“.',
  'secret-missing': 'Tragen Sie das Passwort ein oder einen privaten Schlüssel.',
  'secret-twice': 'Tragen Sie ein Passwort ein oder einen Schlüssel, nicht beides.',
  'key-unreadable':
    'Das ist kein privater Schlüssel, der sich hier lesen lässt. Nehmen Sie die Datei so, wie sie gemacht wurde, mit erster und letzter Zeile.',
  'key-locked': 'Dieser Schlüssel hat ein Kennwort. Tragen Sie das ein, mit dem er aufgeht.',
  'key-public':
    'Das ist die öffentliche Hälfte eines Schlüssels. Gebraucht wird die private: die Datei ohne „.pub“.',
  'too-long': 'Das ist mehr, als in diese Felder geht.',
  'changed-meanwhile':
    'Die Angaben wurden inzwischen in einem anderen Fenster geändert. Was jetzt gilt, steht auf dieser Seite, wenn Sie sie neu öffnen; von hier wurde nichts geändert.',
};

export const hosting: typeof english = {
  title: 'Auf einem Server anderswo',
  lead: 'Was Sie veröffentlicht haben, kann zu jedem Anbieter für einfache Websites: als eine Datei, die Sie dort auspacken, oder per SFTP, das nur schickt, was sich geändert hat.',
  zip: 'Den Laden als Zip-Datei herunterladen',
  zipHint: 'Packen Sie sie im Ordner Ihrer Website aus, so dass ihre index.html dort liegt.',
  way: 'Per SFTP schicken',
  published: (when) => `Zuletzt veröffentlicht haben Sie am ${when}.`,
  there: (when) => `Auf dem Server liegt, was Sie am ${when} veröffentlicht haben.`,
  behind: 'Was Sie seitdem veröffentlicht haben, ist noch nicht dort.',
  noSettings: 'Noch gibt es keine Angaben zu einem Anbieter.',
  nothingPublished: 'Noch ist nichts veröffentlicht. Veröffentlichen Sie zuerst.',
  another: 'Es wird schon geschickt. Warten Sie, bis das fertig ist.',
  send: 'Jetzt schicken',
  resend: 'Jede Datei noch einmal schicken, was auch immer dort liegt',
  resendHint: 'Wenn jemand dort von Hand Dateien geändert oder gelöscht hat.',
  running: 'Es wird geschickt',
  steps,
  progress: (done, of) => `${done} von ${dateien(of)}`,
  stay: 'Sie können diese Seite schließen; es geht von selbst weiter. Besucher sehen den alten Laden, bis die neuen Seiten da sind.',
  done: (when, sent, removed, seconds) =>
    `Alles da (${when}): ${dateien(sent)} geschickt${removed > 0 ? `, ${dateien(removed)} entfernt` : ''}, in ${seconds} s.`,
  nothingToSend: (when) => `Alles da (${when}); es hatte sich nichts geändert.`,
  terminal: (sent, removed, seconds) =>
    `Alles da: ${dateien(sent)} geschickt, ${dateien(removed)} entfernt, in ${seconds} s.`,
  failed: (when) => `Es ist nicht angekommen (${when}).`,
  trouble,
  newHost:
    'Sie rufen diesen Server zum ersten Mal. Vergleichen Sie seinen Fingerabdruck mit dem, den Ihr Anbieter Ihnen genannt hat: in seinem Brief oder auf seinen Hilfeseiten. Erst dann geht Ihr Passwort dorthin.',
  fingerprint: 'Fingerabdruck',
  keyType: 'Art des Schlüssels',
  knownPrint: 'Wie Sie ihn bestätigt haben',
  gotPrint: 'Wie er jetzt ist',
  trustSure: 'Es ist der, den mein Anbieter mir genannt hat',
  trust: 'Das ist mein Anbieter: schicken',
  foreign: (folder) =>
    `In ${folder} liegen Dateien, die nicht von hier sind. Gleichnamige würden ersetzt; alle anderen blieben, wie sie sind.`,
  foreignSome: (count) => `Zusammen: ${count}. Darunter:`,
  foreignSure: 'Es ist der richtige Ordner, und Gleichnamiges darf ersetzt werden',
  foreignSend: 'In diesen Ordner schicken',
  forgetTitle: 'Mein Anbieter hat einen neuen Schlüssel',
  forgetSure: 'Mein Anbieter hat bestätigt, dass er einen neuen Schlüssel hat',
  forget: 'Den alten vergessen',
  settings: 'Ihr Anbieter',
  settingsLead:
    'Das hat Ihnen Ihr Anbieter genannt, als Sie Kundin wurden, meist unter „SFTP“ oder „SSH“. Passwort oder Schlüssel bleiben in einer Datei auf diesem Rechner, die nur Ihr Konto lesen darf; keine Seite zeigt sie wieder, und in keiner Sicherung liegen sie.',
  host: 'Server',
  hostHint: 'Etwa sftp.example.org',
  port: 'Port',
  user: 'Name des Kontos',
  folder: 'Ordner der Website',
  folderHint: 'Etwa public_html; er wird angelegt, wenn es ihn nicht gibt',
  password: 'Passwort',
  passwordKept: 'Ein Passwort liegt hier. Lassen Sie es leer, um dabei zu bleiben.',
  keyKept: 'Ein privater Schlüssel liegt hier. Lassen Sie Passwort und Schlüssel leer, um dabei zu bleiben.',
  orKey: 'Oder ein privater Schlüssel',
  key: 'Privater Schlüssel, als Text',
  keyFile: 'Oder seine Datei',
  passphrase: 'Kennwort des Schlüssels, wenn er eins hat',
  save: 'Speichern',
  saved: 'Gespeichert.',
  removed: 'Weggenommen.',
  changeSettings: 'Die Angaben ändern',
  remove: 'Diese Angaben wegnehmen',
  removeLead: 'Passwort oder Schlüssel werden hier gelöscht. Was auf dem Server liegt, bleibt dort.',
  removeSure: 'Server, Name und Passwort oder Schlüssel hier löschen',
  removeButton: 'Wegnehmen',
  back: 'Zurück zum Veröffentlichen',
  formTroubles,
  formTrouble: 'Nichts wurde gespeichert:',
};
