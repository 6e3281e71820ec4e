/** What is written stays written when the power goes. */
import { closeSync, fsyncSync, openSync } from 'node:fs';

/** Returns once the file's bytes are on the disk. Throws what the system says. */
export function syncFile(file: string): void {
  const handle = openSync(file, 'r+');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** The same for names in a folder; nothing where the system syncs no folders, as Windows doesn't. */
export function syncFolder(folder: string): void {
  if (process.platform === 'win32') return;
  const handle = openSync(folder, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
