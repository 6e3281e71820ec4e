/** New pieces as an Atom feed (RFC 4287). */
import { textsOf, type Piece, type Shop } from '#catalogue/model/catalogue.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords } from '#words/words.ts';
import { address } from '../site/addresses.ts';
import { sharePath } from '../pictures/share.ts';
import { xml } from './xml.ts';

type Args = {
  readonly pieces: readonly Piece[];
  readonly shop: Shop;
  readonly lang: Lang;
  readonly site: URL;
};

/** As many as a reader who looks in once a season may have missed. */
const MOST_ENTRIES = 30;

/** A date as exactly as RFC 3339 wants it: what isn't known is the first. */
export function instantOf(made: string): string {
  const [year = '1970', month = '01', day = '01'] = made.split('-');
  return `${year}-${month}-${day}T00:00:00Z`;
}

export function atomFeed({ pieces, shop, lang, site }: Args): string {
  const words = pageWords(lang);
  const absolute = (path: string): string => new URL(path, site).href;
  const shown = pieces.filter(({ status }) => status !== 'past').slice(0, MOST_ENTRIES);
  const updated = shown.map(({ made }) => instantOf(made)).sort();
  const entries = shown.map((piece) => {
    const { name, summary, story } = textsOf(piece, lang);
    const url = absolute(address(lang, 'pieces', piece.id));
    const share = sharePath(piece);
    const enclosure =
      share === null ? [] : [`    <link rel="enclosure" type="image/jpeg" href="${xml(absolute(share))}"/>`];
    return [
      '  <entry>',
      `    <title>${xml(name)}</title>`,
      `    <id>${xml(url)}</id>`,
      `    <link href="${xml(url)}"/>`,
      ...enclosure,
      `    <published>${instantOf(piece.made)}</published>`,
      `    <updated>${instantOf(piece.made)}</updated>`,
      `    <summary>${xml(summary)}</summary>`,
      `    <content type="text">${xml(story)}</content>`,
      '  </entry>',
    ].join('\n');
  });
  return [
    '<?xml version="1.0" encoding="utf-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${lang}">`,
    `  <title>${xml(words.feed.title(shop.name))}</title>`,
    `  <id>${xml(absolute(address(lang)))}</id>`,
    `  <link href="${xml(absolute(address(lang)))}"/>`,
    `  <link rel="self" type="application/atom+xml" href="${xml(absolute(`${address(lang)}feed.xml`))}"/>`,
    `  <updated>${updated.at(-1) ?? instantOf(String(shop.since))}</updated>`,
    `  <author><name>${xml(shop.maker)}</name></author>`,
    ...entries,
    '</feed>',
    '',
  ].join('\n');
}
