/** Disasters of the book's file: cut, flipped, spoilt, gone, newer, put back. */
import { readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import type { Disaster, Outcome, Place } from './disaster.ts';
import { backupOf, foundIn, pageOf, restoreForm, seen, submit } from './people.ts';
import { startShop, type Shop } from './shop.ts';

const ORDERS = 20;

/** Orders in a book, all of it in the one file, and a backup of it. */
async function filled({ file, people }: Place): Promise<Blob> {
  const shop = await startShop(file);
  await people.sendMany(shop, ORDERS);
  const backup = await backupOf(shop);
  await shop.stop();
  const db = new DatabaseSync(file);
  db.exec('PRAGMA wal_checkpoint(TRUNCATE)');
  db.close();
  return backup;
}

/** The maker restores her backup at the bench, and orders come again. */
async function putBack(shop: Shop, backup: Blob, { people }: Place): Promise<string> {
  const refused = await people.send(shop);
  const leadsTo = await submit(shop, '/bench/keep/restore/', restoreForm(backup));
  const after = await seen(shop, leadsTo);
  await people.sendMany(shop, 2);
  return `new orders ${refused}; after restoring: ${after}`;
}

/** Harms the file between two starts; she sees it in the list, and restores her backup. */
function harmed(name: string, harm: (file: string) => void, short = false): Disaster {
  return {
    name,
    short,
    play: async (place): Promise<Outcome> => {
      const backup = await filled(place);
      harm(place.file);
      const shop = await startShop(place.file);
      const saw = await seen(shop, '/bench/');
      const then = await putBack(shop, backup, place);
      await shop.stop();
      const { receipts } = place.people;
      return { receipted: receipts.size, found: foundIn(place.file, receipts), saw: `${saw} (${then})` };
    },
  };
}

/** The head of the page in which the first order lies. */
function spoilPage(file: string): void {
  const bytes = readFileSync(file);
  const at = bytes.indexOf('claspwise-order');
  bytes.fill(0xa5, at - (at % 4096), at - (at % 4096) + 64);
  writeFileSync(file, bytes);
}

/** One bit of one letter of a name. */
function flipBit(file: string): void {
  const bytes = readFileSync(file);
  const at = bytes.indexOf('A Buyer');
  bytes[at] = (bytes[at] ?? 0) ^ 1;
  writeFileSync(file, bytes);
}

const flipped: Disaster = {
  name: 'a bit of an order flipped',
  short: true,
  play: async (place) => {
    const { file, people } = place;
    await filled(place);
    flipBit(file);
    const shop = await startShop(file);
    const list = await pageOf(shop, '/bench/');
    const marks = list.split('>damaged<').length - 1;
    await people.sendMany(shop, 2);
    await shop.stop();
    const found = foundIn(file, people.receipts);
    return {
      receipted: people.receipts.size,
      found,
      saw: `${marks} order marked “damaged” in the list, the others as ever`,
    };
  },
};

const newer: Disaster = {
  name: 'book of a newer version',
  play: async (place) => {
    const { file, people } = place;
    await filled(place);
    const db = new DatabaseSync(file);
    db.exec('PRAGMA user_version = 99');
    db.close();
    const shop = await startShop(file);
    const [saw, status] = [await seen(shop, '/bench/'), await people.send(shop)];
    await shop.stop();
    return {
      receipted: people.receipts.size,
      found: foundIn(file, people.receipts),
      saw: `${saw} (new orders ${status})`,
    };
  },
};

export const files: readonly Disaster[] = [
  harmed('book cut in half', (file) => truncateSync(file, (readFileSync(file).length / 8192) * 4096)),
  flipped,
  harmed('a page of the book spoilt', spoilPage),
  harmed('book gone', (file) => rmSync(file), true),
  harmed('book emptied', (file) => truncateSync(file)),
  harmed('another file in its place', (file) => writeFileSync(file, 'Dear Wren, '.repeat(900))),
  newer,
];
