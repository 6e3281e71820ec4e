import { defineConfig } from 'vitest/config';

/** `pure` needs nothing built; `site` reads dist/; `browser` drives Chromium against the built shop. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    projects: [
      {
        extends: true,
        test: {
          name: 'pure',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/site/**', 'tests/browser/**'],
          // The thorough sizes take minutes.
          testTimeout: process.env['CLASPWISE_THOROUGH'] === undefined ? 300_000 : 3_600_000,
        },
      },
      { extends: true, test: { name: 'site', include: ['tests/site/**/*.test.ts'], testTimeout: 60_000 } },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
