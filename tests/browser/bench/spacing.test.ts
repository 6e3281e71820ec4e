/** The bench with the text spacing that a reader may set for herself (WCAG 2.2, 1.4.12), on a narrow phone. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startShop, type RunningShop } from '#tests/support/shop.ts';
import { newPage, tooWide } from '../shop.ts';
import { sendOrder } from './order.ts';
import { addressOf, PAGES } from './pages.ts';

/** The values that the criterion names. */
const SPACING = `* {
  line-height: 1.5 !important;
  letter-spacing: 0.12em !important;
  word-spacing: 0.16em !important;
}
p { margin-block-end: 2em !important; }`;

let shop: RunningShop;
let number: string;
beforeAll(async () => {
  shop = await startShop({ CLASPWISE_DESK_PER_MINUTE: '0' });
  number = await sendOrder(shop.base, 'weir-light');
});
afterAll(() => shop.stop());

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

test('loses nothing, and no page scrolls sideways', async () => {
  // The bench's policy lets no other style in; a reader's own settings don't ask it.
  const { page } = await newPage({ bypassCSP: true, viewport: { width: 320, height: 700 } }, shop.base);
  const found: Record<string, unknown> = {};
  for (const path of PAGES) {
    const response = await page.goto(addressOf(path, number));
    expect([path, response?.status()]).toEqual([path, 200]);
    await page.addStyleTag({ content: SPACING });
    const letters = await page.locator('h1').evaluate((h1) => parseFloat(getComputedStyle(h1).letterSpacing));
    expect(letters, path).toBeGreaterThan(1);
    const wide = Math.max(0, await tooWide(page));
    const lost = await cutOff(page);
    if (wide > 0 || lost.length > 0) found[path] = { wide, lost };
  }
  await page.context().close();
  expect(found).toEqual({});
});
