/** What a form of the content is shown with: names of fields, problems at them, choices among her parts. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { componentNameIn, partNamesIn, wireKey } from '#catalogue/model/catalogue.ts';
import type { FieldKind } from '#catalogue/fields/kind.ts';
import { COUNTRIES } from '#core/post/countries.ts';
import { DENSITY_G_PER_CM3 } from '#core/design/mass/density.ts';
import type { CatalogueSentence } from '#words/catalogueCodes.ts';
import type { Lang } from '#words/lang.ts';
import { contentFormWords, goodsWords, type ContentFormWords } from '#words/words.ts';
import type { FormNode } from '../../intake/contentForm/formTree.ts';
import type { EntrySheet } from './editEntry.ts';
import { isOffered, needOf, type Need } from './entrySchemas.ts';
import { choiceOf, hintOf, labelOf } from './fieldNames.ts';
import type { Frame } from '../frame.ts';

export type Choice = { readonly value: string; readonly label: string };

export type FormFace = {
  /** What the entry is called; its short name where it has no name. */
  readonly title: string;
  readonly words: ContentFormWords;
  readonly lang: Lang;
  readonly currency: string;
  /** A country by its two letters, or everywhere else as it is written. */
  readonly country: (code: string) => string;
  readonly offered: (node: FormNode) => boolean;
  readonly need: (node: FormNode) => Need;
  readonly label: (node: Pick<FormNode, 'path'>) => string;
  readonly hint: (node: Pick<FormNode, 'path'>) => string | null;
  /** What may be chosen; none for what is typed. */
  readonly choices: (node: Extract<FormNode, { readonly shape: FieldKind }>) => readonly Choice[];
  readonly problems: (key: string) => readonly CatalogueSentence[];
  /** What somebody else wrote there meanwhile; null where nobody did. */
  readonly now: (key: string) => string | null;
};

/** @param catalogue hers as it lies there; null where it can't be read, and no part can be chosen by name */
export function formFace(
  sheet: EntrySheet,
  catalogue: Catalogue | null,
  { lang, shop, format }: Frame,
): FormFace {
  const words = contentFormWords(lang);
  const { kind } = sheet.key;
  const parts = (of: readonly string[] | 'wire'): Choice[] => partChoices(catalogue, of, lang);
  return {
    title: titleOf(sheet),
    ...{ words, lang, currency: shop.rules.currency },
    country: (code) => (COUNTRIES.includes(code) ? format.country(code) : code),
    offered: isOffered(kind, sheet.nodes),
    need: needOf(kind, sheet.nodes),
    label: ({ path }) => labelOf(words.labels, kind, path),
    hint: ({ path }) => hintOf(words.hints, kind, path),
    choices: ({ shape, path }) => {
      if (shape.kind === 'idOf') return parts(shape.of);
      if (shape.kind === 'material') return materials(lang);
      if (shape.kind !== 'oneOf') return [];
      return shape.options.map((value) => ({ value, label: choiceOf(words.options, kind, path, value) }));
    },
    problems: (key) => sheet.placed.own.filter((one) => one.key === key),
    now: (key) => sheet.clashes.find((one) => one.key === key)?.now ?? null,
  };
}

function titleOf({ nodes, key }: EntrySheet): string {
  const named = nodes.find((node) => node.key === 'name' || node.key === 'title');
  return named?.node === 'value' && named.shown !== '' ? named.shown : key.id;
}

const byLabel = (lang: Lang) => (one: Choice, other: Choice) => one.label.localeCompare(other.label, lang);

function partChoices(catalogue: Catalogue | null, of: readonly string[] | 'wire', lang: Lang): Choice[] {
  if (catalogue === null) return [];
  const names = partNamesIn(catalogue, lang);
  const all =
    of === 'wire'
      ? Object.values(catalogue.wires).map(({ id, name }) => ({
          value: id,
          label: names[wireKey(id)] ?? name,
        }))
      : Object.values(catalogue.components)
          .filter(({ kind }) => of.includes(kind))
          .map(({ id }) => ({ value: id, label: componentNameIn(catalogue, id, lang) }));
  return all.sort(byLabel(lang));
}

function materials(lang: Lang): Choice[] {
  const said: Readonly<Record<string, string>> = goodsWords(lang).materials;
  const all = Object.keys(DENSITY_G_PER_CM3).map((value) => ({ value, label: said[value] ?? value }));
  return all.sort(byLabel(lang));
}
