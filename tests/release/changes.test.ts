/** What a publishing would change. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { restoreCatalogue, storeCatalogue } from '#catalogue/model/storedCatalogue.ts';
import { changesSince, isNothing } from '#release/changes.ts';
import { readContent, writeCatalogue, type Content } from '#release/content.ts';
import type { ReleaseRecord } from '#release/record.ts';
import { CONTENT } from '#tests/support/catalogue.ts';

const folder = mkdtempSync(join(tmpdir(), 'release-'));
afterAll(() => rmSync(folder, { recursive: true }));

const read = readContent(CONTENT, [], 'test');
const [newest, ...others] = read.catalogue.pieces;
if (newest === undefined) throw new Error('got no pieces');
const SHOT = {
  file: 'pieces/shot.jpg',
  format: 'jpeg',
  alt: { en: 'On a stone', de: null },
  crop: null,
} as const;
const catalogue: Catalogue = { ...read.catalogue, pieces: [{ ...newest, pictures: [SHOT] }, ...others] };
const content: Content = { ...read, catalogue, photographs: { [SHOT.file]: 'its mark' } };
await writeCatalogue(folder, catalogue);
const record = { photographs: content.photographs } as ReleaseRecord;

const beside = (change: Partial<Catalogue>, photographs = content.photographs): Content => ({
  ...content,
  photographs,
  catalogue: { ...catalogue, ...change },
});
const changes = (now: Content) => changesSince(folder, record, now);

test('nothing, of the same content', () => {
  expect(isNothing(changes(content))).toBe(true);
});

test('a piece that is new, changed or gone is named', () => {
  const [first, second, ...rest] = catalogue.pieces;
  if (first === undefined || second === undefined) throw new Error('got no pieces');
  const pieces = [{ ...first, summary: 'Another' }, { ...second, id: 'made-up', name: 'Made up' }, ...rest];
  const found = changes(beside({ pieces })).pieces;
  expect(found).toEqual([
    { id: first.id, name: first.name, how: 'changed' },
    { id: 'made-up', name: 'Made up', how: 'new' },
    { id: second.id, name: second.name, how: 'gone' },
  ]);
});

test('a bead that changed is told of itself, not as a change of each piece that has it', () => {
  const [bead] = Object.values(catalogue.components);
  if (bead === undefined) throw new Error('got no bead');
  const components = { ...catalogue.components, [bead.id]: { ...bead, alongMm: bead.alongMm + 1 } };
  const pieces = catalogue.pieces.map((piece) => ({ ...piece, revision: 'another' }));
  const found = changes(beside({ components, pieces }));
  expect(found.components).toEqual([{ id: bead.id, name: bead.name, how: 'changed' }]);
  expect(found.pieces).toEqual([]);
});

test('a photograph’s bytes count, a guide’s words and the shop’s rules', () => {
  const [guide, ...guides] = catalogue.guides;
  if (guide === undefined) throw new Error('got no guide');
  const found = changes(
    beside(
      { shop: { ...catalogue.shop, since: 1 }, guides: [{ ...guide, body: 'Other words.' }, ...guides] },
      { [SHOT.file]: 'another' },
    ),
  );
  expect(found.pieces.map(({ id }) => id)).toEqual([newest.id]);
  expect(found.guides.map(({ how }) => how)).toEqual(['changed']);
  expect(found.shop).toBe(true);
});

test('the catalogue comes back from the file as it was', async () => {
  const guides = catalogue.guides.map((guide) => ({ ...guide, html: '' }));
  const stored = JSON.parse(JSON.stringify(storeCatalogue(catalogue, guides))) as ReturnType<
    typeof storeCatalogue
  >;
  const { guides: _guides, ...restored } = restoreCatalogue(stored);
  const { guides: _same, ...whole } = catalogue;
  expect(restored).toEqual(whole);
});
