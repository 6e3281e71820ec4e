import { describe, expect, it } from 'vitest';
import { EXIT } from '../../src/command/size/exit.ts';
import type { Design } from '#core/design/design.ts';
import { pendantNecklace, twoStrands } from '#tests/support/workshop.ts';
import { bySchema, size } from './terminal.ts';

const sideBySide: Design = { ...twoStrands, lie: 'side-by-side' };
const nested: Design = { ...twoStrands, lie: 'nested' };

const mistakesIn = bySchema('size-found');

it.each([
  ['drop', '--found', '440.5mm', 440.5],
  ['focal', '--found-girth', '178mm', 178],
])('%s %s %s: counts that explain the measure, likeliest first', (piece, option, text, mm) => {
  const { code, out } = size([piece, option, text, '--json']);
  const json = JSON.parse(out);
  expect([code, mistakesIn(json)]).toEqual([EXIT.fits, []]);
  const [{ explanations }] = json.strands;
  const shares: number[] = explanations.map(({ share }: { share: number }) => share);
  expect(shares).toEqual([...shares].sort((one, other) => other - one));
  for (const { measuresMm, offMm } of explanations) expect(measuresMm - offMm).toBeCloseTo(mm, 2);
});

it('says them in sentences of either language, and takes one measure only', () => {
  expect(size(['drop', '--found', '17 1/2 in']).out).toContain('likeliest first');
  expect(size(['drop', '--found', '44 cm', '--lang', 'de']).out).toContain('wahrscheinlichste zuerst');
  expect(size(['drop', '--found', '17 in', '--length', '17 in']).code).toBe(EXIT.usage);
  expect(size(['drop', '--found', '0']).code).toBe(EXIT.usage);
});

describe('in sentences', () => {
  it('sections go by their names, with what one of each is; nothing is listed at 0 %', () => {
    const { out } = size(['drop', '--found', '440.5 mm']);
    expect(out).toMatch(/\d+%\s+Middle 1, Run \d+: 44/);
    expect(out).toContain('Middle: 2 × Blue ball, 4 mm');
    expect(out).toContain('Run: Blue ball, 8 mm (counted on one side of the middle)');
    expect(out).toMatch(/and \d+ more, each less likely than 1 in 200/);
    expect(out).not.toMatch(/^\s*0%/m);
  });

  it('a measure that nothing explains is said so, with the nearest', () => {
    const { code, out } = size(['drop', '--found', '300 in']);
    expect(code).toBe(EXIT.near);
    expect(out).toContain('No counts near the usual ones explain that');
    expect(out).not.toContain('%');
  });
});

describe('what doesn’t apply is refused', () => {
  it.each([
    ['--hand', 'left'],
    ['--sit', 'easy'],
    ['--pick', 'best'],
    ['--quantity', '2'],
    ['--sex', 'female'],
    ['--height', '165cm'],
    ['--age', '9'],
    ['--aim', 'strand'],
    ['--rules', 'rules.yaml'],
    ['--card'],
    ['--neck', '14in'],
    ['--place', 'pit'],
    ['--found-girth', '15in'],
  ])('%s', (...more) => {
    const { code, out, err } = size(['drop', '--found', '17 in', ...more]);
    expect([code, out]).toEqual([EXIT.usage, '']);
    expect(err).toContain(more[0]);
    expect(err).toContain('--found');
  });

  it('--aim without a place', () => {
    const { code, err } = size(['drop', '--length', '17 in', '--aim', 'strand']);
    expect(code).toBe(EXIT.usage);
    expect(err).toContain('only beside --place');
  });
});

describe('a design on standard input', () => {
  const found = (design: Design, ...argv: string[]) => size(['-', ...argv], JSON.stringify(design));

  it('strands side by side share one measure, or have one each', () => {
    const { code, out } = found(sideBySide, '--found-girth', '180mm', '--json');
    const shared = JSON.parse(out);
    expect([code, mistakesIn(shared)]).toEqual([EXIT.fits, []]);
    expect(shared.strands.map(({ mm }: { mm: number }) => mm)).toEqual(sideBySide.strands.map(() => 180));
    const each = sideBySide.strands.flatMap((_, index) => ['--found-girth', `${178 + index}mm`]);
    const { strands } = JSON.parse(found(sideBySide, ...each, '--json').out);
    expect(strands.map(({ mm }: { mm: number }) => mm)).toEqual(
      sideBySide.strands.map((_, index) => 178 + index),
    );
  });

  it('nested strands want one each', () => {
    const one = found(nested, '--found', '45cm');
    expect([one.code, one.out]).toEqual([EXIT.refused, '']);
    expect(one.err).toContain('once for each strand');
    const each = nested.strands.flatMap((_, index) => ['--found', `${45 + 4 * index}cm`]);
    const { out } = found(nested, ...each);
    expect(out.match(/^Strand \d$/gm)).toHaveLength(nested.strands.length);
  });

  it('more measures than strands are refused', () => {
    const { code, err } = found(pendantNecklace, '--found', '45cm', '--found', '46cm');
    expect(code).toBe(EXIT.refused);
    expect(err).toContain('Give --found once.');
  });

  it.each(['', '{', 'null', '[]', '{"strands": 3}', JSON.stringify({ ...pendantNecklace, strands: [] })])(
    '%j is refused in words',
    (text) => {
      const { code, out, err } = size(['-', '--found', '17 in'], text);
      expect([EXIT.unread, EXIT.refused]).toContain(code);
      expect(out).toBe('');
      expect(err).not.toBe('');
    },
  );
});
