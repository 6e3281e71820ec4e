/** A plain static host: files of one folder, and 404 for everything else, as any web space gives. */
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.avif': 'image/avif',
  '.webp': 'image/webp',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
};

export type StaticHost = { readonly base: string; stop(): Promise<void> };

/** Serves `folder` on a free port of this machine. */
export async function startStaticHost(folder: string): Promise<StaticHost> {
  const server = createServer((request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url ?? '/', 'http://host').pathname));
    const wanted = join(folder, path);
    const file = existsSync(wanted) && statSync(wanted).isDirectory() ? join(wanted, 'index.html') : wanted;
    if (request.method !== 'GET' || !existsSync(file)) {
      response
        .writeHead(request.method === 'GET' ? 404 : 405, { 'content-type': 'text/html' })
        .end('<h1>No</h1>');
      return;
    }
    response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream' });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    base: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    stop: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}
