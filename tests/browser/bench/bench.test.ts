/** The bench in a browser: every card on its sheets, an order through its states, every door as the rules say. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { request as httpRequest } from 'node:http';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFinished, test } from 'vitest';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { startShop, type RunningShop } from '#tests/support/shop.ts';
import { mailBody } from '#order/mail.ts';
import { axeFindingsInBothSchemes } from '../axe.ts';
import { sendOrder } from './order.ts';
import { beforeScripts, bytesOf, tooWide, visit } from '../shop.ts';
import { catalogue, orderFor } from '#tests/bench/shop.ts';

let shop: RunningShop;
let number: string;

beforeAll(async () => {
  shop = await startShop({ CLASPWISE_DESK_PER_MINUTE: '0' });
  number = await send('weir-light');
});
afterAll(() => shop.stop());

const send = (id: string): Promise<string> => sendOrder(shop.base, id);
const open = async (path: string): Promise<Page> => (await visit(path, {}, shop.base)).page;

/** Every piece where CLASPWISE_THOROUGH is set; else those that need most room, and a plain one. */
function carded(): string[] {
  const bySize = catalogue.pieces.toSorted((a, b) => roomOf(b) - roomOf(a)).map(({ id }) => id);
  return process.env.CLASPWISE_THOROUGH ? bySize : [...bySize.slice(0, 3), 'weir-light'];
}
const roomOf = ({ design }: Catalogue['pieces'][number]): number =>
  design.strands.reduce((sum, { sections }) => sum + 10 + sections.length, 0);

test('a necklace with a pendant is strung from one A4 sheet', async () => {
  const page = await open(`/bench/pieces/wash-day/`);
  const pdf = (await page.pdf({ format: 'A4' })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
});

test(
  'every bench card has a sheet a strand, its steps on a second where need be, at a size read at arm’s length',
  { timeout: 600_000 },
  async () => {
    const page = await open('/bench/');
    for (const id of carded()) {
      await page.goto(`/bench/orders/${await send(id)}/card/`);
      for (const format of ['A4', 'Letter'] as const) {
        const pdf = (await page.pdf({ format })).toString('latin1');
        const sheets = pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
        const strands = catalogue.pieces.find((piece) => piece.id === id)?.design.strands.length ?? 0;
        expect(sheets, `${id} on ${format}`).toBeGreaterThanOrEqual(strands);
        expect(sheets, `${id} on ${format}`).toBeLessThanOrEqual(2 * strands);
      }
      await page.emulateMedia({ media: 'print' });
      const sizes = await page.evaluate(() =>
        ['.steps li', '.sequence label', '.facts dd'].map((of) => {
          const found = document.querySelector(of);
          return found === null ? 0 : Number.parseFloat(getComputedStyle(found).fontSize);
        }),
      );
      // Ten points at 96 pixels an inch, as the browser rounds them.
      for (const size of sizes) expect(size, id).toBeGreaterThanOrEqual(13.3);
      // Else the next card would be printed as it looks on screen.
      await page.emulateMedia({ media: null });
    }
  },
);

test('an order is worked through its states, and a second window can’t overwrite the first', async () => {
  const page = await open(`/bench/orders/${number}/`);
  const other = await page.context().newPage();
  await other.goto(page.url());
  await page.getByRole('button', { name: 'Agree to it' }).click();
  // The message that goes with it lies ready, and the keyboard is on it.
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.getAttribute('href')))
    .toContain('mailto:iris');
  await page.getByLabel('Due').fill('2027-01-20');
  await page.getByRole('button', { name: 'Set the day' }).click();
  await page.getByLabel('Note to yourself').fill('Blue tissue');
  await page.getByRole('button', { name: 'Add the note' }).click();
  const told = await page.locator('.history').innerText();
  for (const line of ['Set to agreed', 'Due 20 January 2027', 'Note: Blue tissue'])
    expect(told).toContain(line);
  await other.getByText('Something else').click();
  await other.getByLabel('Why', { exact: true }).fill('Two of the same');
  await other.getByRole('button', { name: 'Cancel it' }).click();
  expect(await other.locator('main').innerText()).toContain('changed in another window');
  expect(await other.getByLabel('Why', { exact: true }).first().inputValue()).toBe('Two of the same');
  await page.reload();
  expect(await page.locator('#state').innerText()).toContain('Agreed');
});

test('a pasted e-mail and a dropped file come in, ticks stay, a search finds', async () => {
  const order = orderFor(catalogue, 'weir-light', 165.1, { name: 'Zoë Quill' });
  const texts = { subject: '', greeting: 'Hello', lines: [], closing: 'Z', foot: 'For the bench:' };
  const page = await open('/bench/in/');
  await page.getByLabel('E-mail, link or order').fill(mailBody(texts, order).replace(/^/gm, '> '));
  await page.locator('input[type=file]').setInputFiles({
    name: 'order.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(order)),
  });
  await page.getByRole('button', { name: 'Take in' }).click();
  const result = await page.getByRole('status').innerText();
  expect(result).toContain(`${order.number} from the pasted text: taken in.`);
  expect(result).toContain(`${order.number} from order.json: it was in the book already.`);
  await page.goto(`/bench/?q=zoe+quill&state=all`);
  await page.getByRole('link', { name: order.number }).click();
  await page.getByRole('link', { name: 'Bench card' }).click();
  await page.locator('.steps input').first().check();
  await page.reload();
  expect(await page.locator('.steps input').first().isChecked()).toBe(true);
  // Also what is ticked before the card's script has come.
  const again = await page.context().newPage();
  const ticks = again.locator('.steps input');
  await beforeScripts(again, page.url(), () => ticks.nth(1).check());
  await expect.poll(() => ticks.first().isChecked()).toBe(true);
  expect(await ticks.nth(1).isChecked()).toBe(true);
  await page.reload();
  expect(await page.locator('.steps input').nth(1).isChecked()).toBe(true);
});

type Reply = {
  readonly status: number;
  readonly location: string;
  readonly policy: string;
  readonly cookie: string;
};

/** A request with any Host header, which fetch won't send. */
function ask(
  path: string,
  headers: Record<string, string>,
  method = 'GET',
  body = '',
  base = shop.base,
): Promise<Reply> {
  return new Promise((resolve, reject) => {
    const { hostname, port } = new URL(base);
    const call = httpRequest({ host: hostname, port, path, method, headers }, (response) => {
      response.resume();
      const {
        location = '',
        'content-security-policy': policy = '',
        'set-cookie': cookies = [],
      } = response.headers;
      const reply = {
        status: response.statusCode ?? 0,
        location,
        policy: String(policy),
        cookie: cookies[0] ?? '',
      };
      response.on('end', () => resolve(reply));
    });
    call.on('error', reject);
    call.end(body);
  });
}

test('the doors: rebound names, other sites, proxies and strangers stay outside', async () => {
  const host = new URL(shop.base).host;
  const form = { 'content-type': 'application/x-www-form-urlencoded' };
  const change = `/bench/orders/${number}/change/`;
  const erase = `/bench/orders/${number}/erase/`;
  expect((await ask('/bench/', { host })).status).toBe(200);
  expect((await ask('/bench/', { host: 'rebound.example' })).status).toBe(421);
  expect(
    (await ask('/desk/orders', { host: 'rebound.example', 'content-type': 'application/json' }, 'POST'))
      .status,
  ).toBe(421);
  expect((await ask('/bench/', { host, 'x-forwarded-for': '192.0.2.7' })).status).toBe(403);
  expect(
    (await ask(change, { host, ...form, origin: 'https://evil.example' }, 'POST', 'kind=state')).status,
  ).toBe(403);
  expect((await ask(erase, { host, ...form, origin: 'null' }, 'POST')).status).toBe(403);
  expect((await ask(erase, { host, ...form }, 'POST')).status).toBe(403);
  expect((await ask('/bench/assets/..%2f..%2fpackage.json', { host })).status).toBe(404);
  const { policy } = await ask('/bench/', { host });
  expect(policy).toContain("default-src 'none'");
  expect(policy).not.toContain('unsafe');
});

test('from elsewhere: over TLS, with the passphrase, and out again', async () => {
  const away = await startShop({ CLASPWISE_HOSTS: 'bench.example', CLASPWISE_PROXIES: '127.0.0.1' });
  const call = (path: string, headers: Record<string, string>, body?: string) =>
    ask(
      path,
      { host: 'bench.example', 'x-forwarded-for': '192.0.2.7', ...headers },
      body === undefined ? 'GET' : 'POST',
      body ?? '',
      away.base,
    );
  const https = { 'x-forwarded-proto': 'https' };
  const form = {
    ...https,
    origin: 'https://bench.example',
    'content-type': 'application/x-www-form-urlencoded',
  };
  const secret = 'passphrase=osier+thimble+barge+noon';
  expect((await call('/bench/', https)).status).toBe(403);
  const here = {
    host: new URL(away.base).host,
    origin: away.base,
    'content-type': 'application/x-www-form-urlencoded',
  };
  expect((await ask('/bench/access/passphrase/', here, 'POST', secret, away.base)).status).toBe(303);
  expect((await call('/bench/', {})).status).toBe(403);
  expect(await call('/bench/', https)).toMatchObject({ status: 303, location: '/bench/enter/' });
  expect((await call('/bench/enter/', form, 'passphrase=wrong+wrong+wrong')).status).toBe(401);
  const entered = await call('/bench/enter/', form, secret);
  expect(entered).toMatchObject({ status: 303, location: '/bench/' });
  const cookie = entered.cookie.split(';')[0] ?? '';
  expect((await call('/bench/', { ...https, cookie })).status).toBe(200);
  expect((await call('/bench/access/passphrase/', { ...form, cookie }, 'remove=yes')).status).toBe(403);
  expect((await call('/bench/leave/', { ...form, cookie }, '')).status).toBe(303);
  expect((await call('/bench/', { ...https, cookie })).status).toBe(303);
  await away.stop();
});

test('backup, restore and erasing go their whole way', async () => {
  const page = await open('/bench/keep/');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Download a backup' }).click(),
  ]);
  const file = await bytesOf(download);
  await page.goto(`/bench/orders/${number}/`);
  await page.getByText('Erase the buyer’s data').click();
  await page.getByRole('button', { name: 'Yes, erase it for good' }).click();
  expect(await page.locator('main').innerText()).not.toContain('Iris');
  await page.goto(`/bench/keep/`);
  await page.getByText('Restore', { exact: true }).first().click();
  await page.getByLabel('Backup file').setInputFiles({
    name: 'orders.sqlite',
    mimeType: 'application/vnd.sqlite3',
    buffer: file,
  });
  await page.getByLabel('Replace the order book').check();
  await page.getByRole('button', { name: 'Restore' }).click();
  expect(await page.getByRole('status').innerText()).toContain('Restored');
  await page.goto(`/bench/orders/${number}/`);
  expect(await page.locator('main').innerText()).toContain('Iris');
});

test('a backup with a harmed order names it first, and brings all else back', async () => {
  const page = await open('/bench/keep/');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Download a backup' }).click(),
  ]);
  const buffer = harmed(await bytesOf(download));
  const restoreIt = async (field: string, sure: string): Promise<void> => {
    const file = { name: 'orders.sqlite', mimeType: 'application/vnd.sqlite3', buffer };
    await page.getByLabel(field).setInputFiles(file);
    await page.getByLabel(sure).check();
    await page.getByRole('button', { name: 'Restore' }).click();
  };
  await page.getByText('Restore', { exact: true }).first().click();
  await restoreIt('Backup file', 'Replace the order book');
  expect(await page.getByRole('heading', { level: 1 }).innerText()).toBe('Some of this backup is damaged');
  expect(await page.getByRole('alert').innerText()).toContain(number);
  expect(await axeFindingsInBothSchemes(page)).toEqual([]);
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  await restoreIt('The same backup file once more', 'these orders as they are in it');
  expect(await page.getByRole('status').innerText()).toContain('Restored');
  expect(await page.locator('main').innerText()).toContain('1 order in the book can’t be read.');
  await page.goto('/bench/?state=all');
  expect(await page.getByRole('alert').innerText()).toContain(number);
});

/** The test's order, as a disk might leave it. */
function harmed(backup: Buffer): Buffer {
  const file = join(mkdtempSync(join(tmpdir(), 'harmed-')), 'orders.sqlite');
  onTestFinished(() => rmSync(dirname(file), { recursive: true }));
  writeFileSync(file, backup);
  const db = new DatabaseSync(file);
  db.exec('PRAGMA ignore_check_constraints = ON');
  db.prepare(`UPDATE orders SET document = substr(document, 2) WHERE number = ?`).run(number);
  db.close();
  return readFileSync(file);
}
