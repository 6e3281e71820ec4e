/** The built shop with its bench, served as it was built last, with an order book of its own. */
import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export type RunningShop = {
  /** e.g. `http://127.0.0.1:40123`, no slash at the end. */
  readonly base: string;
  /** File of the order book. */
  readonly book: string;
  readonly child: ChildProcess;
  /** Ends the server and removes its own book. */
  stop(): Promise<void>;
};

const root = new URL('../..', import.meta.url).pathname;

/**
 * Starts the server on a free port.
 * @param env further environment, e.g. another book
 * @throws Error with what the server printed, where it ends before it serves
 */
export async function startShop(env: Readonly<Record<string, string>> = {}): Promise<RunningShop> {
  const folder = mkdtempSync(join(tmpdir(), 'order-book-'));
  const book = env.CLASPWISE_BOOK ?? join(folder, 'orders.sqlite');
  const child = spawn(process.execPath, [join(root, 'src/command/start.ts'), '--built'], {
    cwd: root,
    env: { ...process.env, PORT: '0', HOST: '127.0.0.1', CLASPWISE_BOOK: book, ...env },
  });
  const base = await servedAt(child);
  return {
    base,
    book,
    child,
    async stop() {
      if (child.exitCode === null && child.signalCode === null) {
        const ended = new Promise((resolve) => child.once('exit', resolve));
        child.kill();
        await ended;
      }
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function servedAt(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let printed = '';
    for (const stream of [child.stdout, child.stderr]) {
      stream?.on('data', (chunk: Buffer) => {
        printed += chunk.toString();
        const found = /^Shop\s+(http:\/\/\S+?)\/$/m.exec(printed);
        if (found?.[1] !== undefined) resolve(found[1]);
      });
    }
    child.once('exit', (code) => reject(new Error(`The server ended with ${code}:\n${printed}`)));
  });
}
