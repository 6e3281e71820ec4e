/**
 * Makes the pages of a release by the renderer that an earlier one kept: the
 * same code, other content. A page whose key is the same is taken over as it is.
 * Runs once in a process, which it gives the release that is being made.
 */
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { MADE_AGAIN, READ_FROM } from '#catalogue/released/place.ts';
import { inTurn } from '#ui/pictures/inTurn.ts';
import { AT_ONCE } from '#ui/pictures/settings.ts';
import { SEARCH_FOLDER } from '#ui/search/index/indexSite.ts';
import { loadApp, makePage, pathsOf } from './buildApp.ts';
import { filesBelow, PARTS, takeOver, takeOverAll } from './files.ts';
import { fileOfPage, keysOf, readKept, writeKept } from './pages.ts';

/**
 * @param before folder of the release whose code is the same
 * @param making folder of the new one, with its catalogue in it
 * @param told called with each file that is made or taken over
 * @returns how many pages were made anew
 * @throws Error where anything is not as the earlier release left it
 */
export async function renderAgain(
  before: string,
  making: string,
  told: (file: string) => void,
): Promise<number> {
  process.env[READ_FROM] = making;
  process.env[MADE_AGAIN] = 'yes';
  const render = join(making, PARTS.render);
  takeOverAll(join(before, PARTS.server), join(making, PARTS.server));
  takeOverAll(join(before, PARTS.render), render);
  const kept = readKept(render);
  const [from, to] = [join(before, PARTS.client), join(making, PARTS.client)];
  for (const name of filesBelow(from)) {
    if (!(name in kept.pages) && !name.startsWith(`${SEARCH_FOLDER}/`)) {
      takeOver(join(from, name), join(to, name));
    }
  }
  const app = await loadApp(render, kept);
  const paths = await pathsOf(app);
  let anew = 0;
  // Two at once, as pictures are made: a page takes its turn between their threads.
  await inTurn(paths, AT_ONCE, async (path) => {
    const file = fileOfPage(path);
    const same = path.cacheKey !== undefined && kept.pages[file] === path.cacheKey;
    if (same && existsSync(join(from, file))) takeOver(join(from, file), join(to, file));
    else {
      const bytes = await makePage(app, path);
      mkdirSync(dirname(join(to, file)), { recursive: true });
      writeFileSync(join(to, file), bytes);
      anew += 1;
    }
    told(file);
  });
  writeKept(render, { ...kept, pages: keysOf(paths) });
  return anew;
}
