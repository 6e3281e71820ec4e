/** Public files as the server answers with them: what was compressed ahead goes to who can read it. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, get, type IncomingHttpHeaders } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliCompressSync, brotliDecompressSync } from 'node:zlib';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { answerWithFile } from '../../../src/command/serve/publicFiles.ts';

const TEXT = '{"words":"pearl"}';
const folder = mkdtempSync(join(tmpdir(), 'public-files-'));
const server = createServer((request, response) =>
  answerWithFile(request, response, { client: folder, others: [] }, '/'),
);

beforeAll(async () => {
  writeFileSync(join(folder, 'words.json'), TEXT);
  writeFileSync(join(folder, 'words.json.br'), brotliCompressSync(TEXT));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
});
afterAll(() => {
  server.close();
  rmSync(folder, { recursive: true });
});

const ask = (accepts: string): Promise<{ readonly headers: IncomingHttpHeaders; readonly body: Buffer }> =>
  new Promise((resolve, reject) => {
    const { port } = server.address() as AddressInfo;
    get(
      { port, host: '127.0.0.1', path: '/words.json', agent: false, headers: { 'accept-encoding': accepts } },
      (answer) => {
        const parts: Buffer[] = [];
        answer.on('data', (part: Buffer) => parts.push(part));
        answer.on('end', () => resolve({ headers: answer.headers, body: Buffer.concat(parts) }));
      },
    ).on('error', reject);
  });

test.each(['br', 'gzip, deflate, br, zstd', 'gzip;q=0.5, br;q=0.9'])(
  '“%s” gets what was compressed ahead',
  async (accepts) => {
    const { headers, body } = await ask(accepts);
    expect(headers['content-encoding']).toBe('br');
    expect(headers['content-type']).toBe('application/json; charset=utf-8');
    expect(brotliDecompressSync(body).toString()).toBe(TEXT);
  },
);

test.each(['gzip', 'identity', 'br;q=0', ''])('“%s” gets the file itself', async (accepts) => {
  const { headers, body } = await ask(accepts);
  expect(headers['content-encoding']).toBeUndefined();
  expect(body.toString()).toBe(TEXT);
});
