/** Once for all browser tests: one Chromium, and one shop with an order book of its own. */
import type { TestProject } from 'vitest/node';
import { launchChromium } from '../support/chromium.ts';
import { startShop } from '../support/shop.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where Playwright connects to the Chromium of this run. */
    readonly chromium: string;
    /** Address of the shop, no slash at the end. */
    readonly shop: string;
  }
}

export default async function once({ provide }: TestProject): Promise<() => Promise<void>> {
  const [chromium, shop] = await Promise.all([launchChromium(), startShop()]);
  provide('chromium', chromium.wsEndpoint());
  provide('shop', shop.base);
  return async () => {
    await Promise.all([chromium.close(), shop.stop()]);
  };
}
