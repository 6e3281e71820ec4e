/** The content check as a process: what it says in each language, and how it ends. */
import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { contentFolder } from '#tests/catalogue/contentFolder.ts';
import { change, parts } from '#tests/catalogue/mistakes/mistake.ts';

const root = resolve(import.meta.dirname, '../..');
const check = (...argv: string[]) =>
  spawnSync(process.execPath, ['src/command/content.ts', ...argv], { cwd: root, encoding: 'utf8' });

test('names each mistake in the language asked for, and ends with 1', () => {
  const broken = contentFolder([change(parts, 'size: 8 mm', 'size: 200 mm')]);
  expect(check(broken)).toMatchObject({
    status: 1,
    stdout: '',
    stderr:
      '1 to mend:\n\ncomponents/parts.yaml:3  ball-8, size\n  “200 mm” is outside what can be: 0 to 150 mm.\n  Check the figure and its unit.\n',
  });
  expect(check(broken, '--lang', 'de')).toMatchObject({
    status: 1,
    stderr:
      '1 zu verbessern:\n\ncomponents/parts.yaml:3  ball-8, size\n  „200 mm“ liegt außerhalb des Möglichen: 0 bis 150 mm.\n  Prüfen Sie Zahl und Einheit.\n',
  });
});

test('counts what it has read where nothing is to mend, and knows its languages', () => {
  const whole = contentFolder([]);
  expect(check(whole, '--lang', 'de')).toMatchObject({ status: 0, stderr: '' });
  expect(check(whole, '--lang', 'de').stdout).toMatch(
    /^Nichts zu verbessern\. Stücke: 1, Teile: \d+, Ratgeber: \d+\.$/m,
  );
  expect(check(whole, '--lang', 'fr')).toMatchObject({
    status: 2,
    stderr: '--lang is “fr”, but has to be one of: en, de.\n',
  });
});
