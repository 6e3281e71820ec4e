/** What was changed, told; and two versions side by side. */
import { render } from 'preact-render-to-string';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { historyPage } from '#bench/models/content/history.ts';
import { lineDifference, shortened } from '#bench/models/content/lineDifference.ts';
import { ConflictView } from '#bench/views/content/ConflictView.tsx';
import { HistoryView } from '#bench/views/content/HistoryView.tsx';
import { contentHistoryWords } from '#words/words.ts';
import { keptContent, type Kept } from '../content.ts';

const words = contentHistoryWords('en');
const row = { kind: 'piece', id: 'row' } as const;

function saved(kept: Kept, field: string, value: string): void {
  const opened = kept.store.open(row);
  if (opened === null || !kept.store.save(opened, [{ path: [field], value }]).ok) throw new Error(field);
}

test('lines of both texts come out of their difference again', () => {
  const text = fc.array(fc.constantFrom('a', 'b', 'c', ''), { maxLength: 12 });
  fc.assert(
    fc.property(text, text, (one, other) => {
      const [before, after] = [one, other].map((lines) => lines.map((line) => `${line}\n`).join(''));
      const lines = lineDifference(before ?? null, after ?? null);
      const side = (gone: string): string =>
        lines.flatMap(({ kind, text }) => (kind === gone ? [] : [`${text}\n`])).join('');
      expect(side('new')).toBe(before);
      expect(side('old')).toBe(after);
    }),
  );
});

test('what is alike and far from any difference is counted, not shown', () => {
  const lines = [...'abcdefgh'].join('\n');
  expect(shortened(lineDifference(lines, lines.replace('g', 'x')), 1)).toEqual([
    { kind: 'left', count: 5 },
    { kind: 'both', text: 'f' },
    { kind: 'old', text: 'g' },
    { kind: 'new', text: 'x' },
    { kind: 'both', text: 'h' },
  ]);
});

test('a save is told by its piece, its fields and its lines, and can be taken back once', () => {
  const kept = keptContent();
  saved(kept, 'price', '£38.00');
  const html = (): string =>
    render(
      <HistoryView
        page={historyPage(kept.store.history, null, 'en')}
        isOlder={false}
        words={words}
        lang="en"
      />,
    );
  expect(html()).toContain('<bdi>Row</bdi>, changed');
  expect(html()).toContain('In it: Price');
  expect(html()).toContain('<del>price: £35.00</del>');
  expect(html()).toContain('<ins>price: £38.00</ins>');
  expect(kept.store.undo(1).ok).toBe(true);
  expect(html()).toContain(words.undone);
});

test('fields are named as the forms name them, in her language, with what they belong to', () => {
  const kept = keptContent();
  const opened = kept.store.open({ kind: 'shop', id: 'shop' });
  if (opened === null) throw new Error('no shop');
  expect(kept.store.save(opened, [{ path: ['price', 'labour'], value: '£19 per hour' }]).ok).toBe(true);
  const said = (lang: 'en' | 'de') => historyPage(kept.store.history, null, lang).items[0]?.fields;
  expect(said('en')).toEqual(['Prices: Your hour']);
  expect(said('de')).toEqual(['Preise: Ihre Stunde']);
});

test('the history comes in pages', () => {
  const kept = keptContent();
  saved(kept, 'price', '£38.00');
  const all = kept.store
    .history()
    .flatMap((record) => Array.from({ length: 27 }, (_, at) => ({ ...record, id: 27 - at })));
  const list = ({ most, before = Infinity }: { most: number; before?: number }): typeof all =>
    all.filter(({ id }) => id < before).slice(0, most);
  const first = historyPage(list, null, 'en');
  const second = historyPage(list, first.older, 'en');
  expect([...first.items, ...second.items].map(({ id }) => id)).toEqual(all.map(({ id }) => id));
  expect([first.items.length > 0, second.older]).toEqual([true, null]);
});

test('both versions stand side by side, markup in them as text', () => {
  const conflict = {
    file: 'pieces/row.yaml',
    now: 'name: Row\nprice: £1\n',
    yours: 'name: <b>Row</b>\nprice: £1\n',
  };
  const html = render(<ConflictView conflict={conflict} words={words.conflict} />);
  expect(html).toContain('<mark>name: Row</mark>');
  expect(html).toContain('<mark>name: &lt;b>Row&lt;/b></mark>');
  expect(html.match(/<li>price: £1<\/li>/g)).toHaveLength(2);
});
