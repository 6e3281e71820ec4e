/** Was die Macherin liest, wenn sie mit einem Tablet neben dem Brett auffädelt. */
import type { atBoard as english } from '../en/atBoard.ts';

const orders = (count: number): string => (count === 1 ? '1 Bestellung' : `${count} Bestellungen`);

export const atBoard: typeof english = {
  title: 'Am Brett',
  lead: 'Was darauf wartet, aufgefädelt zu werden, das Nächste zuerst. Nehmen Sie eines, oder haken Sie mehrere desselben Stücks an und fädeln Sie sie nebeneinander auf.',
  nothing: 'Nichts wartet darauf, aufgefädelt zu werden.',
  letTabletIn: 'Ein Tablet über Ihr Netz zu Hause hereinlassen',
  string: 'Auffädeln',
  goOn: 'Weiter auffädeln',
  card: 'Werkkarte',
  order: 'Die Bestellung',
  together: 'Die angehakten nebeneinander auffädeln',
  choose: (number) => `${number} mitnehmen`,
  begun: (when, who) => `angefangen, zuletzt ${when}${who === '' ? '' : ` auf ${who}`}`,
  batches: 'Angefangene Reihen',
  batch: (count) => `${orders(count)} nebeneinander`,
  due: (day) => `fällig ${day}`,
  differs: (number) =>
    `${number} ist nicht, wie die Kundin es sah: Klären Sie das mit ihr, bevor Sie den Draht schneiden.`,
  tooMany: (most) => `Bestellt sind mehr als ${most}. Fädeln Sie sie nacheinander nach diesen Schritten auf.`,
  clockBack:
    'Die Uhr dieses Rechners steht vor der Zeit Ihres letzten Schritts. Verloren geht dadurch nichts; stellen Sie sie trotzdem richtig.',

  where: (at, of) => `Schritt ${at} von ${of}`,
  strand: (at, of) => `Strang ${at} von ${of}`,
  nth: (at, of) => `${at} von ${of}`,
  stages: {
    ready: 'Bereitlegen',
    cut: 'Die Drähte schneiden',
    first: 'Das Verschlussende',
    beads: 'Die Perlen',
    second: 'Das andere Ende',
    done: 'Zum Schluss',
  },
  cutAll: 'Alle Drähte abschneiden und jeden zu seinem Stück legen.',
  clip: 'Eine Klammer ans freie Ende, ehe Sie es weglegen, damit nichts herunterrutscht.',
  beads: (first, last) => (first === last ? `Perle ${first}` : `Perlen ${first} bis ${last}`),
  repeat: (nth, of) => `${nth}. von ${of} Malen`,
  count: (done, of) => `${done} von ${of}`,
  next: 'Weiter',
  back: 'Zurück',
  all: 'Alle Schritte',
  hint: 'Weiter mit Taste (Bild ab, Leertaste, Pfeil rechts), Fußpedal oder Tippen; zurück mit Bild auf oder Pfeil links.',
  done: 'Alles getan',
  doneText:
    'Der letzte Schritt ist abgehakt. Sehen Sie das Stück noch einmal an, dann setzen Sie es auf der Seite der Bestellung auf „Aufgefädelt“.',
  donePiece: 'Der letzte Schritt ist abgehakt.',
  again: 'Beim ersten Schritt anfangen',
  picture: (strand) => `Der Strang; was gerade dran ist, leuchtet${strand === '' ? '' : `: ${strand}`}`,
  pictureText: 'Vom Verschluss an, beziffert wie in der Liste.',

  saved: 'Im Auftragsbuch festgehalten.',
  saving: 'Wird festgehalten …',
  lost: 'Die Werkbank ist nicht zu erreichen. Machen Sie weiter: Dieses Gerät merkt sich die Stelle und gibt sie ab, sobald die Werkbank antwortet.',
  refused:
    'Die Werkbank nimmt Ihre Stelle nicht mehr an. Machen Sie nach dem weiter, was hier steht, und sehen Sie bei Gelegenheit auf der Seite der Bestellung nach.',
  elsewhere: (step, of, when, who) =>
    `In einem anderen Fenster oder auf einem anderen Gerät (${who === '' ? 'an der Werkbank' : who}, ${when}) ging es weiter: Schritt ${step} von ${of}. Überschrieben wurde nichts.`,
  elsewhereDone: (when, who) =>
    `In einem anderen Fenster oder auf einem anderen Gerät (${who === '' ? 'an der Werkbank' : who}, ${when}) wurde dies zu Ende aufgefädelt. Überschrieben wurde nichts.`,
  takeTheirs: 'Dort weitermachen',
  keepMine: 'Hier bleiben',
  leftOff: (when, who) => `Hier haben Sie aufgehört: ${when}${who === '' ? '' : `, auf ${who}`}.`,
  changed:
    'Die Schritte sind andere als beim letzten Mal: Bestellung oder Stück wurde seither geändert. Fangen Sie beim ersten Schritt an und vergleichen Sie, was schon aufgefädelt ist.',
  changedNow:
    'Bestellung oder Stück wurde geändert, während Sie auffädelten. Laden Sie die Seite neu, dann stehen die Schritte da, wie sie jetzt sind.',
  loadAnew: 'Neu laden',
  noScript: 'Ohne JavaScript ist jeder Schritt eine eigene Seite; Ihre Stelle wird trotzdem festgehalten.',

  awake: 'Der Bildschirm bleibt an.',
  notAwake:
    'Dieser Browser kann den Bildschirm nicht anlassen. Stellen Sie das Gerät so ein, dass es sich nicht von selbst ausschaltet.',
  start: 'Uhr starten',
  pause: 'Uhr anhalten',
  clock: 'Ihre Uhr',
  clockHint:
    'Nur wenn Sie es wissen wollen: Die Minuten stehen dann bei der Bestellung, neben der Schätzung nach Ihrer Regel.',
  minutes: (minutes) => `${minutes} min`,
  timeOn: (day, minutes, f) =>
    `${day}: ${f.number(minutes)} ${minutes === 1 ? 'Minute' : 'Minuten'} am Brett nach Ihrer Uhr`,

  problems: {
    'no-such-order': 'Im Auftragsbuch steht keine Bestellung mit dieser Nummer.',
    'no-such-piece': 'Im Katalog gibt es kein solches Stück.',
    'nothing-to-string': 'Daraus lässt sich so nichts auffädeln. Warum, steht auf der Seite der Bestellung.',
    'other-piece':
      'Diese Bestellungen sind von verschiedenen Stücken. Nebeneinander geht nur ein Stück: Die Schritte sind dann gleich.',
    'strung-already': 'Eine dieser Bestellungen ist schon aufgefädelt oder abgesagt. Wählen Sie neu.',
    'too-many-pieces': 'So viele können nicht nebeneinanderliegen. Wählen Sie weniger.',
    'no-batch': 'Nichts ist gewählt. Haken Sie zwei Bestellungen eines Stücks an, oder mehr.',
  },
  title404: 'So lässt sich das nicht auffädeln',
};
