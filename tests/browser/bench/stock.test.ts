/**
 * The life of a bead: received by the strand, counted, set into a piece,
 * reserved, strung, short for the next, bought and received again; the figures
 * held against the sums of it at each point.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { tally } from '#core/design/tally.ts';
import { catalogue, orderFor } from '#tests/bench/shop.ts';
import { ownPlace, type Place } from '#tests/support/publishing.ts';
import { startShop, type RunningShop } from '#tests/support/shop.ts';
import { axeFindingsInBothSchemes } from '../axe.ts';
import { bytesOf, tooWide, visit } from '../shop.ts';
import { sendOrder } from './order.ts';

// A publishing within it, on a machine that may be busy with other tests.
vi.setConfig({ testTimeout: 240_000 });

const PIECE = 'weir-light';
const BEAD = 'river-8';
const HERE = `/bench/stock/parts/${BEAD}/`;
/** What one piece of the orders below takes of it. */
const EACH = tally(
  catalogue.pieces.find(({ id }) => id === PIECE)!.design,
  orderFor(catalogue, PIECE, 165.1).shown.counts,
).get(BEAD)!;
/** A strand of 16 in of beads of 8 mm: 406.4 / 8. */
const STRAND = 50;

let place: Place;
let shop: RunningShop;
beforeAll(async () => {
  place = ownPlace();
  shop = await startShop({ ...place.env, CLASPWISE_DESK_PER_MINUTE: '0' });
});
afterAll(async () => {
  await shop.stop();
  place.remove();
});

/** There, promised, free, as the thing's own page says. */
async function figures(page: Page): Promise<number[]> {
  await page.goto(HERE);
  const said = await page.locator('.facts dd').allInnerTexts();
  return said.slice(0, 3).map((text) => Number(/^[-−]?\d+/.exec(text)?.[0].replace('−', '-')));
}

async function enter(page: Page, kind: string, amount: string, unit: string): Promise<void> {
  await page.goto(HERE);
  await page.getByLabel('What happened').selectOption({ label: kind });
  await page.getByLabel('How many').fill(amount);
  await page.locator('select[name=unit]').selectOption(unit);
  await page.getByRole('button', { name: 'Enter it' }).click();
}

async function step(page: Page, number: string, name: string): Promise<void> {
  await page.goto(`/bench/orders/${number}/`);
  await page.getByRole('button', { name, exact: true }).click();
}

async function bringIn(page: Page, table: string): Promise<void> {
  await page.goto('/bench/stock/in/');
  await page.getByLabel('Paste the table').fill(table);
  await page.getByRole('button', { name: 'See what it would do' }).click();
}

test('a bead lives through the bench, and every figure is right at each point', async () => {
  const { page, complaints } = await visit('/bench/stock/', {}, shop.base);

  // Received by the strand, from a table in which one line is wrong.
  await bringIn(page, `thing,kind,amount,unit\n${BEAD},received,1,strand\nriver-80,received,3,\n`);
  const looked = await page.locator('main').innerText();
  expect(looked).toContain('Line 3');
  expect(looked).toContain(`Is it “${BEAD}”?`);
  await page.goto(HERE);
  expect(await page.locator('main').innerText()).toContain('Nobody counts it here yet');
  await bringIn(page, `thing,kind,amount,unit\n${BEAD},received,1,strand\nriver-80,received,3,\n`);
  await page.getByRole('button', { name: 'Enter the good line' }).click();
  await page.getByText('1 line is entered').waitFor();
  expect(await figures(page)).toEqual([STRAND, 0, STRAND]);

  // Two were chipped.
  await enter(page, 'Counted', String(STRAND - 2), 'piece');
  await page.getByText('It is entered').waitFor();
  const counted = STRAND - 2;
  expect(await figures(page)).toEqual([counted, 0, counted]);

  // Set into a piece: the board has as many left as there are.
  await page.goto(`/bench/pieces/${PIECE}/board/`);
  await page.locator('#bead-board [role="application"], #bead-board button').first().waitFor();
  const input = JSON.parse((await page.locator('#board-input').textContent()) ?? '') as {
    trays: { components: Record<string, { stock: number | null }> };
  };
  expect(input.trays.components[BEAD]?.stock).toBe(counted);

  // Reserved by an agreed order, and written out for the shop.
  const first = await sendOrder(shop.base, PIECE);
  expect(await figures(page)).toEqual([counted, 0, counted]);
  await step(page, first, 'Agree to it');
  expect(await figures(page)).toEqual([counted, EACH, counted - EACH]);
  expect(await page.locator('.facts').innerText()).toContain(first);
  await page.goto('/bench/publish/');
  expect(await page.locator('main').innerText()).toContain(`: ${counted - EACH}`);
  expect((await place.publish('--quick')).code).toBe(0);
  const file = readFileSync(join(place.content, 'components/glass.yaml'), 'utf8');
  expect(file.slice(file.indexOf(`\n${BEAD}:`))).toMatch(
    new RegExp(`^\\n${BEAD}:\\n(?: {2}.*\\n)*? {2}stock: ${counted - EACH}\\n`),
  );
  await page.goto('/bench/stock/');
  expect(await page.locator('main').innerText()).not.toMatch(/sizes with (an)?other number/);

  // Taken when it is strung.
  await step(page, first, 'It is strung');
  const strung = counted - EACH;
  expect(await figures(page)).toEqual([strung, 0, strung]);
  await page.goto(`/bench/orders/${first}/`);
  expect(await page.locator('main').innerText()).toContain('all figures are those that the buyer saw');

  // Enough for one more, short for the next.
  const second = await sendOrder(shop.base, PIECE);
  await step(page, second, 'Agree to it');
  const third = await sendOrder(shop.base, PIECE);
  await page.goto(`/bench/orders/${third}/`);
  expect(await page.locator('main').innerText()).toContain('This differs from what the buyer saw');
  // She agrees to it all the same, for more can be bought.
  const agree = page.locator('button[name=state][value=agreed]');
  await page.locator('details', { has: agree }).locator('summary').click();
  await agree.click();
  expect(await figures(page)).toEqual([strung, 2 * EACH, strung - 2 * EACH]);
  const lacking = 2 * EACH - strung;
  await page.goto('/bench/week/');
  expect(await page.locator('main').innerText()).toContain(
    `${lacking} × River-green glass, 8 mm missing of ${EACH}`,
  );

  // On the shopping list, by the strand.
  await page.goto('/bench/shopping/');
  await page.getByLabel('Also what would fall below its mark').uncheck();
  await page.getByRole('button', { name: 'Work it out' }).click();
  const row = page.getByRole('row', { name: /River-green glass, 8 mm/ });
  expect(await row.innerText()).toContain('1 strand');
  expect(await page.getByRole('heading', { name: 'Cray Glassworks' }).count()).toBe(1);

  // Received again.
  await page.getByRole('button', { name: 'All of this came' }).first().click();
  await page.getByText('It is entered as received').waitFor();
  expect(await page.locator('main').innerText()).toContain('Nothing is to be bought');
  const again = strung + STRAND;
  const last = [again, 2 * EACH, again - 2 * EACH];
  expect(await figures(page)).toEqual(last);

  // Also after its buyer was erased, and from a backup that is put back.
  await page.goto(`/bench/orders/${second}/`);
  await page.getByText('Erase the buyer’s data').click();
  await page.getByRole('button', { name: 'Yes, erase it for good' }).click();
  expect(await figures(page)).toEqual(last);
  await page.goto('/bench/keep/');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Download a backup' }).click(),
  ]);
  const backup = await bytesOf(download);
  await enter(page, 'Broken or lost', '9', 'piece');
  expect(await figures(page)).toEqual([again - 9, 2 * EACH, again - 9 - 2 * EACH]);
  await page.goto('/bench/keep/');
  await page.getByText('Restore', { exact: true }).first().click();
  await page.getByLabel('Backup file').setInputFiles({
    name: 'orders.sqlite',
    mimeType: 'application/vnd.sqlite3',
    buffer: backup,
  });
  await page.getByLabel('Replace the order book').check();
  await page.getByRole('button', { name: 'Restore' }).click();
  expect(await page.getByRole('status').innerText()).toContain('Restored');
  expect(await figures(page)).toEqual(last);
  expect(complaints).toEqual([]);
});

test('a count of another window is not overwritten, and what was typed stays', async () => {
  const { page, complaints } = await visit('/bench/stock/parts/jet-6/', {}, shop.base);
  const other = await page.context().newPage();
  const fill = async (at: Page, found: string): Promise<void> => {
    await at.getByLabel('What happened').selectOption({ label: 'Counted' });
    await at.getByLabel('How many').fill(found);
    await at.getByLabel('Note').fill('by lamplight');
  };
  await fill(page, '30');
  await other.goto('/bench/stock/parts/jet-6/');
  await fill(other, '31');
  await other.getByRole('button', { name: 'Enter it' }).click();
  await other.getByText('It is entered').waitFor();
  const [answer] = await Promise.all([
    page.waitForResponse((response) => response.request().method() === 'POST'),
    page.getByRole('button', { name: 'Enter it' }).click(),
  ]);
  expect(answer.status()).toBe(409);
  expect(await page.getByRole('alert').innerText()).toContain('Nothing more was entered');
  expect(await page.getByLabel('How many').inputValue()).toBe('30');
  expect(await page.getByLabel('Note').inputValue()).toBe('by lamplight');
  expect(await page.locator('.facts').innerText()).toContain('31 pieces');
  // The browser's own word of an answer that is no page as asked.
  expect(complaints.filter((one) => !one.includes('409'))).toEqual([]);
});

test('pages of stock keep within a phone, and axe finds nothing in them, filled in', async () => {
  const { page } = await visit('/bench/stock/', { viewport: { width: 360, height: 740 } }, shop.base);
  await bringIn(page, 'thing,amount\njet-6,3\nnothing,4\n');
  for (const at of ['', '/bench/stock/', HERE, '/bench/shopping/?of=open&marks=yes']) {
    if (at !== '') await page.goto(at);
    expect(await tooWide(page), at).toBeLessThanOrEqual(0);
    expect(await axeFindingsInBothSchemes(page), at).toEqual([]);
  }
});

test('without JavaScript it is entered all the same', async () => {
  const { page } = await visit('/bench/stock/wires/soft-19/', { javaScriptEnabled: false }, shop.base);
  await page.getByLabel('How much').fill('2');
  await page.locator('select[name=unit]').selectOption('spool');
  await page.getByRole('button', { name: 'Enter it' }).click();
  await page.getByText('It is entered').waitFor();
  // NIST SP 811: 30 ft are 9.144 m.
  expect(await page.locator('.facts').innerText()).toContain('18.29 m');
  // A piece that nobody ordered takes of it too.
  await page.goto(`/bench/pieces/${PIECE}/?size=165+mm`);
  await page.getByText('Strung without an order').click();
  await page.getByRole('button', { name: 'I have strung it' }).click();
  await page.getByText('What it took is out of the trays').waitFor();
  expect(new URL(page.url()).searchParams.get('size')).toBe('165 mm');
  await page.goto('/bench/stock/wires/soft-19/');
  const [newest] = await page.locator('tbody tr').allInnerTexts();
  expect(newest).toContain('Strung');
  expect(newest).toContain('1 × Weir Light');
});
