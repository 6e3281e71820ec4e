/** The ways to look through the shop: by kind, material, colour, bead and year, each with its groups. */
import { componentNameIn, type Catalogue, type Piece } from '#catalogue/model/catalogue.ts';
import { facetsOf, lookedFor } from '#catalogue/facts/facets.ts';
import { colourName, materialName } from '#words/goods.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords } from '#words/words.ts';

/** One list: `/materials/glass/`. */
export type Group = {
  readonly key: string;
  readonly name: string;
  /** Heading of the group's own page. */
  readonly title: string;
  /** Newest first, past ones after those that can be had. */
  readonly pieces: readonly Piece[];
};

/** One way to look through: `/materials/`. */
export type Grouping = {
  readonly by: By;
  readonly title: string;
  readonly lead: string;
  readonly groups: readonly Group[];
};

export const BY = ['kinds', 'materials', 'colours', 'beads', 'years'] as const;
export type By = (typeof BY)[number];

type Named = { readonly key: string; readonly name: string; readonly title: string };

/** Keys under which a piece stands in each way. */
function keysOf(piece: Piece): Readonly<Record<By, readonly string[]>> {
  const { kind, materials, colours, year } = facetsOf(piece);
  return {
    kinds: [kind],
    materials,
    colours,
    beads: lookedFor(piece.design).map(({ id }) => id),
    years: [String(year)],
  };
}

function collect(pieces: readonly Piece[]): Readonly<Record<By, ReadonlyMap<string, readonly Piece[]>>> {
  const found = Object.fromEntries(BY.map((by) => [by, new Map<string, Piece[]>()])) as Record<
    By,
    Map<string, Piece[]>
  >;
  const inOrder = [...pieces].sort((a, b) => Number(a.status === 'past') - Number(b.status === 'past'));
  for (const piece of inOrder) {
    const keys = keysOf(piece);
    for (const by of BY) {
      for (const key of new Set(keys[by])) {
        const list = found[by].get(key);
        if (list === undefined) found[by].set(key, [piece]);
        else list.push(piece);
      }
    }
  }
  return found;
}

function namer(by: By, catalogue: Catalogue, lang: Lang): (key: string) => Named {
  const { list, kindsMany } = pageWords(lang);
  const named = (key: string, name: string, title: string): Named => ({ key, name, title });
  return (key) => {
    if (by === 'kinds') {
      const name = kindsMany[key as keyof typeof kindsMany];
      return named(key, name, list.kind(name));
    }
    if (by === 'materials') {
      const name = materialName(key, lang);
      return named(key, name, list.material(name));
    }
    if (by === 'colours') {
      const name = colourName(key, lang);
      return named(key, name, list.colour(name));
    }
    if (by === 'beads') {
      const name = componentNameIn(catalogue, key, lang);
      return named(key, name, list.bead(name));
    }
    return named(key, key, list.year(key));
  };
}

/** Every way to look through the catalogue, groups by name (years newest first). */
export function groupings(catalogue: Catalogue, lang: Lang): readonly Grouping[] {
  const words = pageWords(lang).list;
  const found = collect(catalogue.pieces);
  const titles: Readonly<Record<By, readonly [string, string]>> = {
    kinds: [words.kindsTitle, words.kindsLead],
    materials: [words.materials, words.materialsLead],
    colours: [words.colours, words.coloursLead],
    beads: [words.beads, words.beadsLead],
    years: [words.yearsTitle, words.yearsLead],
  };
  return BY.map((by) => {
    const name = namer(by, catalogue, lang);
    const groups = [...found[by]].map(([key, pieces]) => ({ ...name(key), pieces }));
    groups.sort((a, b) => (by === 'years' ? b.key.localeCompare(a.key) : a.name.localeCompare(b.name, lang)));
    const [title, lead] = titles[by];
    return { by, title, lead, groups };
  });
}
