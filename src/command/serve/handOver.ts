/**
 * A new program takes over: a process of its own gets the listening socket, and
 * from then on every new request; this one ends those that it has and waits
 * beside it, for it was this one that was started.
 */
import { fork, type ChildProcess } from 'node:child_process';
import type { Server, ServerResponse } from 'node:http';
import { Server as PlainServer } from 'node:net';
import { join } from 'node:path';
import type { TabletDoor } from '#bench/tablets/door.ts';
import { READ_FROM } from '#catalogue/released/place.ts';

const START = join(import.meta.dirname, '..', 'start.ts');
/** Tells start.ts that the socket comes from another process. */
export const TAKES_OVER = '--takes-over';
const LISTEN = 'listen';
const READY = 'ready';
/** After a hand-over, ms: somebody who reads on meanwhile comes to the new program by a connection of its own. */
const IDLE_AFTER_MS = 5000;

/**
 * The tablets' door is left to the new process, which opens its own. Settles once that one answers requests; where it can't, this one goes on as before.
 * @returns whether it took over
 */
export async function handOver(server: Server, door: TabletDoor): Promise<boolean> {
  const { [READ_FROM]: _mine, ...env } = process.env;
  const child = fork(START, [TAKES_OVER], { env });
  const ready = await new Promise<boolean>((resolve) => {
    child.once('message', (message) => resolve(message === READY));
    for (const event of ['exit', 'error']) child.once(event, () => resolve(false));
    child.send(LISTEN, server);
  });
  if (!ready) {
    child.kill();
    return false;
  }
  endGently(server);
  void door.close();
  waitBeside(child);
  return true;
}

/**
 * Takes no new connections and cuts none: what has begun is answered, and so is a request that is on its way by a
 * connection that was kept open. That ends with its answer, the next one reaches the new program; one that stays idle is ended after a while.
 */
function endGently(server: Server): void {
  server.prependListener('request', (_request, response: ServerResponse) => {
    response.setHeader('connection', 'close');
  });
  // That of an HTTP server would cut connections that are idle at this moment.
  PlainServer.prototype.close.call(server);
  setTimeout(() => {
    // What has come by them meanwhile is read first: then they aren't idle any more.
    setImmediate(() => server.closeIdleConnections());
  }, IDLE_AFTER_MS).unref();
}

/** Ends when the other ends, and takes it along when told to end. */
function waitBeside(child: ChildProcess): void {
  child.once('exit', (code) => process.exit(code ?? 1));
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
    process.once(signal, () => child.kill(signal));
  }
}

/** In the new process: has the server listen on the socket that it is given. */
export function takeOver(server: Server): void {
  process.once('message', (message, socket: unknown) => {
    if (message === LISTEN) server.listen(socket, () => process.send?.(READY));
  });
  // Whoever started it was ended without a word.
  process.once('disconnect', () => process.exit());
}
