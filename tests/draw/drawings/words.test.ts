/** Words and marks in a drawing that something else could hide. */
import { describe, expect, test } from 'vitest';
import { airMm, drawWrist } from '#draw/drawings/wrist.ts';
import { drawBoard } from '#draw/drawings/board.ts';
import { formatFor } from '#words/format.ts';
import { sizingWords } from '#words/words.ts';
import { pieces, usualSequences } from '../designs.ts';

function piece(id: string) {
  const found = pieces.find((design) => design.id === id);
  if (found === undefined) throw new Error(`no piece ${id}`);
  return found;
}

/** Where a text stands, mm; the origin where an attribute is left out. */
function placeOf(svg: string, words: string): { x: number; y: number } {
  const [, attributes] = new RegExp(`<text([^>]*)>${words}</text>`).exec(svg) ?? [];
  if (attributes === undefined) throw new Error(`no text ${words}`);
  const read = (name: string) => Number(new RegExp(` ${name}="([^"]+)"`).exec(attributes)?.[1] ?? 0);
  return { x: read('x'), y: read('y') };
}

describe('on the wrist', () => {
  // Two circles half an inch apart in girth: 12.7 / π = 4.04 mm apart in diameter.
  test.each([
    ['en', 'wrist 6½ in', '½ in left over', '4 mm of air'],
    ['de', 'Handgelenk 6½ Zoll', '½ Zoll übrig', '4 mm Luft'],
  ] as const)('stand girth, ease and air, one below the other (%s)', (lang, ...said) => {
    const girthMm = 6.5 * 25.4;
    const insideMm = 7 * 25.4;
    const labels = sizingWords(lang).wristLabels(
      formatFor(lang, 'in', 'GBP'),
      'bracelet',
      girthMm,
      insideMm - girthMm,
      airMm(insideMm, girthMm),
    );
    const design = piece('balls');
    const caption = { title: 'balls', description: 'worn', idPrefix: 'w' };
    const svg = drawWrist(design, usualSequences(design), { ...caption, girthMm: 150, labels });
    const heights = said.map((words) => placeOf(svg.replaceAll('\u00a0', ' '), words).y);
    expect(heights).toEqual(heights.toSorted((one, other) => one - other));
  });
});

describe('zero on the board', () => {
  const zero = (id: string) => {
    const design = piece(id);
    const caption = { title: id, description: 'laid', idPrefix: 'b' };
    const svg = drawBoard(design, usualSequences(design), { ...caption, unit: 'cm', claspSide: 'left' });
    return placeOf(svg, '0').y;
  };

  // The groove runs through y = 0 at zero.
  test('stands below the groove', () => {
    expect(zero('uneven')).toBeGreaterThan(0);
  });

  test('stands above it where a pendant hangs below', () => {
    expect(zero('pendant')).toBeLessThan(0);
  });
});
