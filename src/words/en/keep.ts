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
  restored: (count: number, kept: string): string =>
    `Restored: the book holds ${orders(count)}. What it held before lies in ${kept}.`,
  folderOpen:
    'Other people with an account on this machine can look into the folder of the order book. The book itself is closed to them; close the folder too.',
  copies: 'Copies beside the book',
  copiesHint:
    'What the book held before a backup was restored. What you erase is erased in these too, if they can be opened; backups that you have downloaded are yours to delete.',
  exports: 'Lists for other programs',
  csv: 'Orders as CSV, for a spreadsheet',
  json: 'Orders as JSON, with their history',
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
