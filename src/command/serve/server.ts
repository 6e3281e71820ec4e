/** The built shop and the bench behind one HTTP server on this machine. */
import { existsSync, readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { baseOf } from './base.ts';
import { readHeaders } from './fileHeaders.ts';
import { asHost, type Handler } from './host.ts';

/** How many ports above the wanted one are tried when it is taken. */
const PORTS_TRIED = 20;

/**
 * Serves what was built.
 * @param dist folder of the build
 * @param host address to listen on; 127.0.0.1 keeps the bench to this machine
 * @param port wanted port; the next free one is taken where it is in use; 0 for any
 * @param onTaken told of each port that is in use, before the next one is tried
 * @returns `base`: path of the folder that the shop was built for, with a slash at both ends
 * @throws Error where the build is missing or no port is free
 */
export async function serve(
  dist: string,
  host: string,
  port: number,
  onTaken: (port: number) => void = () => undefined,
): Promise<{ server: Server; port: number; base: string }> {
  const file = join(dist, 'client', '_headers');
  const rules = existsSync(file) ? readHeaders(readFileSync(file, 'utf8')) : [];
  const base = baseOf(dist);
  const handler = asHost(await builtHandler(dist), rules, base);
  for (let candidate = port; candidate <= port + PORTS_TRIED; candidate += 1) {
    const server = createServer(handler);
    if (await listens(server, host, candidate)) {
      return { server, port: (server.address() as AddressInfo).port, base };
    }
    onTaken(candidate);
  }
  throw new Error(`No free port from ${port} to ${port + PORTS_TRIED}. Fix: set PORT to a free one.`);
}

async function builtHandler(dist: string): Promise<Handler> {
  // The adapter would listen by itself on import; here the server is ours.
  process.env.ASTRO_NODE_AUTOSTART = 'disabled';
  const entry = pathToFileURL(join(dist, 'server', 'entry.mjs')).href;
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
