/** A place of its own to publish in: releases and content that a test may change, begun from what was built. */
import { spawn } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { currentRelease, pointTo } from '#catalogue/released/place.ts';
import { codeNow } from '#release/code.ts';
import { takeOverAll } from '#release/files.ts';
import { readRecord } from '#release/record.ts';

const root = new URL('../..', import.meta.url).pathname;

export type Place = {
  readonly folder: string;
  readonly releases: string;
  readonly content: string;
  readonly env: Readonly<Record<string, string>>;
  /** Replaces text in a file of the content. Throws where the text isn't there. */
  change(file: string, text: string, by: string): void;
  /** Runs the publishing; what it said, and how it ended. */
  publish(...options: readonly string[]): Promise<{ readonly code: number | null; readonly said: string }>;
  remove(): void;
};

/** Below the project's folder, since the server's code asks for libraries from where it lies. */
export function ownPlace(): Place {
  const built = currentRelease(join(root, '.releases'));
  if (built === null) throw new Error('got no release, expected a built shop: npm run build');
  // Otherwise every publishing would be a whole build, and take a minute.
  if (readRecord(built)?.code !== codeNow()) {
    throw new Error('The program has changed since it was built: npm run build');
  }
  mkdirSync(join(root, '.cache'), { recursive: true });
  const folder = mkdtempSync(join(root, '.cache', 'publishing-'));
  const releases = join(folder, 'releases');
  const content = join(folder, 'content');
  const id = built.split('/').at(-1) ?? '';
  takeOverAll(built, join(releases, id));
  pointTo(id, releases);
  cpSync(join(root, 'content'), content, { recursive: true });
  const env = {
    CLASPWISE_RELEASES: releases,
    CLASPWISE_CONTENT: content,
    CLASPWISE_DIST: join(folder, 'dist'),
    CLASPWISE_BOOK: join(folder, 'book', 'orders.sqlite'),
  };
  return {
    folder,
    releases,
    content,
    env,
    change(file, text, by) {
      const path = join(content, file);
      const before = readFileSync(path, 'utf8');
      if (!before.includes(text)) throw new Error(`${file} has no ${text}`);
      writeFileSync(path, before.replace(text, by));
    },
    publish: (...options) =>
      new Promise((resolve, reject) => {
        const child = spawn(process.execPath, [join(root, 'src/command/publish.ts'), ...options], {
          cwd: root,
          env: { ...process.env, ...env },
        });
        let said = '';
        for (const stream of [child.stdout, child.stderr]) {
          stream.on('data', (chunk: Buffer) => (said += chunk.toString()));
        }
        child.once('error', reject);
        child.once('close', (code) => resolve({ code, said }));
      }),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
