/** axe finds nothing on any kind of public page, light and dark. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { KINDS, openShop, visit, type Shop } from './shop.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
/** WCAG 2.2 to level AA, and what axe counts as good practice. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

type Axe = {
  readonly run: (
    context: unknown,
    options: unknown,
  ) => Promise<{ violations: { id: string; nodes: { html: string; failureSummary?: string }[] }[] }>;
};

async function findings(page: Page): Promise<string[]> {
  return page.evaluate(async (tags) => {
    const { violations } = await (window as unknown as { axe: Axe }).axe.run(document, {
      runOnly: { type: 'tag', values: tags },
    });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary ?? ''}`),
    );
  }, TAGS);
}

let shop: Shop;
beforeAll(async () => {
  shop = await openShop();
});
afterAll(() => shop.close());

test.each(KINDS)('%s, light and dark', async (_, path) => {
  // The page's own policy forbids foreign code; the test's is let in past it.
  const { page } = await visit(shop, path, { bypassCSP: true, reducedMotion: 'reduce' });
  await page.evaluate(axe);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await findings(page), colorScheme).toEqual([]);
  }
  await page.context().close();
});
