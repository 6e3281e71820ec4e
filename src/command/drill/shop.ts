/** The built shop as the drill starts and stops it, over a book of its own. */
import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { join, resolve } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';

export const root = resolve(import.meta.dirname, '../../..');

export type Shop = {
  /** With the folder that the shop stands in; no slash at its end. */
  readonly address: string;
  readonly child: ChildProcess;
  /** Settles when it has ended. */
  readonly ended: Promise<unknown>;
  readonly stop: (signal?: NodeJS.Signals) => Promise<void>;
};

export type ShopOptions = {
  /** Runs before the server, as `strace -o file`. */
  readonly before?: readonly string[];
  /** Options of Node's own. */
  readonly node?: readonly string[];
  /** Account to run as; that of the drill where it is left out. */
  readonly uid?: number;
};

/** How long a start may take: a quick one takes two seconds, one under load longer. */
const START_MS = 60_000;

/**
 * Serves what was built last.
 * @throws Error with what it said, where it doesn't start
 */
export async function startShop(book: string, options: ShopOptions = {}): Promise<Shop> {
  const { before = [], node = [], uid } = options;
  const command = [...before, process.execPath, ...node, join(root, 'src/command/start.ts'), '--built'];
  const child = spawn(command[0] ?? '', command.slice(1), {
    cwd: root,
    env: { ...process.env, PORT: '0', CLASPWISE_BOOK: book, CLASPWISE_DESK_PER_MINUTE: '0' },
    stdio: ['ignore', 'pipe', 'pipe'],
    ...(uid === undefined ? {} : { uid, gid: uid }),
  });
  let said = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream?.on('data', (part: Buffer) => (said += part.toString()));
  }
  const ended = once(child, 'exit');
  const until = Date.now() + START_MS;
  while (!said.includes('Ctrl+C') && child.exitCode === null && Date.now() < until) await pause(20);
  const address = /^Shop\s+(http:\S+)\/$/m.exec(said)?.[1];
  if (address === undefined) throw new Error(`The shop didn't start: ${said}`);
  const stop = async (signal: NodeJS.Signals = 'SIGTERM'): Promise<void> => {
    child.kill(signal);
    await ended;
  };
  return { address, child, ended, stop };
}
