/** The two sides of a drill: buyers who send orders and keep receipts, and the maker who looks. */
import { DatabaseSync } from 'node:sqlite';
import { renumbered } from '../benchmarks/desk/orders.ts';
import type { Shop } from './shop.ts';

export type Buyers = {
  /** Numbers of the orders for which there is a receipt. */
  readonly receipts: ReadonlySet<string>;
  /** Sends one order. @returns the answer's status; 0 where there was none */
  readonly send: (shop: Shop) => Promise<number>;
  /** Sends so many, one after another. @returns how many of them were refused */
  readonly sendMany: (shop: Shop, many: number) => Promise<number>;
};

/** @param texts orders as JSON, sent in turn, each under a new number */
export function buyers(texts: readonly string[]): Buyers {
  const receipts = new Set<string>();
  let turn = 0;
  const send = async ({ address }: Shop): Promise<number> => {
    const body = renumbered(texts[(turn += 1) % texts.length] ?? '');
    try {
      const response = await fetch(`${address}/desk/orders`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body,
        signal: AbortSignal.timeout(20_000),
      });
      const answer = (await response.json()) as { readonly number: string };
      if (response.ok) receipts.add(answer.number);
      return response.status;
    } catch {
      // The line broke: there is no receipt, and the order counts for nothing.
      return 0;
    }
  };
  return {
    receipts,
    send,
    sendMany: async (shop, many) => {
      let refused = 0;
      for (let at = 0; at < many; at += 1) if ((await send(shop)) >= 300) refused += 1;
      return refused;
    },
  };
}

/** Which of the numbers stand in a book's file with a document; none where it can't be read. */
export function foundIn(file: string, numbers: ReadonlySet<string>): number {
  try {
    const db = new DatabaseSync(file, { readOnly: true });
    try {
      const known = db.prepare(
        'SELECT count(*) AS many FROM orders WHERE number = ? AND json_valid(document)',
      );
      return [...numbers].filter((number) => known.get(number)?.many === 1).length;
    } finally {
      db.close();
    }
  } catch {
    return 0;
  }
}

/** A page of the bench in English, whatever its status. */
export async function pageOf({ address }: Shop, path: string): Promise<string> {
  return (await fetch(`${address}${path}`, { headers: { 'accept-language': 'en' } })).text();
}

const plain = (html: string): string =>
  html
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll(/\s+/g, ' ')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&')
    .trim();

/** What stands out on a page of the bench: its warnings, else what it says in green, else its title; cut after a sentence or two. */
export async function seen(shop: Shop, path: string): Promise<string> {
  const html = await pageOf(shop, path);
  const parts = [
    ...html.matchAll(/<(p|div)[^>]* (?:class="(?:warning|good)"|role="alert")[^>]*>(.*?)<\/\1>/gs),
  ];
  const told = parts
    .map(([, , inner]) => plain(inner ?? ''))
    .filter((text) => !text.startsWith('Other people'));
  const title = plain(/<h1[^>]*>(.*?)<\/h1>/s.exec(html)?.[1] ?? '');
  const count = /\d+ orders/.exec(html)?.[0];
  const text = told[0] ?? (count === undefined ? title : `${title}, ${count}`);
  return text.length > MOST_SEEN ? `${text.slice(0, MOST_SEEN)} …` : text;
}

/** A table's cell holds so much. */
const MOST_SEEN = 220;

/** Sends a form of the bench as her browser would. @returns the path within the shop that it leads to */
export async function submit({ address }: Shop, path: string, body: BodyInit): Promise<string> {
  const headers = { origin: new URL(address).origin };
  const response = await fetch(`${address}${path}`, { method: 'POST', headers, body, redirect: 'manual' });
  const location = response.headers.get('location');
  return location === null ? `${response.status}` : new URL(location, address).href.slice(address.length);
}

/** Her backup, as she downloads it. */
export async function backupOf({ address }: Shop): Promise<Blob> {
  return (await fetch(`${address}/bench/export/backup.sqlite`)).blob();
}

export function restoreForm(backup: Blob): FormData {
  const form = new FormData();
  form.set('backup', backup, 'orders.sqlite');
  form.set('sure', 'yes');
  return form;
}
