/** All of a page at once. */
import type { Page } from 'playwright-core';

/** Lays out what a page leaves until it comes near: what isn't laid out can't be judged. */
export const layOutAll = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const block of document.querySelectorAll<HTMLElement>('.block, .foot')) {
      block.style.contentVisibility = 'visible';
    }
  });
