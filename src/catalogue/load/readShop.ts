/** The shop's file: all of it for the catalogue, or its rules alone. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { z } from 'zod';
import type { Rules } from '#core/design/rules.ts';
import { buildShop, rulesOf } from '../build/shop.ts';
import type { Shop } from '../model/catalogue.ts';
import { rulesSchema, shopSchema, type AuthoredRules } from '../schemas/shop.ts';
import { assertCurrency } from '../invariants/currency.ts';
import { readEntry, type Entry } from '../read/entry.ts';
import { problemOfFile, type Problem } from '../read/problem.ts';
import { take } from '../read/source.ts';

function strangeAmounts(entry: Entry<AuthoredRules>): Problem[] {
  const { price, currency } = entry.value;
  const amounts = [
    [['price', 'labour'], price.labour],
    [['price', 'packing'], price.packing],
    [['price', 'round-up-to'], price['round-up-to']],
  ] as const;
  return amounts.flatMap(([path, amount]) => assertCurrency(entry, path, amount, currency));
}

function readAs<Schema extends z.ZodType<AuthoredRules>>(folder: string, file: string, schema: Schema) {
  const taken = take(folder, file);
  if (taken.source === null) return { value: null, problems: [...taken.problems] };
  const { entry, problems } = readEntry('shop', taken.source, [], schema);
  if (entry === null) return { value: null, problems: [...problems] };
  return { value: entry.value, problems: strangeAmounts(entry) };
}

/** The shop out of its content folder. */
export function readShop(folder: string, file: string): { shop: Shop | null; problems: Problem[] } {
  if (!existsSync(join(folder, file))) {
    return { shop: null, problems: [problemOfFile(file, { code: 'shop-missing', file })] };
  }
  const { value, problems } = readAs(folder, file, shopSchema);
  return { shop: value === null ? null : buildShop(value), problems };
}

/**
 * The rules alone, from a file written like the shop's (JSON reads as YAML).
 * @param path absolute, or from the working folder.
 * @returns null where anything is wrong; never throws for what is written.
 */
export function readRules(path: string): {
  rules: Rules | null;
  unit: Shop['unit'] | null;
  problems: Problem[];
} {
  const { value, problems } = readAs('', path, rulesSchema);
  if (value === null || problems.length > 0) return { rules: null, unit: null, problems };
  return { rules: rulesOf(value), unit: value.unit ?? null, problems };
}
