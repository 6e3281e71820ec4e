/** The Firefox that is installed on the machine, if there is one, spoken to by WebDriver BiDi. No package brings it along. */
import { existsSync } from 'node:fs';
import { launch, type Browser, type Page } from 'puppeteer-core';

const SYSTEM_PATHS = [
  '/usr/bin/firefox-esr',
  '/usr/bin/firefox',
  '/Applications/Firefox.app/Contents/MacOS/firefox',
];

/** Where Firefox lies; undefined where it isn't installed. `CLASPWISE_FIREFOX` names another. */
export const firefoxPath = process.env.CLASPWISE_FIREFOX ?? SYSTEM_PATHS.find((path) => existsSync(path));

/** Launches it without a window; the caller closes it. */
export const launchFirefox = (executablePath: string): Promise<Browser> =>
  launch({ browser: 'firefox', executablePath, headless: true, defaultViewport: null });

/** Gives the page's window a size, CSS pixels. */
export async function resize(page: Page, width: number, height: number): Promise<void> {
  // The driver turns the screen as well, which Firefox ESR 140 can't do; the size is set all the same.
  await page.setViewport({ width, height }).catch((error: unknown) => {
    if (!String(error).includes('unknown command')) throw error;
  });
  await page.waitForFunction((wanted) => window.innerWidth === wanted, {}, width);
}
