/** The built shop, served as `npm start` serves it, and a page of it in Chromium. */
import { dirname, resolve } from 'node:path';
import type { Server } from 'node:http';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { serve } from '../../src/command/serve/server.ts';
import { launchChromium } from '../support/chromium.ts';

export type Shop = {
  readonly address: string;
  readonly browser: Browser;
  readonly close: () => Promise<void>;
};

/** Another build's by `CLASPWISE_DIST`. */
const ROOT = resolve(dirname(process.env.CLASPWISE_DIST ?? 'dist'));

export async function openShop(): Promise<Shop> {
  const { server, port } = await serve(ROOT, '127.0.0.1', 0);
  const browser = await launchChromium();
  return {
    address: `http://127.0.0.1:${port}`,
    browser,
    close: async () => {
      await browser.close();
      await stopped(server);
    },
  };
}

function stopped(server: Server): Promise<void> {
  server.closeAllConnections();
  return new Promise((done) => server.close(() => done()));
}

export type Watched = {
  readonly page: Page;
  /** What the console said, pages threw and other hosts were asked for: nothing, where all is well. */
  readonly complaints: string[];
};

/** A page of the shop that writes down what goes wrong on it. */
export async function visit(shop: Shop, path: string, options: BrowserContextOptions = {}): Promise<Watched> {
  const context = await shop.browser.newContext(options);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => complaints.push(`console ${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => complaints.push(`error: ${error.message}`));
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(shop.address) && !/^(data|blob):/.test(url)) complaints.push(`other host: ${url}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400 && !path.includes('not-there')) {
      complaints.push(`${response.status()}: ${response.url()}`);
    }
  });
  await page.goto(shop.address + path, { waitUntil: 'load' });
  return { page, complaints };
}

/** One page of each kind that the public shop has. */
export const KINDS: readonly (readonly [kind: string, path: string])[] = [
  ['front', '/'],
  ['all pieces', '/pieces/'],
  ['necklace', '/pieces/loom-shuttle/'],
  ['bracelet', '/pieces/banked-fire/'],
  ['past pieces', '/past/'],
  ['ways', '/materials/'],
  ['beads', '/beads/'],
  ['one material', '/materials/glass/'],
  ['guides', '/guides/'],
  ['guide', '/guides/measuring/'],
  ['measuring strip', '/measuring-strip/a4/'],
  ['search', '/find/'],
  ['line sheet', '/line-sheet/'],
  ['data', '/data/'],
  ['not there', '/not-there/'],
  ['German piece', '/de/pieces/banked-fire/'],
];
