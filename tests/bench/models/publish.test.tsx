/** The page of publishing in each of its states. */
import { renderToString } from 'preact-render-to-string';
import { expect, it } from 'vitest';
import type { Standing } from '#bench/publish/standing.ts';
import { PublishView } from '#bench/views/PublishView.tsx';
import { frame } from '../shop.ts';

const NOTHING = { pieces: [], components: [], wires: [], guides: [], shop: false };
const quiet: Standing = {
  progress: { state: 'none' },
  servedSince: '2026-04-01T10:00:00Z',
  before: null,
  problems: [],
  changes: NOTHING,
};
const render = (standing: Partial<Standing>): string =>
  renderToString(<PublishView frame={frame} standing={{ ...quiet, ...standing }} />);
const share = (html: string): number => Number(/<progress[^>]*\bvalue="([^"]+)"/.exec(html)?.[1]);

it('counts pieces while it runs, its bar goes on with them, and there is no button', () => {
  const running = (done: number) =>
    render({
      progress: { state: 'running', since: '2026-04-01T10:00:00Z', step: 'pages', pieces: { done, of: 57 } },
    });
  expect(running(12)).toContain('12 of 57 pieces');
  expect(share(running(40))).toBeGreaterThan(share(running(12)));
  expect(share(running(57))).toBeLessThan(1);
  expect(running(12)).not.toContain('<button');
});

it('names what will change, each in its kind', () => {
  const html = render({
    changes: {
      ...NOTHING,
      pieces: [{ id: 'ford', name: 'Ford', how: 'new' }],
      guides: [{ id: 'en/measuring', name: 'Measuring', how: 'gone' }],
    },
  });
  expect(html).toMatch(/Pieces<\/h3><ul><li><a href="[^"]*\/bench\/pieces\/ford\/words\/">Ford<\/a>: new/);
  expect(html).toMatch(/Guides<\/h3><ul><li>Measuring: gone/);
});

it('says that a publishing failed, that the shop stayed, and shows what the program said as text', () => {
  const html = render({
    progress: { state: 'failed', at: '2026-04-01T10:00:00Z', problems: [], said: '<b>no room</b>' },
  });
  expect(html).toContain('The shop stays as it was');
  expect(html).toContain('&lt;b>no room');
});
