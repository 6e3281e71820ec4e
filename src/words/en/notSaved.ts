/** Why nothing of the content was saved, whatever page it was to be saved from. */
import type { NotSaved } from '../notSavedCodes.ts';

export const notSaved: Readonly<Record<NotSaved, string>> = {
  'changed-meanwhile': 'The file was changed elsewhere just now. Save once more.',
  full: 'The disk is full. Make room on it and try again; nothing was changed.',
  'read-only':
    'The file may not be written to from here. Allow it, or try on the machine it lies on; nothing was changed.',
  outside: 'The file would lie outside the shop’s own folder; nothing was changed.',
  failed:
    'The disk would not take it. Try again; if that doesn’t help, look after the disk. Nothing was changed.',
  'not-editable':
    'The file is written in a way that it can’t be changed from here. Change it in a text editor.',
  'no-history':
    'The record of changes can’t be kept (the disk may be full or locked), and without it nothing could be taken back; nothing was changed.',
  gone: 'Its file is there no more.',
  'name-taken': 'There is one of this name already.',
};
