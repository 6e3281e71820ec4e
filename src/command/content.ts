/**
 * `npm run content -- [folder] [--lang de]`: reads the content folder and says
 * what is to mend, without building. Exit code 0: nothing; 1: something; 2: the
 * command line can't be read; remarks alone are 0. Problems go to standard error.
 */
import { parseArgs } from 'node:util';
import { report } from '#catalogue/read/problem.ts';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import { isLang, LANGS, type Lang } from '#words/lang.ts';
import { terminalWords } from '#words/words.ts';

function check(folder: string, lang: Lang): void {
  const words = terminalWords(lang).content;
  const { catalogue, problems, notes } = readCatalogue(folder, { gaps: true });
  if (notes.length > 0) console.log(`${words.notes(notes.length)}\n\n${report(notes, lang)}\n`);
  if (problems.length > 0) {
    console.error(`${words.problems(problems.length)}\n\n${report(problems, lang)}`);
    process.exitCode = 1;
  } else if (catalogue !== null) {
    const { pieces, components, guides } = catalogue;
    console.log(words.nothing(pieces.length, Object.keys(components).length, guides.length));
  }
}

const { values, positionals } = parseArgs({
  options: { lang: { type: 'string', default: 'en' } },
  allowPositionals: true,
});
const { lang } = values;
if (isLang(lang)) check(positionals[0] ?? process.env['CLASPWISE_CONTENT'] ?? 'content', lang);
else {
  const { usage } = terminalWords('en');
  console.error(usage['not-one-of']({ option: 'lang', value: lang, choices: LANGS }));
  process.exitCode = 2;
}
