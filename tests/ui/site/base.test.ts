import { afterEach, describe, expect, it, vi } from 'vitest';
import { address } from '#ui/site/addresses.ts';
import { insideBase, linksUnderBase, underBase } from '#ui/site/base.ts';

afterEach(() => {
  vi.unstubAllEnvs();
});

const standAt = (base: string): void => void vi.stubEnv('BASE_URL', base);

describe('a shop at the root of its host', () => {
  it('has its paths as they are, both ways', () => {
    expect(underBase('/pictures/a.avif')).toBe('/pictures/a.avif');
    expect(insideBase('/bench/')).toBe('/bench/');
    expect(address('de', 'pieces', 'ford')).toBe('/de/pieces/ford/');
    expect(linksUnderBase('<a href="/find/">')).toBe('<a href="/find/">');
  });
});

describe.each(['/shop/', '/shop'])('a shop in a folder, set as %s', (base) => {
  it('has the folder before every path', () => {
    standAt(base);
    expect(underBase('/')).toBe('/shop/');
    expect(underBase('/pictures/a.avif')).toBe('/shop/pictures/a.avif');
    expect(address('en')).toBe('/shop/');
    expect(address('de', 'pieces', 'ford')).toBe('/shop/de/pieces/ford/');
  });

  it('knows a path asked for again, and leaves one beside the folder alone', () => {
    standAt(base);
    expect(insideBase('/shop/bench/')).toBe('/bench/');
    expect(insideBase('/shop/')).toBe('/');
    for (const beside of ['/shopping/', '/bench/', '/shop']) expect(insideBase(beside)).toBe(beside);
  });
});

it('links and pictures of a guide lead into the folder; other hosts, places of the page and words stay', () => {
  standAt('/shop/');
  const html =
    '<p>Write href="/x" in <a href="/pieces/ford/" title="a">it</a>, <img src="/pictures/a.svg" alt="/b">, ' +
    '<a href="//other.example/">o</a>, <a href="https://other.example/">o</a>, <a href="#end">e</a>, <a href="mailto:a@b.example">m</a></p>';
  expect(linksUnderBase(html)).toBe(
    html
      .replace('"/pieces/ford/"', '"/shop/pieces/ford/"')
      .replace('"/pictures/a.svg"', '"/shop/pictures/a.svg"'),
  );
});
