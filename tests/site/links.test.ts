import { describe, expect, test } from 'vitest';
import { attributes, catalogue, fileOf, files, onHost, pages, read, SITE, unescaped } from './built.ts';

/** Served on demand, so no file answers. */
const isOnDemand = (path: string): boolean =>
  ['/bench/', '/desk/'].some((one) => path.startsWith(onHost(one)));

const ids = new Map<string, Set<string>>();
function idsOf(file: string): Set<string> {
  const known =
    ids.get(file) ?? new Set([...read(file).matchAll(/\sid="([^"]+)"/g)].map(([, id = '']) => id));
  ids.set(file, known);
  return known;
}

/** What is wrong with a link, or null. */
function brokenLink(href: string, from: string): string | null {
  const url = new URL(href, SITE + from);
  if (url.origin !== SITE) return null;
  if (isOnDemand(url.pathname)) return null;
  const file = fileOf(url.pathname);
  if (file === null) return `${from} → ${href}: no such file`;
  const id = decodeURIComponent(url.hash.slice(1));
  if (id === '' || !file.endsWith('.html')) return null;
  return idsOf(file).has(id) ? null : `${from} → ${href}: no such place`;
}

describe('links', () => {
  test('lead to a file of the site, fragments to an element', () => {
    const broken = pages.flatMap(({ address, html }) =>
      ['a', 'link']
        .flatMap((element) => attributes(html, element, 'href'))
        .flatMap((href) => brokenLink(href, address) ?? []),
    );
    expect([...new Set(broken)]).toEqual([]);
  });

  test('pictures, scripts and sources are there', () => {
    const wanted = pages.flatMap(({ address, html }) => [
      ...['img', 'script', 'source']
        .flatMap((element) => attributes(html, element, 'src'))
        .map((src) => [address, src]),
      ...attributes(html, 'source', 'srcset')
        .flatMap((set) => set.split(', '))
        .map((one) => [address, one.split(' ')[0] ?? '']),
    ]);
    expect(wanted.length).toBeGreaterThan(pages.length);
    const missing = wanted.filter(
      ([, src = '']) => !src.startsWith('data:') && fileOf(new URL(src, SITE).pathname) === null,
    );
    expect(missing).toEqual([]);
  });

  test('what styles fetch is there', () => {
    const sheets = files.filter((file) => file.endsWith('.css'));
    const wanted = sheets.flatMap((file) =>
      [...read(file).matchAll(/url\(["']?([^"')]+)/g)].map(([, url = '']) => new URL(url, SITE + file)),
    );
    // The face at least.
    expect(wanted.length).toBeGreaterThan(0);
    const missing = wanted.filter(
      ({ protocol, pathname }) => protocol !== 'data:' && fileOf(pathname) === null,
    );
    expect(missing.map(String)).toEqual([]);
  });

  test('every id is on its page once, and every reference to one is met', () => {
    for (const { address, html } of pages) {
      const all = [...html.matchAll(/<[^>]*?\sid="([^"]+)"/g)].map(([, id]) => id);
      expect(
        all.filter((id, index) => all.indexOf(id) !== index),
        address,
      ).toEqual([]);
      const names = ['aria-labelledby', 'aria-describedby', 'for'];
      const wanted = names.flatMap((name) =>
        [...html.matchAll(new RegExp(`\\s${name}="([^"]+)"`, 'g'))].flatMap(([, list = '']) =>
          list.split(' '),
        ),
      );
      expect(
        wanted.filter((id) => !all.includes(id)),
        address,
      ).toEqual([]);
    }
  });

  test('order links carry the piece, its revision, the size and the price', () => {
    const mails = pages
      .filter(({ path }) => /^\/pieces\/[^/]+\/$/.test(path))
      .flatMap(({ html }) => attributes(html, 'a', 'href'))
      .filter((href) => href.startsWith('mailto:') && href.includes('Order'));
    expect(mails.length).toBeGreaterThan(catalogue.pieces.length / 2);
    for (const mail of mails) {
      const body = new URLSearchParams(mail.split('?')[1]?.replaceAll('+', '%2B')).get('body') ?? '';
      expect(unescaped(body)).toMatch(/I should like to order .+\.\r\n\r\nSize: .+\r\n/);
      expect(body).toMatch(/\([\w-]+ [0-9a-f]{12}\)/);
      expect(body).toMatch(/Price: £\d+\.\d\d/);
    }
  });
});
