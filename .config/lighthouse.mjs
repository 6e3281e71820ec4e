/**
 * `npm run lighthouse`: the built shop's kinds of page on Lighthouse's phone
 * profile, one table. Not a test: scores of speed depend on the machine.
 */
import { launch } from 'chrome-launcher';
import lighthouse from 'lighthouse';
import { findChromium } from '../tests/support/chromium.ts';
import { startShop } from '../tests/support/shop.ts';

const PAGES = ['/', '/pieces/', '/pieces/banked-fire/', '/guides/measuring/'];
const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-sync',
];

const shop = await startShop();
const { executablePath, env } = await findChromium();
const chrome = await launch({ chromePath: executablePath, chromeFlags: FLAGS, envVars: env });
const rows = {};
for (const page of PAGES) {
  const { lhr } = await lighthouse(shop.base + page, { port: chrome.port, logLevel: 'error' });
  const scores = Object.values(lhr.categories).map(({ title, score }) => [
    title,
    Math.round((score ?? 0) * 100),
  ]);
  const failed = Object.values(lhr.audits).filter(
    ({ score, scoreDisplayMode }) => score !== null && score < 0.9 && scoreDisplayMode !== 'informative',
  );
  rows[page] = {
    ...Object.fromEntries(scores),
    'first paint': lhr.audits['first-contentful-paint'].displayValue,
    'largest paint': lhr.audits['largest-contentful-paint'].displayValue,
    shift: lhr.audits['cumulative-layout-shift'].displayValue,
    bytes: lhr.audits['total-byte-weight'].displayValue,
    below: failed.map(({ id }) => id).join(' '),
  };
}
console.table(rows);
chrome.kill();
await shop.stop();
