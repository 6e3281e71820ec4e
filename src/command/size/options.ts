/** The command line of `size`, read into plain data. */
import { parseArgs } from 'node:util';
import { near } from '#catalogue/read/near.ts';
import type { Aim } from '#core/body/place.ts';
import { SEXES, type Sex } from '#core/body/neckBase.ts';
import {
  HANDS,
  MEASURES,
  PICKS,
  SITS,
  type Hand,
  type Measure,
  type Pick,
  type Sit,
} from '#core/design/choice.ts';
import type { Fitted } from '#core/design/choice.ts';
import { SHOWN_UNITS, type LengthUnit, type ShownUnit } from '#core/units/unit.ts';
import { LANGS } from '#words/lang.ts';
import type { Lang } from '#words/lang.ts';
import { KNOWN, length, lengthOf, number, oneOf, text, Usage } from './fields.ts';
import type { Given, OptionName, UsageProblem, Values } from './fields.ts';
import type { SwapRequest } from './swap.ts';

/** Where on the body: a landmark, or a drop below the pit of the neck. */
export type Place = 'pit' | 'bust' | 'navel' | Given;

export type Wanted =
  | { readonly by: 'measure'; readonly of: Measure['of']; readonly given: Given }
  /** One measure for all strands, or one for each. */
  | { readonly by: 'found'; readonly of: Fitted; readonly given: readonly Given[] }
  | { readonly by: 'place'; readonly place: Place; readonly aim: Aim | null };

export type Options = {
  /** Piece id, or `-` for a design on standard input. */
  readonly piece: string;
  readonly wanted: Wanted;
  readonly wearer: {
    readonly sex: Sex;
    readonly neck: Given | null;
    readonly height: Given | null;
    readonly ageYears: number | null;
  };
  readonly sit: Sit;
  readonly hand: Hand;
  readonly pick: Pick;
  readonly quantity: number;
  /** Unit to answer in; null for the one the measure was written in. */
  readonly unit: ShownUnit | null;
  readonly lang: Lang;
  readonly json: boolean;
  readonly card: boolean;
  /** Content folder; null for the shop's own. */
  readonly content: string | null;
  /** File with rules in the place of the shop's; null for the shop's own. */
  readonly rules: string | null;
  /** Parts to swap. */
  readonly swap: SwapRequest;
};

export type Read =
  | { readonly ok: true; readonly options: Options }
  | { readonly ok: 'help'; readonly lang: Lang }
  | { readonly ok: false; readonly lang: Lang; readonly problem: UsageProblem };

const FOUND = ['found', 'found-girth'] as const;
const NOT_BESIDE_FOUND = [
  'aim',
  'sex',
  'height',
  'age',
  'sit',
  'hand',
  'pick',
  'quantity',
  'card',
  'rules',
  'pendant',
] as const;
const LANDMARKS = ['pit', 'bust', 'navel'] as const;

function place(values: Values, fallback: LengthUnit): Place | null {
  const named = LANDMARKS.find((landmark) => landmark === values.place);
  return named ?? length(values, 'place', fallback);
}

/** The counts of a finished piece hang on no wearer, no sit and no shop's rules. */
function foundBy(values: Values, option: (typeof FOUND)[number], fallback: LengthUnit): Wanted {
  const options = NOT_BESIDE_FOUND.filter((name) => values[name] !== undefined);
  if (options.length > 0) throw new Usage({ code: 'not-beside', options, beside: option });
  const written = (values[option] ?? []) as readonly string[];
  const given = written.map((value) => lengthOf(option, value, fallback));
  return { by: 'found', of: option === 'found' ? 'length' : 'girth', given };
}

/** What is wanted: a place, or exactly one measure. A neck beside a place or a length is the wearer's. */
function wanted(values: Values, fallback: LengthUnit): Wanted {
  const at = place(values, fallback);
  const given = MEASURES.filter((of) => values[of] !== undefined);
  const asked = at !== null || given.includes('length') ? given.filter((of) => of !== 'neck') : given;
  const measured = FOUND.filter((option) => values[option] !== undefined);
  const options: readonly string[] = [...(at === null ? [] : ['place']), ...asked, ...measured];
  if (options.length > 1) throw new Usage({ code: 'too-many-measures', options });
  if (at !== null) return { by: 'place', place: at, aim: oneOf(values, 'aim', ['strand', 'pendant']) };
  const [back] = measured;
  if (back !== undefined) return foundBy(values, back, fallback);
  if (values.aim !== undefined) throw new Usage({ code: 'only-beside', option: 'aim', beside: 'place' });
  const of = asked[0];
  const found = of === undefined ? null : length(values, of, fallback);
  if (of === undefined || found === null) throw new Usage({ code: 'no-measure' });
  return { by: 'measure', of, given: found };
}

function onePiece(positionals: readonly string[]): string {
  const [piece, ...more] = positionals;
  if (piece === undefined) throw new Usage({ code: 'no-piece' });
  if (more.length > 0) throw new Usage({ code: 'too-many-pieces', pieces: positionals });
  return piece;
}

function read(values: Values, positionals: readonly string[], lang: Lang): Options {
  const unit = oneOf(values, 'unit', SHOWN_UNITS);
  const fallback = unit ?? 'in';
  return {
    piece: onePiece(positionals),
    wanted: wanted(values, fallback),
    wearer: {
      sex: oneOf(values, 'sex', SEXES) ?? 'unstated',
      neck: length(values, 'neck', fallback),
      height: length(values, 'height', fallback),
      ageYears: number(values, 'age'),
    },
    sit: oneOf(values, 'sit', SITS) ?? 'easy',
    hand: oneOf(values, 'hand', HANDS) ?? 'right',
    pick: oneOf(values, 'pick', PICKS) ?? 'best',
    quantity: number(values, 'quantity') ?? 1,
    unit,
    lang,
    json: values.json === true,
    card: values.card === true,
    content: text(values, 'content'),
    rules: text(values, 'rules'),
    swap: { clasp: text(values, 'clasp'), ring: text(values, 'ring'), pendant: text(values, 'pendant') },
  };
}

/** Language to speak in, even of a command line that can't be read. */
function langOf(argv: readonly string[]): Lang {
  const at = argv.findIndex((arg) => arg === '--lang' || arg.startsWith('--lang='));
  const value = argv[at]?.includes('=') === true ? argv[at]?.split('=')[1] : argv[at + 1];
  return LANGS.find((lang) => at >= 0 && lang === value) ?? 'en';
}

/** What the parser makes of the arguments, problems as codes. */
function parse(argv: readonly string[]): {
  readonly values: Values;
  readonly positionals: readonly string[];
} {
  const found = parseArgs({
    ...{ args: [...argv], options: KNOWN, allowPositionals: true, strict: false, tokens: true },
  });
  for (const token of found.tokens) {
    if (token.kind !== 'option') continue;
    const { name: option, value } = token;
    const known = Object.hasOwn(KNOWN, option) ? KNOWN[option as OptionName] : undefined;
    if (known === undefined) {
      throw new Usage({
        code: 'unknown-option',
        option: token.rawName,
        near: near(option, Object.keys(KNOWN)),
      });
    }
    if (known.type === 'boolean' && value !== undefined) throw new Usage({ code: 'not-a-flag', option });
    // An option in the place of a value is a value forgotten; `--wrist=-6` hands the dash over, to be refused as a measure.
    const forgotten = value === undefined || (!token.inlineValue && /^-./.test(value));
    if (known.type === 'string' && forgotten) throw new Usage({ code: 'no-value', option });
  }
  // Every option is known and of its type: the loop above has seen to it.
  return { values: found.values as Values, positionals: found.positionals };
}

/** Read the arguments after the command's name. Never throws. */
export function readOptions(argv: readonly string[]): Read {
  const lang = langOf(argv);
  try {
    const { values, positionals } = parse(argv);
    if (values.help === true) return { ok: 'help', lang };
    oneOf(values, 'lang', LANGS);
    return { ok: true, options: read(values, positionals, lang) };
  } catch (error) {
    if (error instanceof Usage) return { ok: false, lang, problem: error.problem };
    throw error;
  }
}
