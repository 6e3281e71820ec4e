import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { readFragment, slimFragment } from '#ui/search/index/fragment.ts';

const fragment = {
  url: '/pieces/ford/#1,2,Ford',
  content: 'shell disc',
  word_count: 2,
  filters: { kind: ['Anklets'], colour: ['white'] },
  meta: {},
  anchors: [],
};
const written = (text: string): Uint8Array => gzipSync(text);

test('a result’s address stays, words and filters go', () => {
  const slim = slimFragment(written(`pagefind_dcd${JSON.stringify(fragment)}`));
  expect(readFragment(slim)).toEqual({
    ...fragment,
    content: '',
    word_count: 0,
    filters: {},
  });
});

test('a file of another make is told', () => {
  expect(() => readFragment(written('{}'))).toThrow('expected what begins with');
});
