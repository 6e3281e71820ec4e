import { describe, expect, test } from 'vitest';
import { scriptsByEntry } from '#ui/build/islandScripts.ts';

const chunk = (name: string, isEntry: boolean, ...imports: string[]) => ({
  name,
  isEntry,
  isDynamicEntry: false,
  imports,
});

describe('scripts of an entry', () => {
  test('are itself and what it imports, however deep, each once', () => {
    const chunks = new Map([
      ['a.1.js', chunk('A', true, 'b.js', 'c.js')],
      ['b.js', chunk('b', false, 'c.js', 'd.js')],
      ['c.js', chunk('c', false)],
      ['d.js', chunk('d', false)],
      ['e.js', chunk('e', false)],
    ]);
    expect(scriptsByEntry(chunks)).toEqual({ A: ['a.1.js', 'b.js', 'c.js', 'd.js'] });
  });

  test('are known of what is fetched when it is wanted too', () => {
    const chunks = new Map([
      ['a.js', { ...chunk('A', false, 'b.js'), isDynamicEntry: true }],
      ['b.js', chunk('b', false)],
    ]);
    expect(scriptsByEntry(chunks)).toEqual({ A: ['a.js', 'b.js'] });
  });

  test('that import one another come to an end', () => {
    const chunks = new Map([
      ['a.js', chunk('A', true, 'b.js')],
      ['b.js', chunk('b', false, 'a.js')],
    ]);
    expect(scriptsByEntry(chunks)).toEqual({ A: ['a.js', 'b.js'] });
  });

  test('from elsewhere are named, and no more is known of them', () => {
    expect(scriptsByEntry(new Map([['a.js', chunk('A', true, 'other.js')]]))).toEqual({
      A: ['a.js', 'other.js'],
    });
  });
});
