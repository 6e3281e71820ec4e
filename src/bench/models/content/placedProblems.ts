/** Problems of a save, each at the field it is about; those of other entries apart, with where they are mended. */
import { explain, fieldName, type Problem } from '#catalogue/read/problem.ts';
import type { CatalogueSentence } from '#words/catalogueCodes.ts';
import type { Lang } from '#words/lang.ts';
import { allNodes, type FormNode } from '../../intake/contentForm/formTree.ts';
import type { Opened } from '../../content/entry.ts';

export type PlacedProblem = CatalogueSentence & {
  /** Control that it stands at; null where it is about the entry as a whole. */
  readonly key: string | null;
};

export type OtherProblem = CatalogueSentence & {
  /** `pieces/ford.yaml, sections 2, beads 1` */
  readonly place: string;
  /** Page of the entry; null where there is none. */
  readonly href: `/${string}` | null;
};

export type Placed = { readonly own: readonly PlacedProblem[]; readonly others: readonly OtherProblem[] };

/** The page of the entry that a problem is about. */
function pageOf({ file, field }: Problem): `/${string}` | null {
  const [folder, language, ...rest] = file.split('/');
  const id = (file.split('/').at(-1) ?? '').replace(/\.[^.]*$/, '');
  const [entry = ''] = field.split(', ');
  if (folder === 'pieces') return `/bench/pieces/${id}/words/`;
  if (folder === 'components' && entry !== '') return `/bench/trays/${entry}/`;
  if (folder === 'wires' && entry !== '') return `/bench/wires/${entry}/`;
  if (folder === 'guides' && rest.length > 0) return `/bench/guides/${language}/${id}/`;
  return file === 'shop.yaml' ? '/bench/shop/' : null;
}

/** Where a field stands on the form; the nearest thing round it where it has no control. */
function keyAt(field: string, names: ReadonlyMap<string, string>): string | null {
  for (let name = field; name !== '';) {
    const key = names.get(name);
    if (key !== undefined) return key;
    // `sections 2, beads 1` stands in `sections 2, beads`, that in `sections 2`.
    const shorter = name.replace(/(?: \d+|, [^,]*)$/, '');
    if (shorter === name) return null;
    name = shorter;
  }
  return null;
}

/** Of a problem of the whole entry, the field that its mending begins with. */
const meantField = ({ error }: Problem): string | null =>
  'field' in error ? error.field : error.code === 'size-or-both' ? 'size' : null;

/** @param offered whether a node has a control on the form */
export function placeProblems(
  problems: readonly Problem[],
  { file, base }: Pick<Opened, 'file' | 'base'>,
  nodes: readonly FormNode[],
  offered: (node: FormNode) => boolean,
  lang: Lang,
): Placed {
  const within = fieldName(base);
  const isOwn = (one: Problem): boolean =>
    one.file === file && (within === '' || one.field === within || one.field.startsWith(`${within}, `));
  const there = allNodes(nodes).filter(offered);
  const names = new Map(there.map(({ key, path }) => [fieldName([...base, ...path]), key]));
  const keyOf = (one: Problem): string | null => {
    const meant = one.field === within ? meantField(one) : null;
    return (meant === null ? null : names.get(fieldName([...base, meant]))) ?? keyAt(one.field, names);
  };
  return {
    own: problems.filter(isOwn).map((one) => ({ ...explain(one, lang), key: keyOf(one) })),
    others: problems
      .filter((one) => !isOwn(one))
      .map((one) => ({
        ...explain(one, lang),
        place: one.field === '' ? one.file : `${one.file}, ${one.field}`,
        href: pageOf(one),
      })),
  };
}
