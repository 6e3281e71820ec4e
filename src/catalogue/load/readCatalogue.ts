/** The whole content folder in one go: the catalogue, and everything that is wrong with it. */
import { existsSync } from 'node:fs';
import type { Component, Wire } from '#core/design/component.ts';
import { LANGS, isLang } from '#words/lang.ts';
import { buildComponent } from '../build/component.ts';
import { buildPictures } from '../build/pictures.ts';
import { buildPiece } from './piece.ts';
import { buildSupply, buildWireSupply } from '../build/supply.ts';
import { buildWire } from '../build/wire.ts';
import { newestFirst, wireKey, type Catalogue, type Guide, type Labels } from '../model/catalogue.ts';
import type { Supply } from '../model/supply.ts';
import { componentSchema } from '../schemas/component.ts';
import { guideSchema } from '../schemas/guide.ts';
import { pieceSchema } from '../schemas/piece.ts';
import { wireSchema } from '../schemas/wire.ts';
import { assertBandsReach } from '../invariants/post.ts';
import { assertComponentsExist, assertWireExists } from '../invariants/components.ts';
import { assertCountsInOrder } from '../invariants/counts.ts';
import { assertCurrency } from '../invariants/currency.ts';
import { assertPlainGuide } from '../invariants/guide.ts';
import { assertOwnNames, assertOwnNumbers } from '../invariants/names.ts';
import { collectFiles, collectMaps, entryOf, idOfFile } from '../read/collect.ts';
import type { Entry } from '../read/entry.ts';
import { contentFiles } from '../read/files.ts';
import type { Folder, Overlay } from '../read/folder.ts';
import { remembered, type Memory } from '../read/memory.ts';
import { inOrder, problemOfFile, type Problem } from '../read/problem.ts';
import type { Said } from '../read/said.ts';
import { readShop } from './readShop.ts';
import { take, type Taken } from '../read/source.ts';

export type Reading = {
  /** What could be read; null where there is no shop to speak of. Use it only where `problems` is empty. */
  readonly catalogue: Catalogue | null;
  /** Everything wrong, in the order of files and lines. */
  readonly problems: readonly Problem[];
  /** Remarks that stop nothing. */
  readonly notes: readonly Problem[];
};

type Labelled = Entry<{
  readonly tray?: string | undefined;
  readonly 'name-de'?: string | undefined;
  readonly 'part-number'?: string | undefined;
}>;

/** What is written on components or wires, under their keys. */
function labelsWritten(
  entries: readonly Labelled[],
  keyOf = (id: string): string => id,
): Labels & Pick<Catalogue, 'trays'> {
  const written = (field: 'name-de' | 'part-number' | 'tray'): Readonly<Record<string, string>> =>
    Object.fromEntries(
      entries.flatMap(({ id, value }) => {
        const label = value[field];
        return label === undefined ? [] : [[keyOf(id), label] as const];
      }),
    );
  return { germanNames: written('name-de'), partNumbers: written('part-number'), trays: written('tray') };
}

const isSaid = ({ keep, sold }: Supply): boolean => keep !== null || sold !== null;

function readComponents(folder: Folder, files: readonly string[], currency: string | null) {
  const collected = collectMaps(folder, files, componentSchema);
  const problems = [...collected.problems, ...assertOwnNames(collected.entries)];
  const components: Record<string, Component> = {};
  const supplies: Record<string, Supply> = {};
  for (const entry of collected.entries) {
    const built = buildComponent(entry);
    problems.push(...built.problems, ...assertCurrency(entry, ['cost'], entry.value.cost, currency));
    problems.push(...assertCurrency(entry, ['sold', 'price'], entry.value.sold?.price, currency));
    if (built.component === null) continue;
    components[entry.id] = built.component;
    const { supply, problems: unclear } = buildSupply(entry, built.component);
    problems.push(...unclear);
    if (isSaid(supply)) supplies[entry.id] = supply;
  }
  return {
    components,
    supplies,
    entries: collected.entries,
    labels: labelsWritten(collected.entries),
    known: collected.known,
    problems,
  };
}

function readWires(folder: Folder, files: readonly string[], currency: string | null) {
  const collected = collectMaps(folder, files, wireSchema);
  const problems = [...collected.problems, ...assertOwnNames(collected.entries)];
  const wires: Record<string, Wire> = {};
  const supplies: Record<string, Supply> = {};
  for (const entry of collected.entries) {
    problems.push(
      ...assertCurrency(entry, ['cost'], entry.value.cost, currency),
      ...assertCurrency(entry, ['sold', 'price'], entry.value.sold?.price, currency),
    );
    wires[entry.id] = buildWire(entry);
    const supply = buildWireSupply(entry);
    if (isSaid(supply)) supplies[wireKey(entry.id)] = supply;
  }
  return {
    wires,
    supplies,
    entries: collected.entries,
    labels: labelsWritten(collected.entries, wireKey),
    known: collected.known,
    problems,
  };
}

/** Guides live in a folder for each language: `guides/en/measuring.md`. */
function readGuides(folder: Folder, files: readonly string[]): { guides: Guide[]; problems: Problem[] } {
  const guides: Guide[] = [];
  const problems: Problem[] = [];
  for (const file of files) {
    const language = file.split('/').at(-2) ?? '';
    const taken = take(folder, file);
    problems.push(...taken.problems);
    if (!isLang(language)) {
      problems.push(problemOfFile(file, { code: 'guide-language', language, known: LANGS.join(', ') }));
    } else if (taken.source !== null) {
      const { source } = taken;
      const { entry, problems: wrong } = entryOf(folder, idOfFile(file), source, [], guideSchema);
      problems.push(
        ...wrong,
        ...remembered(folder.memory, `guide ${file}`, [source], () => assertPlainGuide(source)),
      );
      if (entry !== null) guides.push({ id: entry.id, lang: language, ...entry.value, body: source.body });
    }
  }
  return { guides: guides.sort((one, other) => one.order - other.order), problems };
}

export type ReadingOptions = {
  /** Also remark on common sizes that a piece can't be made in, which sizes each again and again: nothing for a build. */
  readonly gaps?: boolean;
  /** Texts that are read as if they were saved, so that an edit is checked with everything else before it is; pictures are looked at on the disk. */
  readonly overlay?: Overlay;
  /** Of readings before, which this one adds to: only what changed since is read again. */
  readonly memory?: Memory;
  /** The same of readings in other processes: what texts say. */
  readonly said?: Said;
};

/**
 * Reads a folder whole. Never throws for what is written there: every problem
 * comes with its file and line, all of them at once.
 * @param path absolute, or from the working folder
 */
export function readCatalogue(
  path: string,
  { gaps = false, overlay = new Map(), memory = new Map(), said }: ReadingOptions = {},
): Reading {
  if (!existsSync(path)) {
    const missing = problemOfFile(path, { code: 'folder-missing', folder: path });
    return { catalogue: null, problems: [missing], notes: [] };
  }
  const folder: Folder = { path, overlay, memory, said };
  const files = contentFiles(folder);
  const { shop, entry: shopEntry, problems: shopProblems } = readShop(folder, files.shop);
  const currency = shop?.rules.currency ?? null;
  const stateOf = (of: readonly string[]): (Taken | string)[] =>
    of.flatMap((file) => [file, take(folder, file)]);
  const components = remembered(memory, 'components', [currency, ...stateOf(files.components)], () =>
    readComponents(folder, files.components, currency),
  );
  const wires = remembered(memory, 'wires', [currency, ...stateOf(files.wires)], () =>
    readWires(folder, files.wires, currency),
  );
  const { guides, problems: guideProblems } = readGuides(folder, files.guides);
  const collected = collectFiles(folder, files.pieces, pieceSchema);
  const labels: Labels = {
    germanNames: { ...components.labels.germanNames, ...wires.labels.germanNames },
    partNumbers: { ...components.labels.partNumbers, ...wires.labels.partNumbers },
  };
  const rules = shop?.rules ?? null;
  const stock = {
    components: components.components,
    labels,
    wires: wires.wires,
    knownComponents: components.known,
    knownWires: wires.known,
    gaps,
    rules,
  };
  const built = collected.entries.map((entry) => {
    const photographs = buildPictures(path, entry);
    const of = [entry, components, wires, rules, gaps, JSON.stringify(photographs)];
    return remembered(memory, `piece ${entry.file}`, of, () => buildPiece(entry, stock, photographs));
  });
  const pieces = built.flatMap((one) => (one.piece === null ? [] : [one.piece])).sort(newestFirst);
  const problems = [
    ...files.misnamed.map(({ file, ending, wanted }) =>
      problemOfFile(file, { code: 'other-ending', ending, wanted }),
    ),
    ...shopProblems,
    ...(shopEntry === null ? [] : assertBandsReach(shopEntry, pieces)),
    ...components.problems,
    ...wires.problems,
    ...guideProblems,
    ...collected.problems,
    ...collected.broken.flatMap((piece) => [
      ...assertComponentsExist(piece, components.known),
      ...assertWireExists(piece, wires.known),
      ...assertCountsInOrder(piece),
    ]),
    ...assertOwnNames(collected.entries),
    ...assertOwnNumbers([...components.entries, ...wires.entries]),
    ...built.flatMap((one) => one.problems),
  ];
  const trays = { ...components.labels.trays, ...wires.labels.trays };
  const supplies = { ...components.supplies, ...wires.supplies };
  const all = {
    components: components.components,
    ...labels,
    ...{ trays, supplies },
    wires: wires.wires,
    ...{ pieces, guides },
  };
  return {
    catalogue: shop === null ? null : { shop, ...all },
    problems: inOrder(problems),
    notes: inOrder(built.flatMap((one) => one.notes)),
  };
}
