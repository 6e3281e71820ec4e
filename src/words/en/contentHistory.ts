/** What was changed at the bench, and two versions of one file. */
import type { NotSaved } from '../notSavedCodes.ts';
import { notSaved } from './notSaved.ts';

type Action = 'save' | 'create' | 'remove' | 'undo' | 'stock';
const ACTIONS: Readonly<Record<Action, string>> = {
  save: 'changed',
  create: 'new',
  remove: 'taken out',
  undo: 'a change taken back',
  stock: 'what there is, written out at publishing',
};

export const contentHistory = {
  title: 'What was changed',
  lead: 'Every change to pieces, beads, guides and rules that was saved here, the newest first. Any of them can be taken back, and that again.',
  none: 'Nothing has been changed here yet.',
  action: (action: Action): string => ACTIONS[action],
  shop: 'The shop’s rules',
  fields: (names: readonly string[]): string => `In it: ${names.join('; ')}`,
  text: 'text',
  see: 'See the lines',
  old: 'before:',
  new: 'after:',
  left: (count: number): string => (count === 1 ? '1 line as it was' : `${count} lines as they were`),
  undo: (name: string): string => `Take back: ${name}`,
  undoShort: 'Take back',
  undone: 'Taken back since.',
  done: 'It is taken back.',
  older: 'Older changes',
  newest: 'The newest changes',
  stopped: (why: NotSaved): string => (why === 'gone' ? 'That change isn’t in the record.' : notSaved[why]),
  problems: 'It can’t be taken back as things stand now:',
  conflict: {
    title: 'This was changed in between',
    lead: 'What this change had changed was changed again since, so it isn’t taken back. Here are both versions; copy what you want to keep.',
    now: 'As it stands now',
    yours: 'As it was before',
    gone: 'It is no longer there.',
    none: 'It wasn’t there yet.',
    differs: 'differs:',
  },
};
