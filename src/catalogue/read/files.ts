/** The files of a content folder, by what they hold. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Folder } from './folder.ts';

export type ContentFiles = {
  readonly shop: string;
  readonly components: readonly string[];
  readonly wires: readonly string[];
  readonly pieces: readonly string[];
  readonly guides: readonly string[];
  /** Files that lie there and aren't read, for their ending. */
  readonly misnamed: readonly Misnamed[];
};

type Misnamed = { readonly file: string; readonly ending: string; readonly wanted: string };

/** Endings that a text may have been saved under by an editor; pictures lie beside pieces and have their own. */
const TEXT_ENDING = /\.(?:ya?ml|ya?ml\.txt|md\.txt|txt|json|md|markdown|mdx)$/i;

/** Names that begin with a point or an underscore, or lie in such a folder. */
export const isDraft = (name: string): boolean => /(^|\/)[._]/.test(name);

/** Names below a folder that aren't drafts, sorted, with forward slashes; none where the folder isn't there. */
function under({ path, overlay }: Folder, part: string): string[] {
  let names: string[] = [];
  try {
    names = readdirSync(join(path, part), { recursive: true }) as string[];
  } catch {
    // What isn't there yet may be about to be.
  }
  const lying = names.map((name) => `${part}/${name.replaceAll('\\', '/')}`);
  const unsaved = [...overlay.keys()].filter((file) => file.startsWith(`${part}/`));
  return [...new Set([...lying, ...unsaved])]
    .filter((name) => overlay.get(name) !== null)
    .filter((name) => !isDraft(name))
    .sort();
}

/** What there is to read. Names that begin with a point or an underscore are drafts and left out. */
export function contentFiles(folder: Folder): ContentFiles {
  const misnamed: Misnamed[] = [];
  const of = (part: string, wanted: string): string[] =>
    under(folder, part).filter((file) => {
      const fits = file.endsWith(wanted);
      const [ending] = TEXT_ENDING.exec(file) ?? [];
      if (!fits && ending !== undefined) misnamed.push({ file, ending, wanted });
      return fits;
    });
  return {
    shop: 'shop.yaml',
    components: of('components', '.yaml'),
    wires: of('wires', '.yaml'),
    pieces: of('pieces', '.yaml'),
    guides: of('guides', '.md'),
    misnamed,
  };
}
