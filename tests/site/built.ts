/** The built shop as files: what the tests here read. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { catalogueOf } from '#tests/support/catalogue.ts';
import { currentRelease } from '#catalogue/released/place.ts';
import { baseOf } from '../../src/command/serve/base.ts';

const DIST = process.env.CLASPWISE_DIST ?? 'dist';
const CLIENT = join(DIST, 'client');

if (!existsSync(CLIENT)) {
  throw new Error(
    `got no ${CLIENT}, expected a built site: npm run build, then node tests/support/inFolder/build.ts`,
  );
}

/** What the built shop was built of. */
export const catalogue = catalogueOf(process.env.CLASPWISE_CONTENT);

/** The folder of its host that it lies in, with a slash at both ends. */
const BASE = baseOf(currentRelease() ?? '');

/** Its host: `https://ninepin.example`. */
export const SITE = new URL(catalogue.shop.address).origin;

/** A path within the shop as its host has it: `/feed.xml` is `/shop/feed.xml` in the folder `/shop/`. */
export const onHost = (path: string): string => BASE + path.slice(1);

/** Paths of all files on their host, with forward slashes: `/pieces/ford/index.html`. */
export const files: readonly string[] = readdirSync(CLIENT, { recursive: true })
  .map(String)
  .filter((name) => statSync(join(CLIENT, name)).isFile())
  .map((name) => onHost(`/${relative('', name).split(sep).join('/')}`))
  .sort();

/** Where a file of the host lies on the disk. */
export const fileAt = (path: string): string => join(CLIENT, path.slice(BASE.length));

export const read = (path: string): string => readFileSync(fileAt(path), 'utf8');

export type Page = {
  /** On its host, as all files. */
  readonly file: string;
  /** On its host, without `index.html`. */
  readonly address: string;
  /** The same within the shop. */
  readonly path: string;
  readonly html: string;
};

/** Pages of the public shop, as the server or any static host gives them. */
export const pages: readonly Page[] = files
  .filter((file) => file.endsWith('.html'))
  .map((file) => {
    const address = file.replace(/index\.html$/, '');
    return { file, address, path: address.slice(BASE.length - 1), html: read(file) };
  });

/** Values of an attribute on one kind of element, entities read. */
export function attributes(html: string, element: string, attribute: string): string[] {
  const tags = html.match(new RegExp(`<${element}\\b[^>]*>`, 'g')) ?? [];
  return tags.flatMap((tag) => {
    const found = new RegExp(`\\s${attribute}="([^"]*)"`).exec(tag)?.[1];
    return found === undefined ? [] : [unescaped(found)];
  });
}

export const unescaped = (text: string): string =>
  text
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&#38;', '&')
    .replaceAll('&amp;', '&');

const known: ReadonlySet<string> = new Set(files);
const byAddress: ReadonlyMap<string, Page> = new Map(pages.map((page) => [page.address, page]));

export const pageAt = (address: string): Page | undefined => byAddress.get(address);

/** The file that an address of the site is answered with; null where there is none. */
export function fileOf(path: string): string | null {
  const name = decodeURIComponent(path);
  const file = name.endsWith('/') ? `${name}index.html` : name;
  return known.has(file) ? file : null;
}

const compressed = new Map<string, number>();

/** Bytes of a file by brotli at its best. */
export function brotliSize(path: string): number {
  const bytes = compressed.get(path) ?? brotliCompressSync(read(path)).length;
  compressed.set(path, bytes);
  return bytes;
}

const STATIC = /(?:\bimport|\bfrom)\s*["'](\.{1,2}\/[^"']+|\/[^"']+)["']/g;
const ON_DEMAND = /\bimport\(\s*["'`](\.{1,2}\/[^"'`]+|\/[^"'`]+)["'`]/g;

/** What a browser fetches of scripts: themselves and all they import statically, or all they may ever import too. */
export function fetchedOf(scripts: readonly string[], which: 'at-first' | 'ever' = 'at-first'): Set<string> {
  const all = new Set<string>();
  const visit = (path: string): void => {
    if (all.has(path)) return;
    all.add(path);
    const code = read(path);
    const imports = [...code.matchAll(STATIC), ...(which === 'ever' ? code.matchAll(ON_DEMAND) : [])];
    for (const [, to = ''] of imports) visit(new URL(to, `http://site${path}`).pathname);
  };
  scripts.forEach(visit);
  return all;
}

/** The same in bytes, by brotli at its best. */
export function brotliBytes(scripts: readonly string[], which: 'at-first' | 'ever' = 'at-first'): number {
  return [...fetchedOf(scripts, which)].reduce((sum, path) => sum + brotliSize(path), 0);
}

/** Scripts that a page runs by itself. */
export const ownScripts = ({ html }: Page): string[] =>
  attributes(html, 'script', 'src').filter((path) => path.startsWith('/'));

/** What a page asks for at once, before anyone wants it. */
export const preloadsOf = ({ html }: Page): string[] =>
  (html.match(/<link\b[^>]*rel="modulepreload"[^>]*>/g) ?? []).flatMap((tag) =>
    attributes(tag, 'link', 'href'),
  );

/** What it fetches at the first sign of somebody at the page. */
export const signFetchesOf = ({ html }: Page): string[] =>
  attributes(html, 'div', 'data-scripts').flatMap((files) => files.split(' '));

/** All scripts that a page asks for by itself. */
export const scriptsOf = (page: Page): string[] => [
  ...ownScripts(page),
  ...preloadsOf(page),
  ...signFetchesOf(page),
];

/** Code within the page itself. */
export const inlineScripts = ({ html }: Page): string[] =>
  [...html.matchAll(/<script(?![^>]*\bsrc=)([^>]*)>([\s\S]*?)<\/script>/g)]
    .filter(([, attrs = '']) => !attrs.includes('json'))
    .map(([, , code = '']) => code);
