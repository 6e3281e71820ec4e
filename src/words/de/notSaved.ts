/** Warum vom Inhalt nichts gespeichert wurde, von welcher Seite auch immer. */
import type { NotSaved } from '../notSavedCodes.ts';

export const notSaved: Readonly<Record<NotSaved, string>> = {
  'changed-meanwhile': 'Die Datei wurde eben anderswo geändert. Speichern Sie noch einmal.',
  full: 'Die Festplatte ist voll. Schaffen Sie Platz und versuchen Sie es noch einmal; geändert wurde nichts.',
  'read-only':
    'Die Datei darf von hier aus nicht beschrieben werden. Erlauben Sie es, oder versuchen Sie es an dem Rechner, auf dem sie liegt; geändert wurde nichts.',
  outside: 'Die Datei läge außerhalb des Ordners der Werkstatt; geändert wurde nichts.',
  failed:
    'Die Festplatte hat es nicht angenommen. Versuchen Sie es noch einmal; hilft das nicht, sehen Sie nach der Festplatte. Geändert wurde nichts.',
  'not-editable':
    'Die Datei ist so geschrieben, dass sie sich von hier aus nicht ändern lässt. Ändern Sie sie mit einem Texteditor.',
  'no-history':
    'Über die Änderung lässt sich nicht Buch führen (vielleicht ist die Festplatte voll oder gesperrt), und dann ließe sich nichts zurücknehmen; geändert wurde nichts.',
  gone: 'Die Datei ist nicht mehr da.',
  'name-taken': 'Unter diesem Namen gibt es schon etwas.',
};
