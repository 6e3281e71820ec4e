/** Publishing beside a running shop. */
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { currentRelease } from '#catalogue/released/place.ts';
import { readProgress, writeProgress } from '#release/progress.ts';
import { isWhole, readRecord } from '#release/record.ts';
import { ownPlace, type Place } from '#tests/support/publishing.ts';
import { startShop, type RunningShop } from '#tests/support/shop.ts';

// Several publishings one after the other, on a machine that may be busy with other tests.
vi.setConfig({ testTimeout: 240_000 });

/** One without a tutorial, of which every page would be made anew each time. */
const PIECE = 'weir-light';
const FILE = `pieces/${PIECE}.yaml`;
const WORDS = 'Words that nobody has read before';

let place: Place;
let shop: RunningShop | null = null;

beforeEach(() => {
  place = ownPlace();
});
afterEach(async () => {
  await shop?.stop();
  shop = null;
  place.remove();
});

const served = (): string => currentRelease(place.releases) ?? '';
const change = (field: 'name' | 'summary', by: string): void => {
  const line = new RegExp(`^${field}: .*$`, 'm').exec(readFileSync(join(place.content, FILE), 'utf8'))?.[0];
  place.change(FILE, line ?? field, `${field}: ${by}`);
};
const textOf = async (path: string): Promise<string> => (await fetch(shop?.base + path)).text();
const pieceText = (): Promise<string> => textOf(`/pieces/${PIECE}/`);

describe('a change is published', () => {
  test('while people look around, who get every page whole, the bench has it at once, and a page that was open before still finds its pictures', async () => {
    shop = await startShop(place.env);
    const before = served();
    const picture = new RegExp(`/pictures/${PIECE}-[\\w-]+\\.svg`).exec(await textOf('/pieces/'))?.[0] ?? '';
    const asked = [
      '/',
      '/pieces/',
      `/pieces/${PIECE}/`,
      `/de/pieces/${PIECE}/`,
      '/find/words.json',
      '/bench/pieces/',
    ];
    let going = true;
    let answers = 0;
    const wrong: string[] = [];
    const visitor = async (): Promise<void> => {
      while (going) {
        for (const path of asked) {
          await pause(10);
          try {
            const answer = await fetch(shop?.base + path);
            const text = await answer.text();
            const whole = path.endsWith('.json') ? text.endsWith('}') : text.trimEnd().endsWith('</html>');
            answers += 1;
            if (answer.status !== 200 || !whole) wrong.push(`${answer.status} ${path} ${text.slice(-20)}`);
          } catch (error) {
            wrong.push(`${path} ${String(error)} ${String((error as Error).cause)}`);
            return;
          }
        }
      }
    };
    const visitors = [visitor(), visitor(), visitor()];
    change('summary', WORDS);
    change('name', 'Smothered Ember');
    const { code, said } = await place.publish('--quick');
    const after = await pieceText();
    going = false;
    await Promise.all(visitors);
    expect([code, said]).toEqual([0, expect.stringContaining('Built in')]);
    expect(wrong).toEqual([]);
    expect(answers).toBeGreaterThan(asked.length);
    expect(after).toContain(WORDS);
    expect(served()).not.toBe(before);
    expect(readFileSync(join(place.folder, `dist/client/pieces/${PIECE}/index.html`), 'utf8')).toBe(after);
    expect(picture).not.toBe('');
    expect(await textOf('/pieces/')).not.toContain(picture);
    expect(await textOf(`/bench/pieces/${PIECE}/`)).toContain('Smothered Ember');
    expect((await fetch(shop.base + picture)).status).toBe(200);
  });
});

describe('nothing is put in place', () => {
  test('where nothing has changed', async () => {
    const before = served();
    const { code, said } = await place.publish('--start');
    expect([code, said]).toEqual([0, expect.stringContaining('Nothing has changed')]);
    expect(served()).toBe(before);
  });

  test('of content with a mistake, which is named with its file and field', async () => {
    shop = await startShop(place.env);
    const before = served();
    place.change(FILE, 'status: ', 'status: sold-out-');
    const { code, said } = await place.publish('--quick');
    expect(code).toBe(1);
    expect(said).toContain(FILE);
    expect(said).toContain('status');
    expect(served()).toBe(before);
    expect((await fetch(`${shop.base}/pieces/${PIECE}/`)).status).toBe(200);
  });

  test('where another publishing runs', async () => {
    writeFileSync(join(place.releases, 'publishing'), String(process.pid));
    const before = served();
    change('summary', WORDS);
    expect((await place.publish('--quick')).code).toBe(3);
    expect(served()).toBe(before);
  });

  test('of a publishing that was killed, which the next one clears away', async () => {
    writeFileSync(join(place.releases, 'publishing'), '999999999');
    writeProgress(place.releases, {
      state: 'running',
      since: '2026-04-01T10:00:00Z',
      step: 'pages',
      pieces: null,
    });
    expect(readProgress(place.releases).state).toBe('failed');
    change('summary', WORDS);
    expect((await place.publish('--quick')).code).toBe(0);
    expect(readProgress(place.releases)).toMatchObject({ state: 'done', outcome: 'made' });
    expect(readFileSync(join(served(), `client/pieces/${PIECE}/index.html`), 'utf8')).toContain(WORDS);
  });
});

describe('what was published is taken back', () => {
  test('at once, and a start doesn\u2019t publish it again', async () => {
    shop = await startShop(place.env);
    const before = served();
    change('summary', WORDS);
    await place.publish('--quick');
    expect(await pieceText()).toContain(WORDS);
    expect((await place.publish('--back')).code).toBe(0);
    expect(served()).toBe(before);
    expect(await pieceText()).not.toContain(WORDS);
    expect((await place.publish('--start')).said).toContain('Nothing has changed');
    expect(served()).toBe(before);
    expect((await place.publish('--quick')).said).toContain('Built in');
    expect(await pieceText()).toContain(WORDS);
  });

  test('not where there is no release before', async () => {
    const { code, said } = await place.publish('--back');
    expect([code, said]).toEqual([1, expect.stringContaining('no release before')]);
  });
});

test('a release that lacks a file isn\u2019t whole', () => {
  const record = readRecord(served());
  if (record === null) throw new Error('got no record');
  expect(isWhole(served(), record)).toBe(true);
  rmSync(join(served(), 'client/index.html'));
  expect(isWhole(served(), record)).toBe(false);
});
