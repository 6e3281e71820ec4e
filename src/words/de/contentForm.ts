/** Die Formulare am Arbeitsplatz für das, was im Inhalt steht: was sie fragen und was aus dem Speichern wurde. */
import type { contentForm as english } from '../en/contentForm.ts';
import { contentFields } from './contentFields.ts';

/** Warum sich eine Datei nicht schreiben lässt. */
const WHY: Readonly<Record<string, string>> = {
  full: 'auf der Platte ist kein Platz mehr',
  'read-only': 'in den Ordner des Inhalts kann nicht geschrieben werden',
  outside: 'die Datei liegt außerhalb des Ordners',
  failed: 'das Schreiben ist misslungen',
  'not-editable':
    'die Datei ist so geschrieben, dass sie hier nicht geändert werden kann; ändern Sie sie in einem Editor',
  'no-history': 'was gespeichert wird, lässt sich nicht festhalten, und dann ließe sich nichts zurücknehmen',
  gone: 'es ist nicht mehr da',
};

export const contentForm: typeof english = {
  ...contentFields,
  ...{
    yes: 'Ja',
    no: 'Nein',
    notSaid: 'Nichts gesagt',
    none: 'Keines',
    asUsual: (what: string) => `${what} (wie üblich)`,
  },
  choose: 'Bitte wählen',
  save: 'Speichern',
  saved: 'Gespeichert. Käuferinnen sehen es, sobald Sie veröffentlichen.',
  unchanged: 'Es war nichts anders, darum wurde nichts gespeichert.',
  addRow: 'Noch eines',
  row: (what, place) => `${what} ${place}`,
  takeAway: 'Dieses wegnehmen',
  noColour: 'keine zweite Farbe',
  showFields: 'Zeigen, was dazugehört',
  drawn: 'So wird es gezeichnet',
  drawAgain: 'Zeichnen',
  notDrawn: 'Es wird gezeichnet, sobald Art, Größe, Loch und Material da sind.',
  ten: 'Zehn in einer Reihe messen',
  tenHint:
    'Für kleine Perlen: Legen Sie zehn auf das Maßband. Ein Zehntel davon ist die Länge, wo keine angegeben ist.',
  wrong: 'Es ist noch nicht gespeichert',
  wrongLead: 'Was Sie geschrieben haben, steht noch unten.',
  elsewhere: 'Was es anderswo durcheinanderbrächte',
  clash: 'Das wurde inzwischen geändert',
  clashLead:
    'In einem anderen Fenster oder in der Datei selbst. In den Feldern steht, was Sie geschrieben haben, darunter, was jetzt da ist. Speichern Sie noch einmal, wenn Ihres gelten soll.',
  now: (text) => `Jetzt steht da: ${text}`,
  nowNothing: 'nichts',
  notWritable: (why) =>
    `Es ist nicht gespeichert: ${WHY[why] ?? why}. Was Sie geschrieben haben, steht noch unten.`,
  unreadable: 'Diese Datei ist so nicht lesbar, darum gibt es kein Formular dafür.',
  shortName: 'Kurzname',
  shortNameHint:
    'So heißt es in den Stücken. Leer wird er aus dem Namen gemacht; danach bleibt er, wie er ist.',
  taken: (id) => `„${id}“ gibt es schon.`,
  takenFix: 'Geben Sie einen anderen Kurznamen, oder lassen Sie ihn leer.',
  trays: {
    title: 'Fächer',
    find: 'Suchen',
    findHint: 'Name, Nummer, Fach, Material, 6 mm',
    show: 'Zeigen',
    count: (count) => `${count} davon`,
    noTray: 'Ohne Fach',
    tray: (name) => `Fach ${name}`,
    columns: { name: 'Name', size: 'Größe', hole: 'Loch', left: 'Noch da', number: 'Nummer' },
    add: 'Etwas Neues',
    addWire: 'Ein Draht',
    new: (kind) => `Neu: ${kind}`,
    newWire: 'Neu: Draht',
    copy: 'Noch eines davon anlegen',
    wire: 'Draht',
    broken: 'So nicht lesbar',
    notCounted: 'nicht gezählt',
  },
  shop: {
    title: 'Laden und Regeln',
    guides: 'Ratgeber',
    publish: 'Veröffentlichen',
    basics: 'Der Laden selbst',
  },
  guides: {
    title: 'Ratgeber',
    lead: 'Seiten mit Rat. In beiden Sprachen hat ein Ratgeber denselben Kurznamen.',
    body: 'Text',
    bodyHint:
      'Markdown: # Überschrift, *Betonung*, - Liste, [Wörter](Adresse). Zwischen Absätzen eine leere Zeile.',
    add: (language) => `Ein neuer Ratgeber, ${language}`,
    languages: { en: 'Englisch', de: 'Deutsch' },
    missing: (language) => `Noch nicht auf ${language}`,
  },
  pieces: {
    words: 'Texte und Preis',
    board: 'Auf dem Brett',
    card: 'Arbeitskarte',
    add: 'Ein neues Stück',
    copyOf: 'Kopie von',
    newLead: 'Name und Art genügen. Perlen kommen auf dem Brett dazu, Texte und Preis danach.',
    begin: 'Zum Brett',
    copy: 'Ein Stück wie dieses',
    copyName: (name) => `${name}, noch eines`,
    actions: 'Dieses Stück',
    retire: 'Zu den früheren Stücken legen',
    sold: 'Das, das da lag, ist verkauft',
    again: 'Wieder auf Bestellung machen',
    marks: {
      new: 'noch nicht veröffentlicht',
      changed: 'geändert, noch nicht veröffentlicht',
      broken: 'so nicht lesbar',
    },
    texts: 'Auf Englisch',
    sale: 'Verkauf',
  },
};
