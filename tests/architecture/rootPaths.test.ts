import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/** A link, a picture, a form or a request to a path of the host: it would miss the folder that the shop stands in. */
const ROOT_PATH =
  /(?:\b(?:href|src|srcset|action|poster|data-[a-z-]+)=(?:["']|\{\s*["'`])|\b(?:fetch|redirect|import|register|URL)\(\s*["'`]|\blocation\s*[:=]\s*["'`])\/(?![/*])/g;

/** What a server answers with is a path of the shop; `seeOther` puts the folder before it. */
const WITHIN = new Set(['src/bench/changeOrder.ts']);

const found = (code: string): string[] => [...code.matchAll(ROOT_PATH)].map(([text]) => text);

describe('a path of the host written by hand', () => {
  it.each([
    '<a href="/find/">',
    '<img src={`/pictures/${name}`} />',
    "<form action={'/bench/in/'}>",
    "<p data-index='/pagefind/en'>",
    'await fetch(`/pieces/${id}.json`)',
    "new URL('/sitemap.xml', site)",
    "headers: { location: '/bench/' }",
  ])('is seen in %s', (code) => {
    expect(found(code)).toHaveLength(1);
  });

  it.each(["<a href={underBase('/find/')}>", '<a href="#end">', '<a href="//x">', "seeOther('/bench/')"])(
    'is not seen in %s',
    (code) => {
      expect(found(code)).toEqual([]);
    },
  );

  it('stands nowhere in what makes pages: src/ui/site/base.ts knows the folder', () => {
    const files = globSync('src/{ui,bench,pages,sizer}/**/*.{ts,tsx,astro,js}').filter(
      (file) => !WITHIN.has(file),
    );
    expect(files.length).toBeGreaterThan(100);
    expect(
      files.flatMap((file) => found(readFileSync(file, 'utf8')).map((text) => `${file}: ${text}`)),
    ).toEqual([]);
  });
});
