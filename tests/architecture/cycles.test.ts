/** No file may stand on itself by way of others. */
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import { expect, test } from 'vitest';

test('no import cycles in src, types included', { timeout: 180_000 }, async () => {
  const { output } = await cruise(['src'], {
    baseDir: new URL('../..', import.meta.url).pathname,
    doNotFollow: { path: 'node_modules' },
    exclude: { path: 'node_modules' },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx'] },
    tsPreCompilationDeps: 'specify',
    ruleSet: {
      forbidden: [
        {
          name: 'no-cycle',
          severity: 'error',
          from: {},
          to: { circular: true },
        },
      ],
    },
  });
  const { summary, modules } = output as ICruiseResult;
  expect(modules.length).toBeGreaterThan(300);
  expect(summary.violations.map((violation) => `${violation.from} → ${violation.to}`)).toEqual([]);
});
