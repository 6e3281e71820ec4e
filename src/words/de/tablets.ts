/** Was die Macherin liest, wo Tablets hereindürfen, und auf dem Tablet, während es gekoppelt wird. */
import type { tablets as english } from '../en/tablets.ts';

export const tablets: typeof english = {
  title: 'Tablets',
  lead: 'Ein Tablet oder Telefon neben dem Brett kann Karten und Schritte zeigen und Ihre Stelle festhalten, über Ihr eigenes Netz zu Hause. Es sieht die Namen auf den Karten und sonst nichts von der Werkbank.',
  off: 'Ausgeschaltet: Aus Ihrem Netz ist die Werkbank nicht zu erreichen.',
  on: (port) => `Eingeschaltet: Geräte in Ihrem Netz zu Hause erreichen sie an Port ${port}.`,
  switchOn: 'Einschalten',
  switchOff: 'Ausschalten',
  offHint: 'Gekoppelte Geräte bleiben gekoppelt und dürfen wieder herein, wenn es wieder an ist.',
  noServer:
    'Hier lässt es sich nicht einschalten: Nur eine Werkbank, die mit „npm start“ läuft, lässt Tablets herein.',
  problems: {
    'port-taken': (port) =>
      `Port ${port} hat ein anderes Programm. Beenden Sie das, oder setzen Sie CLASPWISE_TABLET_PORT auf einen anderen und starten Sie neu.`,
    'no-certificate':
      'Das Zertifikat lässt sich neben dem Auftragsbuch nicht schreiben. Geben Sie Ihrem Konto dort das Recht dazu, dann schalten Sie wieder ein.',
    failed:
      'Es ließ sich nicht öffnen. Starten Sie die Werkbank neu; hilft das nicht, setzen Sie CLASPWISE_TABLET_PORT auf einen anderen Port.',
  },
  noAddress:
    'Dieser Rechner hat gerade keine Adresse in einem Netz. Verbinden Sie ihn mit Ihrem Netz zu Hause.',

  pair: 'Ein Gerät koppeln',
  pairHint: (minutes) =>
    `Lassen Sie einen Code zeigen und nehmen Sie ihn mit der Kamera des Geräts auf. Er gilt einmal, ${minutes} Minuten lang.`,
  showCode: 'Code zeigen',
  codeLabel: (address) => `Code, der ${address} öffnet`,
  codeIsUp: 'Nehmen Sie das jetzt mit dem Tablet auf.',
  noCamera: 'Keine Kamera?',
  noCameraHint:
    'Bringen Sie diese Adresse auf eigenem Weg auf das Gerät. Wer sie zuerst öffnet, ist gekoppelt.',
  others: 'Wenn das nirgends hinführt: die anderen Adressen dieses Rechners',
  elsewhereHint:
    'Wenn das Gerät nichts findet: Beide müssen im selben Netz sein, und die Firewall dieses Rechners muss den Port durchlassen.',

  fingerprint: 'Das Zertifikat',
  warning:
    'Beim ersten Mal warnt der Browser des Geräts, die Verbindung sei nicht sicher. Das muss er: Er kann diesen Rechner nicht kennen, dessen Zertifikat die Werkbank selbst gemacht hat. Lassen Sie sich vom Browser das Zertifikat zeigen, bevor Sie weitergehen, und vergleichen Sie seinen SHA-256-Fingerabdruck mit diesem. Ist es ein anderer, hören Sie auf: Dann steht jemand dazwischen.',
  fingerprintLabel: 'SHA-256-Fingerabdruck',
  lasts: (day) =>
    `Es gilt bis ${day} und wird vorher neu gemacht, und immer wenn dieser Rechner eine andere Adresse bekommt. Dann warnt der Browser noch einmal, und unter einer anderen Adresse ist ein Gerät neu zu koppeln: Lassen Sie Ihren Router diesem Rechner immer dieselbe geben.`,

  devices: 'Gekoppelte Geräte',
  none: 'Noch keine.',
  paired: (when) => `gekoppelt ${when}`,
  seen: (when) => `zuletzt gesehen ${when}`,
  sendAway: 'Wegschicken',
  sendAwayFor: (name) => `„${name}“ wegschicken`,
  gone: 'Weggeschickt. Von diesem Augenblick an darf es nicht mehr herein.',

  nameTitle: 'Dieses Gerät koppeln',
  name: 'Ein Name dafür',
  nameHint: 'Damit Sie es auf der Liste am Rechner wiedererkennen: „Küchentablet“.',
  pairThis: 'Koppeln',
  safety:
    'Wer es in der Hand hat, kann die Karten lesen. Schicken Sie es am Rechner weg, wenn es verloren geht oder den Besitzer wechselt.',
};
