import { describe, expect, test } from 'vitest';
import { catalogue, files, onHost, pageAt, pages, read, SITE } from './built.ts';

const { pieces, shop } = catalogue;

type Data = Readonly<Record<string, unknown>>;
const dataOf = (html: string): Data[] =>
  [...html.matchAll(/<script type="application\/ld\+json">([\s\S]*?)<\/script>/g)].map(
    ([, text = '']) => JSON.parse(text) as Data,
  );

describe('what machines read', () => {
  test.each(pieces.map((piece) => [piece.id, piece] as const))(
    '%s is a product with an offer',
    (id, piece) => {
      for (const prefix of ['', '/de']) {
        const page = pageAt(onHost(`${prefix}/pieces/${id}/`));
        const product = dataOf(page?.html ?? '').find((data) => data['@type'] === 'Product');
        expect(product).toMatchObject({
          '@context': 'https://schema.org',
          sku: id,
          offers: { '@type': 'Offer', priceCurrency: shop.rules.currency },
        });
        const offer = product?.['offers'] as { price: string; url: string };
        expect(Math.round(Number(offer.price) * 100)).toBe(piece.listedMinor);
        expect(offer.url).toBe(`${SITE}${page?.address}`);
        expect(files).toContain(new URL(String(product?.['image'])).pathname);
      }
    },
  );

  test('trails lead from the front page to the page itself', () => {
    const trails = pages.flatMap(({ address, path, html }) =>
      dataOf(html)
        .filter((data) => data['@type'] === 'BreadcrumbList')
        .map((data) => ({
          address,
          path,
          steps: data['itemListElement'] as { position: number; item: string }[],
        })),
    );
    expect(trails.length).toBeGreaterThan(pieces.length * 2);
    for (const { address, path, steps } of trails) {
      expect(steps.map(({ position }) => position)).toEqual(steps.map((_, index) => index + 1));
      expect(steps[0]?.item).toBe(SITE + onHost(path.startsWith('/de/') ? '/de/' : '/'));
      expect(steps.at(-1)?.item).toBe(`${SITE}${address}`);
      for (const { item } of steps) {
        expect(files).toContain(`${decodeURIComponent(item.slice(SITE.length))}index.html`);
      }
    }
  });

  test('the sitemap names every page once, and no other', () => {
    const named = [...read(onHost('/sitemap.xml')).matchAll(/<loc>([^<]+)<\/loc>/g)].map(
      ([, loc = '']) => loc,
    );
    const hidden = /^\/404\.html$|^(\/de)?\/slip\//;
    const wanted = pages.filter(({ path }) => !hidden.test(path)).map(({ address }) => `${SITE}${address}`);
    expect([...named].sort()).toEqual([...wanted].sort());
  });

  test('robots are told of the sitemap, and nobody of the bench', () => {
    const robots = read(onHost('/robots.txt'));
    expect(robots).toContain(`Sitemap: ${SITE}${onHost('/sitemap.xml')}\n`);
    expect(robots).not.toMatch(/bench|desk/i);
    for (const [, path = ''] of robots.matchAll(/^Disallow: (\S+)$/gm))
      expect(files).toContain(`${path}index.html`);
  });

  test('feeds in both languages name pieces that are there', () => {
    for (const feed of ['/feed.xml', '/de/feed.xml']) {
      const ids = [...read(onHost(feed)).matchAll(/<id>([^<]+)<\/id>/g)].map(([, id = '']) => id);
      expect(ids.length).toBeGreaterThan(2);
      for (const id of ids) expect(files).toContain(`${id.slice(SITE.length)}index.html`);
    }
  });

  test('every piece is there as JSON, with its own price', () => {
    for (const { id, listedMinor, revision } of pieces) {
      const data = JSON.parse(read(onHost(`/pieces/${id}.json`))) as Data;
      expect(data).toMatchObject({
        id,
        revision,
        price: { amountMinor: listedMinor, currency: shop.rules.currency },
      });
    }
  });

  test('share pictures are 1200 × 630 and named by the page', () => {
    for (const { id } of pieces) {
      const html = read(onHost(`/pieces/${id}/index.html`));
      const image = /property="og:image" content="([^"]+)"/.exec(html)?.[1] ?? '';
      expect(files).toContain(new URL(image).pathname);
      expect(html).toContain('property="og:image:width" content="1200"');
    }
  });
});
