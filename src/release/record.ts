/** What is known of a release: written last, so that a folder without it is no release. */
import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { CATALOGUE_FILE } from '#catalogue/released/place.ts';
import { syncFile } from '#catalogue/released/durable.ts';
import { filesBelow, PARTS } from './files.ts';

export type Marks = {
  /** Of the program: code, settings, libraries. */
  readonly code: string;
  /** Of all she wrote, and what is promised in the order book. */
  readonly content: string;
};

export type ReleaseRecord = Marks & {
  readonly version: 1;
  readonly id: string;
  /** ISO 8601. */
  readonly madeAt: string;
  readonly pieces: number;
  /** Marks of the photographs, by their path within the content folder. */
  readonly photographs: Readonly<Record<string, string>>;
  /** Sizes of all files in bytes, by path within the release. */
  readonly sizes: Readonly<Record<string, number>>;
};

const RECORD_FILE = 'release.json';

const listed = (folder: string): string[] => [
  CATALOGUE_FILE,
  ...Object.values(PARTS).flatMap((part) => filesBelow(join(folder, part)).map((name) => `${part}/${name}`)),
];

/** Notes what the folder holds, which makes it a release. */
export function writeRecord(folder: string, record: Omit<ReleaseRecord, 'version' | 'sizes'>): void {
  const sizes = Object.fromEntries(listed(folder).map((name) => [name, statSync(join(folder, name)).size]));
  const whole: ReleaseRecord = { version: 1, ...record, sizes };
  const file = join(folder, RECORD_FILE);
  writeFileSync(file, JSON.stringify(whole));
  syncFile(file);
}

/** Null where the folder is no release, or one of another version of the program. */
export function readRecord(folder: string): ReleaseRecord | null {
  try {
    const record = JSON.parse(readFileSync(join(folder, RECORD_FILE), 'utf8')) as ReleaseRecord;
    return record.version === 1 ? record : null;
  } catch {
    return null;
  }
}

/** Whether every file lies there in its size: a power cut or a careless hand may have taken some. */
export const isWhole = (folder: string, { sizes }: ReleaseRecord): boolean =>
  Object.entries(sizes).every(
    ([name, size]) => statSync(join(folder, name), { throwIfNoEntry: false })?.size === size,
  );
