/**
 * What YAML texts say, kept from one process to the next: to take a thousand
 * files apart takes seconds, to read what came of it much less than one. Only
 * of texts without a mistake in their YAML, and of one program only.
 */
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { deserialize, serialize } from 'node:v8';

export type Said = {
  /** What the text says, as data; null where that isn't known. */
  of(text: string): { readonly data: unknown } | null;
  note(text: string, data: unknown): void;
};

export type KeptSaid = Said & {
  /** Keeps what was asked for and noted since, and nothing else. Never throws. */
  keep(): void;
};

const digestOf = (text: string): string => createHash('sha256').update(text).digest('base64');

function read(file: string): ReadonlyMap<string, unknown> {
  try {
    const kept: unknown = deserialize(readFileSync(file));
    return kept instanceof Map ? (kept as Map<string, unknown>) : new Map<string, unknown>();
  } catch {
    return new Map();
  }
}

/**
 * @param folder of what is kept, of nothing else
 * @param program mark of the code that takes texts apart
 */
export function openSaid(folder: string, program: string): KeptSaid {
  const name = `${program}.v8`;
  const file = join(folder, name);
  const before = read(file);
  const now = new Map<string, unknown>();
  let isNew = false;
  return {
    of(text) {
      const digest = digestOf(text);
      if (!before.has(digest)) return null;
      const data = before.get(digest);
      now.set(digest, data);
      return { data };
    },
    note(text, data) {
      now.set(digestOf(text), data);
      isNew = true;
    },
    keep() {
      if (!isNew && now.size === before.size) return;
      try {
        mkdirSync(folder, { recursive: true });
        for (const other of readdirSync(folder))
          if (other !== name) rmSync(join(folder, other), { force: true });
        const fresh = `${file}.${process.pid}`;
        writeFileSync(fresh, serialize(now));
        renameSync(fresh, file);
      } catch {
        // Taken apart again next time.
      }
    },
  };
}
