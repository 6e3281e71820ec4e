/** A tablet gets in: switched on at the machine, paired once, kept to cards and steps, and sent away. */
import { request } from 'node:https';
import type { TLSSocket } from 'node:tls';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startShop, type RunningShop } from '#tests/support/shop.ts';
import { axeFindingsInBothSchemes } from '../axe.ts';
import { browser, tooWide, visit } from '../shop.ts';
import { sendOrder } from './order.ts';

let shop: RunningShop;
let number: string;
beforeAll(async () => {
  // By a name of the settings, for the machine that tests run on may be in no network.
  shop = await startShop({
    CLASPWISE_DESK_PER_MINUTE: '0',
    CLASPWISE_TABLET_PORT: '0',
    CLASPWISE_HOSTS: '127.0.0.1',
  });
  number = await sendOrder(shop.base, 'banked-fire');
});
afterAll(() => shop.stop());

type Reply = { readonly status: number; readonly fingerprint: string; readonly text: string };

/** A request to the tablets' door, whatever its certificate. */
function ask(
  base: string,
  path: string,
  headers: Record<string, string> = {},
  method = 'GET',
  body = '',
): Promise<Reply> {
  return new Promise((resolve, reject) => {
    const { hostname, port } = new URL(base);
    const call = request(
      { host: hostname, port, path, method, headers, rejectUnauthorized: false, agent: false },
      (response) => {
        const { fingerprint256 } = (response.socket as TLSSocket).getPeerCertificate();
        let text = '';
        response.setEncoding('utf8');
        response.on('data', (part: string) => (text += part));
        response.on('end', () =>
          resolve({ status: response.statusCode ?? 0, fingerprint: fingerprint256, text }),
        );
      },
    );
    call.on('error', reject);
    call.end(body);
  });
}

/** Where the tablets' door is, by the page at the machine. */
async function doorAt(page: Page): Promise<string> {
  const text = await page.locator('main').innerText();
  return `https://127.0.0.1:${/on port (\d+)/.exec(text)?.[1] ?? ''}`;
}

/** The address that the code on the page leads to, by the name that this test reaches. */
async function codeOn(page: Page, base: string): Promise<string> {
  await page.getByText('No camera?').click();
  const address = new URL(await page.locator('details code').innerText());
  expect(address.protocol).toBe('https:');
  return `${base}${address.pathname}${address.search}`;
}

async function onTablet(base: string): Promise<{ context: BrowserContext; page: Page }> {
  const context = await browser.newContext({
    baseURL: base,
    ignoreHTTPSErrors: true,
    viewport: { width: 1024, height: 768 },
    hasTouch: true,
  });
  return { context, page: await context.newPage() };
}

test('is off by default, is paired by a code that works once, walks a card, and is out once it is sent away', async () => {
  const { page } = await visit('/bench/tablets/', {}, shop.base);
  expect(await page.locator('main').innerText()).toContain('Switched off');
  await page.getByRole('button', { name: 'Switch it on' }).click();
  const base = await doorAt(page);
  // What is shown is what is presented.
  const shown = (await page.locator('.fingerprint').innerText()).replace(/\s+/g, ':');
  const stranger = await ask(base, '/bench/steps/');
  expect(stranger).toMatchObject({ status: 401, fingerprint: shown });
  expect(stranger.text).toContain('isn’t paired');
  expect((await ask(base, '/')).status).toBe(401);
  expect((await ask(base, '/bench/steps/', { host: 'rebound.example' })).status).toBe(421);

  await page.getByRole('button', { name: 'Show a code' }).click();
  const address = await codeOn(page, base);
  const tablet = await onTablet(base);
  await tablet.page.goto(address);
  expect(await tooWide(tablet.page)).toBeLessThanOrEqual(0);
  await tablet.page.getByLabel('A name for it').fill('Kitchen tablet');
  await tablet.page.getByRole('button', { name: 'Pair it' }).click();
  expect(new URL(tablet.page.url()).pathname).toBe('/bench/steps/');
  const again = await onTablet(base);
  expect((await again.page.goto(address))?.status()).toBe(403);
  expect(await again.page.locator('main').innerText()).toContain('used already');
  await again.context.close();

  await tablet.page.getByRole('link', { name: `String it: ${number}` }).click();
  // Keys are heard once the script is there.
  await tablet.page.locator('[data-standing]').waitFor();
  for (let at = 0; at < 3; at += 1) await tablet.page.keyboard.press('PageDown');
  await expect.poll(() => tablet.page.locator('[data-line]').innerText()).toBe('Kept in the order book.');
  expect(await axeFindingsInBothSchemes(tablet.page)).toEqual([]);
  for (const path of [
    '/bench/',
    `/bench/orders/${number}/`,
    '/bench/keep/',
    '/bench/tablets/',
    '/pieces/',
    '/',
  ]) {
    expect((await tablet.page.goto(path))?.status(), path).toBe(403);
    expect(await tablet.page.locator('main').innerText()).toContain('only cards and steps');
  }
  await tablet.page.goto(`/bench/orders/${number}/card/`);
  expect(await tablet.page.locator('h1').innerText()).toContain('Banked Fire');
  const links = await tablet.page
    .locator('a[href]')
    .evaluateAll((all) => all.map((one) => one.getAttribute('href') ?? ''));
  expect(links.filter((href) => !/^#|^\?by=|\/(steps|card)\//.test(href))).toEqual([]);

  // At the machine: who left it where, and out.
  await page.goto(`/bench/orders/${number}/steps/`);
  expect(await page.locator('[data-line]').innerText()).toContain('on Kitchen tablet');
  await page.goto('/bench/tablets/');
  await page.getByRole('button', { name: 'Send “Kitchen tablet” away' }).click();
  expect(await page.getByRole('status').innerText()).toContain('Sent away');
  expect((await tablet.page.goto('/bench/steps/'))?.status()).toBe(401);

  await page.getByRole('button', { name: 'Switch it off' }).click();
  expect(await page.locator('main').innerText()).toContain('Switched off');
  await expect(ask(base, '/bench/steps/')).rejects.toThrow();
  await tablet.context.close();
});

test('a forged mark of the other door opens nothing, and the page that pairs is the machine’s alone', async () => {
  const { page } = await visit('/bench/tablets/', {}, shop.base);
  await page.getByRole('button', { name: 'Switch it on' }).click();
  const base = await doorAt(page);
  const host = new URL(base).host;
  const forged = { host, 'x-claspwise-door': 'usual' };
  expect((await ask(base, '/bench/', forged)).status).toBe(401);
  expect(
    (await ask(base, '/desk/orders', { ...forged, 'content-type': 'application/json' }, 'POST', '{}')).status,
  ).toBe(403);
  const post = { host, origin: base, 'content-type': 'application/x-www-form-urlencoded' };
  expect((await ask(base, '/bench/tablets/', post, 'POST', 'act=code')).status).toBe(401);
  // Five a minute from one address, whoever tried before.
  const tries: number[] = [];
  for (let at = 0; at < 6; at += 1)
    tries.push((await ask(base, '/bench/tablets/pair/', post, 'POST', 'token=guess&name=x')).status);
  expect(tries.filter((status) => status !== 403 && status !== 429)).toEqual([]);
  expect(tries.at(-1)).toBe(429);
  const evil = { ...post, origin: 'https://evil.example' };
  expect((await ask(base, '/bench/tablets/pair/', evil, 'POST', 'token=guess&name=x')).status).toBe(403);
  await page.getByRole('button', { name: 'Switch it off' }).click();
});
