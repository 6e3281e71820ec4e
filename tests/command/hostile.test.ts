import fc from 'fast-check';
import { expect, it } from 'vitest';
import { EXIT } from '../../src/command/size/exit.ts';
import { pendantNecklace } from '#tests/support/workshop.ts';
import { size } from './terminal.ts';

/** Sizes of the runs: 90 by default, 20,000 with CLASPWISE_THOROUGH=1. */
const numRuns = process.env['CLASPWISE_THOROUGH'] === '1' ? 20_000 : 90;

const codes: readonly number[] = Object.values(EXIT).filter((code) => code !== EXIT.failed);

/** Runs the command and holds it to its word: a known code, an answer or what is wrong. */
function held(argv: readonly string[], stdin = ''): void {
  const { code, out, err } = size(argv, stdin);
  expect(codes).toContain(code);
  expect(out + err).not.toBe('');
  expect(out + err).not.toMatch(/NaN|undefined|\[object/);
  if (code === EXIT.fits || code === EXIT.near || code === EXIT.outside) expect(err).toBe('');
  else expect(err).not.toBe('');
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
    fc.property(fc.array(fc.oneof(option, value), { maxLength: 8 }), (argv) => held(argv)),
    { numRuns },
  );
});

it('any size asked of any piece is answered or refused', () => {
  const figure = fc.double({ min: 0.1, max: 80, noNaN: true }).map((inches) => `${inches.toFixed(2)} in`);
  const piece = fc.constantFrom('focal', 'drop', 'coarse');
  const of = fc.constantFrom('--wrist', '--neck', '--length', '--place', '--ankle');
  fc.assert(
    fc.property(piece, of, figure, fc.boolean(), (id, name, mm, json) =>
      held([id, name, mm, json ? '--json' : '--card']),
    ),
    { numRuns: numRuns / 3 },
  );
});

it('any text on standard input is answered or refused', () => {
  const whole = JSON.stringify(pendantNecklace);
  const cut = fc.nat(whole.length).map((at) => whole.slice(0, at));
  fc.assert(
    fc.property(fc.oneof(fc.json(), fc.string(), cut), (text) => held(['-', '--length', '17 in'], text)),
    { numRuns },
  );
});
