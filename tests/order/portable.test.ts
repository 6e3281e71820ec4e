/** The published schemas load in validators of other languages: their patterns are written in what all of those read. */
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EMAIL_OR_NONE, LINE, NAME, NOTE } from '#order/fields.ts';
import { anyOrder } from './orders.ts';

const FOLDER = 'public/schema';

/** Every regular expression in a schema: values of `pattern` and keys of `patternProperties`. */
function patternsIn(value: unknown): string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]: [string, unknown]) => {
    if (key === 'pattern' && typeof inner === 'string') return [inner];
    const keys = key === 'patternProperties' ? Object.keys(inner as object) : [];
    return [...keys, ...patternsIn(inner)];
  });
}

const schemas = readdirSync(FOLDER).map((name) => ({
  name,
  patterns: patternsIn(JSON.parse(readFileSync(join(FOLDER, name), 'utf8'))),
}));
const patterns = [...new Set(schemas.flatMap((schema) => schema.patterns))];

/**
 * What ECMA-262, Python's `re`, RE2, Java and .NET read alike: escapes of punctuation
 * and of two hexadecimal digits, classes without a bare bracket inside, groups that
 * only group. Not `\p`, and not `\d`, `\s`, `\w`, which mean other characters in each.
 */
const ESCAPE = /\\(?:x[0-9A-F]{2}|[.[\]\\()])/.source;
const PORTABLE = new RegExp(
  `^(?:${ESCAPE}|\\[\\^?(?:${ESCAPE}|[^\\\\[\\]])+\\]|\\((?:\\?:|(?!\\?))|[^\\\\[\\](])*$`,
  'u',
);

const python = spawnSync('python3', ['--version']).status === 0;

/** Asks Python's `re` of each pattern which texts it finds in; throws what Python says where one doesn't compile. */
function foundByPython(
  asked: readonly (readonly [pattern: string, texts: readonly string[]])[],
): boolean[][] {
  const program =
    'import json, re, sys, warnings; warnings.simplefilter("error"); ' +
    'print(json.dumps([[bool(re.search(p, t)) for t in ts] for p, ts in json.load(sys.stdin)]))';
  const run = spawnSync('python3', ['-c', program], { input: JSON.stringify(asked), encoding: 'utf8' });
  if (run.status !== 0) throw new Error(run.stderr);
  return JSON.parse(run.stdout) as boolean[][];
}

/** Patterns of the newest order by the field they stand at. */
type Node = { readonly properties: Readonly<Record<string, Node>>; readonly pattern: string };
const order = JSON.parse(readFileSync(join(FOLDER, 'order-4.json'), 'utf8')) as Node;
const at = (...path: string[]): string =>
  path.reduce<Node | undefined>((node, key) => node?.properties[key], order)?.pattern ?? '';

/** Texts that a buyer may write, and what the schema still refuses. */
const FIELDS = [
  {
    field: 'measure.text',
    pattern: at('measure', 'text'),
    strict: LINE,
    takes: ['', '6 1/2 in', '16,5 cm – knapp'],
    refuses: ['a\tb', 'a\nb', '\u0085'],
  },
  {
    field: 'buyer.name',
    pattern: at('buyer', 'name'),
    strict: NAME,
    takes: ['Iris Møller', 'Ø', 'ª', '李', '’t Hooft', '7', '𐐷'],
    refuses: ['', ' ', '-', '§', 'Iris\nBcc: x', 'a\u0000'],
  },
  {
    field: 'buyer.email',
    pattern: at('buyer', 'email'),
    strict: EMAIL_OR_NONE,
    takes: ['', 'iris@example.org', 'iris.møller@post.example.org'],
    refuses: [
      'iris',
      'a@b',
      'a b@c.de',
      'a@b.c\r\nBcc: x',
      '"a"@b.de',
      'a[1]@b.de',
      'a@@b.de',
      'a@b..de',
      'a\\@b.de',
    ],
  },
  {
    field: 'buyer.note',
    pattern: at('buyer', 'note'),
    strict: NOTE,
    takes: ['', 'one\n\ttwo', 'für Ännchen 🎀'],
    refuses: ['a\rb', 'a\u0007', '\u009f'],
  },
] as const;

describe('the published schemas', () => {
  it('hold patterns, and only such as other languages read alike', () => {
    expect(patterns.length).toBeGreaterThan(8);
    for (const { name, patterns: own } of schemas) {
      expect(
        own.filter((pattern) => !PORTABLE.test(pattern)),
        name,
      ).toEqual([]);
    }
  });

  it.each([
    ...[LINE, NAME, NOTE, EMAIL_OR_NONE].map(({ source }) => source),
    ...['\\d', '[\\s]', '[a[b]', '(?=a)', '(?<n>a)', '\\u00e9'],
  ])('would be found out with %s', (pattern) => {
    expect(PORTABLE.test(pattern)).toBe(false);
  });

  it.each(FIELDS)('ask of $field nearly what the check asks', ({ pattern, strict, takes, refuses }) => {
    const loose = new RegExp(pattern, 'u');
    for (const text of takes) expect([text, strict.test(text), loose.test(text)]).toEqual([text, true, true]);
    for (const text of refuses)
      expect([text, strict.test(text), loose.test(text)]).toEqual([text, false, false]);
  });

  it.each(FIELDS)('take at $field whatever the check takes', ({ pattern, strict }) => {
    const loose = new RegExp(pattern, 'u');
    let judged = 0;
    const judge = (text: string): void => {
      if (!strict.test(text)) return;
      judged += 1;
      expect(loose.test(text)).toBe(true);
    };
    for (let code = 0; code <= 0x10ffff; code += 1) {
      const one = String.fromCodePoint(code);
      if (strict.test(one) && !loose.test(one)) throw new Error(`refuses U+${code.toString(16)}`);
    }
    fc.assert(
      fc.property(anyOrder, ({ buyer, measure }) => {
        [buyer.name, buyer.email, buyer.note, measure.text].forEach(judge);
      }),
    );
    expect(judged).toBeGreaterThan(50);
  });

  it.skipIf(!python)("compile in Python's re, which finds there what is found here", () => {
    const texts = FIELDS.flatMap(({ takes, refuses }) => [...takes, ...refuses]);
    const found = foundByPython(patterns.map((pattern) => [pattern, texts]));
    expect(found).toEqual(
      patterns.map((pattern) => texts.map((text) => new RegExp(pattern, 'u').test(text))),
    );
  });
});
