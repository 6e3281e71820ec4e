/**
 * `npm test`: every check, as many side by side as there are cores, each with
 * its time, and at the end one line 'N passed, N failed'. What a check says is
 * printed whole when it ends, and what was left out is named before that line. A check that isn't a test runner counts as one.
 * Later checks run even where an earlier one failed, except that nothing is
 * tested on a site that didn't build.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { resolve } from 'node:path';

const reports = 'reports';

/** Checks start hundreds of processes that load the same code: the first to do so compiles it for all. */
const compiled = resolve('.cache/compiled');

/** Nobody watches a check as it runs, so none colours what it says. */
const plain = { ...process.env, NO_COLOR: '1', NODE_COMPILE_CACHE: compiled };
delete plain.FORCE_COLOR;

/** A check that passes or fails as one. */
const one = (title, ...command) => ({ title, command, count: (good) => [good ? 1 : 0, good ? 0 : 1] });

/** A run of tests; its files run side by side by themselves. */
function tests(name, ...projects) {
  const file = `${reports}/${name}.json`;
  const command = ['vitest', 'run', '--config', '.config/vitest.config.ts'];
  command.push(...projects.flatMap((project) => ['--project', project]));
  command.push('--reporter=dot', '--reporter=json', `--outputFile.json=${file}`);
  return { title: `tests: ${name}`, command, count: (good) => countReport(good, file) };
}

/** Tests that can't run on this machine, by name; the name says what they need. */
const leftOut = [];
const wasLeftOut = ({ status }) => ['skipped', 'pending', 'todo', 'disabled'].includes(status);

/** Passed and failed tests of a report; one that was left out is neither. */
function countReport(good, file) {
  try {
    const { numPassedTests, numFailedTests, testResults } = JSON.parse(readFileSync(file, 'utf8'));
    for (const { assertionResults } of testResults) {
      leftOut.push(...assertionResults.filter(wasLeftOut).map(({ fullName }) => fullName));
    }
    // A file that doesn't load, or a run without tests, fails without a failed test.
    const silent = (!good && numFailedTests === 0) || numPassedTests === 0;
    return [numPassedTests, numFailedTests + (silent ? 1 : 0)];
  } catch {
    return [0, 1];
  }
}

const build = one('build', 'npm', 'run', '--silent', 'build');
/** After the shop's own: both write the types that Astro makes, and this one takes its pictures from the cache. */
const buildInFolder = {
  ...one('build in a folder of its host', 'node', 'tests/support/inFolder/build.ts'),
  after: build,
  onlyIfGood: true,
};

/** In the order in which they start: the long ones first, the short ones into the gaps that those leave. */
const waiting = [
  build,
  buildInFolder,
  one('lint and import rules', 'eslint', '--config', '.config/eslint.config.mjs', '--max-warnings', '0', '.'),
  one('format', 'prettier', '--check', '--log-level', 'warn', '.'),
  // Builds and this write the types that Astro makes: one after the other, so that none reads them half-written.
  {
    ...one('types of the site', 'astro', 'check', '--minimumFailingSeverity', 'warning'),
    after: buildInFolder,
  },
  tests('pure', 'pure', 'pure-alone'),
  { ...tests('browser', 'browser'), after: buildInFolder, onlyIfGood: true },
  { ...tests('site', 'site', 'site-in-folder'), after: buildInFolder, onlyIfGood: true },
  one('dead code', 'knip', '--config', '.config/knip.json'),
  one('types of the core', 'tsc', '--noEmit', '-p', 'src/core/tsconfig.json'),
];

/** Runs a check to its end, then prints what it said; resolves to whether it was good. */
function run({ title, command: [name, ...args] }) {
  const started = Date.now();
  return new Promise((resolve) => {
    const said = [];
    const child = spawn(name, args, {
      stdio: ['ignore', 'pipe', 'pipe'],
      env: plain,
    });
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (chunk) => said.push(chunk));
    child.on('error', (error) => said.push(Buffer.from(`${error.message}\n`)));
    child.on('close', (status) => {
      const good = status === 0;
      console.log([`\n── ${title}`, Buffer.concat(said).toString().trim()].filter(Boolean).join('\n'));
      console.log(
        `── ${title}: ${good ? 'good' : 'FAILED'} (${((Date.now() - started) / 1000).toFixed(1)} s)`,
      );
      resolve(good);
    });
  });
}

// What was compiled of files that are no more would heap up.
for (const old of [reports, compiled]) rmSync(old, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });
const total = { passed: 0, failed: 0 };
const running = new Set();
/** Whether each check that has ended was good. */
const ended = new Map();

const mayStart = ({ after }) => after === undefined || ended.has(after);
const isPointless = ({ after, onlyIfGood }) => onlyIfGood === true && ended.get(after) === false;

while (waiting.length > 0 || running.size > 0) {
  const next = running.size < availableParallelism() ? waiting.findIndex(mayStart) : -1;
  if (next === -1) {
    await Promise.race(running);
    continue;
  }
  const [check] = waiting.splice(next, 1);
  if (isPointless(check)) {
    ended.set(check, false);
    continue;
  }
  const task = run(check).then((good) => {
    const [passed, failed] = check.count(good);
    total.passed += passed;
    total.failed += failed;
    ended.set(check, good);
    running.delete(task);
  });
  running.add(task);
}

for (const name of leftOut) console.log(`\nLeft out: ${name}`);
console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed === 0 ? 0 : 1;
