/** The desk alone behind HTTP, in a process that can be killed. Arguments: the book's file, the port (0: any), a snapshot's file. */
import { readFileSync } from 'node:fs';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { Readable } from 'node:stream';
import { throttle } from '#bench/http/throttle.ts';
import { joinBench } from '#bench/context/bench.ts';
import type { Snapshot } from '#bench/book/snapshot.ts';
import { settingsFrom } from '#bench/context/settings.ts';
import { answerOrder } from '#bench/desk/desk.ts';

const [file = '', port = '0', snapshotFile = ''] = process.argv.slice(2);
const snapshot = JSON.parse(readFileSync(snapshotFile, 'utf8')) as Snapshot;
const bench = joinBench(settingsFrom({ CLASPWISE_BOOK: file }, '/'), Date.now);
const desk = {
  inbox: bench.inbox,
  pieceNow: (id: string) => Promise.resolve(id === snapshot.piece ? snapshot : null),
  standing: () => Promise.resolve(null),
  there: () => Promise.resolve(() => null),
  origins: ['http://127.0.0.1:4321'],
  throttle: throttle(0),
  nowMs: bench.nowMs,
};

async function answer(incoming: IncomingMessage, outgoing: ServerResponse): Promise<void> {
  const request = new Request(`http://127.0.0.1${incoming.url ?? '/'}`, {
    method: incoming.method ?? 'GET',
    headers: incoming.headers as Record<string, string>,
    body: Readable.toWeb(incoming) as ReadableStream,
    duplex: 'half',
  } as RequestInit);
  const response = await answerOrder(desk, request, incoming.socket.remoteAddress ?? '');
  outgoing.writeHead(response.status, Object.fromEntries(response.headers));
  outgoing.end(Buffer.from(await response.arrayBuffer()));
}

const server = createServer((incoming, outgoing) => void answer(incoming, outgoing));
server.listen(Number(port), '127.0.0.1', () => {
  console.log((server.address() as AddressInfo).port);
});
