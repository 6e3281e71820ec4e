/** The words a piece is found by: those of its texts that nothing else stands for. */
import { designIn, textsOf, wireKey, type Piece, type Shop } from '#catalogue/model/catalogue.ts';
import { lookedFor } from '#catalogue/facts/facets.ts';
import { LANGS, type Lang } from '#words/lang.ts';
import { searchWords, type SearchWords } from '#words/words.ts';
import { fold, wordsOf } from '../reading/fold.ts';
import { openVocabulary, type Opened } from '../reading/open.ts';
import type { Vocabulary } from '../reading/vocabulary.ts';
import { conceptsOf } from './concepts.ts';

/** What of a piece is looked through: what its page shows of it; or at the bench crimps and rings too, and English beside German. */
export type Reach = 'page' | 'bench';

/** Names and roles alone, by language: which words are read as something else than themselves. */
const openedTerms = new Map<Lang, Opened>();

type Roles = SearchWords['roles'];
/** Words by which a wish is put together; of the language that a page isn't in, no others are understood. */
const JOINING: readonly (keyof Roles)[] = [
  ...(['stop', 'not', 'free', 'or', 'under', 'over', 'between', 'about', 'less', 'more'] as const),
  ...(['wrist', 'ankle', 'neck', 'size', 'bead', 'clasp'] as const),
];

const joining = (roles: Roles): Roles =>
  Object.fromEntries(
    Object.entries(roles).map(([role, words]) => [role, JOINING.includes(role as keyof Roles) ? words : '']),
  ) as Roles;

/** What is understood in either language, whichever the page speaks; each word costs who searches. */
export function inBothLangs(lang: Lang): Pick<Vocabulary, 'roles' | 'rough' | 'numbers'> {
  const [en, de] = [searchWords('en'), searchWords('de')];
  return {
    roles: {
      en: lang === 'en' ? en.roles : joining(en.roles),
      de: lang === 'de' ? de.roles : joining(de.roles),
    },
    rough: { en: en.rough, de: de.rough },
    numbers: { en: en.numbers, de: de.numbers },
  };
}

function termsOf(shop: Shop, lang: Lang): Opened {
  const known = openedTerms.get(lang);
  if (known !== undefined) return known;
  const none = { words: '', names: '', slips: {} };
  const concepts = conceptsOf({ pieces: [], shop }, lang);
  const { said } = searchWords(lang);
  const opened = openVocabulary({
    lang,
    concepts,
    ...inBothLangs(lang),
    said,
    currency: shop.rules.currency,
    ready: '',
    ...none,
  });
  openedTerms.set(lang, opened);
  return opened;
}

/** Names of a piece and of what it is made of. */
function namesOf(piece: Piece, lang: Lang, reach: Reach): readonly string[] {
  const inLang = designIn(piece, lang);
  if (reach === 'page') return [textsOf(piece, lang).name, ...lookedFor(inLang).map(({ name }) => name)];
  const parts = [inLang, piece.design].flatMap(({ components, wire }) => [
    ...Object.values(components),
    wire,
  ]);
  return [...LANGS.map((of) => textsOf(piece, of).name), ...parts.map(({ name }) => name)];
}

export type PieceWords = {
  /** Of its own name. */
  readonly name: readonly string[];
  readonly others: readonly string[];
  /** Its own, at the bench also of what it is made of that would be read as something else if it weren’t for them. */
  readonly whole: readonly string[];
};

/** Within a measure nobody looks for them alone: "8 mm", "11/0". */
const OF_MEASURES = /^(?:\d+|mm|cm|in)$/;

/**
 * What the index and the bench hold of a piece. Kinds, materials and colours are asked for by filters,
 * figures of measures and small words by nobody: they stand here only as parts of a piece's name.
 */
export function pieceWords(piece: Piece, shop: Shop, lang: Lang, reach: Reach = 'page'): PieceWords {
  const { sense } = termsOf(shop, lang);
  const plain = (word: string): boolean => sense(fold(word)) === null;
  const names = namesOf(piece, lang, reach);
  const ownNames =
    reach === 'page' ? [textsOf(piece, lang).name] : LANGS.map((of) => textsOf(piece, of).name);
  // At the bench, which nothing has to be fetched for, what it is made of is asked for by its whole name too.
  const own = reach === 'page' ? ownNames : names;
  const whole = [...ownNames, ...own.filter((one) => !wordsOf(one).every(plain))];
  const { name, summary, story } = textsOf(piece, lang);
  const shown = lookedFor(piece.design).map(({ id }) => id);
  const { components, wire } = piece.design;
  const made = [...Object.keys(components), wireKey(wire.id)];
  const numbers = Object.entries(piece.partNumbers)
    .filter(([id]) => (reach === 'bench' ? made.includes(id) : shown.includes(id)))
    .map(([, number]) => number);
  const texts = wordsOf([...names, summary, story, ...numbers].join(' ')).filter(plain);
  const named = wordsOf(name);
  const others = [...new Set([...wordsOf(own.join(' ')), ...texts])].filter(
    (word) => !named.includes(word) && !OF_MEASURES.test(word),
  );
  return { name: named, others, whole };
}
