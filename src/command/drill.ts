/**
 * `npm run drill`: plays disasters on books of its own and prints for each how
 * many orders had a receipt, how many of them are found, and what the maker saw.
 * Ends with 1 where a receipted order is lost. It serves what lies in dist/.
 */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { table } from './benchmarks/table.ts';
import { disasters, playAll } from './drill/play.ts';
import { root } from './drill/shop.ts';

if (!existsSync(join(root, 'dist', 'server', 'entry.mjs'))) {
  console.error('dist/ is missing. Fix: npm run build, then npm run drill.');
  process.exitCode = 1;
} else {
  const outcomes = await playAll(disasters, (name) => console.error(`… ${name}`));
  const rows = outcomes.map(({ name, receipted, found, leftOut }) => [
    name,
    leftOut === true ? '–' : String(receipted),
    leftOut === true ? '–' : String(found),
  ]);
  console.log(table(['disaster', 'receipted', 'found'], rows));
  console.log('\nWhat the maker saw:');
  for (const { name, saw } of outcomes) console.log(`- ${name}: ${saw}`);
  if (outcomes.some(({ receipted, found }) => found < receipted)) process.exitCode = 1;
}
