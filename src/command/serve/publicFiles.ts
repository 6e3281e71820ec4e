/** The public files of a release, as any static host answers with them. */
import { lstatSync, readFileSync, statSync } from 'node:fs';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { extname, join } from 'node:path';
import send from 'send';
import type { Served } from './served.ts';

/** Files that are named by what is in them: from whichever release, they are the same. */
const NAMED_BY_CONTENT = /^\/(?:pictures|_astro|pagefind)\/(?:[\w-][\w.-]*\/)*[\w-][\w.-]*$/;

/** Of what was compressed as the site was built. */
const TYPES: Readonly<Record<string, string>> = {
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
};

const takesBrotli = ({ headers }: IncomingMessage): boolean =>
  /(?:^|,)\s*br\s*(?:;\s*q=(?:1|0\.0*[1-9])[\d.]*\s*)?(?:,|$)/.test(String(headers['accept-encoding'] ?? ''));

const isFolder = (path: string): boolean =>
  lstatSync(path, { throwIfNoEntry: false })?.isDirectory() === true;
const isThere = (path: string): boolean => statSync(path, { throwIfNoEntry: false }) !== undefined;

function decoded(path: string): string {
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}

/**
 * Answers with a file; with the page that says there is none, where there is none.
 * @param base path of the folder that the shop stands in, with a slash at both ends; only what is in it is asked for
 */
export function answerWithFile(
  request: IncomingMessage,
  response: ServerResponse,
  served: Pick<Served, 'client' | 'others'>,
  base: string,
): void {
  const path = ((request.url ?? '/').split(/[?#]/)[0] ?? '/').slice(base.length - 1);
  const roots = [served.client, ...(NAMED_BY_CONTENT.test(path) ? served.others : [])];
  const root = roots.find((one) => isThere(join(one, path))) ?? served.client;
  const asked = !path.endsWith('/') && isFolder(join(root, decoded(path))) ? `${path}/index.html` : path;
  const packed = `${asked}.br`;
  const isPacked = takesBrotli(request) && isThere(join(root, packed));
  if (isPacked) {
    response.setHeader('content-encoding', 'br');
    response.setHeader('content-type', TYPES[extname(asked)] ?? 'application/octet-stream');
  }
  send(request, isPacked ? packed : asked, {
    root,
    dotfiles: asked.startsWith('/.well-known/') ? 'allow' : 'deny',
  })
    .on('error', (error: { readonly status?: number }) => {
      if (response.headersSent) response.destroy();
      else if ((error.status ?? 500) === 416) response.writeHead(416).end();
      else if ((error.status ?? 500) === 412) response.writeHead(412).end();
      else notFound(request, response, served);
    })
    .pipe(response);
}

function notFound(
  { method }: IncomingMessage,
  response: ServerResponse,
  { client }: Pick<Served, 'client'>,
): void {
  let page: Buffer;
  try {
    page = readFileSync(join(client, '404.html'));
  } catch {
    page = Buffer.from('Not found.\n');
  }
  for (const name of [
    'etag',
    'content-encoding',
    'last-modified',
    'cache-control',
    'accept-ranges',
    'content-range',
  ]) {
    response.removeHeader(name);
  }
  response.writeHead(404, { 'content-type': 'text/html; charset=utf-8', 'content-length': page.length });
  response.end(method === 'HEAD' ? undefined : page);
}
