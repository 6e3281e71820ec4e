/** How the board speaks: words and formats of one language, and names as the maker reads them. */
import type { ValidationError } from '#core/design/validationError.ts';
import { formatFor, type Format } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { board as boardDe } from '#words/de/board.ts';
import { designProblems as designDe } from '#words/de/design.ts';
import { goods as goodsDe } from '#words/de/goods.ts';
import { sized as sizedDe } from '#words/de/sized.ts';
import { stringing as stringingDe } from '#words/de/stringing.ts';
import { board as boardEn } from '#words/en/board.ts';
import { designProblems as designEn } from '#words/en/design.ts';
import { goods as goodsEn } from '#words/en/goods.ts';
import { sized as sizedEn } from '#words/en/sized.ts';
import { stringing as stringingEn } from '#words/en/stringing.ts';
import { sentenceOf } from '#words/sentence.ts';
import type { BoardInput } from './input.ts';
import { nameIn } from './panel.ts';

/** Both languages come with the board: it is served on the maker's own machine. */
const WORDS = {
  en: { board: boardEn, design: designEn, goods: goodsEn, sized: sizedEn, stringing: stringingEn },
  de: { board: boardDe, design: designDe, goods: goodsDe, sized: sizedDe, stringing: stringingDe },
} satisfies Record<Lang, unknown>;

export type Talk = {
  readonly words: typeof boardEn;
  readonly said: typeof stringingEn;
  readonly sized: typeof sizedEn;
  readonly f: Format;
  /** A component's name by its id. */
  readonly nameOf: (id: string) => string;
  readonly wireName: (id: string) => string;
  readonly materialName: (material: string) => string;
  /** What is wrong with a design, with names instead of ids. */
  readonly wrong: (error: ValidationError) => string;
};

/** Fields of an error that hold a component's id. */
const IDS = ['component', 'crimp', 'cover', 'clasp', 'ring', 'hangs'] as const;

export function talkFor(input: BoardInput): Talk {
  const { lang, unit, rules, names, trays } = input;
  const { board: words, design, goods, sized, stringing } = WORDS[lang];
  const materials: Readonly<Record<string, string>> = goods.materials;
  const nameOf = (id: string): string => nameIn(input, id);
  const wireName = (id: string): string => names[`wire/${id}`] ?? trays.wires[id]?.name ?? id;
  const named = (error: ValidationError): ValidationError => {
    const fields: Record<string, unknown> = { ...error };
    for (const field of IDS) {
      if (typeof fields[field] === 'string') fields[field] = nameOf(fields[field]);
    }
    if (typeof fields['wire'] === 'string') fields['wire'] = wireName(fields['wire']);
    return fields as ValidationError;
  };
  return {
    words,
    said: stringing,
    sized,
    f: formatFor(lang, unit, rules.currency),
    nameOf,
    wireName,
    materialName: (material) => materials[material] ?? material,
    wrong: (error) => sentenceOf(design, named(error)),
  };
}
