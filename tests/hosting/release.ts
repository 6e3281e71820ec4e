/** Small releases to send: pages that ask for parts by names made of what is in them. */
import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pointTo } from '#catalogue/released/place.ts';
import { writeRecord } from '#release/record.ts';

export type Site = Readonly<Record<string, string>>;

const mark = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 8);

/**
 * A shop of so many pieces, each with a page, a picture and data, a list of all and a search.
 * @param words of each piece; another text is another picture and another page
 */
export function siteOf(pieces: Readonly<Record<string, string>>, bytes = 0): Site {
  const site: Record<string, string> = {};
  const style = '_astro/shop.AbCd1234.css';
  site[style] = 'body{}';
  const links: string[] = [];
  for (const [id, words] of Object.entries(pieces)) {
    const picture = `pictures/${id}-${mark(words)}.svg`;
    site[picture] = `<svg>${words}${'.'.repeat(bytes)}</svg>`;
    site[`pieces/${id}/index.html`] =
      `<a href="/pieces/"><link href="/${style}"><img src="/${picture}"> ${words}`;
    links.push(`<a href="/pieces/${id}/"><img src="/${picture}">`);
  }
  site['pieces/index.html'] = links.join('\n');
  site['index.html'] = `<link href="/${style}"><a href="/pieces/"> <a href="/find.json">`;
  site['find.json'] = JSON.stringify(Object.keys(pieces).map((id) => `"/pieces/${id}/"`));
  return site;
}

/** Paths that a file leads to or asks for. */
export function askedBy(text: string): string[] {
  return [...text.matchAll(/"\/([^"\\]*)\\?"/g)].map(([, path = '']) =>
    path === '' || path.endsWith('/') ? `${path}index.html` : path,
  );
}

/** What a site's pages ask for, and the data that they ask for in their turn, and isn't there: `file: path`. */
export function missingIn(site: Site): string[] {
  const pages = Object.keys(site).filter((file) => file.endsWith('.html'));
  const asked = (file: string): string[] => askedBy(site[file] ?? '');
  const data = new Set(pages.flatMap(asked).filter((path) => path.endsWith('.json')));
  return [...pages, ...data].flatMap((file) =>
    asked(file)
      .filter((path) => !(path in site))
      .map((path) => `${file}: ${path}`),
  );
}

/** What visitors who come by the front page meet that isn't there. */
export function missingFromFront(site: Site): string[] {
  const seen = new Set<string>();
  const missing: string[] = [];
  const visit = (path: string): void => {
    if (seen.has(path)) return;
    seen.add(path);
    const text = site[path];
    if (text === undefined) missing.push(path);
    else if (/\.(html|json)$/.test(path)) askedBy(text).forEach(visit);
  };
  if ('index.html' in site) visit('index.html');
  return missing;
}

/** Makes a release of it the served one. @returns its folder */
export function releaseOf(releases: string, id: string, site: Site): string {
  const folder = join(releases, id);
  for (const [path, text] of Object.entries(site)) {
    mkdirSync(dirname(join(folder, 'client', path)), { recursive: true });
    writeFileSync(join(folder, 'client', path), text);
  }
  const madeAt = `2026-04-0${(releases.length % 9) + 1}T10:00:00.000Z`;
  writeFileSync(join(folder, 'catalogue.json'), '{}');
  writeRecord(folder, { id, code: 'c', content: id, madeAt, pieces: 1, photographs: {} });
  pointTo(id, releases);
  return folder;
}

/** What lies in a folder, dotfiles of the folder itself apart. */
export function siteIn(folder: string): Site {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((one) => one.isFile());
  const paths = files.map(({ parentPath, name }) => join(parentPath, name).slice(folder.length + 1));
  return Object.fromEntries(
    paths
      .filter((path) => !path.startsWith('.'))
      .map((path) => [path, readFileSync(join(folder, path), 'utf8')]),
  );
}

export const removeAll = (folder: string): void => rmSync(folder, { recursive: true, force: true });
