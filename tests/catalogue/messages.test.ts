import { describe, expect, it } from 'vitest';
import { explain, report, type Problem } from '#catalogue/read/problem.ts';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import { catalogue as german } from '#words/de/catalogue.ts';
import { catalogue as english } from '#words/en/catalogue.ts';
import { contentFolder } from './contentFolder.ts';
import { designMistakes } from './mistakes/designs.ts';
import { entryMistakes } from './mistakes/entries.ts';
import { fileMistakes } from './mistakes/files.ts';
import { fieldMistakes } from './mistakes/fields.ts';
import { postMistakes } from './mistakes/post.ts';

const mistakes = [...fileMistakes, ...fieldMistakes, ...entryMistakes, ...designMistakes, ...postMistakes];

const place = ({ file, line, field }: Problem): string => `${file}:${line}${field === '' ? '' : ` ${field}`}`;

const codeOf = ({ error }: Problem) => (error.code === 'design' ? error.error.code : error.code);

describe('every mistake is reported with its place, what is wrong and how to mend it', () => {
  it.each(mistakes)('$code', ({ code, edits, at, what, fix, note }) => {
    const { problems, notes } = readCatalogue(contentFolder(edits), { gaps: code.startsWith('gaps') });
    const told = (note ? notes : problems).filter((one) => codeOf(one) === code);
    expect(told.map(place)).toContain(at);
    const one = told.find((each) => place(each) === at)!;
    expect(explain(one, 'en').what).toBe(what);
    expect(explain(one, 'en').fix).toContain(fix);
    const inGerman = explain(one, 'de');
    expect(inGerman.what).not.toBe(what);
    for (const sentence of [inGerman.what, inGerman.fix]) {
      expect(sentence).not.toMatch(/undefined|NaN|\[object/);
    }
  });

  it('leaves no message untried', () => {
    // A folder that isn't there has no file to change: it is tried below.
    const tried = new Set<string>([...mistakes.map(({ code }) => code), 'folder-missing']);
    const own = Object.keys(english).filter((code) => code !== 'design');
    expect(own.filter((code) => !tried.has(code))).toEqual([]);
    expect(Object.keys(german)).toEqual(Object.keys(english));
  });
});

describe('reading a folder', () => {
  it('finds nothing wrong with a plain one', () => {
    const { catalogue, problems, notes } = readCatalogue(contentFolder([]));
    expect(problems).toEqual([]);
    expect(notes).toEqual([]);
    expect(catalogue?.pieces.map(({ id }) => id)).toEqual(['row']);
  });

  it('says so where there is none', () => {
    const { catalogue, problems } = readCatalogue('/nowhere/at/all');
    expect(catalogue).toBeNull();
    expect(report(problems, 'en')).toContain('There is no folder /nowhere/at/all.');
  });

  it('tells everything at once, in the order of files and lines', () => {
    const { problems } = readCatalogue(
      contentFolder([
        { file: 'pieces/row.yaml', from: 'price: £35.00', to: 'price: 35' },
        { file: 'pieces/row.yaml', from: 'wire: soft-19', to: 'wire: none' },
        { file: 'pieces/row.yaml', from: 'kind: bracelet', to: 'kind: bangle' },
        { file: 'components/parts.yaml', from: 'size: 8 mm', to: 'size: 8' },
        { file: 'components/parts.yaml', from: 'closed: 1.6 mm', to: 'closed: 1.6 parsecs' },
        { file: 'shop.yaml', from: 'currency: GBP', to: 'currency: shells' },
      ]),
    );
    expect(problems.map((one) => [codeOf(one), one.line])).toEqual([
      ['unit-missing', 3],
      ['unit-wrong', 23],
      ['not-one-of', 2],
      ['price-without-currency', 5],
      ['unknown-wire', 8],
      ['not-one-of', 6],
    ]);
  });

  it('tells of a piece with a wrong field what else is wrong with it', () => {
    const { problems } = readCatalogue(
      contentFolder([
        { file: 'pieces/row.yaml', from: 'kind: bracelet', to: 'kind: bangle' },
        { file: 'pieces/row.yaml', from: 'crimp: crimp-2', to: 'crimp: crimp-7' },
        { file: 'pieces/row.yaml', from: 'beads: ball-8', to: 'beads: [ball-8, 2 ball-9]' },
        { file: 'pieces/row.yaml', from: 'most: 27', to: 'most: 20' },
      ]),
    );
    expect(problems.map((one) => [codeOf(one), one.line, one.field])).toEqual([
      ['not-one-of', 2, 'kind'],
      ['unknown-component', 12, 'closing, crimp'],
      ['counts-order', 17, 'sections 1'],
      ['unknown-component', 18, 'sections 1, beads 2'],
    ]);
  });

  it('says nothing more about a piece whose component is broken, not missing', () => {
    const { problems } = readCatalogue(
      contentFolder([{ file: 'components/parts.yaml', from: 'size: 8 mm', to: 'size: 8' }]),
    );
    expect(problems.map(codeOf)).toEqual(['unit-missing']);
  });

  it('prints each problem as place, what, fix', () => {
    const { problems } = readCatalogue(
      contentFolder([{ file: 'pieces/row.yaml', from: 'kind: bracelet', to: 'kind: bangle' }]),
    );
    expect(report(problems, 'en')).toBe(
      'pieces/row.yaml:2  kind\n  “bangle” isn’t one of the choices.\n  Write one of: necklace, bracelet, anklet, collar.',
    );
  });
});
