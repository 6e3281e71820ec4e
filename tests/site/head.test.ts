import { describe, expect, test } from 'vitest';
import { attributes, fileOf, pageAt, pages, type Page } from './built.ts';

const SITE = 'https://ninepin.example';
const shop = pages.filter(({ file }) => file !== '/404.html' && !/^(\/de)?\/slip\//.test(file));

const titleOf = ({ html }: Page): string => /<title>([^<]*)<\/title>/.exec(html)?.[1] ?? '';

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
    expect(attributes(html, 'html', 'lang')).toEqual([address.startsWith('/de/') ? 'de' : 'en']);
    expect(html.match(/<h1\b/g)).toHaveLength(1);
    expect(html.match(/<main\b/g)).toHaveLength(1);
    expect(titleOf(page).length).toBeGreaterThan(10);
    const description = /<meta name="description" content="([^"]+)"/.exec(html)?.[1] ?? '';
    expect(description.length).toBeGreaterThan(10);
    expect(linksOf(html, 'canonical').map(({ href }) => href)).toEqual([`${SITE}${address}`]);
  });

  test('no two pages of a language have the same title', () => {
    const titles = shop.map((page) => `${page.address.startsWith('/de/') ? 'de' : 'en'} ${titleOf(page)}`);
    expect(titles.filter((title, index) => titles.indexOf(title) !== index)).toEqual([]);
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
