/** Writes a generated catalogue. JSON is YAML too, so the files need no other writer. */
import { cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { contentFiles } from '#catalogue/read/files.ts';
import { onDisk } from '#catalogue/read/folder.ts';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import { take } from '#catalogue/read/source.ts';
import type { Component } from '#core/design/component.ts';
import { rulePrice } from '#core/sizing/price/price.ts';
import { usual } from '#core/sizing/usual.ts';
import { randomFrom, type Random } from './random.ts';
import { nameAt, textsAt } from './texts.ts';
import { kinOf, varySection, type WrittenSection } from './vary.ts';

type Written = {
  readonly sections?: readonly WrittenSection[];
  readonly strands?: readonly { readonly sections: readonly WrittenSection[] }[];
};

/** A folder a year keeps folders small. */
const firstYear = 2016;
const lastYear = 2026;

const idOf = (name: string): string => name.toLowerCase().replaceAll(' ', '-');

/** One piece after the pattern of another. */
function vary(
  pattern: Written,
  name: string,
  components: Readonly<Record<string, Component>>,
  kin: ReturnType<typeof kinOf>,
  random: Random,
): object {
  const chosen = new Map<string, string>();
  const swap = (id: string): string => {
    const known = chosen.get(id) ?? random.pick(kin.get(id) ?? [id]);
    chosen.set(id, known);
    return known;
  };
  const vary = (section: WrittenSection): object => varySection(section, swap, random);
  const { sections, strands } = pattern;
  const varied = {
    ...pattern,
    ...(sections === undefined ? {} : { sections: sections.map(vary) }),
    ...(strands === undefined
      ? {}
      : { strands: strands.map((strand) => ({ ...strand, sections: strand.sections.map(vary) })) }),
  };
  const main = [...chosen.values()].find((id) => components[id]?.kind === 'bead');
  const texts = textsAt(random, components[main ?? '']?.name ?? 'Glass');
  return { ...varied, name, ...texts, de: undefined, pictures: undefined };
}

/** How far the generated catalogue got, for whoever waits. */
export type Progress = (what: 'patterns' | 'written' | 'priced', count: number) => void;

/**
 * Writes `count` pieces into `folder`, which is emptied first, made after the
 * pieces in `pattern`. The same for the same count each time. Throws if the
 * result has anything to mend, for then the generator is wrong.
 */
export function writeScaled(pattern: string, folder: string, count: number, progress: Progress): void {
  const { catalogue } = readCatalogue(pattern);
  if (catalogue === null) throw new Error(`${pattern} holds no catalogue to go by`);
  const kin = kinOf(catalogue.components);
  const lying = onDisk(pattern);
  const patterns = contentFiles(lying).pieces.map((file) => take(lying, file).source?.data as Written);
  progress('patterns', patterns.length);
  rmSync(folder, { recursive: true, force: true });
  for (const part of ['shop.yaml', 'components', 'wires', 'guides']) {
    cpSync(join(pattern, part), join(folder, part), { recursive: true });
  }
  const files = new Map<string, { readonly path: string; readonly piece: object }>();
  for (let index = 0; index < count; index += 1) {
    const random = randomFrom(index);
    const name = nameAt(index);
    const year = firstYear + (index % (lastYear - firstYear + 1));
    const made = `${year}-${String(random.between(1, 12)).padStart(2, '0')}`;
    const status = year < lastYear - 5 ? 'past' : random.pick(['to-order', 'to-order', 'available']);
    const base = vary(patterns[index % patterns.length] ?? {}, name, catalogue.components, kin, random);
    const piece = { ...base, made, status, price: '1.00 GBP' };
    const path = join(folder, 'pieces', String(year), `${idOf(name)}.yaml`);
    mkdirSync(join(folder, 'pieces', String(year)), { recursive: true });
    writeFileSync(path, JSON.stringify(piece, null, 1));
    files.set(idOf(name), { path, piece });
  }
  progress('written', count);
  priceByRule(folder, files);
  progress('priced', count);
}

/** Gives every piece its price by the shop's rule. */
function priceByRule(
  folder: string,
  files: ReadonlyMap<string, { readonly path: string; readonly piece: object }>,
): void {
  const { catalogue, problems } = readCatalogue(folder);
  const first = problems[0];
  if (catalogue === null || first !== undefined) {
    throw new Error(
      `${problems.length} to mend in ${folder}, the first in ${first?.file}: ${first?.error.code}`,
    );
  }
  const { rules } = catalogue.shop;
  for (const { id, design } of catalogue.pieces) {
    const file = files.get(id);
    if (file === undefined) continue;
    const minor = rulePrice(design, usual(design), rules);
    const price = `${Math.floor(minor / 100)}.${String(minor % 100).padStart(2, '0')} ${rules.currency}`;
    writeFileSync(file.path, JSON.stringify({ ...file.piece, price }, null, 1));
  }
}
