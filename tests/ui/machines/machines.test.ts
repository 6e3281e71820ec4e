import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { atomFeed, instantOf } from '#ui/machines/atomFeed.ts';
import { pieceJson } from '#ui/machines/pieceJson.ts';
import { jsonLdText, productData } from '#ui/machines/jsonLd.ts';
import { xml } from '#ui/machines/xml.ts';
import { pageWords } from '#words/words.ts';
import { majorAmount } from '#words/format.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';

const catalogue = catalogueOf();
const { pieces, shop } = catalogue;
const site = new URL('https://shop.example');

describe('structured data', () => {
  test('no text can close its element', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const written = jsonLdText({ name: `</script>${text}<!--` });
        expect(written).not.toMatch(/<\/script|<!--/i);
        expect(JSON.parse(written)).toEqual({ name: `</script>${text}<!--` });
      }),
    );
  });

  test('money as machines write it: decimals by ISO 4217', () => {
    expect(majorAmount(6500, 'GBP')).toBe('65.00');
    expect(majorAmount(5, 'EUR')).toBe('0.05');
    expect(majorAmount(4800, 'JPY')).toBe('4800');
    expect(majorAmount(12345, 'KWD')).toBe('12.345');
  });

  test('a piece is a product whose offer says whether it can be had (schema.org ItemAvailability)', () => {
    const said = (status: 'available' | 'to-order' | 'past'): unknown => {
      const [first] = pieces;
      if (first === undefined) throw new Error('no piece');
      const piece = { ...first, status };
      const data = productData({ piece, shop, lang: 'en', url: 'https://x/', image: 'https://x/y' });
      return (data as { offers: { availability: string } }).offers.availability;
    };
    expect(said('available')).toBe('https://schema.org/InStock');
    expect(said('to-order')).toBe('https://schema.org/MadeToOrder');
    expect(said('past')).toBe('https://schema.org/Discontinued');
  });
});

describe('a piece as JSON', () => {
  test('has exactly the fields that the data page explains, in both languages', () => {
    for (const piece of pieces) {
      const fields = Object.keys(pieceJson(piece, shop, site)).sort();
      expect(fields).toEqual(Object.keys(pageWords('en').data.rows).sort());
      expect(fields).toEqual(Object.keys(pageWords('de').data.rows).sort());
    }
  });
});

describe('the Atom feed', () => {
  test('tells instants as RFC 3339 does, however exactly the day is known', () => {
    expect(instantOf('2024')).toBe('2024-01-01T00:00:00Z');
    expect(instantOf('2024-05')).toBe('2024-05-01T00:00:00Z');
    expect(instantOf('2024-05-17')).toBe('2024-05-17T00:00:00Z');
  });

  test('holds the newest that can be had, with what RFC 4287 asks of feed and entry', () => {
    const text = atomFeed({ pieces, shop, lang: 'en', site });
    const entries = text.split('<entry>').slice(1);
    const now = pieces.filter(({ status }) => status !== 'past').slice(0, 30);
    expect(entries).toHaveLength(now.length);
    for (const [index, entry] of entries.entries()) {
      expect(entry).toContain(`<title>${xml(now[index]?.name ?? '')}</title>`);
      for (const element of ['id', 'updated', 'title']) expect(entry.split(`<${element}>`)).toHaveLength(2);
    }
    const head = text.slice(0, text.indexOf('<entry>'));
    for (const element of ['id', 'updated', 'title', 'author']) expect(head).toContain(`<${element}>`);
  });

  test('text is safe in XML whatever it holds', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(xml(text)).not.toMatch(/[<>"\u0000-\u0008\u000b\u000c\u000e-\u001f]|&(?!amp;|lt;|gt;|quot;)/);
      }),
    );
  });
});
