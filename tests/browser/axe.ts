/** What axe finds on a page. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { layOutAll } from './layOutAll.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** WCAG 2.2 to level AA, and what axe counts as good practice. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** Those of the rules that look at colours. */
const OF_COLOURS = ['color-contrast', 'link-in-text-block'];

type Only = { readonly type: 'tag' | 'rule'; readonly values: readonly string[] };

type Axe = {
  readonly run: (
    context: unknown,
    options: unknown,
  ) => Promise<{ violations: { id: string; nodes: { html: string; failureSummary?: string }[] }[] }>;
};

/** Violations within what a selector finds, in the colours that stand. */
export const axeFindings = (page: Page, within = 'html'): Promise<string[]> =>
  findings(page, within, { type: 'tag', values: TAGS });

async function findings(page: Page, within: string, only: Only): Promise<string[]> {
  // The policy of the page lets no script in from a test, so it goes in by the debugger's own way.
  await layOutAll(page);
  await page.evaluate(`window.axe === undefined && (() => { ${AXE} })()`);
  return page.evaluate(
    async ([selector, runOnly]) => {
      const { violations } = await (window as unknown as { axe: Axe }).axe.run(selector, {
        runOnly,
        // What passes is only counted, and the rules that look into style sheets' text aren't among these.
        resultTypes: ['violations'],
        preload: false,
      });
      return violations.flatMap(({ id, nodes }) =>
        nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary ?? ''}`),
      );
    },
    [within, only] as const,
  );
}

/** The same in light, and in dark what depends on colours: nothing but these differs. Each finding after its scheme. */
export async function axeFindingsInBothSchemes(page: Page): Promise<string[]> {
  // Text may be there before the style that gives things their place.
  await page.waitForLoadState('load');
  const found: string[] = [];
  for (const [colorScheme, only] of [
    ['light', { type: 'tag', values: TAGS }],
    ['dark', { type: 'rule', values: OF_COLOURS }],
  ] as const) {
    // Without motion, so that no colour is met halfway to another.
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    found.push(...(await findings(page, 'html', only)).map((one) => `${colorScheme}: ${one}`));
  }
  await page.emulateMedia({ colorScheme: null, reducedMotion: null });
  return found;
}
