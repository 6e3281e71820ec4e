/**
 * `npm run content [folder]`: reads the content folder and says what is to
 * mend, without building. Exit code 0: nothing; 1: something; remarks alone
 * are 0. Problems go to standard error.
 */
import { report } from '#catalogue/read/problem.ts';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';

const folder = process.argv[2] ?? process.env['CLASPWISE_CONTENT'] ?? 'content';
const { catalogue, problems, notes } = readCatalogue(folder);
if (notes.length > 0) console.log(`${notes.length} worth a look:\n\n${report(notes, 'en')}\n`);
if (problems.length > 0) {
  console.error(`${problems.length} to mend:\n\n${report(problems, 'en')}`);
  process.exitCode = 1;
} else if (catalogue !== null) {
  const { pieces, components, guides } = catalogue;
  const parts = Object.keys(components).length;
  console.log(`Nothing to mend: ${pieces.length} pieces, ${parts} components, ${guides.length} guides.`);
}
