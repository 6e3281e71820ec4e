/** Which files the pages of a release became, and what a later one needs to make them again. */
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { RouteData } from 'astro';

/** A path to be made into a file, as Astro lists them. */
export type PagePath = {
  readonly pathname: string;
  readonly route: RouteData;
  readonly cacheKey?: string | undefined;
};

/** File by its path below the public files, to its key; null where it is made anew each time. */
export type PageKeys = Readonly<Record<string, string | null>>;

/** A stylesheet of a page, as Astro hands it to its own environment of a build. */
type Style = { readonly depth: number; readonly order: number; readonly sheet: object };

export type Kept = {
  /** File within the folder that makes pages. */
  readonly entry: string;
  /** By Astro's key of a page. */
  readonly styles: readonly (readonly [key: string, styles: readonly Style[]])[];
  readonly pages: PageKeys;
};

const KEPT_FILE = 'kept.json';
const STATUS_PAGES = ['/404', '/500'];

/** The file that a path becomes, below the public files: Astro's format `directory`. */
export function fileOfPage({ pathname, route }: PagePath): string {
  const path = pathname.replace(/^\/+|\/+$/g, '');
  if (route.type === 'endpoint') return path;
  if (STATUS_PAGES.includes(pathname)) return `${path}.html`;
  return path === '' ? 'index.html' : `${path}/index.html`;
}

/** The request that a path is made for. */
export function requestOfPage({ pathname, route }: PagePath, base: string, origin: string): Request {
  const path = [base, pathname].map((part) => part.replace(/^\/+|\/+$/g, '')).filter((part) => part !== '');
  const ending = route.type === 'endpoint' || path.length === 0 ? '' : '/';
  return new Request(new URL(`/${path.join('/')}${ending}`, origin));
}

/** Each path once: where two routes give the same, the first has it. */
export function eachOnce(paths: readonly PagePath[]): PagePath[] {
  const seen = new Map<string, PagePath>();
  for (const path of paths) {
    const plain = path.pathname.replace(/\/+$/, '');
    if (!seen.has(plain)) seen.set(plain, path);
  }
  return [...seen.values()];
}

export const keysOf = (paths: readonly PagePath[]): PageKeys =>
  Object.fromEntries(eachOnce(paths).map((path) => [fileOfPage(path), path.cacheKey ?? null]));

/** Replaces the file: it may be the same one as in an earlier release. */
export function writeKept(folder: string, kept: Kept): void {
  const file = join(folder, KEPT_FILE);
  rmSync(file, { force: true });
  writeFileSync(file, JSON.stringify(kept));
}

/** Throws where there is none, or it can't be read. */
export const readKept = (folder: string): Kept =>
  JSON.parse(readFileSync(join(folder, KEPT_FILE), 'utf8')) as Kept;
