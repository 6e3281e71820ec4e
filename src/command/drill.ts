/**
 * `npm run drill`: plays disasters on books of its own and prints for each how
 * many orders had a receipt, how many of them are found, and what the maker saw.
 * Ends with 1 where a receipted order is lost. It serves what was built last.
 */
import { join } from 'node:path';
import { currentRelease } from '#catalogue/released/place.ts';
import { table } from './benchmarks/table.ts';
import { disasters, playAll } from './drill/play.ts';
import { root } from './drill/shop.ts';

if (currentRelease(join(root, '.releases')) === null) {
  console.error('Nothing has been built. Fix: npm run build, then npm run drill.');
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
