/** The shop's file: all of it for the catalogue, or its rules alone. */
import type { z } from 'zod';
import type { Rules } from '#core/design/rules.ts';
import { buildShop, rulesOf } from '../build/shop.ts';
import type { Money } from '../fields/money.ts';
import type { Shop } from '../model/catalogue.ts';
import { assertEnding } from '../invariants/price.ts';
import { assertPost } from '../invariants/post.ts';
import { assertSitsInOrder } from '../invariants/sits.ts';
import { rulesSchema, shopSchema, type AuthoredRules, type AuthoredShop } from '../schemas/shop.ts';
import { assertCurrency } from '../invariants/currency.ts';
import { entryOf } from '../read/collect.ts';
import type { Entry } from '../read/entry.ts';
import { isThere, onDisk, type Folder } from '../read/folder.ts';
import { problemOfFile, type FieldPath, type Problem } from '../read/problem.ts';
import { remembered } from '../read/memory.ts';
import { take } from '../read/source.ts';

type ShopEntry = Entry<AuthoredShop>;

function strangeAmounts(entry: Entry<AuthoredRules>): Problem[] {
  const { price, currency, post } = entry.value;
  const amounts: readonly (readonly [FieldPath, Money | undefined])[] = [
    [['price', 'labour'], price.labour],
    [['price', 'packing'], price.packing],
    [['price', 'round-up-to'], price['round-up-to']],
    [['price', 'ends-on'], price['ends-on']],
    [['price', 'fees', 'each'], price.fees?.each],
    ...(post?.groups ?? []).flatMap(({ bands, 'free-from': freeFrom }, group) => [
      [['post', 'groups', group, 'free-from'], freeFrom] as const,
      ...(bands ?? []).map(
        (band, place) => [['post', 'groups', group, 'bands', place, 'price'], band.price] as const,
      ),
    ]),
  ];
  return amounts.flatMap(([path, amount]) =>
    amount === undefined ? [] : assertCurrency(entry, path, amount, currency),
  );
}

function readAs<Schema extends z.ZodType<AuthoredRules>>(folder: Folder, file: string, schema: Schema) {
  const taken = take(folder, file);
  if (taken.source === null) return { entry: null, problems: [...taken.problems] };
  const read = entryOf(folder, 'shop', taken.source, [], schema);
  const { entry } = read;
  if (entry === null) return { entry: null, problems: [...read.problems] };
  const problems = [
    ...strangeAmounts(entry),
    ...assertEnding(entry),
    ...assertPost(entry),
    ...assertSitsInOrder(entry),
  ];
  return { entry, problems };
}

/** The shop out of its content folder, with its entry to be held against the pieces. */
export function readShop(
  folder: Folder,
  file: string,
): { shop: Shop | null; entry: ShopEntry | null; problems: Problem[] } {
  if (!isThere(folder, file)) {
    return { shop: null, entry: null, problems: [problemOfFile(file, { code: 'shop-missing', file })] };
  }
  const { entry, problems } = readAs(folder, file, shopSchema);
  const shop =
    entry === null ? null : remembered(folder.memory, 'shop', [entry], () => buildShop(entry.value));
  return { shop, entry, problems };
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
  const { entry, problems } = readAs(onDisk(''), path, rulesSchema);
  if (entry === null || problems.length > 0) return { rules: null, unit: null, problems };
  const { value } = entry;
  return { rules: rulesOf(value), unit: value.unit ?? null, problems };
}
