/** The built shop and the bench behind one HTTP server on this machine. */
import compression from 'compression';
import { existsSync, readFileSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { admission, type Admission } from './admit.ts';
import { headersFor, readHeaders } from './fileHeaders.ts';

type Handler = (request: IncomingMessage, response: ServerResponse) => void;

/** How many ports above the wanted one are tried when it is taken. */
const PORTS_TRIED = 20;

/**
 * Serves `dist/` of `root`.
 * @param host address to listen on; 127.0.0.1 keeps the bench to this machine
 * @param port wanted port; the next free one is taken where it is in use; 0 for any
 * @param onTaken told of each port that is in use, before the next one is tried
 * @throws Error where dist/ is missing or no port is free
 */
export async function serve(
  root: string,
  host: string,
  port: number,
  onTaken: (port: number) => void = () => undefined,
): Promise<{ server: Server; port: number }> {
  const handler = asStaticHost(await builtHandler(root), root);
  for (let candidate = port; candidate <= port + PORTS_TRIED; candidate += 1) {
    const server = createServer(handler);
    if (await listens(server, host, candidate)) {
      return { server, port: (server.address() as AddressInfo).port };
    }
    onTaken(candidate);
  }
  throw new Error(`No free port from ${port} to ${port + PORTS_TRIED}. Fix: set PORT to a free one.`);
}

async function builtHandler(root: string): Promise<Handler> {
  // The adapter would listen by itself on import; here the server is ours.
  process.env.ASTRO_NODE_AUTOSTART = 'disabled';
  const entry = pathToFileURL(join(root, 'dist', 'server', 'entry.mjs')).href;
  const { handler } = (await import(entry)) as { handler: Handler };
  return handler;
}

/**
 * Bench and desk set their own headers; all else carries those of `_headers` and goes compressed, as from
 * a static host. What a passphrase guards stays uncompressed: lengths of compressed pages tell of secrets.
 */
function asStaticHost(handler: Handler, root: string): Handler {
  // Typed for another server, it asks of Node's own no more than they are.
  const compress = compression() as unknown as (...all: [...Parameters<Handler>, next: () => void]) => void;
  const file = join(root, 'dist', 'client', '_headers');
  const rules = existsSync(file) ? readHeaders(readFileSync(file, 'utf8')) : [];
  return (request, response) => {
    const admitted = admission(request);
    if (!admitted.admit) return refuse(response, admitted);
    if (admitted.area === 'guarded') return handler(request, response);
    const path = (request.url ?? '/').split('?')[0] ?? '/';
    for (const [name, value] of headersFor(rules, path)) response.setHeader(name, value);
    compress(request, response, () => handler(request, response));
  };
}

const REASONS = { 400: 'Bad request', 404: 'Not found', 405: 'Method not allowed' } as const;

function refuse(response: ServerResponse, { status, allow }: Admission & { admit: false }): void {
  response.writeHead(status, {
    'content-type': 'text/plain; charset=utf-8',
    'cache-control': 'no-store',
    'x-content-type-options': 'nosniff',
    ...(allow === undefined ? {} : { allow }),
  });
  response.end(`${REASONS[status]}.\n`);
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
