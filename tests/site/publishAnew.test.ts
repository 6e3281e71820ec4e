/** Every page made by the renderer that a build kept. */
import { readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { currentRelease } from '#catalogue/released/place.ts';
import { filesBelow } from '#release/files.ts';
import { readKept, writeKept } from '#release/pages.ts';
import { ownPlace, type Place } from '#tests/support/publishing.ts';

let place: Place;
beforeEach(() => {
  place = ownPlace();
});
afterEach(() => place.remove());

const served = (): string => currentRelease(place.releases) ?? '';

test(
  'pages that are made anew by what was kept are those of the whole build, byte for byte',
  { timeout: 240_000 },
  async () => {
    const built = served();
    const { pages, ...kept } = readKept(join(built, 'render'));
    const none = Object.fromEntries(Object.keys(pages).map((file) => [file, null]));
    writeKept(join(built, 'render'), { ...kept, pages: none });
    const record = JSON.parse(readFileSync(join(built, 'release.json'), 'utf8')) as object;
    rmSync(join(built, 'release.json'));
    const sizes = {
      ...readRecordSizes(record),
      'render/kept.json': statSync(join(built, 'render/kept.json')).size,
    };
    writeFileSync(join(built, 'release.json'), JSON.stringify({ ...record, content: 'another', sizes }));
    const { said } = await place.publish('--quick');
    expect(said).toContain('Built in');
    expect(said).not.toContain('Building everything');
    expect(served()).not.toBe(built);
    const [one, other] = [join(built, 'client'), join(served(), 'client')];
    expect(filesBelow(other)).toEqual(filesBelow(one));
    const unlike = filesBelow(one).filter(
      (file) => !readFileSync(join(one, file)).equals(readFileSync(join(other, file))),
    );
    expect(unlike).toEqual([]);
  },
);

const readRecordSizes = (record: object): Readonly<Record<string, number>> =>
  (record as { sizes: Readonly<Record<string, number>> }).sizes;
