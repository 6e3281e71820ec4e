/** From a finished piece to a bench card, as buyer and maker go it, against the built shop. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFinished, test } from 'vitest';
import { startStaticHost, type StaticHost } from '#tests/support/staticHost.ts';
import { axeFindings, axeFindingsInBothSchemes } from '../axe.ts';
import { browser, bytesOf, shop } from '../shop.ts';
import { fillIn, giveSize, order, shownFigures, standing, type Wish } from './buyer.ts';

const client = new URL('../../../dist/client/', import.meta.url).pathname;

const focalBracelet: Wish = {
  field: 'Round your wrist',
  size: '165 mm',
  sit: 'Easy',
  hand: 'Left hand',
  name: 'Ada Fenwick',
  email: 'ada@example.org',
  note: 'For the ninth of May.',
  to: {
    'For whom, if not for you': 'Solveig Fenwick',
    'Street and number': 'Reepschlägergasse 7',
    Town: 'Stapelmünde',
    Postcode: '24999',
    Country: 'Germany',
  },
};
const pendantNecklace: Wish = {
  field: 'Finished length, clasp included',
  size: '17½ in',
  hand: 'Right hand',
  name: 'Jonas Pell',
  email: 'jonas@example.org',
  note: '',
  to: null,
};

const GOES_TO = 'Solveig Fenwick, Reepschlägergasse 7, 24999 Stapelmünde, Germany';

let host: StaticHost;
let said: string[];

beforeAll(async () => {
  host = await startStaticHost(client);
});
afterAll(() => host.stop());

async function newPage(expected: RegExp | null = null): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  onTestFinished(() => context.close());
  said = [];
  const page = await context.newPage();
  const note = (text: string): void => void (expected?.test(text) === true || said.push(text));
  page.on('console', (message) => note(`${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => note(String(error)));
  return page;
}

/** The value that stands beside a name on a page of terms. */
const term = (page: Page, name: string) =>
  page
    .locator('dt', { hasText: new RegExp(`^${name}$`) })
    .locator('xpath=following-sibling::dd[1]')
    .first();

async function seeAtBench(page: Page, number: string): Promise<void> {
  await page.setViewportSize({ width: 1280, height: 900 });
  await page.goto(`${shop}/bench/`);
  await page.getByRole('link', { name: number }).click();
  await page.getByRole('heading', { level: 1, name: `Order ${number}` }).waitFor();
}

/** Where a piece stands in the list, however many pages the list has. */
async function addressOf(page: Page, piece: string): Promise<string> {
  for (;;) {
    const link = page.getByRole('link', { name: piece }).first();
    if ((await link.count()) > 0) return new URL((await link.getAttribute('href')) ?? '', page.url()).href;
    const next = (await page.locator('a[rel=next]').getAttribute('href')) ?? '';
    await page.goto(new URL(next, page.url()).href);
  }
}

/** Sections of the card, clasp to ring. */
const strung = (page: Page) => page.getByRole('list', { name: 'Stringing order, clasp first' });

test('a focal bracelet for a wrist of 165 mm, easy, worked by the left hand', async () => {
  const page = await newPage();
  await page.goto(`${shop}/`);
  await page.getByRole('link', { name: 'See every piece' }).click();
  await page.goto(await addressOf(page, 'Banked Fire'));
  await giveSize(page, focalBracelet);
  const figures = await shownFigures(page);
  await fillIn(page, focalBracelet);
  expect(await axeFindings(page, '.sizer-ordering')).toEqual([]);
  await page.getByText('Postage, Germany: £8.20. Together £').waitFor();
  await page.getByRole('button', { name: 'Send the order' }).click();
  await expect.poll(async () => (await standing(page)).text).toContain('The maker has it');
  const { number } = await standing(page);

  await page.getByRole('link', { name: 'Slip to keep' }).click();
  await page.getByRole('heading', { name: `Order ${number}` }).waitFor();
  expect(await term(page, 'Finished length').textContent()).toBe(figures['Finished length']);
  expect(await term(page, 'Posted to').textContent()).toBe(GOES_TO);

  await seeAtBench(page, number);
  expect(await term(page, 'Posted to').textContent()).toBe(GOES_TO);
  expect(await term(page, 'Postage').textContent()).toBe('£8.20');
  expect(await page.getByText('Checked: all figures are those that the buyer saw.').isVisible()).toBe(true);
  await page.getByRole('link', { name: 'Address label' }).click();
  await page.getByText('24999 Stapelmünde').waitFor();
  expect(await axeFindingsInBothSchemes(page)).toEqual([]);
  await page.goBack();
  await page.getByRole('link', { name: 'Bench card' }).click();
  // Left-handed: the board shows the piece as on another person, so the clasp lies on its right.
  expect(await term(page, 'Hand').textContent()).toContain('right');
  const rows = await strung(page).getByRole('listitem').allTextContents();
  expect(rows.findIndex((row) => row.includes('lobster'))).toBeLessThan(
    rows.findIndex((row) => row.includes('Ember')),
  );
  expect(rows.findIndex((row) => row.includes('Ember'))).toBeLessThan(
    rows.findIndex((row) => row.includes('ring')),
  );
  for (const name of ['Wire', 'Cut']) {
    expect(await term(page, name).textContent()).toMatch(/\d/);
  }
  for (const name of ['Slack', 'Crimp', 'Cover']) {
    expect(await term(page, name).textContent()).not.toBe('');
  }
  expect(await page.getByRole('checkbox', { name: /both wires lie side by side/ }).count()).toBe(2);
  const pdf = await page.pdf({ preferCSSPageSize: true });
  // The list on one sheet, the steps on a second where need be.
  const sheets = pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g)?.length;
  expect([1, 2]).toContain(sheets);
  expect(said).toEqual([]);
});

test('a pendant necklace at 17½ in, worked by the right hand', async () => {
  const page = await newPage();
  await page.goto(`${shop}/pieces/loom-shuttle/`);
  await giveSize(page, pendantNecklace);
  const figures = await shownFigures(page);
  await order(page, pendantNecklace);
  await expect.poll(async () => (await standing(page)).text).toContain('The maker has it');
  const { number } = await standing(page);
  await seeAtBench(page, number);
  expect(await term(page, 'Size').textContent()).toBe('17½ in finished length');
  expect(await term(page, 'Delivery').textContent()).toBe('collected');
  // He has written since that it may as well be posted.
  await page.getByText('Write down where it goes', { exact: true }).click();
  for (const [label, text] of [
    ['Street and number', '7 Ropewalk'],
    ['Town', 'Tenterholm'],
    ['Postcode', 'TH0 4ZZ'],
  ] as const) {
    await page.getByLabel(label, { exact: true }).fill(text);
  }
  await page.getByLabel('Country', { exact: true }).selectOption({ label: 'United Kingdom' });
  await page.getByRole('button', { name: 'It goes there' }).click();
  await page.getByText('Wrote down where it goes').waitFor();
  expect(await term(page, 'Posted to').textContent()).toBe(
    'Jonas Pell, 7 Ropewalk, Tenterholm, TH0 4ZZ, United Kingdom',
  );
  expect(await term(page, 'Finished length').textContent()).toBe(figures['Finished length']);
  await page.getByRole('link', { name: 'Bench card' }).click();
  expect(await term(page, 'Hand').textContent()).toContain('left');
  expect(await page.getByRole('article').textContent()).toMatch(/[Pp]endant/);
  expect(said).toEqual([]);
});

test('a static host with no bench behind it: the same order by e-mail, pasted at the bench', async () => {
  const page = await newPage(/Failed to load resource.*(404|405)/);
  await page.goto(`${host.base}/pieces/banked-fire/`);
  await giveSize(page, focalBracelet);
  const figures = await shownFigures(page);
  await order(page, focalBracelet);
  const link = page.getByRole('link', { name: 'Open as an e-mail' });
  await link.waitFor();
  await expect.poll(async () => (await standing(page)).text).toContain('Ready to go by e-mail');
  const { number } = await standing(page);
  const mail = new URL((await link.getAttribute('href')) ?? '');
  expect(mail.protocol).toBe('mailto:');
  const written = new URLSearchParams(mail.search);
  const body = written.get('body') ?? '';
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.getByRole('button', { name: 'Copy the e-mail’s text' }).click();
  await page.getByText('Copied.').waitFor();
  const lines = (text: string | null): string => (text ?? '').replaceAll('\r\n', '\n');
  const copied = lines(await page.evaluate(() => navigator.clipboard.readText()));
  expect(copied).toBe(`${written.get('subject')}\n\n${lines(body)}`);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download the order' }).click(),
  ]);
  const file = await bytesOf(download);

  await page.goto(`${shop}/bench/in/`);
  // As a mail program answers: quoted, and broken at 72 characters.
  const quoted = body.replace(/(.{72})/g, '$1\n').replace(/^/gm, '> ');
  await page.getByLabel('E-mail, link or order').fill(quoted);
  await page.getByRole('button', { name: 'Take in' }).click();
  await page.getByText(number).first().waitFor();
  await seeAtBench(page, number);
  expect(await term(page, 'Finished length').textContent()).toBeTruthy();
  expect(await page.getByText('Checked: all figures are those that the buyer saw.').isVisible()).toBe(true);
  expect(figures['Finished length']).toMatch(/\d/);

  await page.goto(`${shop}/bench/in/`);
  await page.getByLabel(/Or files/).setInputFiles({
    name: 'order.json',
    mimeType: 'application/json',
    buffer: file,
  });
  await page.getByRole('button', { name: 'Take in' }).click();
  await page
    .getByText(/already|before|twice/i)
    .first()
    .waitFor();
  expect(said).toEqual([]);
});

/** The page as the build writes it where `orders.form` names a service: its road, and the policy that lets it go there. */
async function withForm(page: Page, path: string, form: string): Promise<void> {
  await page.route(`**${path}`, async (route) => {
    const response = await route.fetch();
    const body = (await response.text())
      .replace('"kind":"desk","address":"/desk/orders"', `"kind":"form","address":"${form}"`)
      .replace(/connect-src 'self'/, `connect-src 'self' ${new URL(form).origin}`);
    expect(body).toContain(form);
    await route.fulfill({ response, body });
  });
}

test('a form service in the desk’s place: told before, handed over, and the same order at the bench', async () => {
  const page = await newPage();
  const form = 'https://forms.example/ninepin';
  await withForm(page, '/pieces/banked-fire/', form);
  let posted = '';
  await page.route(form, async (route) => {
    posted = route.request().postData() ?? '';
    await route.fulfill({ status: 200, json: { ok: true }, headers: { 'access-control-allow-origin': '*' } });
  });
  await page.goto(`${host.base}/pieces/banked-fire/`);
  await giveSize(page, focalBracelet);
  await fillIn(page, focalBracelet);
  await page.getByText(/by way of the form service forms\.example/).waitFor();
  await page.getByRole('button', { name: 'Send the order' }).click();
  await expect.poll(async () => (await standing(page)).text).toContain('Handed to the shop’s form service');
  const { number } = await standing(page);
  const fields = new URLSearchParams(posted);
  expect(fields.get('email')).toBe(focalBracelet.email);
  expect(fields.get('subject')).toContain(number);

  await page.goto(`${shop}/bench/in/`);
  await page.getByLabel('E-mail, link or order').fill(fields.get('order') ?? '');
  await page.getByRole('button', { name: 'Take in' }).click();
  await page.getByText(`${number} from`).waitFor();
  await seeAtBench(page, number);
  expect(await page.getByText('Checked: all figures are those that the buyer saw.').isVisible()).toBe(true);
  expect(said).toEqual([]);
});
