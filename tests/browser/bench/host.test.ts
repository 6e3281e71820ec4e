/** The shop on a host elsewhere, from the bench, as she brings it there. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { filesBelow } from '#release/files.ts';
import { ownPlace, type Place } from '#tests/support/publishing.ts';
import { sshdPath, startSftpHost, type SftpHost } from '#tests/support/sftpHost.ts';
import { startShop, type RunningShop } from '#tests/support/shop.ts';
import { axeFindingsInBothSchemes } from '../axe.ts';
import { bytesOf, tooWide, visit } from '../shop.ts';

vi.setConfig({ testTimeout: 240_000 });

const PAGE = '/bench/publish/host/';
const WAIT_MS = 120_000;

let place: Place;
let shop: RunningShop;
beforeAll(async () => {
  place = ownPlace();
  shop = await startShop({ ...place.env, CLASPWISE_HOSTING: join(place.folder, 'hosting') });
});
afterAll(async () => {
  await shop.stop();
  place.remove();
});

const kept = (): string => readFileSync(join(place.folder, 'hosting/host.json'), 'utf8');

test('settings are asked for, checked, kept, and the secret is on no page', async () => {
  const { page, complaints } = await visit(PAGE, { viewport: { width: 360, height: 740 } }, shop.base);
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  expect(await axeFindingsInBothSchemes(page)).toEqual([]);
  await page.getByLabel('Host', { exact: true }).fill('https://example.org/');
  await page.getByLabel('Name of the account').fill('maker');
  await page.getByLabel('Folder of the website').fill('public_html');
  await page.getByLabel('Password', { exact: true }).fill('four quite plain words');
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByRole('alert').waitFor();
  expect(await page.getByRole('alert').innerText()).toContain('no https://');
  expect(existsSync(join(place.folder, 'hosting/host.json'))).toBe(false);
  expect(await page.getByLabel('Name of the account').inputValue()).toBe('maker');
  expect(await page.content()).not.toContain('four quite plain words');
  await page.getByLabel('Host', { exact: true }).fill('sftp.example.org');
  await page.getByLabel('Password', { exact: true }).fill('four quite plain words');
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByText('Saved.').waitFor();
  expect(kept()).toContain('four quite plain words');
  expect(await page.content()).not.toContain('four quite plain words');
  expect(await axeFindingsInBothSchemes(page)).toEqual([]);

  // Another window that saw the page before this one saved.
  const { page: other } = await visit(PAGE, { javaScriptEnabled: false }, shop.base);
  await page.getByText('Change the settings').click();
  await page.getByLabel('Folder of the website').fill('www');
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByText('Saved.').waitFor();
  await other.getByText('Change the settings').click();
  await other.getByLabel('Folder of the website').fill('htdocs');
  const [answer] = await Promise.all([
    other.waitForResponse((one) => one.request().method() === 'POST'),
    other.getByRole('button', { name: 'Save' }).click(),
  ]);
  expect(answer.status()).toBe(409);
  expect(await other.getByLabel('Folder of the website').inputValue()).toBe('htdocs');
  expect(kept()).toContain('"folder":"www"');

  await page.getByLabel('Delete host, name and password or key here').check();
  await page.getByRole('button', { name: 'Take away' }).click();
  await page.getByText('Taken away.').waitFor();
  expect(existsSync(join(place.folder, 'hosting/host.json'))).toBe(false);
  expect(complaints.filter((one) => !one.includes('422') && !one.includes('409'))).toEqual([]);
});

test('the zip comes whole, as a file to keep', async () => {
  const { page } = await visit(PAGE, {}, shop.base);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Download the shop as a zip file' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^shop-\d{4}-\d\d-\d\d\.zip$/);
  const bytes = await bytesOf(download);
  // APPNOTE.TXT 6.3.10, 4.3.16: the number of entries stands in the record at the end.
  const end = bytes.lastIndexOf(Buffer.from([0x50, 0x4b, 5, 6]));
  const release = readFileSync(join(place.releases, 'current'), 'utf8').trim();
  expect(bytes.readUInt16LE(end + 10)).toBe(filesBelow(join(place.releases, release, 'client')).length);
});

describe.skipIf(sshdPath === undefined)('by SFTP (left out where OpenSSH’s server isn’t installed)', () => {
  let host: SftpHost;
  beforeAll(async () => {
    host = await startSftpHost(sshdPath ?? '');
  });
  afterAll(() => host.stop());

  test('the host is confirmed by its fingerprint, its folder by what lies in it; then it is sent, without JavaScript too', async () => {
    writeFileSync(join(host.folder, 'family.html'), 'ours since 1999');
    const { page, complaints } = await visit(PAGE, { viewport: { width: 360, height: 740 } }, shop.base);
    await page.getByLabel('Host', { exact: true }).fill('127.0.0.1');
    await page.getByLabel('Port').fill(String(host.port));
    await page.getByLabel('Name of the account').fill(host.user);
    await page.getByLabel('Folder of the website').fill(host.folder);
    await page.getByText('Or a private key').click();
    await page.getByLabel('Or its file').setInputFiles({
      name: 'id_ed25519',
      mimeType: 'application/octet-stream',
      buffer: Buffer.from(host.key),
    });
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('Saved.').waitFor();
    await page.getByRole('button', { name: 'Send now' }).click();
    await page.getByText('for the first time').waitFor({ timeout: WAIT_MS });
    expect(await page.locator('main').innerText()).toContain(host.fingerprint);
    expect(await tooWide(page)).toBeLessThanOrEqual(0);
    expect(await axeFindingsInBothSchemes(page)).toEqual([]);
    await page.getByLabel('It is the one that my host told me of').check();
    await page.getByRole('button', { name: 'That is my host: send' }).click();
    await page.getByText('did not come from here').waitFor({ timeout: WAIT_MS });
    expect(await page.locator('main').innerText()).toContain('family.html');
    expect(await axeFindingsInBothSchemes(page)).toEqual([]);
    expect(complaints).toEqual([]);

    const { page: plain } = await visit(PAGE, { javaScriptEnabled: false }, shop.base);
    await plain.getByLabel('It is the right folder').check();
    await plain.getByRole('button', { name: 'Send into this folder' }).click();
    await plain.getByText('All there').waitFor({ timeout: WAIT_MS });
    const release = readFileSync(join(place.releases, 'current'), 'utf8').trim();
    const client = join(place.releases, release, 'client');
    const files = filesBelow(client);
    expect(files.length).toBeGreaterThan(100);
    const unlike = files.filter(
      (file) => !readFileSync(join(client, file)).equals(readFileSync(join(host.folder, file))),
    );
    expect(unlike).toEqual([]);
    expect(readFileSync(join(host.folder, 'family.html'), 'utf8')).toBe('ours since 1999');

    await host.restart({ newKey: true });
    await plain.getByRole('button', { name: 'Send now' }).click();
    await plain.getByText('another fingerprint').waitFor({ timeout: WAIT_MS });
    expect(await plain.locator('main').innerText()).toContain(host.fingerprint);
  });
});
