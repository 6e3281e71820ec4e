import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { attributes, files, inlineScripts, onHost, pages, read } from './built.ts';

const isText = (file: string): boolean => /\.(html|js|css|json|xml|txt|svg)$/.test(file);

const closed = ['/bench/', '/desk/', '/de/bench/', '/de/desk/'];

/** Sentences of the maker's side that are long enough to be nobody else's. */
function benchSentences(): string[] {
  return ['src/words/en/bench.ts', 'src/words/de/bench.ts'].flatMap((file) =>
    [...readFileSync(file, 'utf8').matchAll(/'([^'\n]{28,})'/g)].map(([, text = '']) => text),
  );
}

describe('the public half of the build', () => {
  test('holds no page, file or sentence of the bench', () => {
    expect(files.filter((file) => closed.some((path) => file.startsWith(onHost(path))))).toEqual([]);
    const sentences = benchSentences();
    expect(sentences.length).toBeGreaterThan(5);
    for (const file of files.filter(isText)) {
      const text = read(file);
      expect(
        sentences.filter((sentence) => text.includes(sentence)),
        file,
      ).toEqual([]);
    }
  });

  test('holds no code that only the bench has', () => {
    const scripts = files
      .filter((file) => file.endsWith('.js'))
      .map(read)
      .join('\n');
    const names = readdirSync('src/bench', { recursive: true })
      .map(String)
      .filter((name) => name.endsWith('.ts'))
      .flatMap((name) =>
        [...readFileSync(join('src/bench', name), 'utf8').matchAll(/(?:sqlite|CREATE TABLE|scrypt)/g)].map(
          ([word]) => word,
        ),
      );
    expect(names.length).toBeGreaterThan(0);
    for (const name of new Set(names)) expect(scripts).not.toContain(name);
  });

  test('shows no path of the machine it was built on, and no source map', () => {
    const here = process.cwd();
    for (const file of files.filter(isText)) expect(read(file).includes(here), file).toBe(false);
    expect(files.filter((file) => file.endsWith('.map'))).toEqual([]);
  });
});

describe('nothing inline runs that the page does not vouch for', () => {
  test('no style attribute, no event attribute, no javascript: address', () => {
    for (const { address, html } of pages) {
      const tags = html.replace(/<script[\s\S]*?<\/script>/g, '').match(/<[a-z][^>]*>/gi) ?? [];
      const bad = tags.filter((tag) => /\s(style|on[a-z]+)=|(href|src)="\s*javascript:/i.test(tag));
      expect(bad, address).toEqual([]);
    }
  });

  test('every inline script and style has its hash in the page’s policy', () => {
    for (const page of pages) {
      const policy = (page.html.match(/<meta http-equiv="content-security-policy"[^>]*>/i) ?? [''])[0] ?? '';
      expect(policy, page.address).not.toContain('unsafe-inline');
      const styles = [...page.html.matchAll(/<style[^>]*>([\s\S]*?)<\/style>/g)].map(([, code = '']) => code);
      for (const code of [...inlineScripts(page), ...styles]) {
        const hash = createHash('sha256').update(code).digest('base64');
        expect(policy.includes(`sha256-${hash}`), `${page.address}: ${code.slice(0, 60)}`).toBe(true);
      }
    }
  });

  test('nothing is fetched from another host, or from outside the shop', () => {
    for (const { address, html } of pages) {
      const fetched = [
        ...['img', 'script', 'source', 'iframe'].flatMap((element) => attributes(html, element, 'src')),
        ...(html.match(/<link\b[^>]*>/g) ?? [])
          .filter((tag) => /rel="(stylesheet|preload|modulepreload|icon)"/.test(tag))
          .flatMap((tag) => attributes(tag, 'link', 'href')),
      ];
      expect(
        fetched.filter((src) => !src.startsWith(onHost('/')) && !src.startsWith('data:')),
        address,
      ).toEqual([]);
    }
    for (const file of files.filter((name) => name.endsWith('.css'))) {
      expect(read(file), file).not.toMatch(/url\(["']?(https?:)?\/\//);
    }
  });
});
