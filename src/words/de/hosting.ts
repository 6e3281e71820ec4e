/** Was die Macherin liest, wenn ihr Laden auf einen Server anderswo soll. */
import type { HostFormTrouble, HostStep, HostTrouble } from '../hosting.ts';
import type { hosting as english } from '../en/hosting.ts';

const dateien = (count: number): string => (count === 1 ? '1 Datei' : `${count} Dateien`);
const bei = (path: string): string => (path === '' || path === '.' ? 'den Ordner' : path);

const steps: Readonly<Record<HostStep, string>> = {
  connecting: 'Rufe deinen Anbieter …',
  comparing: 'Sehe nach, was dort liegt …',
  sending: 'Schicke, was neu ist …',
  clearing: 'Räume weg, was nicht mehr gebraucht wird …',
};

function trouble(one: HostTrouble): string {
  switch (one.code) {
    case 'no-such-host':
      return `Kein Server heißt ${one.host}. Sieh im Brief deines Anbieters nach, wie er geschrieben wird, und ob du online bist.`;
    case 'refused':
      return `${one.host} ist da, nimmt am Port ${one.port} aber kein SFTP an. Frag deinen Anbieter, welcher Port es ist und ob SFTP erst eingeschaltet werden muss.`;
    case 'no-answer':
      return `${one.host} antwortet am Port ${one.port} nicht. Sieh nach Server und Port und ob du online bist; sonst versuch es später noch einmal.`;
    case 'no-ssh':
      return `Was bei ${one.host}, Port ${one.port}, antwortet, spricht kein sicheres SFTP. Einfaches FTP genügt nicht: Frag deinen Anbieter nach SFTP.`;
    case 'wrong-password':
      return `Dein Anbieter nimmt dieses Passwort für ${one.user} nicht an. Gib beides neu ein, so wie du es für SFTP bekommen hast.`;
    case 'wrong-key':
      return `Dein Anbieter nimmt diesen Schlüssel für ${one.user} nicht an. Sieh nach dem Namen und ob die öffentliche Hälfte des Schlüssels dort eingetragen ist.`;
    case 'key-unreadable':
      return 'Der private Schlüssel, der hier liegt, lässt sich nicht lesen. Gib ihn neu ein.';
    case 'key-locked':
      return 'Der private Schlüssel, der hier liegt, geht mit seinem Kennwort nicht auf. Gib beides neu ein.';
    case 'host-key-changed':
      return 'Dein Anbieter zeigt einen anderen Fingerabdruck als den, den du bestätigt hast. Nichts wurde geschickt, auch dein Passwort nicht. Entweder hat dein Anbieter einen neuen Schlüssel, oder jemand steht zwischen dir und ihm. Frag ihn, und zwar nicht über diese Verbindung, bevor du weitermachst.';
    case 'no-sftp':
      return 'Dein Anbieter hat dich eingelassen, hat aber kein SFTP für dich. Bitte ihn, SFTP für dein Konto einzuschalten.';
    case 'not-a-folder':
      return 'Wo der Ordner sein sollte, liegt eine Datei. Sieh nach, wie der Ordner heißt.';
    case 'no-permission':
      return `Dein Anbieter lässt dich ${bei(one.path)} nicht schreiben. Sieh nach dem Namen des Ordners, oder bitte ihn um das Recht, dort zu schreiben.`;
    case 'no-room':
      return `Dein Anbieter nahm nichts mehr an, als ${bei(one.path)} unterwegs war: Seine Platte oder dein Anteil daran ist wohl voll. Schaff dort Platz oder bitte um mehr, dann schick es noch einmal.`;
    case 'cut-off':
      return 'Die Verbindung ist abgerissen. Was angekommen ist, bleibt dort; schick es noch einmal, dann geht es von da an weiter.';
    case 'host-said':
      return `Es hat nicht geklappt${one.path === '' ? '' : `, bei ${one.path}`}. Was dazu gesagt wurde: ${one.said}`;
    case 'stopped':
      return 'Es wurde unterbrochen, bevor alles da war. Schick es noch einmal, dann geht es von da an weiter.';
  }
}

const formTroubles: Readonly<Record<HostFormTrouble['code'], string>> = {
  'host-unreadable':
    'Das ist kein Name eines Servers. Er sieht aus wie sftp.example.org: ohne https:// davor, ohne Schrägstrich.',
  'port-unreadable': 'Ein Port ist eine ganze Zahl von 1 bis 65535. Fast alle Anbieter haben 22.',
  'user-missing': 'Trag den Namen ein, unter dem dein Anbieter dich führt.',
  'folder-unreadable': 'Trag den Ordner ein, etwa public_html oder /var/www/laden, ohne „..“.',
  'secret-missing': 'Trag das Passwort ein oder einen privaten Schlüssel.',
  'secret-twice': 'Trag ein Passwort ein oder einen Schlüssel, nicht beides.',
  'key-unreadable':
    'Das ist kein privater Schlüssel, der sich hier lesen lässt. Nimm die Datei so, wie sie gemacht wurde, mit erster und letzter Zeile.',
  'key-locked': 'Dieser Schlüssel hat ein Kennwort. Trag das ein, mit dem er aufgeht.',
  'key-public':
    'Das ist die öffentliche Hälfte eines Schlüssels. Gebraucht wird die private: die Datei ohne „.pub“.',
  'too-long': 'Das ist mehr, als in diese Felder geht.',
  'changed-meanwhile':
    'Die Angaben wurden inzwischen in einem anderen Fenster geändert. Was jetzt gilt, steht auf dieser Seite, wenn du sie neu öffnest; von hier wurde nichts geändert.',
};

export const hosting: typeof english = {
  title: 'Auf einem Server anderswo',
  lead: 'Was du veröffentlicht hast, kann zu jedem Anbieter für einfache Websites: als eine Datei, die du dort auspackst, oder per SFTP, das nur schickt, was sich geändert hat.',
  zip: 'Den Laden als Zip-Datei herunterladen',
  zipHint: 'Pack sie im Ordner deiner Website aus, so dass ihre index.html dort liegt.',
  way: 'Per SFTP schicken',
  published: (when) => `Zuletzt veröffentlicht hast du am ${when}.`,
  there: (when) => `Auf dem Server liegt, was du am ${when} veröffentlicht hast.`,
  behind: 'Was du seitdem veröffentlicht hast, ist noch nicht dort.',
  noSettings: 'Noch gibt es keine Angaben zu einem Anbieter.',
  nothingPublished: 'Noch ist nichts veröffentlicht. Veröffentliche zuerst.',
  another: 'Es wird schon geschickt. Warte, bis das fertig ist.',
  send: 'Jetzt schicken',
  resend: 'Jede Datei noch einmal schicken, was auch immer dort liegt',
  resendHint: 'Wenn jemand dort von Hand Dateien geändert oder gelöscht hat.',
  running: 'Es wird geschickt',
  steps,
  progress: (done, of) => `${done} von ${dateien(of)}`,
  stay: 'Du kannst diese Seite schließen; es geht von selbst weiter. Besucher sehen den alten Laden, bis die neuen Seiten da sind.',
  done: (when, sent, removed, seconds) =>
    `Alles da (${when}): ${dateien(sent)} geschickt${removed > 0 ? `, ${dateien(removed)} entfernt` : ''}, in ${seconds} s.`,
  nothingToSend: (when) => `Alles da (${when}); es hatte sich nichts geändert.`,
  terminal: (sent, removed, seconds) =>
    `Alles da: ${dateien(sent)} geschickt, ${dateien(removed)} entfernt, in ${seconds} s.`,
  failed: (when) => `Es ist nicht angekommen (${when}).`,
  trouble,
  newHost:
    'Du rufst diesen Server zum ersten Mal. Vergleiche seinen Fingerabdruck mit dem, den dein Anbieter dir genannt hat: in seinem Brief oder auf seinen Hilfeseiten. Erst dann geht dein Passwort dorthin.',
  fingerprint: 'Fingerabdruck',
  keyType: 'Art des Schlüssels',
  knownPrint: 'Wie du ihn bestätigt hast',
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
  settings: 'Dein Anbieter',
  settingsLead:
    'Das hat dir dein Anbieter genannt, als du Kundin wurdest, meist unter „SFTP“ oder „SSH“. Passwort oder Schlüssel bleiben in einer Datei auf diesem Rechner, die nur dein Konto lesen darf; keine Seite zeigt sie wieder, und in keiner Sicherung liegen sie.',
  host: 'Server',
  hostHint: 'Etwa sftp.example.org',
  port: 'Port',
  user: 'Name des Kontos',
  folder: 'Ordner der Website',
  folderHint: 'Etwa public_html; er wird angelegt, wenn es ihn nicht gibt',
  password: 'Passwort',
  passwordKept: 'Ein Passwort liegt hier. Lass es leer, um dabei zu bleiben.',
  keyKept: 'Ein privater Schlüssel liegt hier. Lass Passwort und Schlüssel leer, um dabei zu bleiben.',
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
