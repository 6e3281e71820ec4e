/** What the maker reads on keeping her orders safe. */
import { orders } from './counts.ts';

export const keep = {
  title: 'Safe-keeping',
  backup: 'Backup',
  backupHint:
    'One file with every order, note and date. Keep it on another disk, and where only you can read it: it holds names and addresses.',
  download: 'Download a backup',
  restore: 'Restore',
  restoreHint:
    'Puts a backup in the place of the whole order book. What the book holds now is kept beside it first.',
  restoreFile: 'Backup file',
  restoreSure: 'Replace the order book with this backup',
  restoreButton: 'Restore',
  harmed: 'Some of this backup is damaged',
  harmedFound: 'Nothing was changed yet. All else in this backup is whole, but not these orders:',
  harmedUnreadable: 'They can’t be read any more:',
  harmedAltered: 'They can be read, but something in them is not as it was written:',
  harmedThen:
    'If you have an older backup in which they are whole, you may want that one. If you restore this one, they keep their places in the book as they are, marked, with payments and papers: nothing of them is thrown away. Where you still have an order’s e-mail, take it in again afterwards, and the order is whole.',
  harmedFile: 'The same backup file once more',
  harmedSure: 'Replace the order book with this backup, these orders as they are in it',
  harmedBack: 'Back, and restore nothing',
  restored: (count: number): string =>
    count === 0 ? 'A new book has been begun.' : `Restored: the book holds ${orders(count)}.`,
  setAside: (kept: string): string => `What lay there before is kept beside it as ${kept}.`,
  lost: 'The passphrase and the count of your invoices could not be taken over: set the passphrase again if you use one, and look at the number of your last invoice before you issue the next.',
  broken: 'The order book can’t be used as it is',
  brokenSafe:
    'Your shop stays open. Whoever orders now is told that the order isn’t with you yet: it waits on her device and is sent again by itself, or she sends it by e-mail.',
  brokenRestore: 'Put a backup in its place',
  brokenRestoreHint:
    'Choose the newest backup you have. What lies there now is not deleted: it is set aside under another name, and somebody who knows such files may still read orders out of it. E-mails of orders since that backup can be taken in again.',
  begin: 'No backup?',
  beginHint:
    'Then a new, empty book can be begun. Here too, what lies there now is set aside and not deleted. Orders that came by e-mail can be taken in again.',
  beginSure: 'Begin a new, empty book',
  beginButton: 'Begin',
  check: 'Is the book whole?',
  checkHint:
    'Every order, paper, payment, note and line of stock, and every page of the file, is held against what was written, when the bench starts and whenever you ask. What a book held before it kept such marks is held against how it stood when they were made.',
  checkButton: 'Check the whole book',
  checkNone: 'It has not been looked at yet.',
  checkRunning: 'It is being looked at now. Look again in a moment.',
  checkFailed: (when: string): string => `It could not be looked at (${when}). Try again in a moment.`,
  checkSound: (when: string): string => `All is whole (${when}).`,
  checkFound: (when: string): string => `Something is damaged (${when}):`,
  checkStructure:
    'The file itself. Nothing more is written into it, and new orders wait with their buyers. Restore a backup.',
  checkOrders: 'Orders that are not what came in:',
  checkKept: 'Orders with money, papers, days or notes that are not what was entered:',
  altered:
    'Something that the book keeps of this order was changed on the disk: its state or days, payments, papers, parcels or notes. Nothing says which. Go through them below, against your bank, your papers and a backup, and put right what is wrong. Then say so, and the book takes them as they stand.',
  lookedOver: 'I have gone through it: it is right as it stands',
  checkInvoices: (numbers: string): string => `Invoices that can’t be read: ${numbers}.`,
  checkStock: (things: string): string =>
    `What came and went doesn’t hold together any more for these; count them again: ${things}`,
  checkSnapshots: (count: number): string =>
    `Pieces as they stood when they were ordered: ${count}. Their orders are sized by the piece as it stands now.`,
  folderOpen:
    'Other people with an account on this machine can look into the folder of the order book. The book itself is closed to them; close the folder too.',
  unreached: (names: string): string =>
    `In these copies it could not be erased, since they are damaged or can’t be opened: ${names}. Delete them below if you don’t need them any more.`,
  deleteCopy: 'Delete this copy',
  deleteSure: 'Delete it for good',
  copies: 'Copies beside the book',
  copiesHint:
    'What the book held before a backup was restored, and damaged files that were set aside. What you erase is erased in these too, if they can be opened; backups that you have downloaded are yours to delete.',
  exports: 'Lists for other programs',
  csv: 'Orders as CSV, for a spreadsheet',
  json: 'Orders as JSON, with their history',
  exportsLack: (count: number): string =>
    `${count === 1 ? '1 order' : `${count} orders`} in the book can’t be read. Both lists name ${count === 1 ? 'it' : 'them'} by number, marked “unreadable”, with what is left:`,
  retention: 'Buyers’ data',
  retentionHint: (months: number): string =>
    `Your shop keeps buyers’ data for ${months === 1 ? 'a month' : `${months} months`} after an order is sent or cancelled. Nothing is erased by itself; local law may ask for more or less.`,
  overdue: (count: number): string =>
    count === 0
      ? 'No order is past that.'
      : count === 1
        ? '1 order is past that:'
        : `${count} orders are past that:`,
  eraseAll: 'Erase these buyers’ data for good',
  erased: (count: number): string => `Erased in ${orders(count)}.`,
  done: 'Done',
};
