/**
 * Notes which files an island needs, so that its page can ask for all of them
 * at once. Without it a phone learns of each only from the one before.
 *
 * The names of the files are known when the browser's code is built, which is
 * after the pages' own code and before the pages are made: hence a note on
 * disk between the two.
 */
import { underBase } from '../site/base.ts';
import type { AstroIntegration } from 'astro';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { READ_FROM } from '#catalogue/released/place.ts';

/** Kept with what makes pages, so that a later release made by it finds the same. */
const noteFile = (): string => join(process.env[READ_FROM] ?? '', 'render', 'island-scripts.json');

/** From the name of an entry's source file, `SizerEn`, to the built files it imports at once, itself first. */
type Scripts = Readonly<Record<string, readonly string[]>>;

type Chunk = {
  readonly name: string;
  readonly isEntry: boolean;
  readonly isDynamicEntry: boolean;
  readonly imports: readonly string[];
};

/**
 * What each entry imports, directly or by what it imports; an entry is also what is fetched when it is wanted.
 * @param chunks by the name of the built file
 */
export function scriptsByEntry(chunks: ReadonlyMap<string, Chunk>): Scripts {
  const below = (file: string, seen: Set<string>): Set<string> => {
    if (seen.has(file)) return seen;
    seen.add(file);
    for (const next of chunks.get(file)?.imports ?? []) below(next, seen);
    return seen;
  };
  const entries = [...chunks].filter(([, { isEntry, isDynamicEntry }]) => isEntry || isDynamicEntry);
  return Object.fromEntries(entries.map(([file, { name }]) => [name, [...below(file, new Set())]]));
}

/** The note taken, at each build of the browser's code. */
export function islandScripts(): AstroIntegration {
  return {
    name: 'island-scripts',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        updateConfig({
          vite: {
            plugins: [
              {
                name: 'island-scripts',
                applyToEnvironment: ({ name }) => name === 'client',
                generateBundle(_options, bundle) {
                  const chunks = Object.entries(bundle).flatMap(([file, made]) =>
                    made.type === 'chunk' ? [[file, made] as const] : [],
                  );
                  const note = noteFile();
                  mkdirSync(dirname(note), { recursive: true });
                  writeFileSync(note, JSON.stringify(scriptsByEntry(new Map(chunks))));
                },
              },
            ],
          },
        });
      },
    },
  };
}

let noted: Scripts | null = null;

/**
 * Addresses of the files that an island's entry needs, itself first. In development there are none to ask for yet,
 * and a page that is made on demand has no note of a build.
 * @param entry name of its source file without the ending
 * @param prerendered whether the page is made as the shop is built
 * @throws Error where the build knows no such entry
 */
export function scriptsFor(entry: string, prerendered: boolean): readonly string[] {
  if (!import.meta.env.PROD || !prerendered) return [];
  noted ??= JSON.parse(readFileSync(noteFile(), 'utf8')) as Scripts;
  const files = noted[entry];
  if (files === undefined) {
    throw new Error(`got no built script ${entry}, expected one of ${Object.keys(noted).join(', ')}`);
  }
  return files.map((file) => underBase(`/${file}`));
}
