/** Finding a piece in a browser: words, filters, order, size, address and keyboard. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { size } from '#core/sizing/size.ts';
import { textsOf } from '#catalogue/model/catalogue.ts';
import { matcher } from '#ui/search/match.ts';
import { openVocabulary } from '#ui/search/reading/open.ts';
import { readQuery } from '#ui/search/reading/read.ts';
import { buildVocabulary } from '#ui/search/vocabulary/build.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';
import { beforeScripts, newPage, visit, type Watched } from './shop.ts';

const catalogue = catalogueOf(process.env.CLASPWISE_CONTENT);
const { pieces, shop: shopFacts } = catalogue;

/** Bytes of a first search without its pictures; more than half of them is the index's own program. */
const FIRST_SEARCH = 100_000;

/** One device for the searches that leave nothing behind on it. */
let page: Page;
let complaints: Watched['complaints'];
beforeAll(async () => {
  ({ page, complaints } = await newPage());
});
afterAll(() => page.context().close());

async function search(path: string): Promise<void> {
  complaints.length = 0;
  await page.goto(path);
}

const said = (page: Page): Promise<string> => page.locator('#find-said').innerText();
const hits = (page: Page): Promise<string[]> => page.locator('#find-results a').allInnerTexts();

async function answered(page: Page): Promise<void> {
  await page.waitForFunction(() => document.getElementById('find-said')?.textContent?.trim() !== '');
}

/** Every result, however many pages of them. */
async function allHits(page: Page): Promise<string[]> {
  const more = page.locator('#find-more');
  while (await more.isVisible()) {
    const before = (await hits(page)).length;
    await more.click();
    await page.waitForFunction(
      (count) => document.querySelectorAll('#find-results a').length > count,
      before,
    );
  }
  return hits(page);
}

describe('the search page', () => {
  test('answers what was typed before its script had come', async () => {
    const { page } = await visit('about:blank');
    await beforeScripts(page, '/find/', () => page.locator('#find-words').fill('porcelain'));
    await answered(page);
    expect(await hits(page)).toContain('Wash Day');
    expect(page.url()).toContain('q=porcelain');
    await page.context().close();
  });

  test('fetches nothing of the index before someone searches', async () => {
    const { page } = await visit('about:blank');
    const asked: string[] = [];
    page.on('request', (request) => asked.push(new URL(request.url()).pathname));
    await page.goto('/find/', { waitUntil: 'networkidle' });
    expect(asked.filter((path) => path.includes('pagefind'))).toEqual([]);
    await page.locator('#find-words').focus();
    await page.waitForResponse((response) => response.url().includes('pagefind'));
  });

  test('finds a piece by a word of its name; address and count say what was asked', async () => {
    await search('/find/');
    await page.locator('#find-words').pressSequentially('loom');
    await answered(page);
    expect(await hits(page)).toContain('Loom Shuttle');
    expect(new URL(page.url()).searchParams.get('q')).toBe('loom');
    expect(await said(page)).toMatch(/^\d+ pieces? found$/);
    expect(await page.locator('#find-results img').first().getAttribute('src')).toMatch(/^\/pictures\//);
    expect(complaints).toEqual([]);
  });

  test('finds a piece by the part number of one of its beads', async () => {
    const [id, number] = Object.entries(catalogue.partNumbers).find(([key]) => key.startsWith('slate')) ?? [];
    await search(`/find/?q=${number}`);
    await answered(page);
    const within = pieces.filter(({ design }) => (id ?? '') in design.components).map(({ name }) => name);
    expect(within.length).toBeGreaterThan(0);
    expect((await allHits(page)).sort()).toEqual(within.sort());
  });

  test('finds every piece with a bead by the bead’s name, in either language', async () => {
    const id = 'box-8';
    const within = pieces.filter(({ design }) => id in design.components).length;
    expect(within).toBeGreaterThan(1);
    for (const path of ['/find/?q=boxwood', `/de/find/?q=${catalogue.germanNames[id]}`]) {
      await search(path);
      await answered(page);
      expect((await allHits(page)).length, path).toBeGreaterThanOrEqual(within);
    }
  });

  test('shows the same when its address is opened again', async () => {
    await search('/find/?kind=Bracelets&sort=cheapest');
    await answered(page);
    const wanted = pieces
      .filter(({ design }) => design.kind === 'bracelet')
      .map(({ listedMinor }) => listedMinor)
      .sort((a, b) => a - b);
    expect(await said(page)).toBe(`${wanted.length} pieces found`);
    const prices = await page.locator('#find-results [data-price]').allInnerTexts();
    const minor = prices.filter((text) => text !== '').map((text) => Math.round(Number(text.slice(1)) * 100));
    expect(minor).toEqual([...minor].sort((a, b) => a - b));
  });

  test.each([
    ['wrist', 'bracelet', '165 mm', 166],
    ['wrist', 'bracelet', '140 mm', 140],
    ['ankle', 'anklet', '230 mm', 230],
    ['length', 'necklace', '450 mm', 450],
    ['length', 'necklace', '700 mm', 700],
  ] as const)(
    'finds what can be made for a %s (%s) of %s, and nothing else',
    async (of, kind, text, stepMm) => {
      const names = { bracelet: 'Bracelets', anklet: 'Anklets', necklace: 'Necklaces' };
      const query = new URLSearchParams({ kind: names[kind], of, size: text });
      await search(`/find/?${query.toString()}`);
      await answered(page);
      const choice = {
        measure: { of, mm: stepMm },
        sit: 'easy',
        hand: 'right',
        pick: 'best',
        quantity: 1,
      } as const;
      const wanted = pieces
        .filter(({ design }) => design.kind === kind)
        .filter((piece) => size(piece.design, shopFacts.rules, piece.listedMinor, choice).status === 'fits')
        .map(({ name }) => name);
      expect((await allHits(page)).sort()).toEqual(wanted.sort());
    },
  );

  test('remembers the last size on this device, and says when one can’t be read', async () => {
    const { page } = await visit('/find/');
    await page.locator('#find-fits').check();
    await page.locator('#find-size-text').fill('6 1/2 in');
    await answered(page);
    await page.goto('/find/');
    await page.locator('#find-fits').check();
    expect(await page.locator('#find-size-text').inputValue()).toBe('6 1/2 in');
    await page.locator('#find-size-text').fill('a hand’s breadth');
    await page.locator('#find-size-problem').waitFor({ state: 'visible' });
  });

  test('says what to do when nothing matches', async () => {
    await search('/find/?q=zeppelin');
    await answered(page);
    expect(await said(page)).toContain('No piece matches');
    expect(await hits(page)).toEqual([]);
  });

  test.each([
    ['/find/', 'bracelet under £40'],
    ['/find/', 'braclet glow'],
    ['/find/', 'necklace without pearls'],
    ['/find/', 'for a 17 cm wrist'],
    ['/find/', 'silver earrings'],
    ['/find/', 'green or blue bracelet'],
    ['/find/', 'silver bracelet with 8 mm beads under £90'],
    ['/find/', 'Bell at Six'],
    ['/de/find/', 'Holzkette'],
    ['/de/find/', 'Armband für 16 cm Handgelenk unter 50 £'],
    ['/de/find/', 'nickelfrei'],
    ['/de/find/', 'rosa Kette unter 30 £'],
  ])('%s answers “%s” as the bench does', async (path, words) => {
    const lang = path.startsWith('/de') ? 'de' : 'en';
    const opened = openVocabulary(buildVocabulary(catalogue, lang));
    const reading = readQuery(words, opened, { unit: lang === 'de' ? 'cm' : 'in' });
    const found = matcher(catalogue, lang)(reading);
    await search(`${path}?${new URLSearchParams({ q: words }).toString()}`);
    await answered(page);
    expect((await allHits(page)).sort()).toEqual(found.pieces.map((one) => textsOf(one, lang).name).sort());
    const near = await page.locator('#find-near a').allInnerTexts();
    expect(near).toHaveLength(found.near.length);
    expect(await page.locator('#find-near').isVisible()).toBe(near.length > 0);
    const labels = reading.parts.flatMap(({ label }) => label ?? []);
    expect(await page.locator('#find-marks button').allInnerTexts()).toEqual(labels);
    expect(await page.locator('#find-notes li').allInnerTexts()).toEqual(
      reading.said.map(({ text }) => text),
    );
    expect(complaints).toEqual([]);
  });

  test('shows what was understood as marks that the keyboard takes away', async () => {
    await search('/find/?q=green+bracelet+under+%C2%A330');
    await answered(page);
    const marks = page.locator('#find-marks button');
    expect(await marks.allInnerTexts()).toEqual(['green', 'Bracelets', 'up to £30']);
    const before = await said(page);
    await marks.nth(2).focus();
    await page.keyboard.press('Enter');
    await page.waitForFunction((text) => document.getElementById('find-said')?.innerText !== text, before);
    expect(await marks.allInnerTexts()).toEqual(['green', 'Bracelets']);
    expect(await page.locator('#find-words').inputValue()).toBe('green bracelet');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Bracelets');
    expect(await page.locator('[role=status] #find-said').count()).toBe(1);
    for (const left of [1, 0]) {
      await page.keyboard.press('Enter');
      await expect.poll(() => marks.count()).toBe(left);
    }
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('find-words');
  });

  test.each([
    ['/find/', 'bracelet under £40'],
    ['/find/', 'river'],
    ['/find/', 'dark green glass'],
    ['/find/', 'river wooden bracelet for a 17 cm wrist under £40'],
    ['/de/find/', 'Kette mit Flussglas'],
    ['/de/find/', 'Messingkugel'],
    ['/de/find/', 'Messingkugel Armband aus Holz unter 50 £'],
  ])('%s moves less than 100 KB for a first search, “%s”', async (path, words) => {
    const { page } = await visit(path);
    const moved: Promise<number>[] = [];
    page.on('requestfinished', (request) => {
      if (!/\/pictures\//.test(request.url()))
        moved.push(request.sizes().then(({ responseBodySize }) => Math.max(0, responseBodySize)));
    });
    await page.locator('#find-words').fill(words);
    await answered(page);
    await page.waitForLoadState('networkidle');
    const bytes = (await Promise.all(moved)).reduce((sum, one) => sum + one, 0);
    expect(bytes).toBeGreaterThan(50_000);
    expect(bytes).toBeLessThan(FIRST_SEARCH);
  });

  test('is worked by keyboard alone', async () => {
    await search('/find/');
    await page.locator('#find-words').focus();
    await page.keyboard.type('glass');
    await page.keyboard.press('Enter');
    await answered(page);
    await page.locator('#find-results a').first().focus();
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/pieces\//);
  });

  test('speaks German on the German page', async () => {
    await search('/de/find/?q=Glas');
    await answered(page);
    expect(await said(page)).toMatch(/gefunden$/);
    expect(await page.locator('#find-results a').first().getAttribute('href')).toMatch(/^\/de\/pieces\//);
  });

  test('without JavaScript shows lists instead of a form', async () => {
    const { page } = await visit('/find/', { javaScriptEnabled: false });
    expect(await page.locator('#find-form').isVisible()).toBe(false);
    expect(await page.locator('main .choices a').count()).toBeGreaterThan(15);
  });
});
