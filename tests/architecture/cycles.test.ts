/** No file may stand on itself by way of others. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import { expect, test } from 'vitest';

async function cyclesIn(baseDir: string, folder: string) {
  const { output } = await cruise([folder], {
    baseDir,
    doNotFollow: { path: 'node_modules' },
    exclude: { path: 'node_modules' },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx'] },
    tsPreCompilationDeps: 'specify',
    // Without it the rules are read and not applied.
    validate: true,
    ruleSet: {
      forbidden: [{ name: 'no-cycle', severity: 'error', from: {}, to: { circular: true } }],
    },
  });
  const { summary, modules } = output as ICruiseResult;
  const cycles = summary.violations.map((violation) => `${violation.from} → ${violation.to}`);
  return { files: modules.length, cycles };
}

test('no import cycles in src, types included', { timeout: 180_000 }, async () => {
  const { files, cycles } = await cyclesIn(new URL('../..', import.meta.url).pathname, 'src');
  expect(files).toBeGreaterThan(300);
  expect(cycles).toEqual([]);
});

test.each(['import', 'import type'])('a cycle by %s is found', async (keyword) => {
  const folder = mkdtempSync(join(tmpdir(), 'cycle-'));
  try {
    writeFileSync(join(folder, 'one.ts'), `${keyword} { Other } from './other.ts';\nexport class One {}\n`);
    writeFileSync(join(folder, 'other.ts'), `import { One } from './one.ts';\nexport class Other {}\n`);
    const { cycles } = await cyclesIn(folder, '.');
    expect(cycles).toEqual([expect.stringMatching(/one\.ts → other\.ts|other\.ts → one\.ts/)]);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
