/**
 * `npm run -s size -- <piece> --wrist "6 1/2 in"`: sizes a piece at the
 * terminal. `--help` says the rest; exit codes are in `size/exit.ts`.
 */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { EXIT } from './size/exit.ts';
import { run } from './size/run.ts';

const content = process.env.CLASPWISE_CONTENT ?? resolve(import.meta.dirname, '../../content');

try {
  process.exitCode = run(process.argv.slice(2), {
    stdin: () => readFileSync(0, 'utf8'),
    out: (text) => console.log(text),
    err: (text) => console.error(text),
    content,
  });
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error));
  process.exitCode = EXIT.failed;
}
