/** The program as a mark: everything that pages and server are made with beside the content. */
import { CODE } from '#ui/build/keyed.ts';
import { codeMark } from '#ui/build/codeMark.ts';
import { siteAndBase } from '#ui/build/folder.ts';
import { MAKES_PIXELS } from '#ui/pictures/settings.ts';
import { digest } from '#ui/site/digest.ts';

/** What is copied or built into, besides what pages are made with. */
const MORE = ['public'] as const;

/** The shop's address is built into the program. The working folder is the project's own. */
export function codeNow(): string {
  const built = JSON.stringify([siteAndBase(), MAKES_PIXELS, process.version, process.platform]);
  return digest(16, [codeMark([...CODE, ...MORE]), built]);
}
