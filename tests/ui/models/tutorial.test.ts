/** The pages of tutorials: offered pieces alone, every size of the tables. */
import { expect, it } from 'vitest';
import { linkedSizes, taughtPiece, tutorialPages } from '#ui/models/tutorial.ts';
import { publicPaths } from '#ui/machines/publicPaths.ts';
import { sizeTable } from '#ui/models/sizeRows.ts';
import { unitIn } from '#ui/models/unitIn.ts';
import { formatLength } from '#words/format.ts';
import { LANGS } from '#words/lang.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';

const catalogue = catalogueOf();
const { shop, pieces } = catalogue;
const pages = tutorialPages(pieces, shop.rules);
const offered = pieces.filter(({ teach }) => teach?.offered === true);

it('there are of the pieces that offer one, each as shown first', () => {
  expect(offered.length).toBeGreaterThanOrEqual(2);
  expect(new Set(pages.map(({ piece }) => piece))).toEqual(new Set(offered));
  expect(pages.filter(({ askedMm }) => askedMm === null)).toHaveLength(offered.length);
});

it.each(LANGS)('in %s each size of a piece’s table has its page, and reads as it does there', (lang) => {
  const told = (mm: number): string => formatLength(mm, unitIn(shop, lang), lang);
  for (const piece of offered) {
    const own = pages.filter((page) => page.piece === piece && page.askedMm !== null);
    expect(new Set(own.map(({ sizeKey }) => sizeKey)).size).toBe(own.length);
    const linked = linkedSizes(piece, shop.rules, lang);
    const rows = sizeTable(piece, shop.rules, lang)!.rows;
    expect(linked.map(({ askedMm }) => told(askedMm))).toEqual(rows.map(({ askedMm }) => told(askedMm)));
    for (const { key, askedMm } of linked) {
      expect(own.find(({ sizeKey }) => sizeKey === key)?.askedMm).toBe(askedMm);
    }
  }
});

it('every page can be made, and stands in the sitemap', () => {
  const paths = new Set(publicPaths(catalogue).map((path) => path.join('/')));
  for (const { piece, sizeKey, askedMm } of pages) {
    expect(taughtPiece(piece, shop.rules, askedMm)).not.toBeNull();
    const path = ['pieces', piece.id, 'make', ...(sizeKey === null ? [] : [sizeKey])].join('/');
    expect(paths.has(path)).toBe(true);
  }
});
