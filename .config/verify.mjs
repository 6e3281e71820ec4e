/**
 * `npm test`: every check, one after the other, each with its time, and at the
 * end one line 'N passed, N failed'. A check that isn't a test runner counts
 * as one. Later checks run even where an earlier one failed, except that
 * nothing is tested on a site that didn't build.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';

const reports = 'reports';
rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });
let passed = 0;
let failed = 0;

/** Runs one command line; true where it ended well. */
function run(title, command, args) {
  const started = Date.now();
  console.log(`\n── ${title}`);
  const { status } = spawnSync(command, args, {
    stdio: 'inherit',
    env: { ...process.env, FORCE_COLOR: '0' },
  });
  console.log(
    `── ${title}: ${status === 0 ? 'good' : 'FAILED'} (${((Date.now() - started) / 1000).toFixed(1)} s)`,
  );
  return status === 0;
}

function check(title, command, ...args) {
  const good = run(title, command, args);
  if (good) passed += 1;
  else failed += 1;
  return good;
}

function tests(project) {
  const file = `${reports}/${project}.json`;
  const args = ['run', '--config', '.config/vitest.config.ts', '--project', project];
  const good = run(`tests: ${project}`, 'vitest', [
    ...args,
    '--reporter=dot',
    '--reporter=json',
    `--outputFile.json=${file}`,
  ]);
  try {
    const report = JSON.parse(readFileSync(file, 'utf8'));
    passed += report.numPassedTests;
    failed += report.numFailedTests;
    // A file that doesn't load, or a run without tests, fails without a failed test.
    if ((!good && report.numFailedTests === 0) || report.numPassedTests === 0) failed += 1;
  } catch {
    failed += 1;
  }
}

check('types of the site', 'astro', 'check', '--minimumFailingSeverity', 'warning');
check('types of the core', 'tsc', '--noEmit', '-p', 'src/core/tsconfig.json');
check('lint and import rules', 'eslint', '--config', '.config/eslint.config.mjs', '--max-warnings', '0', '.');
check('format', 'prettier', '--check', '--log-level', 'warn', '.');
check('dead code', 'knip', '--config', '.config/knip.json');
tests('pure');
if (check('build', 'npm', 'run', '--silent', 'build')) {
  tests('site');
  tests('browser');
}

console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
