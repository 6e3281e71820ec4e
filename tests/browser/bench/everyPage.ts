/** What holds for every page of the bench, each loaded once. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startShop, type RunningShop } from '#tests/support/shop.ts';
import { axeFindingsInBothSchemes } from '../axe.ts';
import { newPage, tooWide, type Watched } from '../shop.ts';
import { sendOrder } from './order.ts';
import { addressOf } from './pages.ts';

/** The spacing that a reader may set for herself: the values that WCAG 2.2, 1.4.12 names. */
const SPACING = `* {
  line-height: 1.5 !important;
  letter-spacing: 0.12em !important;
  word-spacing: 0.16em !important;
}
p { margin-block-end: 2em !important; }`;

/** @param paths of `pages.ts` */
export function holdsForEvery(paths: readonly string[]): void {
  let shop: RunningShop;
  let number: string;
  let watched: Watched;
  beforeAll(async () => {
    shop = await startShop({ CLASPWISE_DESK_PER_MINUTE: '0' });
    number = await sendOrder(shop.base, 'weir-light');
    watched = await newPage({}, shop.base);
  });
  afterAll(async () => {
    await watched.page.context().close();
    await shop.stop();
  });

  describe.each(paths)('%s', (path) => {
    beforeAll(async () => {
      watched.complaints.length = 0;
      await watched.page.setViewportSize({ width: 320, height: 700 });
      await watched.page.goto(addressOf(path, number));
    });

    test('is silent, needs no other host, and fits a narrow phone', async () => {
      const { page, complaints } = watched;
      await page.setViewportSize({ width: 320, height: 700 });
      expect(await tooWide(page)).toBeLessThanOrEqual(0);
      expect(await page.locator('h1').count()).toBe(1);
      expect(complaints).toEqual([]);
    });

    test('loses nothing with a reader’s own text spacing, and doesn’t scroll sideways', async () => {
      const { page } = watched;
      await page.setViewportSize({ width: 320, height: 700 });
      await space(page, SPACING);
      const letters = await page
        .locator('h1')
        .evaluate((h1) => Number.parseFloat(getComputedStyle(h1).letterSpacing));
      expect(letters).toBeGreaterThan(1);
      expect(await tooWide(page)).toBeLessThanOrEqual(0);
      expect(await cutOff(page)).toEqual([]);
      await space(page, '');
    });

    test('has nothing for axe to find, light and dark', async () => {
      await watched.page.setViewportSize({ width: 1280, height: 720 });
      expect(await axeFindingsInBothSchemes(watched.page)).toEqual([]);
    });
  });
}

/** By a sheet that is made in the page: its policy lets no other in, and has no word in what a reader sets. */
function space(page: Page, css: string): Promise<void> {
  return page.evaluate((text) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(text);
    document.adoptedStyleSheets = [sheet];
  }, css);
}

/** What is cut off: text that its own box hides, and anything beyond the window's sides that can't be scrolled to. */
function cutOff(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const SLACK_PX = 1;
    const name = (element: Element): string =>
      `${element.localName}.${element.className}: ${(element.textContent ?? '').trim().slice(0, 40)}`;
    const scrolls = (element: Element | null): boolean =>
      element !== null &&
      (/auto|scroll/.test(getComputedStyle(element).overflowX) || scrolls(element.parentElement));
    return [...document.body.querySelectorAll('*')].flatMap((element) => {
      if (!element.checkVisibility() || element.closest('svg, option') !== null) return [];
      const style = getComputedStyle(element);
      // Words for screen readers alone are a point in size on purpose.
      if (style.position === 'absolute' && element.clientWidth <= 1) return [];
      // A field of one line clips what is longer and scrolls it along with the caret.
      const hides = element.localName !== 'input' && /hidden|clip/.test(style.overflowX + style.overflowY);
      const overflows =
        element.scrollHeight > element.clientHeight + SLACK_PX ||
        element.scrollWidth > element.clientWidth + SLACK_PX;
      if (hides && overflows) return [`hides its text: ${name(element)}`];
      const { left, right, width } = element.getBoundingClientRect();
      // What stands left of the window as a whole waits there for the keyboard.
      const beyond = (left < -SLACK_PX && right > 0) || right > window.innerWidth + SLACK_PX;
      return width > 0 && beyond && !scrolls(element.parentElement)
        ? [`beyond the window: ${name(element)}`]
        : [];
    });
  });
}
