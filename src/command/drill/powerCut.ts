/**
 * A power cut after each answered order: what the server wrote and synced is
 * recorded by strace, and the disk built again as it stood at that moment, with
 * every write dropped that no sync had come after.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { leftOut, type Disaster } from './disaster.ts';
import { foundIn } from './people.ts';
import { startShop } from './shop.ts';

const ORDERS = 40;

/** One recorded call that matters. `at`: place in the file. */
type Call =
  | { readonly kind: 'write'; readonly file: string; readonly at: number; readonly bytes: Buffer }
  | { readonly kind: 'cut'; readonly file: string; readonly to: number }
  | { readonly kind: 'sync'; readonly file: string }
  | { readonly kind: 'answer'; readonly number: string };

const CALLS = 'pwrite64,ftruncate,fsync,fdatasync,write,writev,sendto,sendmsg';
const hex = (text: string): Buffer => Buffer.from(text.replaceAll('\\x', ''), 'hex');

/** Reads a line of strace with `-y -xx`: `pwrite64(21</path>, "\x00…", 4096, 0) = 4096`. */
function readCall(line: string): Call | null {
  const [, name = '', path = '', rest = ''] = /^(\w+)\(\d+<([^>]*)>(.*)$/s.exec(line) ?? [];
  const file = basename(hex(path).length > 0 && path.startsWith('\\x') ? hex(path).toString() : path);
  if (name === 'pwrite64') {
    const [, bytes = '', at = '0'] = /^, "([^"]*)", \d+, (\d+)\)/.exec(rest) ?? [];
    return { kind: 'write', file, at: Number(at), bytes: hex(bytes) };
  }
  if (name === 'ftruncate') return { kind: 'cut', file, to: Number(/^, (\d+)/.exec(rest)?.[1] ?? 0) };
  if (name === 'fsync' || name === 'fdatasync') return { kind: 'sync', file };
  const text = [...rest.matchAll(/"((?:\\x[\da-f]{2})*)"/g)]
    .map(([, one]) => hex(one ?? '').toString('latin1'))
    .join('');
  const number = /^HTTP\/1\.1 201 .*"number":"([^"]+)"/s.exec(text)?.[1];
  return number === undefined ? null : { kind: 'answer', number };
}

/** A file in memory: what is written, and what of it would be there after a cut. */
type Image = { written: Buffer; synced: Buffer };

function apply(images: Map<string, Image>, call: Exclude<Call, { kind: 'answer' }>): void {
  const image = images.get(call.file) ?? { written: Buffer.alloc(0), synced: Buffer.alloc(0) };
  images.set(call.file, image);
  if (call.kind === 'sync') image.synced = Buffer.from(image.written);
  else if (call.kind === 'cut') image.written = resized(image.written, call.to);
  else {
    image.written = resized(image.written, Math.max(image.written.length, call.at + call.bytes.length));
    call.bytes.copy(image.written, call.at);
  }
}

function resized(bytes: Buffer, length: number): Buffer {
  const next = Buffer.alloc(length);
  bytes.copy(next, 0, 0, Math.min(length, bytes.length));
  return next;
}

/** Linux's own list, as strace is Linux's. */
function childrenOf(pid: number): number[] {
  const listed = readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8').trim();
  return listed === '' ? [] : listed.split(' ').map(Number);
}

export const powerCut: Disaster = {
  name: `power cut after each of ${ORDERS} orders`,
  play: async ({ folder, file, people }) => {
    const traces = join(folder, 'traces');
    mkdirSync(traces);
    const before = [
      'strace',
      '-ff',
      '-y',
      '-xx',
      '-s',
      '10000000',
      '-e',
      `trace=${CALLS}`,
      '-o',
      join(traces, 't'),
    ];
    if (spawnSync('strace', ['-qq', '-o', '/dev/null', 'true']).status !== 0) {
      return leftOut('strace, which records what is written and synced, is missing or not allowed here');
    }
    const shop = await startShop(file, { before });
    await people.sendMany(shop, ORDERS);
    // The server itself, and with it the recording.
    for (const pid of childrenOf(shop.child.pid ?? 0)) process.kill(pid, 'SIGKILL');
    await shop.ended;
    // The thread that writes the book also answers.
    const calls = readdirSync(traces)
      .map((name) => readFileSync(join(traces, name), 'latin1'))
      .filter((text) => text.includes('pwrite64('))
      .flatMap((text) => text.split('\n').map(readCall))
      .filter((call) => call !== null);
    const images = new Map<string, Image>();
    const answered = new Set<string>();
    let [cuts, worst, whole] = [0, 0, 0];
    for (const call of calls) {
      if (call.kind !== 'answer') {
        apply(images, call);
        continue;
      }
      answered.add(call.number);
      const after = join(folder, `cut-${(cuts += 1)}`);
      mkdirSync(after);
      for (const name of ['orders.sqlite', 'orders.sqlite-wal']) {
        const image = images.get(name);
        if (image !== undefined) writeFileSync(join(after, name), image.synced);
      }
      const book = join(after, 'orders.sqlite');
      // Opened for writing first, as the bench does: so SQLite takes up what the log holds.
      const db = new DatabaseSync(book);
      if (db.prepare('PRAGMA integrity_check').get()?.integrity_check === 'ok') whole += 1;
      db.close();
      worst = Math.max(worst, answered.size - foundIn(book, answered));
    }
    return {
      receipted: people.receipts.size,
      found: answered.size - worst,
      saw: `after ${cuts} cuts ${whole} books whole; writes that no sync had come after were dropped`,
    };
  },
};
