/** Files and book beside each other: taken over, written out, changed by hand, and never overwritten unasked. */
import { afterEach, beforeEach, expect, it } from 'vitest';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { enterStock, type StockEntry } from '#bench/book/movements.ts';
import { fileStanding } from '#bench/stock/files.ts';
import { stockNow } from '#bench/stock/stockNow.ts';
import { thingsOf } from '#bench/stock/things.ts';
import { writeOutStock } from '#bench/stock/writeOut.ts';
import { keptContent, type Kept } from '../content.ts';
import { catalogue as demo, frame, openShop, type Shop } from '../shop.ts';

const FILE = 'components/parts.yaml';
let shop: Shop;
let kept: Kept;
beforeEach(() => {
  shop = openShop(demo);
  kept = keptContent([
    { file: FILE, from: 'hole: 1.2 mm\n', to: 'hole: 1.2 mm\n  stock: 180 # in the tin\n' },
  ]);
});
afterEach(() => shop.close());

const things = () => thingsOf(kept.store.reading().catalogue!, 'en');
const standing = () => {
  const { toBegin, byHand, toWrite } = fileStanding(
    shop.book,
    stockNow(shop.book, kept.store.reading().catalogue!),
    things(),
  );
  const one = ({ thing, free }: { thing: { key: string; inFile: number | null }; free: number }) => [
    thing.key,
    thing.inFile,
    free,
  ];
  return { toBegin: toBegin.map(({ key }) => key), byHand: byHand.map(one), toWrite: toWrite.map(one) };
};
const enter = (kind: StockEntry['kind'], amount: number, thing = 'ball-8') =>
  enterStock(
    shop.book,
    { at: frame.now, who: 'machine' },
    [{ thing, kind, amount, entered: String(amount), note: '', seen: null }],
    (key) => things().find((one) => one.key === key)?.inFile ?? null,
  );
const write = (only: readonly string[] | null = null) =>
  writeOutStock(shop.book, kept.store, frame.now, only);
const byHand = (from: string, to: string): void => {
  const path = join(kept.folder, FILE);
  const text = readFileSync(path, 'utf8');
  expect(text).toContain(from);
  writeFileSync(path, text.replace(from, to));
};

it('takes over what a file says, and writes out what is free, with its remark kept and in the history', () => {
  expect(standing()).toEqual({ toBegin: ['ball-8'], byHand: [], toWrite: [] });
  expect(write()).toEqual({ written: 0, failed: [] });
  enter('received', 20);
  expect(standing()).toEqual({ toBegin: [], byHand: [], toWrite: [['ball-8', 180, 200]] });
  const before = kept.textOf(FILE);
  expect(write()).toEqual({ written: 1, failed: [] });
  expect(kept.textOf(FILE)).toBe(before.replace('180 # in the tin', '200 # in the tin'));
  expect(standing()).toEqual({ toBegin: [], byHand: [], toWrite: [] });
  expect(kept.store.history()[0]).toMatchObject({ action: 'stock', file: FILE });
  expect(write()).toEqual({ written: 0, failed: [] });
  expect(kept.store.history()).toHaveLength(1);
});

it('begins the line in files that had none, once the thing is counted', () => {
  enter('counted', 12, 'crimp-2');
  expect(standing().toWrite).toEqual([['crimp-2', null, 12]]);
  write();
  expect(kept.store.reading().catalogue!.components['crimp-2']!.stock).toBe(12);
  // Several of one file are one save.
  enter('counted', 4, 'crimp-2');
  enter('counted', 9);
  expect(write().written).toBe(2);
  expect(kept.store.history()).toHaveLength(2);
});

it('leaves what she changed by hand as she wrote it, until she decides', () => {
  enter('counted', 100);
  write();
  byHand('stock: 100', 'stock: 50');
  enter('received', 7);
  expect(standing()).toEqual({ toBegin: [], byHand: [['ball-8', 50, 107]], toWrite: [] });
  expect(write()).toEqual({ written: 0, failed: [] });
  expect(kept.textOf(FILE)).toContain('stock: 50');
  // What the book says is written over it.
  expect(write(['ball-8'])).toEqual({ written: 1, failed: [] });
  expect(kept.textOf(FILE)).toContain('stock: 107');
  expect(standing()).toEqual({ toBegin: [], byHand: [], toWrite: [] });
});

it('names what can’t be written, and publishes nothing of it', () => {
  enter('counted', 100);
  byHand('hole: 1.2 mm', 'hole: [1.2 mm');
  expect(write(['ball-8']).failed).toEqual(['ball-8']);
});

it('never writes less than nothing', () => {
  enter('counted', 0);
  write();
  expect(kept.textOf(FILE)).toContain('stock: 0');
});
