import fc from 'fast-check';
import { expect, it } from 'vitest';
import { EXIT } from '../../src/command/size/exit.ts';
import { pendantNecklace } from '#tests/support/workshop.ts';
import { size } from './terminal.ts';

/** Sizes of the runs: 90 by default, 20,000 with CLASPWISE_THOROUGH=1. */
const numRuns = process.env['CLASPWISE_THOROUGH'] === '1' ? 20_000 : 90;

const codes: readonly number[] = Object.values(EXIT).filter((code) => code !== EXIT.failed);

/** Runs the command and holds it to its word: a known code, an answer or what is wrong. Says which of both. */
function held(argv: readonly string[], stdin = ''): 'answered' | 'refused' {
  const { code, out, err } = size(argv, stdin);
  expect(codes).toContain(code);
  expect(out + err).not.toBe('');
  expect(out + err).not.toMatch(/NaN|undefined|\[object/);
  const answered = code === EXIT.fits || code === EXIT.near || code === EXIT.outside;
  if (answered) expect(err).toBe('');
  else expect(err).not.toBe('');
  return answered ? 'answered' : 'refused';
}

const option = fc.constantFrom(
  ...['--wrist', '--ankle', '--neck', '--length', '--place', '--aim', '--sex', '--height', '--age'],
  ...[
    '--sit',
    '--hand',
    '--pick',
    '--quantity',
    '--unit',
    '--lang',
    '--json',
    '--card',
    '--help',
    '-h',
    '--',
    '-',
  ],
);
const value = fc.constantFrom(
  ...[
    '6 1/2 in',
    '165mm',
    '17',
    '45 cm',
    '0',
    '-3',
    'six',
    '',
    'bust',
    'navel',
    'pit',
    'snug',
    'left',
    'above',
  ],
  ...['female', 'pendant', '2', '1.5', '99', 'de', 'in', 'focal', 'drop', 'coarse', '__proto__'],
);

it('any command line made of its own words ends with a known code and a word', () => {
  fc.assert(
    fc.property(fc.array(fc.oneof(option, value), { maxLength: 8 }), (argv) => void held(argv)),
    { numRuns },
  );
});

it('any size asked of any piece is answered or refused', () => {
  const inches = (min: number, max: number) =>
    fc.double({ min, max, noNaN: true }).map((size) => `${size.toFixed(2)} in`);
  const piece = fc.constantFrom('focal', 'drop', 'coarse');
  const of = fc.constantFrom('--wrist', '--neck', '--length', '--place', '--ankle');
  const asked = fc.oneof(
    fc.tuple(piece, of, inches(0.1, 80)),
    fc.tuple(fc.constant('focal'), fc.constant('--wrist'), inches(5, 9)),
    fc.tuple(fc.constant('drop'), fc.constant('--length'), inches(12, 30)),
  );
  const said = { answered: 0, refused: 0 };
  fc.assert(
    fc.property(asked, fc.boolean(), (words, json) => {
      said[held([...words, json ? '--json' : '--card'])] += 1;
    }),
    { numRuns },
  );
  for (const count of Object.values(said)) expect(count).toBeGreaterThan(0.1 * numRuns);
});

it('any text on standard input is answered or refused', () => {
  const whole = JSON.stringify(pendantNecklace);
  const cut = fc.nat(whole.length).map((at) => whole.slice(0, at));
  fc.assert(
    fc.property(fc.oneof(fc.json(), fc.string(), cut), (text) => {
      const said = held(['-', '--length', '17 in'], text);
      expect(said).toBe(text === whole ? 'answered' : 'refused');
    }),
    { numRuns },
  );
  expect(held(['-', '--length', '17 in'], whole)).toBe('answered');
});
