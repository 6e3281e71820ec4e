import { defineConfig } from 'vitest/config';

/** What `npm run mutate` runs against every mutant: the core's own tests with few random cases, and without the long random ones. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/core/**/*.test.ts', 'tests/published/**/*.test.ts'],
    exclude: ['**/hostile*.test.ts'],
    setupFiles: ['.config/fewerRuns.ts'],
    env: { CLASPWISE_QUICK: '1' },
    testTimeout: 60_000,
  },
});
