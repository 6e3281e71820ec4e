import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { catalogueOf } from '#tests/support/catalogue.ts';
import { PAGE_INK, shapeOf } from '#ui/pictures/alone.ts';
import { DRAWN, pieceDrawing, pieceDrawingSvg } from '#ui/pictures/pieceDrawings.ts';
import { LANGS } from '#words/lang.ts';

const { pieces, shop } = catalogueOf();
const some = pieces.filter(
  ({ design }, at) => pieces.findIndex((one) => one.design.kind === design.kind) === at,
);

describe('a drawing beside its page', () => {
  test('has the page’s ink, light and dark', () => {
    const tokens = readFileSync('src/ui/styles/tokens.css', 'utf8');
    expect(tokens).toContain(`--ink: light-dark(${PAGE_INK.light}, ${PAGE_INK.dark});`);
    for (const drawn of DRAWN) {
      const svg = pieceDrawingSvg(drawn, some[0] ?? pieces[0]!, shop, 'en');
      expect(svg).toMatch(/^<svg [^>]*><style>:root\{color:#1c2224/);
      expect(svg).toContain('@media(prefers-color-scheme:dark){:root{color:#e9ece8}}');
      // What it takes from the page otherwise: a size that nobody set, a symbol of another drawing.
      expect(svg).not.toContain('var(');
    }
  });

  test('keeps its place by the shape of its view box, and says what it shows, for each kind of piece', () => {
    expect(some.length).toBeGreaterThan(2);
    for (const piece of some) {
      for (const lang of LANGS) {
        for (const drawn of DRAWN) {
          const { src, width, height, alt, note } = pieceDrawing(drawn, piece, shop, lang);
          expect(src).toBe(`${lang === 'en' ? '' : '/de'}/pieces/${piece.id}/${drawn}.svg`);
          const box = /viewBox="([^"]+)"/.exec(pieceDrawingSvg(drawn, piece, shop, lang))?.[1];
          const [, , boxWidth = 0, boxHeight = 1] = (box ?? '').split(' ').map(Number);
          expect(width / height / (boxWidth / boxHeight)).toBeCloseTo(1, 1);
          expect(alt).toContain(lang === 'de' ? (piece.de?.name ?? piece.name) : piece.name);
          expect(note !== '').toBe(drawn === 'worn');
        }
      }
    }
  });

  test('without a view box is none', () => {
    expect(() => shapeOf('<svg></svg>')).toThrow('expected an SVG with a view box');
  });
});
