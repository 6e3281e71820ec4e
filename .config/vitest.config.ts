import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';
import { CONTENT, DIST, RELEASES } from '../tests/support/inFolder/shop.ts';

/** Tests that count what is called, by a mocked module: they need modules of their own. */
const COUNTING = 'tests/**/effort.test.ts';
/**
 * Tests that compute for long. Beside others they take two to three times as long: once a function has
 * been called with things of many shapes, what the engine made of it is slow for all.
 */
const COMPUTING = ['tests/core/**/*.test.ts', 'tests/judges/**/*.test.{ts,tsx}'];

// The bench and the browser tell times as the clock on the wall has them; what tests expect mustn't hang on where they run.
process.env['TZ'] = 'UTC';

// The thorough sizes take minutes.
const nodeTimeoutMs = process.env['CLASPWISE_THOROUGH'] === undefined ? 300_000 : 3_600_000;

/** Hold for any shop, not only for the demo shop. */
const ANY_SHOP = ['links', 'head', 'data', 'headers', 'searchIndex', 'otherWays', 'closed', 'preload'];

/** `pure` and `pure-alone` need nothing built, and each file of the latter has a process of its own; `site` reads dist/, `site-in-folder` a small shop built in a folder of its host; `browser` drives Chromium against the built shop. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    // Test files of a worker share what they import: to load it for each file anew took longer than most tests.
    isolate: false,
    maxWorkers: availableParallelism(),
    projects: [
      {
        extends: true,
        test: {
          name: 'pure',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/site/**', 'tests/browser/**', COUNTING, ...COMPUTING],
          testTimeout: nodeTimeoutMs,
        },
      },
      {
        extends: true,
        test: {
          name: 'pure-alone',
          include: [COUNTING, ...COMPUTING],
          isolate: true,
          testTimeout: nodeTimeoutMs,
        },
      },
      { extends: true, test: { name: 'site', include: ['tests/site/**/*.test.ts'], testTimeout: 60_000 } },
      {
        extends: true,
        test: {
          name: 'site-in-folder',
          include: ANY_SHOP.map((name) => `tests/site/${name}.test.ts`),
          env: { CLASPWISE_DIST: DIST, CLASPWISE_RELEASES: RELEASES, CLASPWISE_CONTENT: CONTENT },
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: 'tests/browser/once.ts',
          // Where other checks run beside it, a page may take its time; a condition is waited for all the same.
          testTimeout: 120_000,
          hookTimeout: 120_000,
          expect: { poll: { timeout: 30_000 } },
        },
      },
    ],
  },
});
