/** The files of a content folder, by what they hold. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';

export type ContentFiles = {
  readonly shop: string;
  readonly components: readonly string[];
  readonly wires: readonly string[];
  readonly pieces: readonly string[];
  readonly guides: readonly string[];
};

/** Files of one kind below a folder, sorted, with forward slashes; none where the folder isn't there. */
function under(folder: string, part: string, ending: string): string[] {
  let names: string[];
  try {
    names = readdirSync(join(folder, part), { recursive: true }) as string[];
  } catch {
    return [];
  }
  return names
    .map((name) => `${part}/${name.replaceAll('\\', '/')}`)
    .filter((name) => name.endsWith(ending) && !/(^|\/)[._]/.test(name))
    .sort();
}

/** What there is to read. Names that begin with a point or an underscore are drafts and left out. */
export function contentFiles(folder: string): ContentFiles {
  return {
    shop: 'shop.yaml',
    components: under(folder, 'components', '.yaml'),
    wires: under(folder, 'wires', '.yaml'),
    pieces: under(folder, 'pieces', '.yaml'),
    guides: under(folder, 'guides', '.md'),
  };
}
