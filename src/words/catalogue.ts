/** What is wrong with an authored entry and how to mend it, in the maker's language. */
import type { CatalogueArgs, CatalogueCode, CatalogueSentence } from './catalogueCodes.ts';
import type { Lang } from './lang.ts';
import { catalogueWords } from './words.ts';

/** The sentences for one code. */
export function catalogueSentence<Code extends CatalogueCode>(
  code: Code,
  args: CatalogueArgs[Code],
  lang: Lang,
): CatalogueSentence {
  return catalogueWords(lang)[code](args);
}
