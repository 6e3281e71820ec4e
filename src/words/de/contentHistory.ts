/** Was an der Werkbank geändert wurde, und zwei Fassungen einer Datei. */
import type { contentHistory as english } from '../en/contentHistory.ts';

type ContentHistoryWords = typeof english;

const ACTIONS: Readonly<Record<Parameters<ContentHistoryWords['action']>[0], string>> = {
  save: 'geändert',
  create: 'neu',
  remove: 'herausgenommen',
  undo: 'eine Änderung zurückgenommen',
};

const STOPS: Readonly<Record<Parameters<ContentHistoryWords['stopped']>[0], string>> = {
  full: 'Die Festplatte ist voll. Schaffen Sie Platz und versuchen Sie es noch einmal; geändert wurde nichts.',
  'read-only':
    'Die Datei darf von hier aus nicht beschrieben werden. Erlauben Sie es, oder versuchen Sie es an dem Rechner, auf dem sie liegt; geändert wurde nichts.',
  outside: 'Die Datei läge außerhalb des Ordners der Werkstatt; geändert wurde nichts.',
  failed:
    'Die Festplatte hat es nicht angenommen. Versuchen Sie es noch einmal; hilft das nicht, sehen Sie nach der Festplatte. Geändert wurde nichts.',
  'not-editable':
    'Die Datei ist so geschrieben, dass sie sich von hier aus nicht ändern lässt. Ändern Sie sie mit einem Texteditor.',
  'no-history':
    'Über die Änderung lässt sich nicht Buch führen (vielleicht ist die Festplatte voll oder gesperrt); darum wurde nichts geändert.',
  gone: 'Diese Änderung ist nicht verzeichnet.',
  'name-taken': 'Unter diesem Namen gibt es schon etwas.',
};

export const contentHistory: ContentHistoryWords = {
  title: 'Was geändert wurde',
  lead: 'Jede hier gespeicherte Änderung an Stücken, Perlen, Ratgebern und Regeln, die neueste zuerst. Jede lässt sich zurücknehmen, und auch das wieder.',
  none: 'Hier wurde noch nichts geändert.',
  action: (action) => ACTIONS[action],
  shop: 'Die Regeln der Werkstatt',
  fields: (names) => `Darin: ${names.join('; ')}`,
  text: 'Text',
  see: 'Die Zeilen ansehen',
  old: 'vorher:',
  new: 'nachher:',
  left: (count) => (count === 1 ? '1 Zeile wie zuvor' : `${count} Zeilen wie zuvor`),
  undo: (name) => `Zurücknehmen: ${name}`,
  undoShort: 'Zurücknehmen',
  undone: 'Inzwischen zurückgenommen.',
  done: 'Es ist zurückgenommen.',
  older: 'Ältere Änderungen',
  newest: 'Die neuesten Änderungen',
  stopped: (why) => STOPS[why],
  problems: 'So, wie es jetzt steht, lässt es sich nicht zurücknehmen:',
  conflict: {
    title: 'Inzwischen wurde hier etwas geändert',
    lead: 'Was diese Änderung geändert hatte, wurde seither wieder geändert; darum ist sie nicht zurückgenommen. Hier stehen beide Fassungen; übernehmen Sie, was Sie behalten wollen.',
    now: 'Wie es jetzt dasteht',
    yours: 'Wie es vorher war',
    gone: 'Es ist nicht mehr da.',
    none: 'Es war noch nicht da.',
    differs: 'anders:',
  },
};
