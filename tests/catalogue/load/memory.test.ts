/** A reading that adds to those before it says what a first one says, whatever was changed in between. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import { contentFiles } from '#catalogue/read/files.ts';
import { onDisk, type Overlay } from '#catalogue/read/folder.ts';
import type { Memory } from '#catalogue/read/memory.ts';
import { CONTENT } from '#tests/support/catalogue.ts';

/** Each reads the whole catalogue some ten times. */
const RUNS = process.env['CLASPWISE_THOROUGH'] ? 60 : 4;

const { shop, components, wires, pieces, guides } = contentFiles(onDisk(CONTENT));

/** What hands do to a file: harmless, told as a problem elsewhere, or breaking it. */
const EDITS: readonly ((text: string) => string | null)[] = [
  (text) => `${text}\n# seen\n`,
  (text) => text.replace(/(\d)( ?mm)/, '7$2'),
  (text) => text.replace(/name: /, 'name: New '),
  (text) => text.replace(/^([a-z0-9-]+):$/m, '$1-other:'),
  (text) => text.replace(/: /, ':: ['),
  (text) => text.replace(/price: .*/, 'price: 3 kroner'),
  () => null,
];

const edit = fc.record({
  file: fc.constantFrom(shop, ...components, ...wires, ...pieces.slice(0, 12), ...guides.slice(0, 3)),
  how: fc.nat(EDITS.length - 1),
  /** Taken back before the next reading. */
  back: fc.boolean(),
});

test('after any edits', () => {
  fc.assert(
    fc.property(fc.array(edit, { minLength: 2, maxLength: 6 }), (edits) => {
      const memory: Memory = new Map();
      readCatalogue(CONTENT, { memory });
      const overlay = new Map<string, string | null>();
      for (const { file, how, back } of edits) {
        if (back) overlay.delete(file);
        else overlay.set(file, EDITS[how]?.(readFileSync(join(CONTENT, file), 'utf8')) ?? null);
        const now: Overlay = new Map(overlay);
        expect(readCatalogue(CONTENT, { overlay: now, memory })).toEqual(
          readCatalogue(CONTENT, { overlay: now }),
        );
      }
    }),
    { numRuns: RUNS },
  );
});

test('what didn’t change is the very same', () => {
  const memory: Memory = new Map();
  const first = readCatalogue(CONTENT, { memory });
  const [changed, other] = pieces as [string, string];
  const text = readFileSync(join(CONTENT, changed), 'utf8').replace(/name: /, 'name: New ');
  const second = readCatalogue(CONTENT, { memory, overlay: new Map([[changed, text]]) });
  const pieceOf = ({ catalogue }: typeof first, file: string) =>
    catalogue?.pieces.find(({ id }) => file.endsWith(`/${id}.yaml`));
  expect(pieceOf(second, changed)?.name).toBe(`New ${pieceOf(first, changed)?.name}`);
  expect(pieceOf(second, other)).toBe(pieceOf(first, other));
  expect(second.catalogue?.components).toBe(first.catalogue?.components);
});
