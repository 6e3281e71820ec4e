/** Sentences about a file as a whole: how it is saved, how it is written, and what a guide may hold. */
import type { CatalogueSentences } from '../catalogueCodes.ts';

export const contentFile: Pick<
  CatalogueSentences,
  | 'file-unreadable'
  | 'file-too-large'
  | 'file-not-utf8'
  | 'invisible-sign'
  | 'other-ending'
  | 'yaml'
  | 'tab-indent'
  | 'colon-inside'
  | 'yaml-references'
  | 'too-many-fields'
  | 'field-twice'
  | 'front-matter'
  | 'html-in-guide'
  | 'link-scheme'
> = {
  'file-unreadable': ({ why }) => ({
    what: `Die Datei lässt sich nicht lesen (${why}).`,
    fix: 'Prüfen Sie, ob sie da ist und ob Sie sie öffnen dürfen.',
  }),
  yaml: ({ why }) => ({
    what: `Die Zeile lässt sich nicht als YAML lesen: ${why}.`,
    fix: 'Prüfen Sie die Einrückung, den Doppelpunkt mit einem Leerzeichen nach jedem Feldnamen und die Anführungszeichen um Texte mit Doppelpunkt oder #.',
  }),
  'file-too-large': ({ kilobytes, most }) => ({
    what: `Die Datei hat ${kilobytes} KB; mehr als ${most} KB werden nicht gelesen.`,
    fix: 'Verteilen Sie sie: Teile und Drähte dürfen in mehreren Dateien liegen.',
  }),
  'file-not-utf8': () => ({
    what: 'Die Datei ist nicht als UTF-8 gespeichert, Buchstaben gingen verloren.',
    fix: 'Speichern Sie sie im Editor noch einmal mit der Kodierung UTF-8.',
  }),
  'invisible-sign': ({ sign }) => ({
    what: `Im Text steht ein Zeichen, das niemand sieht (${sign}).`,
    fix: 'Löschen Sie das Wort, in dem es steht, und tippen Sie es neu.',
  }),
  'other-ending': ({ ending, wanted }) => ({
    what: `Die Datei endet auf „${ending}“ und würde übergangen.`,
    fix: `Benennen Sie sie so um, dass sie auf „${wanted}“ endet; ein Entwurf darf mit einem Unterstrich beginnen.`,
  }),
  'tab-indent': () => ({
    what: 'Die Zeile ist mit einem Tabulator eingerückt; das erlaubt YAML nicht.',
    fix: 'Rücken Sie mit zwei Leerzeichen je Stufe ein; die meisten Editoren können Tabulatoren in der ganzen Datei ersetzen.',
  }),
  'colon-inside': () => ({
    what: 'Im Text stehen ein Doppelpunkt und ein Leerzeichen, und was folgt, wird für ein weiteres Feld gehalten.',
    fix: "Setzen Sie den ganzen Text in Anführungszeichen: 'Mondstein: klar, bis man sich bewegt'.",
  }),
  'yaml-references': () => ({
    what: 'Verweise (&name und *name) oder Klammern stehen für nichts oder für viel zu viel.',
    fix: 'Schreiben Sie aus, was gemeint ist, ohne & und *.',
  }),
  'too-many-fields': ({ most }) => ({
    what: `Die Datei hat mehr als ${most} Felder.`,
    fix: 'Prüfen Sie, ob es die richtige Datei ist; Teile dürfen auf mehrere verteilt sein.',
  }),
  'field-twice': ({ field }) => ({
    what: `„${field}“ steht an derselben Stelle zweimal.`,
    fix: 'Behalten Sie das richtige und nehmen Sie das andere weg.',
  }),
  'front-matter': () => ({
    what: 'Dem Ratgeber fehlt der Kopf.',
    fix: 'Beginnen Sie mit einer Zeile ---, dann title, summary und order, dann wieder ---.',
  }),
  'html-in-guide': ({ tag }) => ({
    what: `„${tag}“ ist HTML; ein Ratgeber ist reiner Text mit Markdown.`,
    fix: 'Nehmen Sie es weg. Überschriften sind #, Betonung ist *…*, Verweise sind [Text](Adresse).',
  }),
  'link-scheme': ({ address }) => ({
    what: `Der Verweis „${address}“ führt zu keiner Seite, Datei oder Adresse.`,
    fix: 'Er soll mit https://, mailto:, tel: beginnen oder mit / für eine Seite des Ladens.',
  }),
};
