/**
 * The content collections. All are filled by the one reader that bench and
 * terminal use too; what it refuses stops the build, every problem at once.
 */
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { defineCollection } from 'astro:content';
import type { Loader, LoaderContext } from 'astro/loaders';
import { z } from 'zod';
import { promisedIn } from '#bench/context/promised.ts';
import { settingsFrom } from '#bench/context/settings.ts';
import { wireKey, type Catalogue, type Guide, type Shop } from '#catalogue/model/catalogue.ts';
import { asPromised } from '#catalogue/model/shelf.ts';
import { report } from '#catalogue/read/problem.ts';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import {
  labelsOf,
  storePiece,
  type StoredComponent,
  type StoredPiece,
  type StoredWire,
} from '#catalogue/model/stored.ts';
import { contentFolder } from '#ui/site/contentFolder.ts';

/** Another catalogue can be built by naming its folder. */
const folder = resolve(contentFolder());

/** A large catalogue may have a remark on every piece; the first tell what there is to know. */
const mostNotes = 10;

type Entry = { readonly id: string; readonly data: object; readonly markdown?: string };

type Latest = { readonly round: number; readonly catalogue: Catalogue | null; readonly wrong: string };

/** Five collections, one reading: `round` counts the changes seen while developing. */
let latest: Latest | null = null;

/** The reading of this round; `fresh` for the collection that asks first, which tells what is wrong for all. */
function read(round: number, logger: LoaderContext['logger']): Latest & { readonly fresh: boolean } {
  if (latest !== null && latest.round >= round) return { ...latest, fresh: false };
  const { catalogue, problems, notes } = readCatalogue(folder);
  if (notes.length > 0) {
    logger.warn(`${notes.length} worth a look:\n${report(notes.slice(0, mostNotes), 'en')}`);
  }
  const wrong =
    problems.length === 0 ? '' : `${problems.length} to mend in ${folder}\n\n${report(problems, 'en')}\n`;
  latest = { round, catalogue, wrong };
  return { ...latest, fresh: true };
}

/** Puts the entries into the store, leaving alone what hasn't changed. */
async function fill(context: LoaderContext, entries: readonly Entry[]): Promise<void> {
  const { store, generateDigest, renderMarkdown } = context;
  const ids = new Set(entries.map(({ id }) => id));
  for (const id of store.keys()) if (!ids.has(id)) store.delete(id);
  for (const { id, data, markdown } of entries) {
    const digest = generateDigest(JSON.stringify(data));
    if (store.get(id)?.digest === digest) continue;
    const rendered =
      markdown === undefined ? {} : { body: markdown, rendered: await renderMarkdown(markdown) };
    store.set({ id, data: { ...data }, digest, ...rendered });
  }
}

function loader(name: string, entriesOf: (catalogue: Catalogue) => readonly Entry[]): Loader {
  return {
    name: `claspwise-${name}`,
    load: async (context) => {
      const { catalogue, wrong } = read(0, context.logger);
      if (catalogue === null || wrong !== '') throw new Error(wrong);
      await fill(context, entriesOf(catalogue));
      context.watcher?.add(folder);
      let round = 0;
      context.watcher?.on('all', async (_event: string, path: string) => {
        if (!pathToFileURL(resolve(path)).href.startsWith(`${pathToFileURL(folder).href}/`)) return;
        round += 1;
        const again = read(round, context.logger);
        if (again.fresh && again.wrong !== '') context.logger.error(again.wrong);
        // The last good state stays until the mistake is mended.
        if (again.catalogue !== null && again.wrong === '') await fill(context, entriesOf(again.catalogue));
      });
    },
  };
}

const entry = <Data extends { readonly id: string }>(data: Data): Entry => ({ id: data.id, data });

export const collections = {
  shop: defineCollection({
    loader: loader('shop', ({ shop }) => [{ id: 'shop', data: shop }]),
    schema: z.custom<Shop>(),
  }),
  components: defineCollection({
    loader: loader('components', (catalogue) =>
      Object.values(catalogue.components).map((component) =>
        entry({ ...component, ...labelsOf(component.id, catalogue) }),
      ),
    ),
    schema: z.custom<StoredComponent>(),
  }),
  wires: defineCollection({
    loader: loader('wires', (catalogue) =>
      Object.values(catalogue.wires).map((wire) =>
        entry({ ...wire, ...labelsOf(wireKey(wire.id), catalogue) }),
      ),
    ),
    schema: z.custom<StoredWire>(),
  }),
  pieces: defineCollection({
    loader: loader('pieces', ({ pieces }) => {
      const promised = promisedIn(settingsFrom(process.env, process.cwd()).bookFile);
      return pieces.map((piece) => entry(storePiece(asPromised(piece, promised))));
    }),
    schema: z.custom<StoredPiece>(),
  }),
  guides: defineCollection({
    loader: loader('guides', ({ guides }) =>
      guides.map((guide) => ({ id: `${guide.lang}/${guide.id}`, data: guide, markdown: guide.body })),
    ),
    schema: z.custom<Guide>(),
  }),
};
