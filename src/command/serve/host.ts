/** What every answer carries, whoever makes it: headers, and compression where it tells nothing. */
import compression from 'compression';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { constants } from 'node:zlib';
import { admission, type Admission } from './admit.ts';
import { DOOR_HEADER, type Door } from '#bench/tablets/door.ts';
import { headersFor, type HeaderRule } from './fileHeaders.ts';

/** One step above what the package takes for itself: a twelfth less of the search's words; higher ones hardly any. */
const BROTLI_QUALITY = 5;

export type Handler = (request: IncomingMessage, response: ServerResponse) => void;

/**
 * Hands requests to what answers on demand, or to the public files, and puts the headers of `_headers` on all answers, pages that are not found and refusals among them;
 * bench and desk write their own, stricter ones over them. Public files go compressed, as from a
 * static host. What a passphrase guards stays uncompressed: lengths of compressed pages tell of secrets.
 * @param base path of the folder that the shop stands in, with a slash at both ends
 * @param door by which the requests come in; by the tablets' there is no shop, only the letters that pages are set in
 */
export function asHost(
  onDemand: Handler,
  files: Handler,
  rules: () => readonly HeaderRule[],
  base = '/',
  door: Door = 'usual',
): Handler {
  // Typed for another server, it asks of Node's own no more than they are.
  const compress = compression({
    brotli: { params: { [constants.BROTLI_PARAM_QUALITY]: BROTLI_QUALITY } },
  }) as unknown as (...all: [...Parameters<Handler>, next: () => void]) => void;
  return (request, response) => {
    request.headers[DOOR_HEADER] = door;
    if (door === 'tablets') keepToBench(request, base);
    const path = (request.url ?? '/').split('?')[0] ?? '/';
    const admitted = admission(request, base);
    const covered = admitted.admit && admitted.area === 'files' ? path : base;
    for (const [name, value] of headersFor(rules(), covered)) response.setHeader(name, value);
    if (!admitted.admit) return refuse(response, admitted);
    if (admitted.area === 'files') return compress(request, response, () => files(request, response));
    response.setHeader('cache-control', 'no-store');
    onDemand(request, response);
  };
}

/** Whatever else of the shop is asked for is asked of the bench, which says no in words of its own. */
function keepToBench(request: IncomingMessage, base: string): void {
  const { url = '/' } = request;
  const isOurs = url.startsWith(`${base}bench/`) || url.startsWith(`${base}fonts/`);
  if (!isOurs) request.url = `${base}bench/`;
}

const REASONS = { 308: 'Moved', 400: 'Bad request', 404: 'Not found', 405: 'Method not allowed' } as const;

function refuse(response: ServerResponse, { status, allow, location }: Admission & { admit: false }): void {
  response.writeHead(status, {
    'content-type': 'text/plain; charset=utf-8',
    'cache-control': 'no-store',
    ...(allow === undefined ? {} : { allow }),
    ...(location === undefined ? {} : { location }),
  });
  response.end(`${REASONS[status]}.\n`);
}
