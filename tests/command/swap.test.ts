import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { EXIT } from '../../src/command/size/exit.ts';
import { component, focalBracelet, twoStrands } from '#tests/support/workshop.ts';
import type { Design } from '#core/design/design.ts';
import { goodsWords } from '#words/words.ts';
import { bySchema, root, size as sizeAt } from './terminal.ts';

const mistakesIn = bySchema('size-answer');

/** The command over the demo shop, or with a design on standard input. */
const size = (argv: readonly string[], design: Design | null = null) =>
  sizeAt(argv, JSON.stringify(design), resolve(root, 'content'));

function answer(argv: readonly string[], design: Design | null = null) {
  const json = JSON.parse(size([...argv, '--json'], design).out);
  expect(mistakesIn(json)).toEqual([]);
  return json;
}

describe('another clasp', () => {
  const asked = ['banked-fire', '--wrist', '6.5 in'];

  it('of two halves takes the ring’s place as well', () => {
    const { swapped, sizing } = answer([...asked, '--clasp', 'magnet-7-steel']);
    expect(swapped.parts).toEqual([
      { part: 'clasp', from: 'lobster-12-silver', to: 'magnet-7-steel' },
      { part: 'ring', from: 'ring-6-silver', to: null },
    ]);
    expect(swapped.differenceMinor).toBe(sizing.chosen.priceMinor - swapped.listedMinor);
    const { out } = size([...asked, '--clasp', 'magnet-7-steel', '--lang', 'de']);
    expect(out).toContain('Magnetverschluss aus Stahl, 7 mm statt ');
  });

  it('with a magnet says what a magnet can do, which the listed piece’s page doesn’t', () => {
    expect(size(asked).out).not.toMatch(/pacemaker/);
    expect(size([...asked, '--clasp', 'magnet-7-steel']).out).toMatch(/pacemaker.*swallowed/);
    expect(size([...asked, '--clasp', 'magnet-7-steel', '--lang', 'de']).out).toMatch(/Herzschrittmacher/);
    expect(answer([...asked, '--clasp', 'magnet-7-steel']).swapped.cautions).toEqual(['magnet']);
    expect(answer([...asked, '--clasp', 'toggle-14-silver']).swapped.cautions).toEqual([]);
    const toggle = size([...asked, '--clasp', 'toggle-14-silver']).out;
    expect(toggle).toContain('toggle');
    expect(toggle).not.toMatch(/pacemaker/);
  });

  it('brings its gravest caution first, however they are written', () => {
    const hook = component('hook', {
      kind: 'clasp',
      shape: 'magnetic',
      alongMm: 10,
      holeMm: 0,
      cautions: ['sharp', 'nickel', 'magnet'],
    });
    const stocked = { ...focalBracelet, components: { ...focalBracelet.components, hook } };
    const argv = ['-', '--wrist', '6.5 in', '--clasp', 'hook'];
    expect(answer(argv, stocked).swapped.cautions).toEqual(['magnet', 'nickel', 'sharp']);
    const { out } = size(argv, stocked);
    const { magnet, nickel, sharp } = goodsWords('en').cautions;
    const told = [magnet, nickel, sharp].map(({ title }) => out.indexOf(title));
    expect(told.every((at) => at > 0)).toBe(true);
    expect(told).toEqual([...told].sort((a, b) => a - b));
  });

  it('dearer than the listed one makes the piece dearer', () => {
    const listed = answer(['-', '--wrist', '6.5 in'], focalBracelet);
    const gold = component('gold', {
      kind: 'clasp',
      shape: 'lobster',
      alongMm: 10,
      holeMm: 0,
      costMinor: 9000,
    });
    const stocked = { ...focalBracelet, components: { ...focalBracelet.components, gold } };
    const { swapped } = answer(['-', '--wrist', '6.5 in', '--clasp', 'gold'], stocked);
    expect(listed.swapped).toBeNull();
    expect(swapped.differenceMinor).toBeGreaterThan(9000);
  });

  it('the same one is no swap', () => {
    expect(answer([...asked, '--clasp', 'lobster-12-silver']).swapped).toBeNull();
  });

  it('that closes on a ring wants one named where there is none', () => {
    const toggle = ['tide-table', '--wrist', '6.5 in', '--clasp', 'lobster-12-silver'];
    expect(size(toggle)).toMatchObject({ code: EXIT.refused, out: '' });
    expect(size(toggle).err).toContain('Name one with --ring');
    const { parts } = answer([...toggle, '--ring', 'ring-6-silver']).swapped;
    expect(parts).toContainEqual({ part: 'ring', from: null, to: 'ring-6-silver' });
  });

  it('an extender keeps its ring', () => {
    const { ends } = focalBracelet;
    const extended = { ...focalBracelet, ends: { ...ends, extenderMm: 40 } };
    const { parts } = answer(['-', '--wrist', '6.5 in', '--clasp', 'toggle-14-silver'], extended).swapped;
    expect(parts).toEqual([{ part: 'clasp', from: ends.clasp, to: 'toggle-14-silver' }]);
  });

  it('lengthens a measured piece as well', () => {
    const explained = (...more: string[]): unknown =>
      JSON.parse(size(['banked-fire', '--found', '37 cm', '--json', ...more]).out).strands[0].explanations[0];
    expect(explained('--clasp', 'hook-18-silver')).not.toEqual(explained());
  });
});

describe('another pendant', () => {
  const asked = ['harvest-moon', '--length', '18 in'];

  it('hangs on the same rings, or none hangs', () => {
    const { out } = size([...asked, '--pendant', 'river-drop-26']);
    expect(out).toContain('River-green glass drop instead of ');
    expect(out).toMatch(/As listed, in its usual size, it costs £[\d.]+; this one costs /);
    const bare = answer([...asked, '--pendant', 'none']);
    expect(bare.swapped.parts).toMatchObject([{ part: 'pendant', to: null }]);
    expect(bare.lie[0].pendantDropMm).toBeNull();
  });

  it('is an addition where none hung', () => {
    const { out } = size(['banked-fire', '--wrist', '6.5 in', '--pendant', 'river-drop-26']);
    expect(out).toContain('With a pendant: River-green glass drop.');
    expect(out).toMatch(/this one costs £[\d.]+ more/);
  });
});

describe('what can’t be swapped in', () => {
  const asked = ['banked-fire', '--wrist', '6.5 in'];

  it.each([
    [
      ['--clasp', 'magnet-7-stel'],
      EXIT.unread,
      ['--clasp', 'Did you mean “magnet-7-steel”?', 'box-2-silver'],
    ],
    [['--pendant', 'moon'], EXIT.unread, ['--pendant', '“moon”', 'river-drop-26']],
    [['--clasp', 'ring-6-silver'], EXIT.refused, ['“ring-6-silver” isn’t a clasp', 'magnet-7-steel']],
    [['--pendant', 'magnet-7-steel'], EXIT.refused, ['isn’t a pendant']],
    [['--ring', 'magnet-7-steel'], EXIT.refused, ['isn’t a ring', 'ring-6-silver']],
    [['--clasp', 'constructor'], EXIT.unread, ['no component “constructor”']],
  ])('%j', (more, code, sentences) => {
    const found = size([...asked, ...more]);
    expect([found.code, found.out]).toEqual([code, '']);
    for (const sentence of sentences) expect(found.err).toContain(sentence);
    expect(size([...asked, ...more, '--lang', 'de']).err).not.toBe(found.err);
  });

  it('a clasp with fewer ways than strands', () => {
    const more = ['--clasp', 'lobster-12-silver', '--ring', 'ring-6-silver'];
    const { code, err } = size(['-', '--wrist', '6.5 in', ...more], twoStrands);
    expect(code).toBe(EXIT.refused);
    expect(err).toContain('lobster-12-silver');
  });
});
