/** Random edits on every file of the demo shop: what was meant is said, and no other line is touched. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { contentFiles } from '#catalogue/read/files.ts';
import { onDisk } from '#catalogue/read/folder.ts';
import { applyChanges, isFields, isList, type FieldChange, type Plain } from '#catalogue/write/plain.ts';
import { samePlain } from '#catalogue/write/plain.ts';
import { plainOf, rewrite } from '#catalogue/write/rewrite.ts';
import type { FieldPath } from '#catalogue/read/problem.ts';
import { CONTENT } from '#tests/support/catalogue.ts';

const { shop, components, wires, pieces } = contentFiles(onDisk(CONTENT));
const texts = [shop, ...components, ...wires, ...pieces].map((file) =>
  readFileSync(join(CONTENT, file), 'utf8'),
);

const runs = process.env.CLASPWISE_THOROUGH === undefined ? 60 : 1000;

/** What each of them says, read once: reading is most of the work. */
const said = new Map(texts.map((text) => [text, plainOf(text)]));
const saidBy = (text: string): Plain => said.get(text) as Plain;

/** Texts that YAML has its own ideas about. */
const trickyText = fc.constantFrom(
  ...[
    '#d4d6d8',
    'yes',
    'No',
    'null',
    '~',
    '1.10',
    '007',
    '2026-11',
    '1e3',
    '0x1F',
    ' spaced ',
    "it's",
    '"so"',
  ],
  ...[
    'a: b',
    'a # b',
    '- dash',
    '[x',
    '{y',
    '*ref',
    '&anchor',
    '!tag',
    '? what',
    '@at',
    '`tick',
    '%',
    '|',
    '> q',
  ],
  ...['', 'two\nlines', 'a\n\nb\n', ' lead\nline', 'x, y', 'true', 'ends:', '---', '£1.00', 'Größe – „so“'],
);
const text = fc.oneof(trickyText, fc.string({ maxLength: 150 }), fc.lorem({ maxCount: 40 }));
const scalar: fc.Arbitrary<Plain> = fc.oneof(text, fc.integer({ min: 0, max: 9999 }), fc.boolean());
const name = fc.stringMatching(/^[a-z]{1,8}(-[a-z0-9]{1,4})?$/);
const value: fc.Arbitrary<Plain> = fc.oneof(
  scalar,
  fc.array(scalar, { minLength: 1, maxLength: 4 }),
  fc.dictionary(name, scalar, { minKeys: 1, maxKeys: 4 }),
  fc.array(fc.dictionary(name, scalar, { minKeys: 1, maxKeys: 3 }), { minLength: 1, maxLength: 3 }),
);

/** Every place of a text, the fields above it included. */
function places(data: Plain, base: FieldPath = []): FieldPath[] {
  if (isList(data)) return data.flatMap((item, at) => [[...base, at], ...places(item, [...base, at])]);
  if (!isFields(data)) return [];
  return Object.entries(data).flatMap(([field, one]) => [[...base, field], ...places(one, [...base, field])]);
}

/** A choice in a list of any length. */
const pick = <T>(list: readonly T[], share: number): T => list[Math.floor(share * list.length)] as T;

const share = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });

const before = (text: string): string[] => text.split('\n');

/** Lines of `one` that aren't in `other`, as often as they are missing there. */
function missing(one: string, other: string): string[] {
  const left = new Map<string, number>();
  for (const line of before(other)) left.set(line, (left.get(line) ?? 0) + 1);
  return before(one).filter((line) => {
    const count = left.get(line) ?? 0;
    left.set(line, count - 1);
    return count <= 0;
  });
}

describe('random edits of the demo shop’s files', () => {
  test('one value set: only the lines of that value change', () => {
    fc.assert(
      fc.property(share, share, scalar, (file, place, next) => {
        const text = pick(texts, file);
        const data = saidBy(text);
        const scalars = places(data).filter((path) => {
          const old = path.reduce<unknown>((now, step) => (now as Record<string, unknown>)[step], data);
          return typeof old !== 'object';
        });
        const path = pick(scalars, place);
        const wanted = applyChanges(data, [{ path, value: next }]) as Record<string, Plain>;
        const result = rewrite(text, wanted);
        expect(result.reformatted).toBe(false);
        expect(samePlain(plainOf(result.text), wanted)).toBe(true);
        // A value of the demo stands on one line, or is a folded text.
        const gone = missing(text, result.text);
        const old = String(path.reduce<unknown>((now, step) => (now as Record<string, unknown>)[step], data));
        expect(gone.length).toBeLessThanOrEqual(1 + Math.ceil(old.length / 20));
      }),
      { numRuns: runs },
    );
  });

  test('several changes at once: what is said is what was meant, and remarks that aren’t in it stay', () => {
    const change = fc.record({ place: share, value, what: fc.constantFrom('set', 'add', 'remove', 'move') });
    fc.assert(
      fc.property(
        share,
        fc.array(change, { minLength: 1, maxLength: 4 }),
        fc.boolean(),
        (file, changes, windows) => {
          const own = pick(texts, file);
          const text = windows ? own.replaceAll('\n', '\r\n') : own;
          const data = saidBy(own);
          const wanted = changes.reduce<Plain>((now, { place, value, what }) => {
            const path = pick(places(now), place);
            if (path === undefined) return now;
            const at = path.at(-1);
            const parent = path.slice(0, -1);
            const one: FieldChange[] =
              what === 'set'
                ? [{ path, value }]
                : what === 'add'
                  ? [{ path: typeof at === 'number' ? path : [...parent, 'added'], value }]
                  : what === 'remove'
                    ? [{ path, value: undefined }]
                    : moved(now, parent, at);
            return applyChanges(now, one);
          }, data);
          const result = rewrite(text, wanted as Record<string, Plain>);
          expect(samePlain(plainOf(result.text), wanted)).toBe(true);
          expect(result.reformatted).toBe(false);
          if (windows) expect(result.text.replaceAll('\r\n', '')).not.toContain('\n');
          else expect(result.text).not.toContain('\r');
        },
      ),
      { numRuns: runs },
    );
  });

  test('an entry put in and taken out again leaves the file as it was', () => {
    fc.assert(
      fc.property(share, fc.dictionary(name, value, { minKeys: 1, maxKeys: 5 }), (file, entry) => {
        const text = pick(texts, file);
        const data = saidBy(text) as Record<string, Plain>;
        const added = rewrite(text, { ...data, 'quite-new': entry }).text;
        expect(rewrite(added, data).text).toBe(text);
      }),
      { numRuns: runs },
    );
  });
});

/** A list with its first item last; nothing where the place is in no list. */
function moved(data: Plain, parent: FieldPath, at: string | number | undefined): FieldChange[] {
  if (typeof at !== 'number') return [];
  const list = parent.reduce<unknown>((now, step) => (now as Record<string, unknown>)[step], data) as Plain[];
  return [{ path: parent, value: [...list.slice(1), ...list.slice(0, 1)] }];
}
