/** Without JavaScript: the one that lies finished by e-mail, and what may be chosen instead of clasp and pendant. */
import { describe, expect, test } from 'vitest';
import { offersOf } from '#ui/models/partOffers.ts';
import { LANGS } from '#words/lang.ts';
import { orderWords, pageWords } from '#words/words.ts';
import { attributes, catalogue, onHost, pageAt } from './built.ts';

const { pieces, shop } = catalogue;

describe.each(LANGS)('in %s', (lang) => {
  const words = pageWords(lang).piece;
  const htmlOf = (id: string): string =>
    pageAt(onHost(`${lang === 'en' ? '' : `/${lang}`}/pieces/${id}/`))?.html ?? '';

  test('a piece is offered as it lies there, by a mail that says so, only where one lies there', () => {
    const { asItLies } = orderWords(lang);
    for (const { id, revision, status } of pieces) {
      const mails = attributes(htmlOf(id), 'a', 'href')
        .filter((href) => href.startsWith('mailto:'))
        .map((href) => decodeURIComponent(href))
        .filter((mail) => mail.includes(asItLies));
      expect(mails.length, id).toBe(status === 'available' ? 1 : 0);
      for (const mail of mails) expect(mail).toContain(`${id} ${revision}`);
    }
  });

  test('what may be chosen is listed by its part, and nothing where nothing is', () => {
    for (const piece of pieces) {
      const html = htmlOf(piece.id);
      const offers = offersOf(piece, shop, lang);
      for (const part of ['clasp', 'pendant'] as const) {
        const offered = offers.some((one) => one.part === part);
        expect(html.includes(words.insteadLead[part]), `${piece.id} ${part}`).toBe(offered);
      }
    }
  });
});
