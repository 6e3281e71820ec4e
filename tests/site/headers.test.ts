/** `_headers` for static hosts: it speaks of paths of the whole host, wherever on it the shop lies. */
import { expect, test } from 'vitest';
import { readHeaders } from '../../src/command/serve/fileHeaders.ts';
import { files, onHost, read } from './built.ts';

test('headers are given to files that are there, in the shop and nowhere else', () => {
  const paths = readHeaders(read(onHost('/_headers'))).map(({ path }) => path);
  expect(paths.length).toBeGreaterThan(5);
  for (const path of paths) {
    expect(path.startsWith(onHost('/')), path).toBe(true);
    const [start = ''] = path.split('*');
    expect(
      files.some((file) => file.startsWith(start)),
      path,
    ).toBe(true);
  }
});
