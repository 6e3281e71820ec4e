/** The options of `size` as they are written, and how one is read. */
import type { LengthProblem, ParsedLength } from '#core/units/length.ts';
import { parseLength } from '#core/units/length.ts';
import type { LengthUnit } from '#core/units/unit.ts';

/** A length with the text it was written as. */
export type Given = { readonly mm: number; readonly text: string };

export type UsageProblem =
  | { readonly code: 'unknown-option'; readonly option: string; readonly near: string }
  | { readonly code: 'no-value'; readonly option: string }
  | { readonly code: 'not-a-flag'; readonly option: string }
  | { readonly code: 'no-piece' }
  | { readonly code: 'too-many-pieces'; readonly pieces: readonly string[] }
  | { readonly code: 'no-measure' }
  /** Options that say nothing beside another one. */
  | { readonly code: 'not-beside'; readonly options: readonly string[]; readonly beside: string }
  | { readonly code: 'only-beside'; readonly option: string; readonly beside: string }
  | { readonly code: 'too-many-measures'; readonly options: readonly string[] }
  | {
      readonly code: 'not-one-of';
      readonly option: string;
      readonly value: string;
      readonly choices: readonly string[];
    }
  | { readonly code: 'bad-number'; readonly option: string; readonly value: string }
  | { readonly code: 'bad-measure'; readonly option: string; readonly problem: LengthProblem };

const word = { type: 'string' } as const;
const flag = { type: 'boolean' } as const;
/** May be given more than once. */
const words = { type: 'string', multiple: true } as const;

/** Every option the command knows. */
export const KNOWN = {
  ...{ wrist: word, ankle: word, neck: word, length: word, place: word, aim: word },
  ...{ found: words, 'found-girth': words },
  ...{ sex: word, height: word, age: word },
  ...{ sit: word, hand: word, pick: word, quantity: word },
  ...{ unit: word, lang: word, content: word, rules: word },
  ...{ clasp: word, ring: word, pendant: word },
  ...{ json: flag, card: flag, help: { ...flag, short: 'h' } },
} as const;

export type Values = Readonly<Partial<Record<keyof typeof KNOWN, string | boolean | readonly string[]>>>;

export type OptionName = keyof typeof KNOWN;

/** Carries a problem out of the small readers below; caught in `readOptions`, never beyond. */
export class Usage extends Error {
  readonly problem: UsageProblem;
  constructor(problem: UsageProblem) {
    super(problem.code);
    this.problem = problem;
  }
}

export function oneOf<Name extends string>(
  values: Values,
  option: OptionName,
  choices: readonly Name[],
): Name | null {
  const value = values[option];
  if (value === undefined) return null;
  const found = choices.find((choice) => choice === value);
  if (found === undefined) throw new Usage({ code: 'not-one-of', option, value: String(value), choices });
  return found;
}

/** A written length. */
export function lengthOf(option: OptionName, value: string, fallback: LengthUnit): Given {
  const found: ParsedLength = parseLength(value, fallback);
  if (!found.ok) throw new Usage({ code: 'bad-measure', option, problem: found.problem });
  return { mm: found.mm, text: found.text };
}

export function length(values: Values, option: OptionName, fallback: LengthUnit): Given | null {
  const value = values[option];
  return value === undefined ? null : lengthOf(option, String(value), fallback);
}

export function text(values: Values, option: OptionName): string | null {
  const value = values[option];
  return value === undefined ? null : String(value);
}

export function number(values: Values, option: OptionName): number | null {
  const value = values[option];
  if (value === undefined) return null;
  if (!/^\d{1,4}(?:\.\d{1,3})?$/.test(String(value))) {
    throw new Usage({ code: 'bad-number', option, value: String(value) });
  }
  return Number(value);
}
