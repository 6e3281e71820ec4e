/**
 * Every area says the same things in every language. The types demand it when
 * the words are compiled; this holds for what is there when they run.
 */
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const folder = (lang: string): URL => new URL(`../../src/words/${lang}/`, import.meta.url);
const areas = readdirSync(folder('en')).map((file) => file.replace(/\.ts$/, ''));

/** Paths of all sentences, with what they are. */
function shape(value: unknown, path = ''): string[] {
  if (typeof value !== 'object' || value === null) return [`${path}: ${typeof value}`];
  if (Array.isArray(value)) return [`${path}: ${value.length} in a row`];
  return Object.entries(value)
    .flatMap(([key, inner]) => shape(inner, `${path}.${key}`))
    .sort();
}

function texts(value: unknown, path = ''): [string, string][] {
  if (typeof value === 'string') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => texts(inner, `${path}.${key}`));
}

const load = async (lang: string, area: string): Promise<Record<string, unknown>> =>
  (await import(new URL(`${area}.ts`, folder(lang)).href)) as Record<string, unknown>;

test('both languages have the same areas', () => {
  expect(readdirSync(folder('de')).sort()).toEqual(readdirSync(folder('en')).sort());
});

describe.each(areas)('%s', (area) => {
  test('has the same sentences in both languages', async () => {
    expect(shape(await load('de', area))).toEqual(shape(await load('en', area)));
  });

  test('leaves no sentence empty and no long one untranslated', async () => {
    const english = new Map(texts(await load('en', area)));
    for (const [path, german] of texts(await load('de', area))) {
      expect(german.trim() === '' && english.get(path)?.trim() !== '', `${path} is empty`).toBe(false);
      // Short words may be alike (Bust, Name); a sentence may not.
      if (german.length > 24) expect(german, path).not.toBe(english.get(path));
    }
  });
});
