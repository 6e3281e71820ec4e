/** Was an der Werkbank geändert wurde, und zwei Fassungen einer Datei. */
import type { contentHistory as english } from '../en/contentHistory.ts';
import { notSaved } from './notSaved.ts';

type ContentHistoryWords = typeof english;

const ACTIONS: Readonly<Record<Parameters<ContentHistoryWords['action']>[0], string>> = {
  save: 'geändert',
  create: 'neu',
  remove: 'herausgenommen',
  undo: 'eine Änderung zurückgenommen',
  stock: 'was da ist, beim Veröffentlichen hineingeschrieben',
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
  stopped: (why) => (why === 'gone' ? 'Diese Änderung ist nicht verzeichnet.' : notSaved[why]),
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
