/** The built shop and the bench behind one HTTP server on this machine. */
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { hostname, networkInterfaces } from 'node:os';
import { pathToFileURL } from 'node:url';
import { dirname, join } from 'node:path';
import { settingsFrom } from '#bench/context/settings.ts';
import { doorNames } from '#bench/tablets/addresses.ts';
import { offerDoor, type TabletDoor } from '#bench/tablets/door.ts';
import { makeDoor, tabletsOn } from '#bench/tablets/listener.ts';
import { READ_FROM, releasesFolder } from '#catalogue/released/place.ts';
import { PARTS } from '#release/files.ts';
import { noteInUse } from '#release/sweep.ts';
import { baseOf } from './base.ts';
import { handOver, takeOver } from './handOver.ts';
import { asHost, type Handler } from './host.ts';
import { answerWithFile } from './publicFiles.ts';
import { follow, type Served } from './served.ts';

/**
 * How long a connection without a request is kept open, ms. After work that holds the process up for
 * longer, Node cuts such connections before it reads what has come by them meanwhile: Node's own 5 s are
 * soon over where the bench reads a thousand files on a slow machine. A minute is what proxies expect too.
 */
const IDLE_MS = 65_000;

/** How many ports above the wanted one are tried when it is taken. */
const PORTS_TRIED = 20;

/**
 * Serves the release that is current, and each one that is put in its place.
 * @param host address to listen on; 127.0.0.1 keeps the bench to this machine
 * @param port wanted port; the next free one is taken where it is in use; 0 for any
 * @param onTaken told of each port that is in use, before the next one is tried
 * @returns `base`: path of the folder that the shop was built for, with a slash at both ends
 * @throws Error where nothing has been built or no port is free
 */
export async function serve(
  host: string,
  port: number,
  onTaken: (port: number) => void = () => undefined,
): Promise<{ server: Server; port: number; base: string }> {
  const { handler, base, door, onOther } = await shopHandler();
  for (let candidate = port; candidate <= port + PORTS_TRIED; candidate += 1) {
    const server = createServer({ keepAliveTimeout: IDLE_MS }, handler);
    if (await listens(server, host, candidate)) {
      onOther(() => handOver(server, door));
      void door.apply();
      return { server, port: (server.address() as AddressInfo).port, base };
    }
    onTaken(candidate);
  }
  throw new Error(`No free port from ${port} to ${port + PORTS_TRIED}. Fix: set PORT to a free one.`);
}

/** The same in place of a process that runs another program: it sends the socket. */
export async function serveInPlace(): Promise<void> {
  const { handler, door, onOther } = await shopHandler();
  const server = createServer({ keepAliveTimeout: IDLE_MS }, handler);
  onOther(() => handOver(server, door));
  takeOver(server);
  // The other process closes its own as soon as this one answers.
  server.once('listening', () => void door.apply());
}

type Shop = {
  readonly handler: Handler;
  readonly base: string;
  /** For tablets of the home network; closed unless the book says otherwise. */
  readonly door: TabletDoor;
  /** Says what to do where a release of another program is to be served; asked once for each. */
  readonly onOther: (act: () => Promise<unknown>) => void;
};

async function shopHandler(): Promise<Shop> {
  const current = follow(releasesFolder());
  let served = current();
  process.env[READ_FROM] = served.folder;
  // Its code is read from there as it is needed, so the folder has to stay.
  noteInUse(releasesFolder(), served.id);
  const onDemand = await builtHandler(served.folder);
  const { code } = served;
  let refused = '';
  let other: () => Promise<unknown> = () => Promise.resolve();
  const now = (): Served => {
    const next = current();
    if (next.id === served.id || next.id === refused) return served;
    if (next.code === code) {
      served = next;
      process.env[READ_FROM] = served.folder;
    } else {
      // Another program's release belongs to another process; until that answers, this one goes on with its own.
      refused = next.id;
      void other();
    }
    return served;
  };
  const base = baseOf(served.folder);
  const files: Handler = (request, response) => answerWithFile(request, response, now(), base);
  const rules = () => now().rules;
  const door = doorOfThisMachine(asHost(onDemand, files, rules, base, 'tablets'));
  return {
    handler: asHost(onDemand, files, rules, base),
    base,
    door,
    onOther: (act) => {
      other = act;
    },
  };
}

/** How long the tablets' port is waited for, ms: the process before this one ends what it has begun. */
const PATIENCE_MS = 10_000;

/** Where it goes is where the order book lies; the pages that switch it find it by `tabletDoor`. */
function doorOfThisMachine(handler: Handler): TabletDoor {
  const { bookFile, tabletPort, hosts } = settingsFrom(process.env, process.cwd());
  const door = makeDoor({
    port: tabletPort,
    folder: join(dirname(bookFile), 'tablets'),
    names: () => doorNames(networkInterfaces(), hostname(), hosts),
    isOn: () => tabletsOn(bookFile),
    nowMs: Date.now,
    handler,
    patienceMs: PATIENCE_MS,
  });
  offerDoor(door);
  return door;
}

async function builtHandler(release: string): Promise<Handler> {
  // The adapter would listen by itself on import; here the server is ours.
  process.env.ASTRO_NODE_AUTOSTART = 'disabled';
  const entry = pathToFileURL(join(release, PARTS.server, 'entry.mjs')).href;
  const { handler } = (await import(entry)) as { handler: Handler };
  return handler;
}

function listens(server: Server, host: string, port: number): Promise<boolean> {
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE') resolve(false);
      else reject(error);
    });
    server.listen(port, host, () => resolve(true));
  });
}
