import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkCharacter, isNumber, makeNumber, readNumber } from '#order/number.ts';

const anyNumber = fc
  .infiniteStream(fc.integer({ min: 0, max: 255 }))
  .map((bytes) => makeNumber(() => bytes.next().value as number));

describe('order numbers', () => {
  it('reckon the check character of ISO/IEC 7064 MOD 37,36', () => {
    // Source: IFPI, GRid Standard v2.1, whose identifiers end in a MOD 37,36 character: A1-2425G-ABC1234002-M.
    expect(checkCharacter('A12425GABC1234002')).toBe('M');
  });

  it('hold no characters that look alike and no vowels', () => {
    fc.assert(
      fc.property(anyNumber, (number) => {
        expect(number).toMatch(
          /^[2-9CDFGHJKMNPRTVWXY]{3}-[2-9CDFGHJKMNPRTVWXY]{3}-[2-9CDFGHJKMNPRTVWXY]{3}$/,
        );
        expect(isNumber(number)).toBe(true);
      }),
    );
  });

  it('find every single wrong character', () => {
    const plain = '23456789CDFGHJKMNPRTVWXY';
    fc.assert(
      fc.property(anyNumber, fc.nat(8), (number, place) => {
        const run = number.replaceAll('-', '');
        for (const other of plain.replace(run.charAt(place), '')) {
          const wrong = run.slice(0, place) + other + run.slice(place + 1);
          expect(readNumber(wrong)).toEqual({ problem: 'number-check' });
        }
      }),
    );
  });

  it('are read as people say and type them', () => {
    for (const said of ['tx2fyfhtv', 'TX2 FYF HTV', ' tx2–fyf–htv ', 'T X 2 F Y F H T V']) {
      expect(readNumber(said)).toEqual({ number: 'TX2-FYF-HTV' });
    }
  });

  it.each([
    ['', 'number-length'],
    ['TX2-FYF-HT', 'number-length'],
    ['TX2-FYF-HTO', 'number-character'],
    ['TX2-FYF-HTW', 'number-check'],
  ])('refuse %j as %s', (text, problem) => {
    expect(readNumber(text)).toEqual({ problem });
  });

  it('draw every character about equally often', () => {
    let seed = 1;
    const next = () => (seed = (seed * 48271) % 2147483647) & 255;
    const seen = new Map<string, number>();
    for (let drawn = 0; drawn < 3000; drawn += 1) {
      for (const character of makeNumber(next).replaceAll('-', '').slice(0, 8)) {
        seen.set(character, (seen.get(character) ?? 0) + 1);
      }
    }
    expect(seen.size).toBe(24);
    // 1,000 of each expected, standard deviation 31: five of them either way.
    for (const times of seen.values()) expect(Math.abs(times - 1000)).toBeLessThan(160);
  });
});
