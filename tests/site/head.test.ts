import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import {
  attributes,
  catalogue,
  fileAt,
  fileOf,
  files,
  onHost,
  pageAt,
  pages,
  SITE,
  unescaped,
  type Page,
} from './built.ts';

const shop = pages.filter(({ path }) => path !== '/404.html' && !/^(\/de)?\/slip\//.test(path));
const isGerman = ({ path }: Page): boolean => path.startsWith('/de/');

const titleOf = ({ html }: Page): string => /<title>([^<]*)<\/title>/.exec(html)?.[1] ?? '';

const descriptionOf = ({ html }: Page): string =>
  /<meta name="description" content="([^"]+)"/.exec(html)?.[1] ?? '';

/** What a page's Open Graph property says; undefined where it isn't there. */
const graph = ({ html }: Page, property: string): string | undefined => {
  const found = new RegExp(`<meta property="${property}" content="([^"]*)"`).exec(html)?.[1];
  return found === undefined ? undefined : unescaped(found);
};

/** What two pages of a language have in common, though each should have its own. */
function twice(say: (page: Page) => string): string[] {
  const said = shop.map((page) => `${isGerman(page) ? 'de' : 'en'} ${say(page)}`);
  return said.filter((one, index) => said.indexOf(one) !== index);
}

function linksOf(html: string, rel: string): { lang: string | undefined; href: string }[] {
  return (html.match(/<link\b[^>]*>/g) ?? [])
    .filter((tag) => tag.includes(`rel="${rel}"`))
    .map((tag) => ({
      lang: attributes(tag, 'link', 'hreflang')[0],
      href: attributes(tag, 'link', 'href')[0] ?? '',
    }));
}

describe('the head of every page', () => {
  test.each(shop.map((page) => [page.address, page] as const))('%s', (address, page) => {
    const { html } = page;
    expect(html.startsWith('<!DOCTYPE html>')).toBe(true);
    expect(attributes(html, 'html', 'lang')).toEqual([isGerman(page) ? 'de' : 'en']);
    expect(html.match(/<h1\b/g)).toHaveLength(1);
    expect(html.match(/<main\b/g)).toHaveLength(1);
    expect(titleOf(page).length).toBeGreaterThan(10);
    expect(descriptionOf(page).length).toBeGreaterThan(10);
    expect(linksOf(html, 'canonical').map(({ href }) => href)).toEqual([`${SITE}${address}`]);
  });

  test('no two pages of a language have the same title, or the same description', () => {
    expect(twice(titleOf)).toEqual([]);
    expect(twice(descriptionOf)).toEqual([]);
  });

  test('every page has a share picture by its whole address, with its size and what it shows', async () => {
    const pictures = new Set<string>();
    for (const page of pages) {
      const address = graph(page, 'og:image') ?? '';
      expect(address.startsWith(SITE + onHost('/pictures/')), page.address).toBe(true);
      expect(address, page.address).toMatch(/[\w-]+\.jpeg$/);
      expect(graph(page, 'og:image:width'), page.address).toBe('1200');
      expect(graph(page, 'og:image:height'), page.address).toBe('630');
      expect(graph(page, 'og:image:alt')?.length, page.address).toBeGreaterThan(5);
      pictures.add(address.slice(SITE.length));
    }
    // One a piece at least, and the shop's own.
    expect(pictures.size).toBeGreaterThan(catalogue.pieces.length);
    for (const picture of pictures) {
      expect(files).toContain(picture);
      expect(await sharp(fileAt(picture)).metadata()).toMatchObject({ width: 1200, height: 630 });
    }
  });

  test('a page that is not found has no address of its own to name', () => {
    const lost = pageAt(onHost('/404.html'));
    expect(lost?.html).toContain('<h1');
    expect(linksOf(lost?.html ?? '', 'canonical')).toEqual([]);
    expect(lost && graph(lost, 'og:url')).toBeUndefined();
  });

  test('scripts and styles stand in head or body, and nothing after them', () => {
    for (const { address, html } of pages) {
      expect(html.trimEnd().endsWith('</body></html>'), address).toBe(true);
      expect(html.match(/<\/(head|body|html)>/g), address).toEqual(['</head>', '</body>', '</html>']);
      expect(html, address).toMatch(/<\/head>\s*<body\b/);
    }
  });

  test('each language names the other, and the other names it', () => {
    for (const { address, html } of shop) {
      const links = linksOf(html, 'alternate').filter(({ lang }) => lang !== undefined);
      expect(links.map(({ lang }) => lang).sort(), address).toEqual(['de', 'en', 'x-default']);
      for (const { href } of links) {
        const path = href.slice(SITE.length);
        expect(fileOf(path), href).not.toBeNull();
        expect(pageAt(path)?.html.includes(`href="${SITE}${address}"`), href).toBe(true);
      }
    }
  });

  test('headings go down one step at a time', () => {
    for (const { address, html } of shop) {
      const levels = [...html.matchAll(/<h([1-6])\b/g)].map(([, level]) => Number(level));
      const jumps = levels.filter((level, index) => index > 0 && level > (levels[index - 1] ?? 0) + 1);
      expect(jumps, address).toEqual([]);
    }
  });

  test('every picture has its size and says what it shows, or that it only decorates', () => {
    for (const { address, html } of shop) {
      for (const tag of html.match(/<img\b[^>]*>/g) ?? []) {
        expect(tag, address).toMatch(/\salt(="|\s|>)/);
        expect(tag, address).toMatch(/\swidth="\d+"/);
        expect(tag, address).toMatch(/\sheight="\d+"/);
      }
    }
  });
});
