/** A vocabulary made ready to be looked things up in. */
import type { Lang } from '#words/lang.ts';
import type { Concept, Vocabulary } from './vocabulary.ts';
import { fold, soundOf, stem, wordsOf } from './fold.ts';
import { keyOf } from './keyOf.ts';
import { figuresIn, withFigures, type FigureOf } from './numberWords.ts';
import { tokensOf } from './tokens.ts';

type Roles = Vocabulary['roles'][Lang];
export type Role = keyof Roles;

/** What a word, or several said together, stand for. */
export type Sense =
  | { readonly as: 'concept'; readonly concept: Concept }
  | { readonly as: 'role'; readonly role: Role }
  /** A word of the pieces' own texts, as it is written there. */
  | { readonly as: 'word'; readonly word: string };

/** Something that a word may have been meant to be. */
export type Candidate = {
  readonly written: string;
  readonly key: string;
  /** What the ear keeps of it. */
  readonly sound: string;
  readonly sense: Sense;
  /** Of the language that the page isn't in. */
  readonly isForeign: boolean;
};

/** A piece's name, with what its words stand for in it. */
export type PieceName = {
  readonly written: string;
  /** Its folded words without space between. */
  readonly key: string;
  readonly senses: readonly Sense[];
};

export type Opened = {
  readonly vocabulary: Vocabulary;
  /** Names and roles, whole, by the folded words without space between; null for none. */
  readonly sense: (key: string) => Sense | null;
  /** Names less sure. */
  readonly loose: (key: string) => Sense | null;
  /** A word of the pieces' texts: the very same, or one with the same stem. */
  readonly word: (key: string, exactly?: boolean) => Sense | null;
  /** Words of a piece's name, by the folded words without space between; "40days" is one too. */
  readonly name: (key: string) => readonly Sense[] | null;
  readonly names: readonly PieceName[];
  /** Spellings too far off for their likeness to be seen: what was meant. */
  readonly slip: (key: string) => string | null;
  /** True for the word for a bead, which after a size says no more. */
  readonly isBead: (text: string) => boolean;
  /** True for a word that says a size without a measure, beside what is measured: "small". */
  readonly isRough: (key: string) => boolean;
  readonly figureOf: FigureOf;
  readonly keyOf: (term: string) => string;
  readonly candidates: readonly Candidate[];
};

/** Words that compare: put right only before a figure. */
export const COMPARING: readonly Role[] = ['under', 'over', 'between', 'about'];
/** Roles that a mistyped word may be put right to; the small words are too easily hit. */
const CORRECTED: readonly Role[] = [
  'elsewhere',
  'idle',
  'clasp',
  'wrist',
  'ankle',
  'neck',
  'size',
  ...COMPARING,
];

const termsIn = (list: string): string[] =>
  list
    .split(',')
    .map((term) => term.trim())
    .filter((term) => term !== '');

const candidate = (written: string, key: string, sense: Sense, isForeign = false): Candidate => ({
  written,
  key,
  sound: soundOf(key),
  sense,
  isForeign,
});

/** Keys and stems of one language's terms; what comes first stays. */
function lookup(entries: readonly (readonly [term: string, sense: Sense])[], lang: Lang) {
  const exact = new Map<string, Sense>();
  const stems = new Map<string, Sense>();
  for (const [term, sense] of entries) {
    const key = keyOf(term);
    const root = stem(key, lang);
    if (!exact.has(key)) exact.set(key, sense);
    if (!stems.has(root)) stems.set(root, sense);
  }
  return { exact, stems };
}

export function openVocabulary(vocabulary: Vocabulary): Opened {
  const { lang, concepts, roles } = vocabulary;
  const langs: readonly Lang[] = lang === 'de' ? ['de', 'en'] : ['en', 'de'];
  const named = (part: 'terms' | 'loose', of: Lang): (readonly [string, Sense])[] =>
    concepts.flatMap((concept) =>
      termsIn(concept[part][of]).map((term) => [term, { as: 'concept', concept }] as const),
    );
  const playing = (of: Lang): (readonly [string, Sense])[] =>
    (Object.keys(roles[of]) as Role[]).flatMap((role) =>
      termsIn(roles[of][role]).map((term) => [term, { as: 'role', role }] as const),
    );
  const entries = langs.map((of) => [...named('terms', of), ...playing(of)]);
  const strong = langs.map((of, at) => lookup(entries[at] ?? [], of));
  const weak = langs.map((of) => lookup(named('loose', of), of));
  const find = (all: typeof strong, key: string): Sense | null => {
    for (const { exact } of all) {
      const found = exact.get(key);
      if (found !== undefined) return found;
    }
    for (const [at, { stems }] of all.entries()) {
      const found = stems.get(stem(key, langs[at] ?? lang));
      if (found !== undefined) return found;
    }
    return null;
  };

  const texts = [...vocabulary.words.split(' '), ...wordsOf(vocabulary.names)].filter((word) => word !== '');
  const words = new Map<string, Sense>();
  const stems = new Map<string, Sense>();
  for (const word of texts) {
    const key = fold(word);
    const sense: Sense = { as: 'word', word };
    if (!words.has(key)) words.set(key, sense);
    const root = stem(key, lang);
    if (!stems.has(root)) stems.set(root, sense);
  }

  const figures = langs.map((of) => figuresIn(vocabulary.numbers[of]));
  const figureOf: FigureOf = (key) => figures.reduce<string | null>((found, one) => found ?? one(key), null);

  const names = vocabulary.names.split('\n').map((written): PieceName => {
    const senses = wordsOf(written).flatMap((one) => words.get(fold(one)) ?? []);
    return { written, key: keyOf(written), senses };
  });
  const inFigures = ({ written }: PieceName): string =>
    keyOf(withFigures(written, tokensOf(written), figureOf, () => false));
  const byKey = new Map(
    names.flatMap((name) => [inFigures(name), name.key].map((key) => [key, name.senses] as const)),
  );
  const slips = new Map(Object.entries(vocabulary.slips).map(([slip, meant]) => [keyOf(slip), meant]));
  const beads = new Set(langs.flatMap((of) => termsIn(roles[of].bead).map((one) => stem(keyOf(one), lang))));

  const rough = new Set(langs.flatMap((of) => termsIn(vocabulary.rough[of]).map(keyOf)));

  const candidates: Candidate[] = [];
  for (const [at, list] of entries.entries()) {
    for (const [written, sense] of list) {
      if (sense.as === 'role' && !CORRECTED.includes(sense.role)) continue;
      candidates.push(candidate(written, keyOf(written), sense, at > 0));
    }
  }
  for (const [key, sense] of words) {
    if (sense.as === 'word') candidates.push(candidate(sense.word, key, sense));
  }
  return {
    vocabulary,
    sense: (key) => find(strong, key),
    loose: (key) => find(weak, key),
    word: (key, exactly = false) => words.get(key) ?? (exactly ? null : (stems.get(stem(key, lang)) ?? null)),
    name: (key) => byKey.get(key) ?? null,
    names,
    slip: (key) => slips.get(key) ?? null,
    isBead: (text) => beads.has(stem(keyOf(text), lang)),
    isRough: (key) => rough.has(key),
    figureOf,
    keyOf,
    candidates,
  };
}
