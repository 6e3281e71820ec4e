/** What the maker reads where her bench can’t show or do something. */
import type { BenchProblem } from '../benchCodes.ts';
import type { Sentences } from '../sentence.ts';

export const problems: Sentences<BenchProblem> = {
  'book-locked': () =>
    'Another bench or program holds the order book. Nothing was changed; try again in a moment.',
  'book-full': () => 'The disk is full. Nothing was changed. Make room, then try again.',
  'book-read-only': () =>
    'The order book may not be written. Nothing was changed. Check the rights of its file.',
  'book-unreachable': () =>
    'The order book can’t be opened. Check that its folder exists and may be written.',
  'not-a-book': () =>
    'Where the order book should lie is another file. It was not touched, and orders that come meanwhile stay with their buyers. Put the order book back where it was, or restore a backup.',
  'no-backup': () => 'This file is no backup of an order book. Nothing was changed; choose another one.',
  'backup-newer': () =>
    'This backup was made by a newer version. Nothing was changed. Bring this one up to date first, then restore it.',
  'backup-broken': () =>
    'This backup is damaged itself: not everything in it is as it was written. Nothing was changed; choose another one.',
  'newer-book': () =>
    'The order book was written by a newer version of this program. It was not touched, and orders that come meanwhile stay with their buyers. Bring this version up to date, and all is there again.',
  'book-broken': () =>
    'The order book’s file is damaged. Nothing more is written into it, and orders that come meanwhile stay with their buyers, who are told so. Restore a backup.',
  'book-gone': () =>
    'An order book was kept here, and its file is missing or empty. Nothing has been begun in its place, and orders that come meanwhile stay with their buyers. Put the file back where it was, or restore a backup.',
  'order-damaged': () =>
    'What the book holds of this order can’t be read any more: its bytes were changed on the disk. The other orders are not touched by it. If its e-mail is still there, take it in once more, and the order is whole again; or restore a backup.',
  'changed-meanwhile': () =>
    'This order was changed in another window or at another bench. Nothing was overwritten: look at it as it is now, then do it again.',
  'no-such-buyer': () => 'Nobody in the book goes by this order: it isn’t there, or its buyer was erased.',
  'no-such-piece': () => 'There is no such piece in the catalogue.',
  'no-such-entry': () =>
    'There is nothing of that name in the content, or its file can’t be read as it stands.',
  'no-such-order': () => 'There is no order with this number in the book.',
  'no-such-invoice': () => 'There is no invoice with this number in the book.',
  'bad-form': () => 'The form was not filled in as it should be. Nothing was changed.',
  'upload-broken': () =>
    'What came was no form, or only a part of one. Nothing was changed; send it again from the page.',
  'upload-too-large': () => 'The file is too large. Nothing was changed.',
  'wrong-host': () =>
    'The bench was called by a name it doesn’t know. If the name is yours, put it into CLASPWISE_HOSTS and start again.',
  'cross-site': () => 'Another website asked for this. Nothing was changed.',
  'no-passphrase': () =>
    'From elsewhere the bench opens only with a passphrase, and none has been set. Set one at the machine itself, under “Who may come in”.',
  'needs-https': () =>
    'From elsewhere the bench opens only over https, so that nobody on the way can read along.',
  'sign-in': () => 'Please give the passphrase first.',
  unpaired: () =>
    'This device isn’t paired, or was sent away. At the machine, under “Tablets”, have it show a code, and open that here.',
  'not-on-tablet': () =>
    'On a paired device there are only cards and steps. Everything else is at the machine itself.',
  'pairing-over': () =>
    'This code was used already, or its ten minutes are over. At the machine, under “Tablets”, have it show another.',
  'device-name': () => 'Give the device a name of one line, 40 letters at most, by which you know it again.',
  'only-here': () => 'Devices are paired and sent away at the machine itself.',
  'wrong-passphrase': () => 'That is not the passphrase.',
  'passphrase-length': () =>
    'A passphrase has 12 to 200 characters. Four words that nobody would put together do well.',
  'too-many-tries': ({ seconds }, f) => `Too many tries. Try again in ${f.number(seconds)} seconds.`,
};
