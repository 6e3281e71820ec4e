/** Guides made into HTML. */
import { satteri } from '@astrojs/markdown-satteri';
import type { Guide } from '../model/catalogue.ts';
import type { GuidePage } from '../model/storedCatalogue.ts';

/** The guides hold no code, and a highlighter's inline styles would break the pages' policy. */
const OPTIONS = { syntaxHighlight: false } as const;

/** Each guide with its HTML. What a guide may hold has been checked before. */
export async function guidePages(guides: readonly Guide[]): Promise<readonly GuidePage[]> {
  const renderer = await satteri().createRenderer(OPTIONS);
  return Promise.all(
    guides.map(async (guide) => ({ ...guide, html: (await renderer.render(guide.body, {})).code })),
  );
}
