import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { expect, it } from 'vitest';
import { history } from '#bench/book/entry.ts';
import { openBook } from '#bench/book/open.ts';
import { allEntries } from '#bench/book/search.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import type { OrderDocument } from '#order/document.ts';
import { makeNumber } from '#order/number.ts';
import { catalogue, orderFor, randomByte } from '../shop.ts';

/** 2,000 orders, 20 clients and 10 kills where CLASPWISE_THOROUGH is set (about a minute); else a small part of it. */
const { ORDERS, CLIENTS, KILLS } = process.env.CLASPWISE_THOROUGH
  ? { ORDERS: 2_000, CLIENTS: 20, KILLS: 10 }
  : { ORDERS: 120, CLIENTS: 10, KILLS: 2 };

type Server = { readonly child: ChildProcess; readonly port: number };

async function start(file: string, port: number): Promise<Server> {
  const child = spawn(process.execPath, ['tests/bench/desk/server.ts', file, String(port), `${file}.json`], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const [said] = (await once(child.stdout, 'data')) as [Buffer];
  return { child, port: Number(said.toString()) };
}

/** Sends until there is a receipt, as the buyer's outbox does. */
async function sendUntilReceived(order: OrderDocument, port: () => number): Promise<string> {
  for (;;) {
    try {
      const response = await fetch(`http://127.0.0.1:${port()}/desk/orders`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(order),
        signal: AbortSignal.timeout(10_000),
      });
      if (response.status >= 400) throw new Error(`${response.status} ${await response.text()}`);
      const receipt = (await response.json()) as { number: string; receivedAt: string };
      expect(receipt.number).toBe(order.number);
      return receipt.receivedAt;
    } catch (error) {
      // A refusal is a failure of this test; a broken line is what it is about.
      if (error instanceof Error && /^\d{3} /.test(error.message)) throw error;
      await pause(20);
    }
  }
}

it(
  `${KILLS} kills while ${CLIENTS} clients send ${ORDERS} orders: each receipt is in the book, none twice, none half`,
  { timeout: 600_000 },
  async () => {
    const folder = mkdtempSync(join(tmpdir(), 'kill-'));
    const file = join(folder, 'orders.sqlite');
    writeFileSync(`${file}.json`, JSON.stringify(pieceNow(catalogue, 'weir-light')));
    const base = orderFor(catalogue, 'weir-light', 165.1);
    const orders = Array.from({ length: ORDERS }, () => ({ ...base, number: makeNumber(randomByte) }));
    let server = await start(file, 0);
    const receipts = new Map<string, string>();
    const waiting = [...orders];
    const client = async (): Promise<void> => {
      for (let order = waiting.pop(); order !== undefined; order = waiting.pop()) {
        receipts.set(order.number, await sendUntilReceived(order, () => server.port));
      }
    };
    const clients = Promise.all(Array.from({ length: CLIENTS }, client));
    let kills = 0;
    for (; kills < KILLS; kills += 1) {
      // Spread over the run: the next kill comes when the next share of orders has its receipts.
      const share = (ORDERS * (kills + 0.5)) / KILLS;
      while (receipts.size < share) await pause(1);
      await pause(randomByte() / 16);
      server.child.kill('SIGKILL');
      await once(server.child, 'exit');
      server = await start(file, server.port);
    }
    await clients;
    server.child.kill('SIGKILL');
    await once(server.child, 'exit');

    const book = openBook(file);
    const entries = allEntries(book);
    expect(kills).toBe(KILLS);
    expect(receipts.size).toBe(ORDERS);
    expect(entries.map(({ document }) => document.number).sort()).toEqual(
      orders.map(({ number }) => number).sort(),
    );
    for (const { document, receivedAt } of entries) {
      expect(document).toEqual({ ...base, number: document.number });
      expect(receipts.get(document.number)).toBe(receivedAt);
      expect(history(book, document.number)).toEqual([{ at: receivedAt, kind: 'received', text: 'desk' }]);
    }
    expect(book.db.prepare('PRAGMA integrity_check').get()?.integrity_check).toBe('ok');
    expect(book.db.prepare('PRAGMA foreign_key_check').all()).toEqual([]);
    book.db.close();
    rmSync(folder, { recursive: true });
  },
);
