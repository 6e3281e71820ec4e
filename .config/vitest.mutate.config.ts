import { defineConfig } from 'vitest/config';

/** What `npm run mutate` runs against every mutant: the core's own tests without the long random ones. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/core/**/*.test.ts', 'tests/published/**/*.test.ts'],
    exclude: ['**/hostile*.test.ts'],
    testTimeout: 60_000,
  },
});
