/** What is wrong with an authored entry and how to mend it, in the maker's language. */
import type { CatalogueArgs, CatalogueCode, CatalogueSentence } from './catalogueCodes.ts';
import { catalogue as de } from './de/catalogue.ts';
import { catalogue as en } from './en/catalogue.ts';
import { inLanguages, type Lang } from './lang.ts';

const catalogueWords = inLanguages({ en, de });

/** The sentences for one code. */
export function catalogueSentence<Code extends CatalogueCode>(
  code: Code,
  args: CatalogueArgs[Code],
  lang: Lang,
): CatalogueSentence {
  return catalogueWords(lang)[code](args);
}
