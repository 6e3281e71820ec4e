import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Tests that lay out many pieces come last: most mutants fall to a cheap one before. */
const HEAVY = /exhaustive|properties|Hostile|verify\.test/;

class CheapFirst extends BaseSequencer {
  override sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const weight = ({ moduleId }: TestSpecification): number => (HEAVY.test(moduleId) ? 1 : 0);
    return Promise.resolve(files.toSorted((one, other) => weight(one) - weight(other)));
  }
}

/** What `npm run mutate` runs against every mutant: the core's own tests with few random cases, the judge of joint stock, and not the long random ones. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: [
      ...['tests/core/**/*.test.ts', 'tests/published/**/*.test.ts'],
      // The one judge that runs in seconds, of what no core test compares: strands out of one stock.
      'tests/judges/jointStock.test.ts',
    ],
    exclude: ['**/hostile*.test.ts'],
    setupFiles: ['.config/fewerRuns.ts'],
    env: { CLASPWISE_QUICK: '1' },
    sequence: { sequencer: CheapFirst },
    testTimeout: 60_000,
  },
});
